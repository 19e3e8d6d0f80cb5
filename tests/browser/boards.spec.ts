import type { Page } from '@playwright/test'
import { button, expect, goTo, test } from './shop'

/** What a thumb needs. Source: WCAG 2.2, 2.5.5. */
const THUMB = 44

async function startCutting(shop: Page, steps: number) {
  await goTo(shop, 'Cut')
  await button(shop, 'Start cutting').click({ timeout: 30_000 })
  const bench = shop.getByRole('dialog', { name: 'At the bench' })
  const done = bench.getByRole('button', { name: 'Done', exact: true })
  for (let step = 0; step < steps; step++) await done.click()
  return bench
}

test('pieces and sheets that are being cut are drawn to one scale', async ({ shop }) => {
  test.setTimeout(120_000)
  const bench = await startCutting(shop, 90)
  await bench.getByRole('button', { name: 'Something went wrong' }).click()
  await bench.locator('button[aria-pressed="false"]').filter({ hasText: /-/ }).first().click()
  await button(shop, 'What would this do?').click()
  await button(shop, 'Yes, cut by this plan').click({ timeout: 30_000 })
  // The crosscut blade is in since the sheets are ripped.
  await expect(bench.locator('article')).toContainText('bench')
  await expect(bench.locator('article')).not.toContainText('blade in')
  await bench.getByRole('button', { name: 'Leave the bench' }).click()
  const scales = await shop.locator('figure[data-state] > svg').evaluateAll((pictures) =>
    pictures.map((picture) => {
      const [, , length, width] = picture.getAttribute('viewBox')!.split(' ').map(Number)
      const box = picture.getBoundingClientRect()
      return { along: box.width / length!, across: box.height / width!, length }
    }),
  )
  expect(scales.length).toBeGreaterThan(10)
  expect(new Set(scales.map(({ length }) => length)).size).toBeGreaterThan(3)
  for (const { along, across } of scales) {
    expect(along).toBeCloseTo(scales[0]!.along, 3)
    expect(across).toBeCloseTo(scales[0]!.along, 3)
  }
})

test('the bench is left for the stage of cutting, also after a reload', async ({ shop }) => {
  const bench = await startCutting(shop, 1)
  await shop.waitForFunction(() => /saved/.test(document.querySelector('header')?.textContent ?? ''))
  await shop.reload()
  await bench.getByRole('button', { name: 'Leave the bench' }).click()
  await expect(button(shop, /^Go on cutting/)).toBeVisible()
})

test.describe('on a narrow screen with a mouse', () => {
  test.use({ viewport: { width: 390, height: 844 } })

  test('all that is pressed at the bench is large enough for a thumb, and no mark is broken in two', async ({
    shop,
  }) => {
    test.setTimeout(120_000)
    const bench = await startCutting(shop, 3)
    const small = () =>
      bench.evaluate((dialog, least) => {
        const pressed = [...dialog.querySelectorAll('button, select, input, summary')]
        return pressed.flatMap((one) => {
          const { height, width } = one.getBoundingClientRect()
          return width > 0 && height < least ? `${one.textContent?.slice(0, 40)} ${height}` : []
        })
      }, THUMB)
    expect(await small()).toEqual([])
    const done = bench.getByRole('button', { name: 'Done', exact: true })
    const marks = bench.locator('article strong > span')
    const lines = () => marks.evaluateAll((all) => new Set(all.map((one) => one.getBoundingClientRect().top)).size)
    for (let step = 0; step < 120 && (await lines()) < 2; step++) await done.click()
    expect(await lines()).toBeGreaterThan(1)
    const boxes = await marks.evaluateAll((all) => all.map((one) => one.getClientRects().length))
    expect(new Set(boxes)).toEqual(new Set([1]))
    await bench.getByRole('button', { name: 'Something went wrong' }).click()
    for (const name of ['A part is spoiled', 'A board is damaged', 'Another thickness']) {
      await bench.getByRole('button', { name }).click()
      expect(await small(), name).toEqual([])
    }
  })

  test('the page of cutting scrolls as a whole, and its parts are a press away', async ({ shop }) => {
    await goTo(shop, 'Cut')
    await expect(shop.locator('li[data-step]').first()).toBeAttached({ timeout: 30_000 })
    // A better layout brings other steps, and the page is another length.
    await expect(shop.getByText(/still looking/i)).toHaveCount(0, { timeout: 30_000 })
    const inner = await shop
      .locator('main, body')
      .first()
      .evaluate(
        (page) =>
          [...page.querySelectorAll('section[aria-label="Sheets"], section[aria-label="Steps"]')].flatMap((part) =>
            [part, ...part.querySelectorAll('div')].filter((one) => {
              return one.scrollHeight > one.clientHeight + 1 && /auto|scroll/.test(getComputedStyle(one).overflowY)
            }),
          ).length,
      )
    expect(inner).toBe(0)
    const parts = shop.getByRole('navigation', { name: 'Parts of this page' })
    await parts.getByRole('button', { name: 'Shop and boards' }).click()
    await expect(shop.getByRole('heading', { name: 'Shop and boards' })).toBeInViewport()
    await parts.getByRole('button', { name: 'Steps' }).click()
    await expect(shop.getByRole('heading', { name: 'Steps', exact: true })).toBeInViewport()
  })
})
