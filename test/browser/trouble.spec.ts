/** What goes wrong: a thaw, a sniff, far too much. */
import { expect, type Page, test } from '@playwright/test'
import { households } from './households.ts'
import { answer, backupOf, diary, go, openApp, restore, said } from './keeper.ts'

test.use({ timezoneId: 'Europe/London' })

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).click()
const group = (page: Page, name: string | RegExp) => page.getByRole('radiogroup', { name })

test('a freezer thawed: two bags, two answers, what they come to before it is saved, and undone after', async ({
  context,
}) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.twoBags()))
  await go(page, '/food/place/kitchenfreezer')
  await page.getByRole('link', { name: /was off, open or has thawed/ }).click()
  await expect(answer(page)).toHaveText('Keep it shut: full, it stays frozen for about 48 hours; half full, about 24.')
  await page.getByRole('radio', { name: 'One by one' }).check()
  await press(page, 'Note it so')
  // Every bag without an answer says so at once.
  await expect(said(page, 'How was it found? “I can’t tell” is an answer too.')).toHaveCount(2)
  await group(page, /^blue clip/)
    .getByRole('radio', { name: 'Thawed, but cold' })
    .check()
  await expect(said(page, '1 has a dose night in time; 30 are for the bin or for feeding a culture.')).toBeVisible()
  // The page is closed and opened again at the freezer: the answers stand.
  await page.waitForTimeout(600)
  await page.reload()
  await expect(group(page, /^blue clip/).getByRole('radio', { name: 'Thawed, but cold' })).toBeChecked()
  await group(page, /^redclip/)
    .getByRole('radio', { name: 'Still hard with frost' })
    .check()
  await expect(said(page, '22 portions stay, a little softer: good until 4 September 2028, as before.')).toBeVisible()
  await press(page, 'Note it so')
  await expect(answer(page)).toContainText('Nothing was thrown away for you')
  await go(page, '/food')
  await expect(said(page, 'thawed, but cold, found on 25 November: for the bin')).toBeVisible()
  // What no dose night takes in time is nobody's food: 1 + 22.
  await expect(answer(page)).toContainText(/23 portions/)
  await press(page, /^In the bin.*blue clip/)
  await expect(said(page, 'In the bin: 30 portions of 31, blue clip.')).toBeVisible()
  await press(page, 'Undo')
  await expect(page.getByRole('button', { name: /^In the bin.*blue clip/ })).toBeVisible()
  const lines = await diary(page)
  expect(lines.some((line) => line.includes('blue clip thawed, but cold and redclip still hard with frost'))).toBe(true)
})

test('a bottle smells off beside its first sniff: it is set aside, its doses are listed, and it is taken back', async ({
  context,
}) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.twoBags()))
  await go(page, '/food/bottle/bottle1')
  await page.getByRole('link', { name: 'Smell and look' }).click()
  await expect(answer(page)).toHaveText('First sniff, 12 November: sharp, like low tide.')
  await press(page, 'Note it')
  await expect(said(page, 'Good, unsure or off?')).toBeVisible()
  await page.getByRole('radio', { name: 'Off' }).check()
  await page.getByLabel('How does it smell and look?').fill('like drains')
  await expect(page.getByRole('heading', { name: 'Given from it in the last seven nights' })).toBeVisible()
  await expect(said(page, '1 mL to Long Gallery')).toHaveCount(3)
  await press(page, 'Note it')
  await expect(said(page, 'Set aside since 25 November: by its smell or look, like drains.')).toBeVisible()
  await go(page, '/')
  // Tonight takes the portions, and asks nobody to shake what is set aside.
  await expect(answer(page)).toContainText(/Tonight: one portion from blue clip/)
  await expect(page.getByRole('heading', { name: 'Shake' })).toHaveCount(0)
  await go(page, '/food')
  await press(page, /^Back into use.*The 120 mL bottle/)
  await expect(said(page, 'Back in use: The 120 mL bottle of Green food.')).toBeVisible()
  await expect(page.getByRole('heading', { name: /^Set aside/ })).toBeVisible()
  await go(page, '/')
  await expect(page.getByRole('heading', { name: 'Shake' })).toBeVisible()
})

test('a dose from what is set aside is chosen by hand, asked about with its sniff, and noted with a mark', async ({
  context,
}) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.inDoubt()))
  await go(page, '/dose/greenplan')
  await page.getByRole('radio', { name: /^The 120 mL bottle/ }).check()
  await page.getByLabel('How much was poured?').fill('1')
  await press(page, 'Note it')
  await expect(said(page, 'Last smelt at: Off, 25 November: like drains, and in clumps.')).toBeVisible()
  await press(page, 'It is so: note it')
  await expect(said(page, 'Noted. Gave Long Gallery 1 mL')).toBeVisible()
  const [last] = await diary(page)
  expect(last).toContain('set aside')
})

test('the exact form chooses nothing that is past its day, and asks where it came from', async ({ context }) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.longPast()))
  await go(page, '/dose/greenplan')
  await expect(group(page, 'Where did it come from?').getByRole('radio', { checked: true })).toHaveCount(0)
  await press(page, 'Note it')
  await expect(group(page, 'Where did it come from?')).toContainText('Where did it come from?')
  await expect(group(page, 'Where did it come from?')).toHaveAttribute('aria-invalid', 'true')
})

test('far too much: the steps first, then an upper estimate, then a rest from feeding that can be undone', async ({
  context,
}) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.knockedIn()))
  await go(page, '/diary')
  await page.getByRole('link', { name: 'Far too much: what to do now' }).first().click()
  await expect(answer(page)).toHaveText('Air and flow first: the figures can wait.')
  await expect(page.getByRole('listitem').first()).toContainText('Air and flow up now')
  await expect(page.getByLabel('How much went in?')).toHaveValue('60')
  // 200 US gallons are 757 litres: 360 mg N × 4.427 / 757.
  await expect(said(page, 'Nitrate at most 2.1 ppm more, phosphate at most 0.22 ppm more.')).toBeVisible()
  await press(page, 'Let it rest until then')
  await expect(said(page, 'Long Gallery rests until Wednesday night, 2 December.')).toBeVisible()
  await press(page, 'Undo')
  await expect(page.getByRole('button', { name: 'Undo' })).toHaveCount(0)
})

test('two bags are made one and two again; a bag without its label is as old as the oldest it may be', async ({
  context,
}) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.twoBags()))
  await go(page, '/food/lot/blueclip')
  await page.getByText('Put them into another bag').click()
  await group(page, 'Into which bag?').getByRole('radio', { name: 'redclip' }).check()
  await expect(said(page, '53 portions in redclip then, all of them good until 3 June 2028')).toBeVisible()
  await press(page, 'Make them one bag')
  await expect(answer(page)).toHaveText('They went into the bag of redclip.')
  await press(page, 'Undo')
  await expect(answer(page)).toContainText('31 portions left')
  await go(page, '/food/lot/unlabelled')
  await page.getByLabel('How many portions?').fill('12')
  await press(page, 'Put them on record')
  await expect(said(page, 'Which of them may it be? All that come to mind.')).toBeVisible()
  await press(page, /^redclip/)
  await press(page, /^blue clip/)
  await expect(answer(page)).toHaveText(
    'Taken as frozen about 3 June 2026, the earliest it can be: good until 3 June 2028.',
  )
  await page.getByRole('radio', { name: /^In redclip/ }).check()
  await press(page, 'Put them on record')
  await expect(answer(page)).toContainText('12 portions left')
  await go(page, '/food/lot/redclip')
  await expect(answer(page)).toContainText('10 portions left')
})
