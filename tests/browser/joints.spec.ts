import type { Page } from '@playwright/test'
import { expectRows, putReady, size } from './cutlist'
import { button, cabinet, expect, openTab, startProject, test, type } from './shop'

test.use({ looksOn: false })

function properties(page: Page) {
  return page.getByRole('region', { name: 'Properties' })
}

/** A row of the list of hardware by its piece, and its quantity. */
async function expectPiece(page: Page, piece: string, quantity: number): Promise<void> {
  const row = page.getByRole('table', { name: 'Hardware' }).getByRole('row').filter({ hasText: piece })
  await expect(row.getByRole('cell').nth(1)).toHaveText(String(quantity))
}

test('a frame with pocket screws is drawn with their angle, and its screws are counted', async ({ shop }) => {
  await startProject(shop, 'Millimetres')
  await putReady(shop, 'sink base')
  await type(properties(shop).getByLabel('Width', { exact: true }), '900')
  await button(shop, /Built differently/).click()
  await properties(shop).getByLabel('Face frame', { exact: true }).selectOption('inset fronts, pocket screws')
  await openTab(shop, 'Hardware')
  // A false front over doors: a top rail, a bottom rail and a mid rail, with two at each of their ends.
  await expectPiece(shop, 'pocket screw of 4 mm', 3 * 2 * 2)
  await properties(shop).getByLabel('Frame to carcass').selectOption('glue and pocket screws')
  // Sides of 868 less 100 of the plinth: 668 from the first to the last are four steps of 167. The bottom of 900 less twice
  // 6.35 past the sides and two sides, with a tongue of 6 at each end, is 863.3 long: 763.3 are four steps too.
  await expectPiece(shop, 'pocket screw of 4 mm', 12 + 2 * 5 + 5)
  await openTab(shop, 'Cut list')
  await shop.locator('tr[data-row]').filter({ hasText: 'top rail' }).getByRole('button').click()
  const drawing = shop.getByRole('img', { name: /^Drawing of B1-TR/ })
  await expect(drawing).toBeVisible()
  const source = decodeURIComponent((await drawing.getAttribute('src'))!)
  // Of 18 mm: the axis is 9 / sin 15 = 34.8 long, less 16 under the head.
  expect(source).toContain('4 × hole of 9.5 mm for pocket screws, 15° to the face, 18.8 mm deep')
})

test('a drawer front is screwed from inside its box, and an insert parts the drawer', async ({ shop }) => {
  await startProject(shop, 'Millimetres')
  await putReady(shop, 'drawer base')
  await button(shop, /Built differently/).click()
  await properties(shop).getByLabel('Drawer fronts', { exact: true }).selectOption('screwed from inside the box')
  await openTab(shop, 'Hardware')
  // Three drawers; a box front is 600 - 36 - 25.4 - 24 = 514.6 long: 454.6 between the first and the last are two steps, so
  // three across, in two lines.
  await expectPiece(shop, 'screw of 4 mm', 3 * 2 * 3)
  await properties(shop).locator('summary', { hasText: 'Rows and columns' }).click()
  await properties(shop).getByLabel('· Row 1 inside').selectOption('divided insert')
  await type(properties(shop).getByLabel('· Row 1 divisions'), '5')
  await type(properties(shop).getByLabel('· Row 1 insert height'), '45')
  await openTab(shop, 'Cut list')
  // As wide as the box is clear inside, less 2; between two ends of 6, a third of 6 into both, along a box of 500: before a back
  // and a nailer there are 546, less 10.
  await expectRows(shop, 'B1', {
    'insert end': size(514.6 - 2, 45),
    'insert divider': size(500 - 2 * 12 - 2 - 2 * 6 + 2 * 2, 45),
  })
  await button(shop, /^Undo/).click()
  await expect(properties(shop).getByLabel('· Row 1 insert height')).toHaveValue('60')
  await expect(cabinet(shop, 'B1')).toHaveCount(1)
})

test('dados of one cabinet stop behind the front edge, or are banded over, and its boards are drawn so', async ({
  shop,
}) => {
  await startProject(shop, 'Millimetres')
  await putReady(shop, 'end shelf')
  const card = properties(shop)
  await button(shop, /Built differently/).click()
  await expect(card.getByLabel('Dados at the front', { exact: true })).toHaveValue('through')
  await openTab(shop, 'Cut list')
  await shop.locator('tr[data-row]').filter({ hasText: 'bottom' }).getByRole('button').first().click()
  const drawing = shop.getByRole('img', { name: /^Drawing of B1-BT/ })
  await expect(drawing).toBeVisible()
  const drawn = async () => decodeURIComponent((await drawing.getAttribute('src'))!)
  expect(await drawn()).not.toContain('notch')
  await card.getByLabel('Dados at the front', { exact: true }).selectOption('stopped behind the edge')
  await expect(card.getByLabel('· Stop short by')).toHaveValue('10')
  await type(card.getByLabel('· Stop short by'), '12')
  await expect.poll(() => drawn()).toContain('2 × notch, right through')
  await card.getByLabel('Dados at the front', { exact: true }).selectOption('banded over')
  await expect.poll(() => drawn()).toContain('2 × end without its band, which stops at the shoulder')
  await card.getByRole('button', { name: 'Dados at the front: as the build method has it' }).click()
  await expect(card.getByLabel('Dados at the front', { exact: true })).toHaveValue('through')
})
