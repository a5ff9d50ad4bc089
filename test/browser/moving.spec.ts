/** Food that moves about, and tanks, foods, doors and plans that come and go: what a person does, in a real browser. */
import { expect, type Page, test } from '@playwright/test'
import { type Household, households } from './households.ts'
import { answer, backupOf, diary, go, openApp, restore, said } from './keeper.ts'

const begin = async (page: Page, household: Household, where: string): Promise<void> => {
  await restore(page, backupOf(households[household]()))
  await go(page, where)
}
const fold = async (page: Page, name: string): Promise<void> => {
  await page.locator('summary').filter({ hasText: name }).click()
}
const lineOf = (page: Page, name: string) => page.locator('.section').filter({ hasText: name })

test('five of the boathouse portions go to the kitchen: 27 there, 26 left, 53 as before', async ({ context }) => {
  const page = await openApp(context)
  await begin(page, 'twoFreezers', '/food/lot/blueclip')
  await fold(page, 'Move to another door')
  await page.getByRole('radio', { name: 'Some of them' }).check()
  await page.getByLabel('How many?', { exact: true }).last().fill('5')
  await expect(page.getByLabel('The mark of the part that moves')).toHaveValue('blue clip, part 2')
  await expect(said(page, '5 portions go to kitchen freezer; 26 stay here.')).toBeVisible()
  await page.getByRole('button', { name: 'Move them' }).click()
  await expect(said(page, 'Moved: 5 portions to kitchen freezer; 26 stay here.')).toBeVisible()
  await expect(answer(page)).toContainText(/26\sportions left/)

  await go(page, '/food')
  await expect(answer(page)).toContainText(/53\sportions/)
  await expect(lineOf(page, 'kitchen freezer')).toContainText(/27\sportions of Green food/)
  await expect(lineOf(page, 'boathouse freezer')).toContainText('26')
  await expect(page.getByText('take this first: it has the fewest left')).toBeVisible()
  expect((await diary(page)).join(' ')).toContain(
    'Moved 5 portions from blue clip to kitchen freezer, as blue clip, part 2.',
  )
})

test('whole trays move to a freezer named on the spot, and the open tray stays as it was', async ({ context }) => {
  const page = await openApp(context)
  await begin(page, 'wellsTouched', '/food/lot/blueclip')
  await fold(page, 'Move to another door')
  await page.getByRole('radio', { name: 'Another freezer' }).check()
  await page.getByLabel('What do you call this freezer?').fill('garage freezer')
  await page.getByRole('radio', { name: 'Some of the full trays' }).check()
  await page.getByLabel('How many full trays?').fill('2')
  await page.getByRole('button', { name: 'Move them' }).click()
  await expect(answer(page)).toContainText(/58\sportions left/)
  await expect(said(page, 'Tray 6, the open one: 12 portions left.')).toBeVisible()
  await go(page, '/food')
  await expect(lineOf(page, 'garage freezer')).toContainText('30')
})

test('a few are given away, and one that was dropped went back still hard', async ({ context }) => {
  const page = await openApp(context)
  await begin(page, 'twoFreezers', '/food/lot/redclip')
  await fold(page, 'Give some away')
  await page.getByLabel('How many?', { exact: true }).last().fill('4')
  await page.getByLabel('To whom?').fill('Rosa')
  await page.getByRole('button', { name: /^Give 4/ }).click()
  await expect(answer(page)).toContainText(/18\sportions left/)

  await fold(page, 'Dropped or lost some')
  await page.getByRole('button', { name: /^Take 1\s/ }).click()
  await expect(answer(page)).toContainText(/17\sportions left/)
  await fold(page, 'Put back, still hard')
  await page.getByRole('button', { name: /^Put 1\s/ }).click()
  await expect(answer(page)).toContainText(/18\sportions left/)
  const lines = (await diary(page)).join(' ')
  expect(lines).toContain('Gave away 4 portions from redclip to Rosa.')
  expect(lines).toContain('it went back, still hard')
})

test('a touch on a well says it is out, beyond the book it offers the count, and a tray is cut', async ({
  context,
}) => {
  const page = await openApp(context)
  await begin(page, 'wellsTouched', '/food/lot/blueclip')
  await expect(said(page, 'By these wells 87 are left; the book says 88.')).toBeVisible()
  await page.getByRole('button', { name: 'Row 1, well 2: holds a portion' }).click()
  await expect(said(page, 'Row 1, well 2 is out: 11 left in this tray. Next is row 3, well 5.')).toBeVisible()
  await page.getByRole('button', { name: 'Row 1, well 2: empty' }).click()
  await expect(said(page, 'Row 1, well 2 is in after all: 12 left in this tray.')).toBeVisible()
  await page.getByRole('button', { name: 'Set the count to 87' }).click()
  await expect(answer(page)).toContainText(/87\sportions left/)
  await expect(page.getByText('By these wells')).toHaveCount(0)

  await fold(page, 'Cut this tray')
  await page.getByRole('button', { name: 'Cut after column 4' }).click()
  await expect(said(page, 'Cut after columns 2, 4: three pieces.')).toBeVisible()
  await page.getByRole('button', { name: 'Cut after column 2' }).click()
  await expect(said(page, 'Cut after column 4: two pieces.')).toBeVisible()
  // No reason is made up for her.
  expect((await diary(page)).join(' ')).toMatch(/Counted 87\sportions in [^,]+, 1 fewer than the book said\.(?! \()/)
})

test('a tank is taken down, its plan ends with it, and it comes back without one', async ({ context }) => {
  const page = await openApp(context)
  await begin(page, 'twoTanks', '/water/tank/cockle')
  await fold(page, 'No longer kept')
  await page.getByRole('button', { name: 'taken down' }).click()
  await page.getByRole('button', { name: 'It is no longer kept' }).click()
  await expect(lineOf(page, 'Tanks that were')).toContainText('Cockle')
  await go(page, '/')
  await expect(page.getByText('Cockle')).toHaveCount(0)

  await go(page, '/water')
  await page.getByRole('button', { name: 'Bring it back' }).click()
  await expect(answer(page)).toHaveText('Two tanks.')
  await expect(page.getByRole('link', { name: 'Make a plan' })).toBeVisible()
  expect((await diary(page)).join(' ')).toContain('Cockle is no longer kept (taken down).')
})

test('a food and a door are taken off the list, are not offered any more, and come back', async ({ context }) => {
  const page = await openApp(context)
  await begin(page, 'comeAndGone', '/food/lot/new')
  await expect(page.getByRole('radio', { name: 'Another freezer' })).toBeVisible()
  await expect(page.getByRole('radio', { name: 'Amber food' })).toHaveCount(0)
  await expect(page.getByRole('radio', { name: 'boathouse freezer' })).toHaveCount(0)
  await go(page, '/food/kind/amberfood')
  await expect(answer(page)).toHaveText('No longer bought.')
  await page.getByRole('button', { name: 'Bring it back', exact: true }).click()
  await expect(page.getByText('No longer bought', { exact: true })).toBeVisible()
  await go(page, '/food/place/boathousefreezer')
  await page.getByRole('button', { name: 'Bring it back' }).click()
  await expect(answer(page)).toHaveText('A freezer with nothing in it.')
  await go(page, '/food/lot/new')
  await expect(page.getByRole('radio', { name: 'Amber food' })).toBeVisible()
  await expect(page.getByRole('radio', { name: 'boathouse freezer' })).toBeVisible()
})

test('a door with things behind it says what they are; empty, it goes', async ({ context }) => {
  const page = await openApp(context)
  await begin(page, 'twoFreezers', '/food/place/boathousefreezer')
  await expect(answer(page)).toHaveText('A freezer. One thing stands behind it.')
  await page.getByRole('link', { name: 'blue clip' }).click()
  await fold(page, 'Move to another door')
  await page.getByRole('button', { name: 'Move them' }).click()
  await go(page, '/food/place/boathousefreezer')
  await fold(page, 'It is no longer there')
  await page.getByRole('button', { name: 'Take it off the list' }).click()
  await expect(page.getByRole('heading', { level: 1, name: 'Food' })).toBeVisible()
  await expect(page.getByText('boathouse freezer')).toHaveCount(0)
})

test('what there is of a food that was crossed out is still on its shelf and can be thrown away', async ({
  context,
}) => {
  const page = await openApp(context)
  await begin(page, 'foodCrossedOut', '/food')
  await expect(lineOf(page, 'kitchen freezer')).toContainText('Of a food not on record:')
  await page.getByRole('link', { name: 'redclip' }).click()
  await expect(answer(page)).toContainText(/12\sportions of a food not on record/)
  await fold(page, 'Throw away')
  await page.getByRole('button', { name: /^All 12/ }).click()
  await page.getByRole('button', { name: /^Throw away 12/ }).click()
  await expect(answer(page)).toContainText(/^0\sportions/)
})

test('fixed nights stay where they are after a night that was missed', async ({ context }) => {
  const page = await openApp(context)
  await begin(page, 'missed', '/water/plan/longgallery/greenfood')
  await page.getByRole('radio', { name: /^Fixed nights/ }).check()
  await page.getByLabel(/^One of the nights/).fill('2026-11-20')
  await page.getByRole('button', { name: 'Save the plan' }).click()
  await expect(said(page, '1 mL of Green food, every other night, on fixed nights.')).toBeVisible()
  // 20, 22, 24 November have gone by; tonight is the 25th.
  await expect(page.getByText('Next: tomorrow night.')).toBeVisible()
})

test('a plan is held until a day, goes on before it, and is stopped', async ({ context }) => {
  const page = await openApp(context)
  await begin(page, 'trays', '/water')
  await fold(page, 'Put it on hold')
  await page.getByLabel('Nothing is due before').fill('2026-12-04')
  await expect(said(page, 'Friday night, 4 December 2026')).toBeVisible()
  await page.getByRole('button', { name: 'Hold it until then' }).click()
  await expect(said(page, 'On hold until Friday night, 4 December.')).toBeVisible()
  await page.getByRole('button', { name: 'Go on now' }).click()
  await expect(page.getByText('Next: tonight.')).toBeVisible()
  await fold(page, 'Stop this plan')
  await page.getByRole('button', { name: 'Stop this plan' }).click()
  await expect(page.getByRole('link', { name: 'Make a plan' })).toBeVisible()
})

test('two foods for one tank say when they meet', async ({ context }) => {
  const page = await openApp(context)
  await begin(page, 'foodsThatMeet', '/water')
  await expect(
    said(page, 'Green food and Amber food meet tonight and on 1, 7, 13 and 19 December: 1.5 mL together.'),
  ).toBeVisible()
})

test('two foods in step take turns by one touch', async ({ context }) => {
  const page = await openApp(context)
  await begin(page, 'foodsInStep', '/water')
  await page.getByRole('button', { name: 'Begin Amber food tomorrow night' }).click()
  await expect(said(page, 'Green food and Amber food do not meet in the coming four weeks.')).toBeVisible()
})

test('what is past its day is a list for the bin, ticked off there', async ({ context }) => {
  const page = await openApp(context, '2026-12-20T20:30:00Z')
  await begin(page, 'pastBottle', '/food')
  await expect(lineOf(page, 'Past its day')).toContainText('The 96')
  await page.getByRole('button', { name: 'In the bin' }).click()
  await expect(page.getByRole('heading', { name: 'Past its day' })).toHaveCount(0)
  expect((await diary(page)).join(' ')).toContain(
    'Threw away 96 mL from the 96 mL bottle of Green food (past its day).',
  )
})
