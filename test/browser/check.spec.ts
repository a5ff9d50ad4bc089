/** What does not add up: asked where it is seen, and every way out leads out. */
import { type Browser, expect, type Page, test } from '@playwright/test'
import { type DeviceId, type Entry, type Fact, namePhone } from '../../core/index.ts'
import { at, bookOf, kitchenPhone, labPhone } from '../support/given.ts'
import { households } from './households.ts'
import { twoBodies } from './householdsDiary.ts'
import { answer, backupOf, diary, go, openApp, restore } from './keeper.ts'
import { chooseFile, saveBackup } from './saving.ts'

test.use({ timezoneId: 'Europe/London' })

const questions = (page: Page) => page.getByRole('region', { name: 'Please check' })
const way = (page: Page, name: string | RegExp) => questions(page).getByRole('button', { name })
const settled = (page: Page) => expect(questions(page)).toContainText('Noted. Nothing is left to check.')

/** The night both phones logged, each phone with its name. */
const twins = (): readonly Entry<Fact>[] => {
  const book = bookOf(labPhone, households.loggedTwice())
  const call = (device: DeviceId, name: string) => book.does(() => namePhone({ device, name }, at('2026-11-25 20:20')))
  call(labPhone, 'lab phone')
  call(kitchenPhone, 'kitchen phone')
  return book.entries()
}
/** Portions left of the one food there is, as the Food room says it. */
const leftInTrays = async (page: Page): Promise<number> => {
  await go(page, '/food')
  await expect(page.getByRole('heading', { level: 1, name: 'Food' })).toBeVisible()
  const said = /^(\d+)\sportions/.exec((await answer(page).textContent()) ?? '')?.[1]
  if (said === undefined) throw new Error('No portions are spoken of')
  return Number(said)
}

test('one night logged on two named phones: one dose leaves one less', async ({ context }) => {
  const page = await openApp(context)
  await restore(page, backupOf(twins()))
  const before = await leftInTrays(page)
  await go(page, '/diary')
  await expect(questions(page)).toContainText('Logged twice?')
  await expect(questions(page)).toContainText(/20:11, lab phone/)
  await expect(questions(page)).toContainText(/20:14, kitchen phone/)
  await way(page, 'One dose: cross out the later one').click()
  await settled(page)
  expect(await leftInTrays(page)).toBe(before + 1)
  const lines = await diary(page)
  expect(lines.filter((line) => line.includes('Crossed out: Gave Long Gallery'))).toHaveLength(1)
})

test('both happened: two doses stay, and the answer can be taken back from the diary, which asks again', async ({
  context,
}) => {
  const page = await openApp(context)
  await restore(page, backupOf(twins()))
  const before = await leftInTrays(page)
  await go(page, '/diary')
  await way(page, 'Both happened').click()
  await settled(page)
  expect(await leftInTrays(page)).toBe(before)
  await go(page, '/diary')
  await expect(questions(page)).toBeHidden()
  const answered = page.locator('.diary-book .line').filter({ hasText: 'Looked at a question (logged twice)' })
  await answered.getByRole('button', { name: /^Cross out/ }).click()
  await expect(answered).toContainText('The question will be asked again.')
  await answered.getByRole('button', { name: 'Cross it out' }).click()
  await expect(questions(page)).toContainText('Logged twice?')
})

test('a dose the bottle cannot have held is a lost point, and is taken off as such', async ({ context }) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.setAside()))
  await go(page, '/diary')
  await expect(questions(page)).toContainText('More was noted than the bottle holds')
  for (const name of [/^A slip/, /^It was 10\smL$/, /^It came from/, /^The bottle held more/, /^Leave it so/])
    await expect(way(page, name)).toBeVisible()
  await way(page, /^It was 1\smL$/).click()
  await settled(page)
  const lines = await diary(page)
  expect(lines.some((line) => /^21:20.*Gave Long Gallery 1 mL of .*: 1 mL from the 96 mL bottle/.test(line))).toBe(true)
  expect(lines.some((line) => line.includes('Crossed out: Gave Long Gallery 1,000 mL'))).toBe(true)
})

test('or it came from another bottle', async ({ context }) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.setAside()))
  await go(page, '/diary')
  await way(page, /^It came from the 1,200\smL bottle/).click()
  await settled(page)
  await go(page, '/food/bottle/bottle2')
  await expect(page.locator('main')).toContainText(/200\smL/)
})

const phoneWith = async (browser: Browser, entries: readonly Entry<Fact>[]): Promise<Page> => {
  const page = await openApp(await browser.newContext({ timezoneId: 'Europe/London' }))
  await restore(page, backupOf(entries))
  return page
}
const bodies = async (page: Page): Promise<readonly string[]> => (await saveBackup(page)).trimEnd().split('\n').slice(1)

test('two phones that say two things of one entry agree once one of them has said which is right', async ({
  browser,
}) => {
  test.setTimeout(90_000)
  const { ours, theirs } = twoBodies()
  const [one, two] = [await phoneWith(browser, ours), await phoneWith(browser, theirs)]
  const file = await saveBackup(two)
  await chooseFile(one, file)
  await expect(one.getByText(/1 disagrees/)).toBeVisible()
  await one.getByRole('button', { name: 'Take in what disagrees, to be asked about it' }).click()
  await expect(
    one.getByText(/^Nothing in it was new; .* 1 said something else; kept as this phone has it/),
  ).toBeVisible()
  // The same file again adds nothing.
  const before = await bodies(one)
  await chooseFile(one, file)
  await one.getByRole('button', { name: 'Take in what disagrees, to be asked about it' }).click()
  await expect(one.getByText(/^Nothing in it was new/)).toBeVisible()
  expect(await bodies(one)).toEqual(before)
  await go(one, '/diary')
  await expect(questions(one)).toContainText('as this phone has it')
  await expect(questions(one)).toContainText(/1 portion from blue clip/)
  await expect(questions(one)).toContainText('as the other has it')
  await expect(questions(one)).toContainText(/2 portions from blue clip/)
  await way(one, 'What the other said').click()
  await settled(one)
  // There and back: the other phone hears of it, and neither has a question left.
  await chooseFile(two, await saveBackup(one))
  await two.getByRole('button', { name: /^Take in the \d+ new ones/ }).click()
  await expect(two.getByText(/^Taken in/)).toBeVisible()
  await chooseFile(one, await saveBackup(two))
  await one.getByRole('button', { name: /^Take in/ }).click()
  await expect(one.getByText(/^(Taken in|Nothing in it was new)/)).toBeVisible()
  const portionsOn = async (page: Page) => {
    await go(page, '/diary')
    await expect(page.getByRole('heading', { level: 1, name: 'Diary' })).toBeVisible()
    await expect(questions(page)).toBeHidden()
    return leftInTrays(page)
  }
  expect(await portionsOn(two)).toBe(39)
  expect(await portionsOn(one)).toBe(39)
  await one.context().close()
  await two.context().close()
})

test('a plan crossed out under its doses is made again with one touch', async ({ context }) => {
  const page = await openApp(context)
  await restore(page, backupOf(households.planGone()))
  await go(page, '/diary')
  await expect(questions(page)).toContainText('Doses follow a plan that was crossed out.')
  await way(page, 'Make the plan again').click()
  await settled(page)
  await go(page, '/')
  await expect(answer(page)).toContainText('Tonight, Long Gallery: one portion')
})

test('entries of a newer version are counted in words, and an update is looked for by hand', async ({ context }) => {
  const page = await openApp(context)
  await page.evaluate(() => navigator.serviceWorker.ready)
  await restore(page, backupOf(households.newer()))
  await go(page, '/diary')
  await expect(questions(page)).toContainText('One entry was written by a newer Smallhours.')
  await questions(page).getByRole('link', { name: 'Look for an update' }).click()
  await expect(page.getByRole('region', { name: 'From a newer version' })).toContainText('One entry was written')
  await page.getByRole('button', { name: 'Look for an update' }).click()
  await expect(page.getByText('This is the newest version there is.')).toBeVisible()
  // The browser asks for the worker itself, past the network a test can cut.
  await page.evaluate(() => {
    ServiceWorkerRegistration.prototype.update = () => Promise.reject(new TypeError('no network'))
  })
  await page.getByRole('button', { name: 'Look for an update' }).click()
  await expect(page.getByText('That needs a network, and there is none just now.')).toBeVisible()
})
