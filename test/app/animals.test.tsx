/** The drawings: lines in the pen of the text, inside their grid, silent, and one for every animal of the key. */
import { render } from '@testing-library/react'
import { describe, expect, test } from 'vitest'
import { Animal, animalIds } from '../../app/parts/animals/Animal.tsx'
import { animalDrawing, answerDrawing, markDrawing } from '../../app/parts/animals/keyDrawings.ts'
import { keyAnimals } from '../../core/index.ts'

describe('the drawings of animals', () => {
  test.each(animalIds)('%s keeps inside its grid and says nothing by itself', (id) => {
    const { container } = render(<Animal of={id} />)
    const svg = container.querySelector('svg')
    expect(svg?.getAttribute('aria-hidden')).toBe('true')
    expect(svg?.getAttribute('viewBox')).toBe('0 0 96 96')
    expect(container.innerHTML).not.toMatch(/NaN|undefined|Infinity|#[0-9a-f]{3}|rgb/i)
    for (const path of container.querySelectorAll('path')) {
      // Every point a line begins or ends at; curves bend inside them.
      for (const [, x, y] of (path.getAttribute('d') ?? '').matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)) {
        expect(Number(x)).toBeGreaterThanOrEqual(0)
        expect(Number(x)).toBeLessThanOrEqual(96)
        expect(Number(y)).toBeGreaterThanOrEqual(0)
        expect(Number(y)).toBeLessThanOrEqual(96)
      }
    }
  })
  test('there is one for every animal, none is drawn twice for two animals, and none hangs unused', () => {
    const shown = Object.values(animalDrawing)
    expect(new Set(shown).size).toBe(Object.keys(keyAnimals).length)
    const used = new Set([...shown, ...Object.values(answerDrawing), ...Object.values(markDrawing)])
    expect([...used].sort()).toEqual([...animalIds].sort())
  })
})
