/** Tanks are told apart by their names. Checked against our own examples. */
import { expect, test } from 'vitest'
import { freeName, nameTaken } from '../../../core/index.ts'
import { at, given } from '../../support/given.ts'
import { cockle, lab, limpetShelf, longGallery, tankOf, usGal } from '../../support/givenLab.ts'

const now = at('2027-06-10 21:15')
const named = (name: string) => tankOf(cockle, usGal(20)).map((fact) => ({ ...fact, name }))

test('the first tank goes by the plain name, a second by its number, past a number that is taken', () => {
  expect(freeName(given(lab).world(), longGallery, 'Tank', now)).toBe('Tank')
  expect(freeName(given(lab, named('Tank')).world(), longGallery, 'Tank', now)).toBe('Tank 2')
  expect(freeName(given(lab, named('tank 2 ')).world(), longGallery, 'Tank', now)).toBe('Tank 3')
})

test('a name is taken however it is spaced and written, and never by the tank itself', () => {
  const world = given(lab, named('Reef'), tankOf(limpetShelf, usGal(45))).world()
  expect(nameTaken(world, longGallery, ' reef', now)).toBe(true)
  expect(nameTaken(world, cockle, 'Reef', now)).toBe(false)
  expect(nameTaken(world, longGallery, 'Reef 2', now)).toBe(false)
})
