/** How a backup leaves the phone. */
import 'fake-indexeddb/auto'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { handOverBackup } from '../../app/state/backup.ts'
import { matter, setMatter } from '../../app/state/device.ts'
import { moment } from '../../core/index.ts'

const file = new File(['a header\n'], 'smallhours-2026-03-01.txt', { type: 'text/plain' })
const longAgo = moment(1_500_000_000_000)
const clicked: string[] = []

beforeEach(async () => {
  clicked.length = 0
  await setMatter('lastBackup', longAgo)
  URL.createObjectURL = () => 'blob:it'
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (this: HTMLAnchorElement) {
    clicked.push(this.download)
  })
})
afterEach(() => {
  vi.restoreAllMocks()
  vi.unstubAllGlobals()
})
const phoneThat = (share: () => Promise<void>, canShare = true) =>
  vi.stubGlobal('navigator', { canShare: () => canShare, share })

test('a phone that shares files shares it, and the date is noted', async () => {
  phoneThat(async () => {})
  expect(await handOverBackup(file)).toEqual({ ok: true, value: { how: 'shared', name: file.name } })
  expect(clicked).toEqual([])
  expect(matter('lastBackup')).toBeGreaterThan(longAgo)
})

test('when she closes the sharing sheet nothing has left the phone, and no date is noted', async () => {
  phoneThat(async () => {
    throw new DOMException('closed', 'AbortError')
  })
  expect(await handOverBackup(file)).toEqual({ ok: false, refusal: { why: 'notHandedOver' } })
  expect(clicked).toEqual([])
  expect(matter('lastBackup')).toBe(longAgo)
})

test('a phone that will not share this file, or not now, downloads it', async () => {
  phoneThat(async () => {}, false)
  expect(await handOverBackup(file)).toEqual({ ok: true, value: { how: 'downloaded', name: file.name } })
  phoneThat(async () => {
    throw new DOMException('too late after the touch', 'NotAllowedError')
  })
  expect(await handOverBackup(file)).toEqual({ ok: true, value: { how: 'downloaded', name: file.name } })
  expect(clicked).toEqual([file.name, file.name])
  expect(matter('lastBackup')).toBeGreaterThan(longAgo)
})
