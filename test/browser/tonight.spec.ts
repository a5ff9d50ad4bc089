/** Evenings that are not the usual one, put right where they are noticed: by touch, and told apart in the diary. */
import { expect, type Page, test } from '@playwright/test'
import { type Household, households } from './households.ts'
import { answer, backupOf, diary, dosed, go, openApp, restore, said } from './keeper.ts'

test.use({ timezoneId: 'Europe/London' })

const dark = '2026-11-25T22:10:00Z'
const inside = async (page: Page, household: Household): Promise<Page> => {
  await restore(page, backupOf(households[household]()))
  await go(page, '/')
  await expect(answer(page)).toBeVisible()
  return page
}
const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).click()
const somethingElse = (page: Page) => page.getByText('Something else happened').click()
const undo = async (page: Page) => {
  // The second touch of a nervous thumb is not an undo.
  await page.waitForTimeout(700)
  await press(page, 'Undo')
}

test.describe('a fortnight nobody wrote down', () => {
  const question = (page: Page) => page.getByText(/^No entry/)

  test('kept going as usual: one entry, seven portions less, tonight still due', async ({ context }) => {
    const page = await inside(await openApp(context), 'fortnight')
    await expect(question(page)).toHaveText(
      'No entry for seven dose nights, 11 November to 23 November. What happened?',
    )
    await press(page, 'Kept going as usual')
    await expect(question(page)).toHaveCount(0)
    await expect(answer(page)).toContainText('31 left after that')
    await expect(dosed(page)).toBeVisible()
    const [last] = await diary(page)
    expect(last).toContain('for seven nights, 11 November to 23 November: 7 portions from blue clip')
  })

  test('stopped: nothing less, tonight due; and the answer can be taken back', async ({ context }) => {
    const page = await inside(await openApp(context), 'fortnight')
    await press(page, 'Stopped')
    await expect(question(page)).toHaveCount(0)
    await expect(answer(page)).toContainText('38 left after that')
    await undo(page)
    await expect(question(page)).toBeVisible()
  })

  test('counted: what is gone was given, on which nights is not made up', async ({ context }) => {
    const page = await inside(await openApp(context), 'fortnight')
    await press(page, 'I’ll count what is left')
    for (const _ of [1, 2, 3]) await press(page, 'One fewer')
    await expect(page.getByText('Three fewer than the book says: they were given on those nights.')).toBeVisible()
    await press(page, 'That is what is left')
    await expect(question(page)).toHaveCount(0)
    await expect(answer(page)).toContainText('35 left after that')
    const [last] = await diary(page)
    expect(last).toContain('Counted 36 portions in blue clip: 3 doses of Green food were given')
  })

  test('of two tanks it is one question and one entry; or they are told apart', async ({ context }) => {
    const page = await inside(await openApp(context, dark), 'fortnightTwoTanks')
    await expect(question(page)).toContainText('seven dose nights for Long Gallery and seven for Cockle')
    await press(page, 'Not the same for each')
    await expect(question(page)).toHaveCount(2)
    await page.getByRole('button', { name: 'Stopped' }).first().click()
    await expect(question(page)).toContainText('Cockle')
    await press(page, 'Kept going as usual')
    await expect(question(page)).toHaveCount(0)
  })
})

test('one night without an entry: dosed, not dosed, or nobody remembers', async ({ context }) => {
  const page = await inside(await openApp(context, '2026-11-24T20:30:00Z'), 'missed')
  const question = page.getByText('Last night: dosed or not?')
  await press(page, /^Yes, last night/)
  await expect(answer(page)).toHaveText('Nothing tonight. Next dose: tomorrow night.')
  await undo(page)
  await press(page, 'I can’t remember')
  await expect(answer(page)).toHaveText('Nothing tonight. Next dose: tomorrow night.')
  await undo(page)
  await press(page, 'Not dosed')
  await expect(question).toHaveCount(0)
  await expect(answer(page)).toContainText('Tonight: one portion')
})

test('two tanks are dosed in the dark by thumb alone, one after the other', async ({ context }) => {
  const page = await inside(await openApp(context, dark), 'dueInBoth')
  await expect(answer(page)).toContainText('Tonight, Long Gallery')
  await dosed(page).click()
  await expect(answer(page)).toContainText('Done for Wednesday night, Long Gallery')
  await press(page, 'Next: Cockle')
  await expect(answer(page)).toContainText('Tonight, Cockle')
  await dosed(page).click()
  await expect(answer(page)).toContainText('Done for Wednesday night, Cockle')
  await expect(page.getByRole('button', { name: /^Next:/ })).toHaveCount(0)
  await press(page, /^To the front.*Long Gallery/)
  await expect(answer(page)).toContainText('Done for Wednesday night, Long Gallery')
})

test('into the wrong tank: one touch moves it, and one takes that back', async ({ context }) => {
  const page = await inside(await openApp(context), 'dueInBoth')
  await dosed(page).click()
  await somethingElse(page)
  await press(page, 'Wrong tank: it went into Cockle')
  // Twice its size for the smaller tank: asked about as any dose of that size.
  await press(page, 'It is so: note it')
  await expect(answer(page)).toContainText('Tonight, Long Gallery')
  await expect(said(page, 'done: 1 mL at 20:30')).toBeVisible()
  await undo(page)
  await expect(answer(page)).toContainText('Tonight, Cockle')
  await expect(said(page, 'done: 1 mL at 20:30')).toBeVisible()
})

test('what went back still hard was never out, and out it was after all', async ({ context }) => {
  const page = await inside(await openApp(context), 'trays')
  const before = (await answer(page).textContent()) ?? ''
  await dosed(page).click()
  await expect(answer(page)).toContainText('Done for')
  await somethingElse(page)
  await press(page, 'It went back, still hard')
  await expect(answer(page)).toHaveText(before)
  await undo(page)
  await expect(answer(page)).toContainText('Done for Wednesday night: 1')
})

test('two inside the range are no event', async ({ context }) => {
  const page = await inside(await openApp(context), 'trays')
  await somethingElse(page)
  await press(page, 'Gave two')
  await expect(answer(page)).toContainText(/Done for Wednesday night: 2\smL at 20:30\. Next: Friday night/)
  await expect(page.getByText(/over the range for this tank/)).toHaveCount(0)
})

test('two above the range: said once, the next night waits, and she may keep it', async ({ context }) => {
  const page = await inside(await openApp(context), 'smallTank')
  await somethingElse(page)
  await press(page, 'Gave two')
  await expect(said(page, 'That is 2 × the top of the range, 1 mL.')).toBeVisible()
  await press(page, 'It is so: note it')
  await expect(answer(page)).toContainText('Next: Sunday night')
  await expect(said(page, 'the next dose waits until 29 November instead of 27 November.')).toBeVisible()
  await press(page, /^Keep 27\sNovember$/)
  await expect(answer(page)).toContainText('Next: Friday night')
})

test('half of one, the rest into the other tank the same night: one portion, one entry', async ({ context }) => {
  const page = await inside(await openApp(context), 'twoTanks')
  await somethingElse(page)
  await press(page, 'Shared over two tanks, or gave half')
  await press(page, /^The rest went into Cockle/)
  const [last] = await diary(page)
  expect(last).toContain('Gave Long Gallery 0.5 mL of Green food and Cockle 0.5 mL of Green food: 1 portion')
})

test('another phone’s dose is told by its name, and once more is asked about', async ({ context }) => {
  const page = await inside(await openApp(context), 'oneDone')
  await press(page, /^To the front.*Long Gallery/)
  await expect(answer(page)).toContainText(/1\smL at 20:11, kitchen phone/)
  await somethingElse(page)
  await press(page, 'Dosed once more')
  await expect(said(page, 'Kitchen phone noted 1 mL for Long Gallery at 20:11. Another?')).toBeVisible()
})

test('a hold is lifted or made longer where it is seen', async ({ context }) => {
  const page = await inside(await openApp(context), 'onHold')
  await expect(answer(page)).toHaveText('On hold until Saturday night, 5 December.')
  await press(page, 'Go on now')
  await expect(answer(page)).toContainText('Tonight: one portion')
  await expect(page.getByText(/The hold is over/)).toHaveCount(0)
  await undo(page)
  await press(page, 'Hold longer')
  await press(page, /^Until 12\sDecember$/)
  await expect(answer(page)).toHaveText('On hold until Saturday night, 12 December.')
})

test('food past its usual time is used with one touch', async ({ context }) => {
  const page = await inside(await openApp(context), 'pastBottle')
  await expect(said(page, 'Five days past its usual time: sniff and look.')).toBeVisible()
  await press(page, 'Sniffed: dosed with it')
  await expect(answer(page)).toContainText('Done for Wednesday night')
  const [last] = await diary(page)
  expect(last).toContain('5 days past its day')
})
