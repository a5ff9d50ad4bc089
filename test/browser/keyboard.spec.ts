/** The main round without a finger on the glass. */
import { expect, type Page, test } from '@playwright/test'
import { answer, dosed, openApp } from './keeper.ts'

test.use({ timezoneId: 'Europe/London' })

/** Tab until the thing with this name has the focus; every stop on the way must be seen to have it. */
const tabTo = async (page: Page, name: RegExp): Promise<void> => {
  for (let stops = 0; stops < 40; stops += 1) {
    await page.keyboard.press('Tab')
    const focus = page.locator(':focus')
    if ((await focus.count()) === 0) continue
    const shown = await focus.evaluate((element) => {
      const { outlineStyle, outlineWidth, boxShadow } = getComputedStyle(element)
      return (outlineStyle !== 'none' && outlineWidth !== '0px') || boxShadow !== 'none'
    })
    expect(shown, 'the focus is seen').toBe(true)
    const called = await focus.evaluate((element) => {
      const input = element as HTMLInputElement
      const labelled = input.getAttribute('aria-labelledby')
      const label = labelled ? document.getElementById(labelled) : input.labels?.[0]
      return (label?.textContent ?? element.textContent ?? '').trim()
    })
    if (name.test(called)) return
  }
  throw new Error(`No way to ${name} by keyboard`)
}

test('the first evening, a dose and its undo go by keyboard alone', async ({ context }) => {
  const page = await openApp(context)
  await tabTo(page, /How much water/)
  await page.keyboard.type('400')
  await tabTo(page, /^litres/)
  await page.keyboard.press('Space')
  await tabTo(page, /A bottle in the fridge/)
  await page.keyboard.press('Space')
  await tabTo(page, /What does the bottle hold/)
  await page.keyboard.type('120')
  await tabTo(page, /^mL/)
  await page.keyboard.press('Space')
  // Enter in a field sends the form.
  await page.keyboard.press('Enter')
  await expect(dosed(page)).toBeVisible()
  await tabTo(page, /^Dosed/)
  await page.keyboard.press('Enter')
  await expect(answer(page)).toContainText('Done for Wednesday night')
  await page.waitForTimeout(700)
  await tabTo(page, /^Undo/)
  await page.keyboard.press('Enter')
  await expect(answer(page)).toContainText('Tonight: 0.55 mL')
})

test('Tonight reads for ears as it does for eyes', async ({ context }) => {
  const page = await openApp(context)
  await page.getByLabel('How much water is in it?').fill('200')
  await page.getByRole('radio', { name: 'US gallons' }).check()
  await page.getByRole('radio', { name: 'Frozen portions already' }).check()
  await page.getByLabel('How many portions?').fill('60')
  await page.getByRole('button', { name: 'Begin' }).click()
  await expect(dosed(page)).toBeVisible()
  await expect(page.getByRole('main')).toMatchAriaSnapshot(`
    - main:
      - heading "Tonight" [level=1]
      - paragraph: Wednesday night, 25 November
      - paragraph: /Tonight. one portion from bag 1, kitchen freezer. 59 left after that, enough until/
      - paragraph: The lights go out at 21:00.
      - group: Something else happened
      - button "Dosed one portion, 1 mL, for Tank"
  `)
})
