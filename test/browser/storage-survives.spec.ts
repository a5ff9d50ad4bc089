/** What is left after the worst moments. */
import { expect, test } from '@playwright/test'
import { ids, open, phone, sorted } from './harness/page.ts'

test('an entry is there, once, when the app is killed the moment it is said to be recorded', async () => {
  const kitchen = phone()
  try {
    const page = await open(await kitchen.start())
    const recorded = await page.evaluate(async () => {
      await window.harness.add('before')
      return window.harness.add('the last tap')
    })
    await kitchen.kill()
    if (!recorded.ok) throw new Error(JSON.stringify(recorded.refusal))
    const again = await open(await kitchen.start())
    expect((await ids(again)).filter((id) => id === recorded.value[0]?.id)).toHaveLength(1)
    expect(await again.evaluate(() => window.harness.names())).toEqual(['before', 'the last tap'])
  } finally {
    await kitchen.throwAway()
  }
})

test('what was typed is there again when the app is killed in the middle of a form', async () => {
  const kitchen = phone()
  try {
    const page = await open(await kitchen.start())
    await page.getByLabel('Note').fill('tray by the wind')
    // The longest a keystroke may wait, and as long again for the disk.
    await page.waitForTimeout(600)
    await kitchen.kill()
    const again = await open(await kitchen.start())
    await expect(again.getByLabel('Note')).toHaveValue('tray by the wind')
    await expect(again.getByText('restored')).toBeVisible()
    await again.getByRole('button', { name: 'Save' }).click()
    await expect(again.getByText('places: 1')).toBeVisible()
    await expect(again.getByLabel('Note')).toHaveValue('')
    await again.reload()
    await expect(again.getByText('new')).toBeVisible()
  } finally {
    await kitchen.throwAway()
  }
})

test('an import that is killed half way leaves nothing, and can be done again', async () => {
  const kitchen = phone()
  try {
    const page = await open(await kitchen.start())
    await page.evaluate(() => window.harness.add('ours'))
    const half = page.waitForEvent('console', (message) => message.text() === 'half')
    const cutOff = page
      .evaluate(() =>
        window.harness.takeIn(window.harness.strangers(20_000), ({ done, of }) => {
          if (done !== of / 2) return
          console.log('half')
          // Stays here, inside the transaction, until the browser is gone.
          for (const until = performance.now() + 20_000; performance.now() < until; );
        }),
      )
      .then(
        () => 'finished',
        () => 'cut off',
      )
    await half
    await kitchen.kill()
    expect(await cutOff).toBe('cut off')
    const again = await open(await kitchen.start())
    expect(await again.evaluate(() => window.harness.names())).toEqual(['ours'])
    const done = await again.evaluate(() => window.harness.takeIn(window.harness.strangers(20_000)))
    expect(done).toMatchObject({ ok: true, value: { added: 20_000, already: 0, wasEmpty: false } })
    expect(await ids(again)).toHaveLength(20_001)
  } finally {
    await kitchen.throwAway()
  }
})

test('an import she stops leaves nothing', async ({ context }) => {
  const page = await open(context)
  const stopped = await page.evaluate(() => {
    const control = new AbortController()
    return window.harness.takeIn(window.harness.strangers(5_000), () => control.abort(), control.signal)
  })
  expect(stopped).toEqual({ ok: false, refusal: { why: 'importStopped' } })
  expect(await page.evaluate(() => window.harness.onDisk())).toEqual([])
})

test('importing tells how far it is, adds each entry once however often it is done, and later entries come after it', async ({
  context,
}) => {
  const [page, other] = [await open(context), await open(context)]
  const told = await page.evaluate(async () => {
    const steps: number[] = []
    const entries = window.harness.strangers(3_400)
    const first = await window.harness.takeIn(entries, ({ done }) => steps.push(done))
    const second = await window.harness.takeIn(entries)
    return { steps, first, second }
  })
  expect(told.steps).toEqual([1_000, 2_000, 3_000, 3_400])
  expect(told.first).toMatchObject({ ok: true, value: { added: 3_400, already: 0, wasEmpty: true } })
  expect(told.second).toMatchObject({ ok: true, value: { added: 0, already: 3_400, wasEmpty: false } })
  await other.evaluate(() => window.harness.add('after the import'))
  await expect.poll(async () => (await ids(page)).length).toBe(3_401)
  expect(sorted(await ids(other))).toEqual(sorted(await ids(page)))
  expect(await page.evaluate(() => window.harness.onDisk())).toEqual(await ids(page))
})

test('a backup brings everything back on an empty phone', async ({ context, browser }) => {
  const old = await open(context)
  await old.evaluate(() => window.harness.addMany(1_200))
  await old.evaluate(() => window.harness.sealNow())
  const backup = await old.evaluate(async () => {
    const made = await window.harness.makeBackup()
    return made.ok ? { name: made.value.name, text: await made.value.text() } : undefined
  })
  expect(backup?.name).toMatch(/^smallhours-\d{4}-\d\d-\d\d\.txt$/)
  const elsewhere = await browser.newContext()
  const fresh = await open(elsewhere)
  const restored = await fresh.evaluate(async (text) => {
    const preview = await window.harness.previewBackup(new File([text], 'backup.txt'))
    if (!preview.ok) return preview
    return {
      added: preview.value.added.length,
      restores: preview.value.restores,
      done: await window.harness.importBackup(preview.value),
    }
  }, backup?.text ?? '')
  expect(restored).toMatchObject({ added: 1_200, restores: true, done: { ok: true, value: { wasEmpty: true } } })
  expect(sorted(await ids(fresh))).toEqual(sorted(await ids(old)))
  const broken = await fresh.evaluate(() => window.harness.previewBackup(new File(['a shopping list'], 'list.txt')))
  expect(broken).toEqual({ ok: false, refusal: { why: 'notALedger' } })
  await elsewhere.close()
})

test('a full disk refuses a tap and loses nothing, and the next tap finds room again', async ({ context, baseURL }) => {
  const blank = await context.newPage()
  const disk = await context.newCDPSession(blank)
  const origin = new URL(baseURL ?? '').origin
  // Before the first write: the browser remembers for a while that there was room.
  await disk.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 300_000 })
  const page = await open(context)
  await page.evaluate(() => window.harness.add('before'))
  await page.getByLabel('Note').fill('while it is full')
  await page.waitForTimeout(500)
  const tap = await page.evaluate(() => window.harness.addMany(5_000))
  expect(tap.ok ? tap.value.length : tap.refusal).toEqual({ why: 'storageFull' })
  const imported = await page.evaluate(() => window.harness.takeIn(window.harness.strangers(8_000)))
  expect(imported).toEqual({ ok: false, refusal: { why: 'storageFull' } })
  expect(await page.evaluate(() => window.harness.names())).toEqual(['before'])
  await disk.send('Storage.overrideQuotaForOrigin', { origin })
  await page.getByRole('button', { name: 'Save' }).click()
  await expect(page.getByText('places: 2')).toBeVisible()
  expect(await page.evaluate(() => window.harness.onDisk())).toEqual(await ids(page))
})
