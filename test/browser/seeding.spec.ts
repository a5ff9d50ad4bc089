/** The night live bottles are poured, as she walks through it: half ticked, the page gone, an hour missed, a day late. */
import { type BrowserContext, expect, type Page, test } from '@playwright/test'
import { phone } from './harness/page.ts'
import { households } from './households.ts'
import { answer, backupOf, diary, go, openApp, restore, said } from './keeper.ts'

test.describe.configure({ timeout: 120_000 })

const day = '2026-11-25'
const act = (page: Page) => page.locator('.act')
const look = (page: Page) => page.locator('html')
const ticks = async (page: Page, ...names: readonly string[]) => {
  for (const name of names) {
    await expect(act(page)).toContainText(name)
    await act(page).click()
    await expect(act(page).filter({ hasText: name })).toHaveCount(0)
  }
}
/** The page is killed, and opened again at another hour. */
const again = async (context: BrowserContext, page: Page, time: string, where: string): Promise<Page> => {
  await page.close()
  return openApp(context, time, `./#${where}`)
}
const begin = async (context: BrowserContext, household: keyof typeof households, time: string, where: string) => {
  const page = await openApp(context, time)
  await restore(page, backupOf(households[household]()))
  await go(page, where)
  return page
}

test.use({ timezoneId: 'Europe/London' })

test('planned, half ticked, closed, found 17 minutes late, and ended a day late', async ({ context }) => {
  let page = await begin(context, 'tankOnly', `${day}T18:00:00Z`, '/water')
  await page.getByRole('link', { name: /^Live bottles/ }).click()
  await page.getByRole('link', { name: 'Say first what runs here' }).click()
  await page.getByRole('group', { name: 'Touch all there is' }).getByRole('button', { name: 'UV lamp' }).click()
  await page.getByRole('button', { name: 'Save' }).click()

  await page.getByRole('link', { name: 'Bottles have come' }).click()
  await page.getByLabel('How many bottles?').fill('3')
  await page.getByRole('button', { name: 'They are here' }).click()
  // Said beside the field; what was typed stays.
  await expect(said(page, 'Nothing is entered here yet.')).toBeVisible()
  await page.getByLabel('What does one bottle hold?').fill('473')
  await page.getByLabel('Within how many hours').fill('24')
  await page.getByRole('button', { name: 'They are here' }).click()
  await expect(said(page, 'Damage may be claimed until 18:00 on Thursday, 26 November')).toBeVisible()
  await page.getByRole('button', { name: 'The caps are off' }).click()
  await expect(answer(page)).toContainText('warmth of the room')
  await expect(said(page, 'Tonight: best, dark from 21:00')).toBeVisible()

  await page.getByRole('link', { name: 'Plan the night' }).click()
  await page.getByLabel('When do the pumps go off?').fill('20:40')
  await page.getByRole('button', { name: 'Plan it so' }).click()
  await expect(said(page, 'The display is lit until 21:00.')).toBeVisible()
  // A reload brings back what was typed.
  await page.reload()
  await expect(page.getByLabel('When do the pumps go off?')).toHaveValue('20:40')
  await page.getByLabel('When do the pumps go off?').fill('21:40')
  await expect(page.locator('.line', { hasText: 'Return pump on' })).toContainText('22:40')
  await page.getByRole('button', { name: 'Plan it so' }).click()
  await expect(answer(page)).toContainText('21:10')
  await expect(said(page, 'own alarm for 22:40')).toBeVisible()
  await expect(look(page)).toHaveAttribute('data-look', 'day')
  const where = new URL(page.url()).hash.slice(1)
  await go(page, '/')
  await expect(page.getByRole('link', { name: /live bottles, pumps off at 21:40/ })).toBeVisible()

  page = await again(context, page, `${day}T21:40:00Z`, where)
  await expect(look(page)).toHaveAttribute('data-look', 'night')
  await ticks(page, 'Top-off off', 'Sock or floss out', 'Dark over the display', 'Skimmer off', 'UV lamp off')
  await page.getByRole('button', { name: 'Undo' }).click()
  await ticks(page, 'UV lamp off', 'Return pump off', 'Level marked', 'Sump heater off', 'into the display')
  await expect(page.locator('.fact', { hasText: 'In' }).first()).toContainText('859.5')

  page = await again(context, page, `${day}T22:57:30Z`, '/food')
  await page.getByRole('link', { name: /Switch the pumps of Long Gallery on: 17.minutes late/ }).click()
  await expect(answer(page)).toContainText('22:40')
  await expect(said(page, '17 minutes late.')).toBeVisible()
  await ticks(page, 'Return pump on', 'into the sump')
  await page.getByRole('button', { name: /^All 1,719.mL is out/ }).click()
  await expect(page.locator('.fact', { hasText: 'Left' })).toContainText('nothing')
  await ticks(page, 'Water taken out afterwards', 'Sump heater on')
  await expect(act(page)).toHaveCount(0)
  await page.getByText('A letter to yourself').click()
  await page.getByLabel('What do you hope to find?').fill('Specks in the torch light.')
  await page.getByRole('button', { name: 'Put it away' }).click()
  await expect(said(page, 'It opens on 23 December 2026')).toBeVisible()

  page = await again(context, page, '2026-11-27T08:00:00Z', where)
  await expect(look(page)).toHaveAttribute('data-look', 'day')
  await expect(page.locator('.line', { hasText: 'Skimmer on' })).toContainText(/off for 34.h/)
  await ticks(page, 'UV lamp on', 'Sock or floss in', 'Level and heater looked at', 'Top-off on')
  await act(page).click()
  await expect(answer(page)).toHaveText('All is back on. The night is done.')
  await go(page, '/')
  await expect(page.locator('.run-bar')).toHaveCount(0)

  page = await again(context, page, '2026-12-24T09:00:00Z', where.replace(/run\/.*/, 'longgallery'))
  await expect(said(page, 'Specks in the torch light.')).toBeVisible()
})

test('a browser killed with the pumps off, opened 17 minutes after they were due, knows what was ticked and says it is late', async () => {
  const hers = phone()
  try {
    const before = await begin(await hers.start(), 'nightHalfWay', `${day}T21:50:00Z`, '/seeding/run/run1')
    await ticks(before, 'into the refugium')
    await hers.kill()
    const after = await openApp(await hers.start(), `${day}T22:57:30Z`, './#/')
    await after.getByRole('link', { name: /Switch the pumps of Long Gallery on: 17.minutes late/ }).click()
    await expect(said(after, '17 minutes late.')).toBeVisible()
    // The hour is the one of the plan, and the pump stands before all that is left.
    await expect(answer(after)).toContainText('22:40')
    await expect(act(after)).toContainText('Return pump on')
    await after.getByText(/steps done$/).click()
    await expect(after.getByRole('button', { name: /^Not done.*into the refugium/ })).toBeVisible()
  } finally {
    await hers.throwAway()
  }
})

test('by the dark tank the plan is changed, in the dark look, and the night goes by it', async ({ context }) => {
  const page = await begin(context, 'nightPlanned', `${day}T20:50:00Z`, '/seeding/run/run1')
  await expect(answer(page)).toContainText('21:10')
  await page.getByRole('link', { name: 'Change the plan' }).click()
  await expect(look(page)).toHaveAttribute('data-look', 'night')
  await page.getByLabel('When do the pumps go off?').fill('22:15')
  await expect(page.locator('.line', { hasText: 'Return pump on' })).toContainText('23:15')
  await page.getByRole('button', { name: 'Change it so' }).click()
  await expect(answer(page)).toContainText('21:45')
  await expect(said(page, 'own alarm for 23:15')).toBeVisible()
  expect((await diary(page)).join(' ')).toContain('Plan changed for Long Gallery')
})

test('fish that breathe hard stop it with one touch, and the tally stays', async ({ context }) => {
  const page = await begin(context, 'nightHalfWay', `${day}T21:50:00Z`, '/seeding/run/run1')
  await page.getByRole('button', { name: 'Fish breathing hard' }).click()
  await expect(answer(page)).toHaveText('Everything on. Lid off. Air in.')
  await expect(page.locator('.line').first()).toContainText('The return pump')
  await expect(page.locator('.fact', { hasText: 'In' }).first()).toContainText('1,146')
  await page.getByRole('button', { name: /Return pump on$/ }).click()
  await expect(page.locator('.line').first()).toContainText('The top-off')
  // Told everywhere until each is ticked: that all should be on is not that it is.
  await go(page, '/food')
  await page.getByRole('link', { name: /^Long Gallery: the night was stopped, and five things are not ticked/ }).click()
  await expect(answer(page)).toHaveText('Everything on. Lid off. Air in.')
  for (let left = 5; left > 0; left--)
    await page.locator('.line').first().getByRole('button', { name: /^Done/ }).click()
  await go(page, '/food')
  await expect(page.getByRole('link', { name: /the night was stopped/ })).toHaveCount(0)
  await go(page, '/seeding/longgallery')
  await expect(page.getByRole('link', { name: /^The night of/ })).toBeVisible()
  expect((await diary(page)).join(' ')).toContain('fish breathed hard, everything on')
})

test('copper in the water refuses a plan and no record', async ({ context }) => {
  const page = await begin(context, 'liveBottlesCame', `${day}T18:00:00Z`, '/seeding/longgallery')
  await page.getByText('Say what is in it').click()
  await page.getByRole('radio', { name: 'Copper' }).check()
  await page.getByRole('button', { name: 'Note it' }).click()
  await expect(answer(page)).toContainText('No live bottles into Long Gallery now: there is copper in it.')
  await page.getByRole('link', { name: 'Plan the night' }).click()
  await page.getByRole('button', { name: 'Plan it so' }).click()
  await expect(page.getByRole('alert')).toContainText('copper')
  await go(page, '/seeding/longgallery/poured')
  await page.getByLabel('Bottles into the display').fill('0.5')
  await page.getByRole('button', { name: 'Write it down' }).click()
  await expect(page.getByRole('heading', { level: 1, name: 'Diary' })).toBeVisible()
  expect((await diary(page)).join(' ')).toMatch(/0\.5 bottles|half a bottle/i)
})
