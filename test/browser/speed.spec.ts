/** Ten years in the book must not make the app slow to open. A loose cap: `npm run bench` measures the bar itself. */
import { expect, test } from '@playwright/test'
import { seed } from '../bench/seed.ts'
import { benchSite } from '../bench/site.ts'
import { startBesideEmpty } from '../bench/start.ts'
import { phone } from './harness/page.ts'

test('with ten years on record, "Dosed" can be touched within four times what an empty page takes', async () => {
  test.setTimeout(120_000)
  const site = await benchSite()
  const pocket = phone()
  try {
    const context = await pocket.start()
    await seed(context, site.address, 20_000)
    expect((await startBesideEmpty(context, site.address, 3)).ratio).toBeLessThan(4)
  } finally {
    await pocket.throwAway()
    site.close()
  }
})
