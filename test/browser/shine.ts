/**
 * What of a screen would shine in a dark room: the points that send green or blue light. They are counted in the picture
 * that was painted, so that what a browser draws by itself is seen as well.
 */
import type { Page } from '@playwright/test'

/** Of 255. Red alone has none; a little is left for the rounding of a blended edge. */
const most = 16

const countShining = async ({ picture, cap }: { picture: string; cap: number }): Promise<number> => {
  const bytes = Uint8Array.from(atob(picture), (letter) => letter.charCodeAt(0))
  const image = await createImageBitmap(new Blob([bytes], { type: 'image/png' }))
  const canvas = new OffscreenCanvas(image.width, image.height)
  const pen = canvas.getContext('2d')
  if (!pen) throw new Error('Nothing to look at the picture with')
  pen.drawImage(image, 0, 0)
  const { data } = pen.getImageData(0, 0, image.width, image.height)
  let shining = 0
  for (let point = 0; point < data.length; point += 4)
    if ((data[point + 1] ?? 0) > cap || (data[point + 2] ?? 0) > cap) shining += 1
  return shining
}

/** The whole page, however long, as it stands now. */
export const shining = async (page: Page): Promise<number> => {
  const picture = (await page.screenshot({ fullPage: true })).toString('base64')
  return page.evaluate(countShining, { picture, cap: most })
}

/** Each colour that would be used for what a picture may not show: a ring, a caret, a bar for scrolling, a choice of text. */
export const shiningColours = (page: Page): Promise<string[]> =>
  page.evaluate((cap) => {
    const names = [
      'color',
      'background-color',
      'border-top-color',
      'border-right-color',
      'border-bottom-color',
      'border-left-color',
      'outline-color',
      'text-decoration-color',
      'caret-color',
      'accent-color',
      'scrollbar-color',
      'box-shadow',
      'fill',
      'stroke',
      '-webkit-tap-highlight-color',
      '-webkit-text-fill-color',
    ]
    const shines = (value: string): boolean =>
      [...value.matchAll(/rgba?\(([^)]*)\)/g)].some(([, numbers]) => {
        const [, green = 0, blue = 0, clear = 1] = (numbers ?? '').split(/[ ,/]+/).map(Number)
        return clear > 0 && (green > cap || blue > cap)
      })
    const partsOf = (element: Element): readonly (string | undefined)[] => [
      undefined,
      ...['::before', '::after'].filter((part) => getComputedStyle(element, part).content !== 'none'),
      ...(element === document.body ? ['::selection'] : []),
      ...(element.matches('input, textarea') ? ['::placeholder', '::file-selector-button'] : []),
    ]
    const found = new Set<string>()
    for (const element of [document.documentElement, document.body, ...document.body.querySelectorAll('*')])
      for (const part of partsOf(element)) {
        const style = getComputedStyle(element, part)
        for (const name of names)
          if (shines(style.getPropertyValue(name)))
            found.add(`${element.tagName} ${element.className} ${part ?? ''} ${name}: ${style.getPropertyValue(name)}`)
      }
    return [...found]
  }, most)
