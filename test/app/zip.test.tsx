/** Zips, held against a reader and a writer that are not ours. */
import JSZip from 'jszip'
import { describe, expect, test } from 'vitest'
import { type Inside, listZip, looksZipped, unzip, zipOf } from '../../app/state/zip.ts'

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text)
const book = 'a line of the book\n'.repeat(4_000)
const noise = Uint8Array.from({ length: 70_000 }, (_, i) => (i * 2_654_435_761) >>> 13)
const inside: readonly Inside[] = [
  { name: 'smallhours-2026-11-25.txt', bytes: bytesOf(book), squeeze: true },
  { name: 'photos/2026-09-01-a.jpg', bytes: noise, squeeze: false },
  { name: 'photos/2026-10-01-b.jpg', bytes: bytesOf('PK\u0003\u0004 inside a picture'), squeeze: false },
]
const stream = async function* () {
  yield* inside
}
const ours = async (): Promise<Uint8Array> => new Uint8Array(await (await zipOf(stream())).arrayBuffer())

describe('a zip of ours', () => {
  test('is read by another reader, every check sum right', async () => {
    const read = await JSZip.loadAsync(await ours(), { checkCRC32: true })
    expect(Object.keys(read.files).filter((name) => !name.endsWith('/'))).toEqual(inside.map(({ name }) => name))
    expect(await read.file('smallhours-2026-11-25.txt')?.async('string')).toBe(book)
    expect(await read.file('photos/2026-09-01-a.jpg')?.async('uint8array')).toEqual(noise)
  })
  test('squeezes the text and leaves pictures as they are', async () => {
    const whole = (await ours()).length
    expect(whole).toBeLessThan(noise.length + 3_000)
    expect(whole).toBeGreaterThan(noise.length)
  })
})

describe('a zip of another writer', () => {
  const theirs = (compression: 'STORE' | 'DEFLATE', streamFiles: boolean): Promise<Uint8Array> => {
    const zip = new JSZip()
    for (const { name, bytes } of inside) zip.file(name, bytes)
    return zip.generateAsync({ type: 'uint8array', compression, streamFiles })
  }
  test.each([
    ['STORE', false],
    ['STORE', true],
    ['DEFLATE', false],
    ['DEFLATE', true],
  ] as const)('%s, sizes told afterwards: %s', async (compression, streamed) => {
    const bytes = await theirs(compression, streamed)
    const listed = listZip(bytes)
    if (!listed.ok) throw new Error(listed.refusal.why)
    const files = listed.value.filter(({ name }) => !name.endsWith('/'))
    expect(files).toEqual(inside.map(({ name, bytes }) => ({ name, size: bytes.length })))
    const found = unzip(bytes, ['photos/2026-10-01-b.jpg', 'photos/not-there.jpg'])
    expect([...found.keys()]).toEqual(['photos/2026-10-01-b.jpg'])
    expect(new TextDecoder().decode(found.get('photos/2026-10-01-b.jpg'))).toBe('PK\u0003\u0004 inside a picture')
  })
})

test('what was cut short is refused', async () => {
  const bytes = await ours()
  expect(listZip(bytes.slice(0, bytes.length - 30))).toEqual({ ok: false, refusal: { why: 'zipBroken' } })
  expect(listZip(bytesOf('PK\u0003\u0004'))).toEqual({ ok: false, refusal: { why: 'zipBroken' } })
})
test('it is known by its first bytes, whatever it is called', async () => {
  expect(await looksZipped(new Blob([(await ours()).slice()]))).toBe(true)
  expect(await looksZipped(new Blob(['{"file":"smallhours-ledger"']))).toBe(false)
  expect(await looksZipped(new Blob([]))).toBe(false)
})
