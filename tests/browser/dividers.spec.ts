import type { Locator, Page } from '@playwright/test'
import { button, cabinet, expect, middleOf, stroke, test, type } from './shop'

test.use({ looksOn: false })

function card(page: Page): Locator {
  return page.getByRole('region', { name: 'Properties' })
}

/** Columns, the first of them of rows, the uppermost of these of columns: lines one, two and three deep. */
async function divide(page: Page): Promise<void> {
  await cabinet(page, 'B3').click({ position: { x: 20, y: 40 } })
  await card(page).getByLabel('Front', { exact: true }).selectOption('columns')
  await card(page).getByText('Rows and columns').click()
  await card(page).getByLabel('· Column 1 is').selectOption('rows')
  await card(page).getByText('In column 1').click()
  await card(page).getByLabel('· Column 1, row 1 is').selectOption('columns')
  await expect(page.locator('[data-divider="0,0,0"]')).toHaveCount(1)
}

/** The line after a row or column, the size before it as it is typed, and which way it goes. */
const LINES = [
  { path: '0', size: 'Column 1 width', way: 'x' },
  { path: '0,0', size: 'Column 1, row 1 height', way: 'y' },
  { path: '0,0,0', size: 'Column 1, row 1, column 1 width', way: 'x' },
] as const

async function typed(page: Page, size: string): Promise<number> {
  return Number(await card(page).getByLabel(size, { exact: true }).inputValue())
}

test('dividing lines are dragged at every depth, and what is typed of them follows the hand', async ({ shop }) => {
  await divide(shop)
  for (const { path, size, way } of LINES) {
    const before = await typed(shop, size)
    const from = await middleOf(shop.locator(`[data-divider="${path}"]`))
    const to = way === 'x' ? { x: from.x - 12, y: from.y } : { x: from.x, y: from.y - 12 }
    await shop.mouse.move(from.x, from.y)
    await shop.mouse.down()
    await shop.mouse.move(to.x, to.y, { steps: 4 })
    await expect(shop.locator('[data-words=fits]')).toContainText(way === 'x' ? 'B3: columns of' : 'B3: rows of')
    await expect.poll(() => typed(shop, size)).toBeLessThan(before - 20)
    const words = (await shop.locator('[data-words=fits]').textContent())!
    const held = Number(/of ([\d.]+) and/.exec(words)![1])
    await expect.poll(() => typed(shop, size)).toBe(held)
    await shop.mouse.up()
    await expect(button(shop, 'Undo move a dividing line of B3')).toBeEnabled()
    expect(await typed(shop, size)).toBe(held)
    await button(shop, 'Undo move a dividing line of B3').click()
    await expect.poll(() => typed(shop, size)).toBe(before)
  }
})

test.describe('with a finger', () => {
  test.use({ hasTouch: true, isMobile: true })

  test('dividing lines are dragged at every depth, and the cabinet stays where it is', async ({ shop }) => {
    await divide(shop)
    for (const { path, size, way } of LINES) {
      const before = await typed(shop, size)
      const line = await middleOf(shop.locator(`[data-divider="${path}"]`))
      // A finger comes down beside the line as well as on it.
      const from = way === 'x' ? { x: line.x + 5, y: line.y } : { x: line.x, y: line.y + 5 }
      const to = way === 'x' ? { x: from.x - 16, y: from.y } : { x: from.x, y: from.y - 16 }
      await stroke(shop, { from, to })
      await expect(button(shop, 'Undo move a dividing line of B3')).toBeEnabled()
      await expect.poll(() => typed(shop, size)).toBeLessThan(before - 20)
    }
    await expect(card(shop).getByLabel('From left', { exact: true })).toHaveValue('1400')
  })
})

test('a graduated bank keeps its step at another height, and a line that is dragged makes it mixed', async ({
  shop,
}) => {
  await cabinet(shop, 'B3').click({ position: { x: 20, y: 40 } })
  await card(shop).getByLabel('Front', { exact: true }).selectOption('bank')
  await type(card(shop).getByLabel('Drawers', { exact: true }), '4')
  const step = card(shop).getByLabel('· Each taller by', { exact: true })
  await type(step, '50')
  await card(shop).getByText('Rows and columns').click()
  const heights = () => Promise.all([1, 2, 3, 4].map((row) => typed(shop, `Row ${row} height`)))
  await type(card(shop).getByLabel('Height', { exact: true }), '768')
  // Kick 100, 3 kept free above, three gaps of 3 and steps of 300 in all.
  const first = (768 - 100 - 3 - 3 * 3 - 300) / 4
  await expect.poll(heights).toEqual([first, first + 50, first + 100, first + 150])
  await expect(step).toHaveValue('50')
  await type(card(shop).getByLabel('Row 1 height', { exact: true }), '120')
  await expect(step).toHaveValue('')
  await expect(step).toHaveAttribute('placeholder', 'mixed')
})
