import type { Page } from '@playwright/test'
import { button, cabinet, cabinets, expect, goTo, middleOf, openTab, stroke, test } from './shop'

test.use({ looksOn: false, draws3D: false, viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true })

/** What a thumb needs. Source: WCAG 2.2, 2.5.5. */
const THUMB = 44

async function openPage(page: Page, name: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Pages of the design' }).getByRole('button', { name }).click()
}

test('what a board is called and both its sizes are in sight, and hardware needs no moving aside', async ({ shop }) => {
  await openPage(shop, 'Lists')
  const cells = shop.locator('tr[data-row]').first().locator('th, td')
  for (const [at, text] of [
    [1, 'side'],
    [3, '2052'],
    [4, '579'],
  ] as const) {
    await expect(cells.nth(at)).toHaveText(text)
    const { x, width } = (await cells.nth(at).boundingBox())!
    expect(x + width).toBeLessThanOrEqual(390)
  }
  await openTab(shop, 'Hardware')
  const show = (await button(shop, /^Show the cabinets with full overlay hinge/).boundingBox())!
  expect(show.x + show.width).toBeLessThanOrEqual(390)
})

test('long names of boards are read in full, in rows that stay as high', async ({ shop }) => {
  await openPage(shop, 'Lists')
  const rows = shop.locator('tr[data-row]')
  await expect(rows.filter({ hasText: 'drawer box front, drawer box back' }).first()).toBeAttached()
  const names = await rows.evaluateAll((all) =>
    all.map((row) => {
      const { scrollWidth, clientWidth, textContent } = row.children[1]!
      return { textContent, over: scrollWidth - clientWidth, height: row.getBoundingClientRect().height }
    }),
  )
  expect(names.filter(({ over }) => over > 0)).toEqual([])
  expect(names.filter(({ height }) => height > 32)).toEqual([])
})

test('the frame of a drawing of a part is in sight over its whole width, also when the table is moved aside, and its letters are read', async ({
  shop,
}) => {
  await openPage(shop, 'Lists')
  await button(shop, /^Parts of/)
    .first()
    .click()
  const drawing = shop.getByRole('img', { name: /^Drawing of T1-LS, left side/ })
  const frame = shop.getByRole('region', { name: 'Frame of the drawing of T1-LS' })
  const isInSight = async () => {
    const { x, width } = (await frame.boundingBox())!
    return x >= 0 && width > 300 && x + width <= 390
  }
  await expect.poll(isInSight).toBe(true)
  // The letters of a side of 2052 are 3 in 100 of its length, which the drawing goes past at both ends.
  const letters = await drawing.evaluate((one: HTMLImageElement) => {
    const svg = new DOMParser().parseFromString(decodeURIComponent(one.src.split(',').slice(1).join(',')), 'text/xml')
    const sizes = [...svg.querySelectorAll('[font-size]')].map((text) => Number(text.getAttribute('font-size')))
    const [, , across] = svg.documentElement.getAttribute('viewBox')!.split(/[ ,]+/).map(Number)
    return (Math.min(...sizes) * one.getBoundingClientRect().width) / across!
  })
  expect(letters).toBeGreaterThanOrEqual(11)
  const within = await frame.evaluate((one) => {
    one.scrollLeft = 60
    return one.scrollLeft
  })
  expect(within).toBe(60)
  const table = shop.locator('div', { has: shop.locator(':scope > table tr[data-row]') }).last()
  const aside = await table.evaluate((one) => {
    one.scrollLeft = 200
    return one.scrollLeft
  })
  expect(aside).toBe(200)
  await expect.poll(isInSight).toBe(true)
})

test('everything to be pressed in the pages of the project is large enough for a thumb', async ({ shop }) => {
  await openPage(shop, 'Properties')
  for (const name of ['Build method', 'Boards and sheets', 'Kick, top, trims', 'Shop', 'New cabinets']) {
    await button(shop, name).click()
    const small = await shop.getByRole('region', { name: 'Project' }).evaluate((panel, least) => {
      const pressed = [
        ...panel.querySelectorAll('button, select, label:has(input[type=checkbox]), input:not([type=checkbox])'),
      ]
      return pressed.flatMap((one) => {
        const { height, width } = one.getBoundingClientRect()
        return width > 0 && height < least ? `${one.textContent?.slice(0, 40)} ${height}` : []
      })
    }, THUMB)
    expect(small, name).toEqual([])
  }
})

test('a tap picks a cabinet and presses nothing of the card that comes under the finger', async ({ shop }) => {
  const card = shop.getByRole('region', { name: 'Properties' })
  for (const mark of ['B5', 'T1', 'B1']) {
    const { x, y } = await middleOf(cabinet(shop, mark))
    await shop.touchscreen.tap(x, y + 20)
    await expect(card).toContainText(mark)
    await button(shop, 'Fold').tap()
    await expect(cabinets(shop)).toHaveCount(10)
    await button(shop, new RegExp(`^Show the sizes of ${mark}`)).tap()
    await expect(card.getByLabel('Width', { exact: true })).toBeVisible()
    await shop.getByRole('navigation', { name: 'Pages of the design' }).getByRole('button', { name: 'Lists' }).tap()
    await openTab(shop, 'Schedule')
    await shop.getByRole('navigation', { name: 'Pages of the design' }).getByRole('button', { name: 'Wall' }).tap()
  }
  await expect(button(shop, 'Undo')).toBeDisabled()
})

test('under a finger it is said what a stretch comes to, and why one is refused', async ({ shop }) => {
  const { x, y } = await middleOf(cabinet(shop, 'B5'))
  await shop.touchscreen.tap(x, y)
  const handle = shop.locator('[data-handle=left]')
  await expect(handle).toBeVisible()
  await expect.poll(async () => (await middleOf(handle)).y).toBeLessThan(y)
  const from = await middleOf(handle)
  await stroke(shop, { from, to: { x: from.x + 60, y: from.y } })
  await expect(shop.locator('[data-tone=stop]')).toContainText(/it must be at least 50 mm\. Nothing was changed\./)
})

test('the words of a step have the width of a phone', async ({ shop }) => {
  await goTo(shop, 'Cut')
  const words = shop.locator('li[data-step] p').first()
  await expect(words).toBeAttached({ timeout: 30_000 })
  expect((await words.boundingBox())!.width).toBeGreaterThan(300)
})

test('what is proved of the number of sheets is in sight beside figures that take two lines', async ({ shop }) => {
  await goTo(shop, 'Cut')
  await button(shop, 'Add an offcut of 18 mm birch ply').click()
  const strip = shop.getByRole('region', { name: 'Consequences' })
  await expect(strip).toContainText(/sheets, 1 offcut.*(no layout|at least)/, { timeout: 30_000 })
  const end = await strip.evaluate((one) => {
    const range = document.createRange()
    range.selectNodeContents(one)
    return range.getBoundingClientRect().bottom
  })
  const { y, height } = (await strip.boundingBox())!
  expect(end).toBeLessThanOrEqual(y + height)
})
