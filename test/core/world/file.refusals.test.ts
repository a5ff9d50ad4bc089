import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { exportLedger, moment, readLedgerFile } from '../../../core/index.ts'
import { holds, tally } from '../../fixtures/laws.ts'
import { header, newer, read, refusal, shaken, text } from '../../fixtures/smallFile.ts'

describe('a file that is refused', () => {
  test.each(['', '\n\n', '  ', '\uFEFF'])('is empty', (contents) => {
    expect(refusal(contents)).toEqual({ why: 'empty' })
  })

  test.each([
    'Dear diary,\n',
    '[]',
    'null',
    '{"file":"smallhours-ledger"}\n',
    text.replace('smallhours', 'midnight'),
    text.replace('"format":1', '"format":0'),
    text.replace('"format":1', '"format":"1"'),
    text.replace('"entries":2', '"entries":-2'),
    text.replace('"device":"kitchen"', '"device":"The Kitchen"'),
    text.slice(text.indexOf('\n') + 1),
  ])('is not a ledger: %.40s', (contents) => {
    expect(refusal(contents)).toEqual({ why: 'notALedger' })
  })

  test('is of a newer format, whatever else that format changed', () => {
    expect(refusal('{"file":"smallhours-ledger","format":2,"sealed":true}\n????')).toEqual({
      why: 'newerFormat',
      format: 2,
    })
  })

  test('is cut short after a whole line', () => {
    const cut = `${text.split('\n').slice(0, 2).join('\n')}\n`
    expect(refusal(cut)).toEqual({ why: 'cutShort', expected: 2, found: 1 })
  })

  test('is cut short within its last line', () => {
    expect(refusal(text.slice(0, -9))).toEqual({ why: 'cutShort', expected: 2, found: 1 })
  })

  test('has a broken line, and its number is told', () => {
    expect(refusal(text.replace('"bottle1"', '"bottle1'))).toEqual({ why: 'brokenLine', line: 2 })
    expect(refusal(text.replace('"at":7', '"at":-7'))).toEqual({ why: 'brokenLine', line: 3 })
    expect(refusal(text.replace('\n', '\n\n'))).toEqual({ why: 'brokenLine', line: 2 })
  })

  test('has more lines than its header promises', () => {
    expect(refusal(`${text}${JSON.stringify(shaken)}\n`)).toEqual({ why: 'brokenLine', line: 4 })
  })

  test('has two bodies under one id', () => {
    const other = { ...shaken, fact: { ...shaken.fact, bottle: 'bottle2' } }
    const contents = `${text.replace('"entries":2', '"entries":3')}${JSON.stringify(other)}\n`
    expect(refusal(contents)).toEqual({ why: 'sameIdTwice', line: 4 })
  })

  test('is larger than a phone can hold', () => {
    expect(refusal(text + ' '.repeat(128 * 1024 * 1024))).toEqual({ why: 'tooLarge', most: 128 * 1024 * 1024 })
  })

  test('is never taken in part, wherever it is cut', () => {
    for (let end = 0; end < text.length - 1; end += 1)
      expect(readLedgerFile(text.slice(0, end)).ok, `cut at ${end}`).toBe(false)
  })
})

describe('a hostile file', () => {
  const holding = (line: string) =>
    `{"file":"smallhours-ledger","format":1,"at":5,"device":"kitchen","version":"1","entries":1}\n${line}\n`
  const entry = (extra: string) => `{"id":"${newer.id}","fact":{"kind":"moonWatched","at":7,"extra":${extra}}}`

  test.each([
    ['a line of ten million characters', entry(`"${'x'.repeat(10_000_000)}"`)],
    ['two million brackets', entry('['.repeat(1_000_000) + ']'.repeat(1_000_000))],
    ['two million open brackets', '['.repeat(2_000_000)],
    ['a number beyond all numbers', entry('1e999')],
    ['a null byte between two fields', entry('1').replace(',', ',\u0000')],
    ['the word NaN', entry('NaN')],
  ])('with %s is refused', (_what, line) => {
    expect(refusal(holding(line))).toEqual({ why: 'brokenLine', line: 2 })
  })

  test('with a header of ten million characters is refused', () => {
    expect(refusal(`{"file":"${'x'.repeat(10_000_000)}"}\n`)).toEqual({ why: 'notALedger' })
    expect(refusal('['.repeat(1_000_000))).toEqual({ why: 'notALedger' })
  })

  test('that promises a million lines and has one is cut short', () => {
    const contents = holding(entry('1')).replace('"entries":1', '"entries":1000000')
    expect(refusal(contents)).toEqual({ why: 'cutShort', expected: 1_000_000, found: 1 })
  })

  test('with fields named like the prototype gives them back and changes no prototype', () => {
    const line = entry('1').replace('{"id"', '{"__proto__":{"polluted":1},"id"')
    const { entries } = read(holding(line))
    expect(exportLedger(entries, { ...header, at: moment(5), version: '1' })).toBe(holding(line))
    expect(Reflect.get({}, 'polluted')).toBeUndefined()
  })

  test('with null bytes and half characters within a text is kept as it is', () => {
    const line = entry('"a\\u0000b\\ud800"')
    expect(exportLedger(read(holding(line)).entries, { ...header, at: moment(5), version: '1' })).toBe(holding(line))
  })

  test('of any text at all is answered and never thrown at', () => {
    const met = tally('refused')
    const anyLine = fc.oneof(fc.string({ unit: 'binary' }), fc.json(), fc.constant(JSON.stringify(shaken)))
    holds(
      fc.property(fc.array(anyLine, { maxLength: 6 }), (lines) => {
        met.note('refused', refusal(lines.join('\n')) !== undefined)
        met.note('refused', refusal(holding(lines.join('\n'))) !== undefined)
      }),
      100,
    )
    met.expectAtLeast(100)
  }, 60_000)
})
