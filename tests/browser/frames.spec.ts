import type { Page } from '@playwright/test'
import { expectRows, size } from './cutlist'
import { button, cabinet, drag, expect, middleOf, onScreen, openTab, startProject, test, type } from './shop'

test.use({ looksOn: false })

/** The length and width of the row that a part is on, as the cut list shows them. */
function row(page: Page, name: RegExp) {
  return page.locator('tr[data-row]').filter({ hasText: name })
}

function properties(page: Page) {
  return page.getByRole('region', { name: 'Properties' })
}

test('a base with a face frame and five-part doors is built by hand, and its cut list is the sum on paper', async ({
  shop,
}) => {
  await startProject(shop, 'Millimetres')
  await shop.getByRole('button', { name: 'Ready kinds' }).click()
  await shop.getByRole('menuitem', { name: 'sink base' }).click()
  await shop.locator('[data-slot]').first().click({ force: true })
  await expect(cabinet(shop, 'B1')).toHaveCount(1)
  await type(properties(shop).getByLabel('Width', { exact: true }), '900')
  await button(shop, /Built differently/).click()
  await properties(shop).getByLabel('Face frame', { exact: true }).selectOption('inset fronts, tenons')
  await type(properties(shop).getByLabel('· Frame stiles'), '40')
  await type(properties(shop).getByLabel('· Top rail', { exact: true }), '50')
  await type(properties(shop).getByLabel('· Bottom rail'), '40')
  await type(properties(shop).getByLabel('· Mullions, mid rails'), '40')
  await type(properties(shop).getByLabel('· Tenon'), '15')
  await type(properties(shop).getByLabel('· Past the left side'), '6')
  await type(properties(shop).getByLabel('· Past the right side'), '6')
  await properties(shop).getByLabel('Doors', { exact: true }).selectOption('five-part')
  await expect(properties(shop)).toContainText('Face frame, Doors')

  await openTab(shop, 'Cut list')
  // 868 high on a plinth of 100: the floor is at 118, and the rail of 40 under it begins at 78.
  await expect(row(shop, /stile/).filter({ hasText: String(868 - 78) })).toHaveCount(1)
  // Rails stand between two stiles of 40 and sink 15 into each.
  await expect(row(shop, /top rail/)).toContainText(String(900 - 2 * 40 + 2 * 15))
  // The bottom is 12 shorter than the cabinet is wide, less two sides of 18, and 6 longer at each end.
  await expect(row(shop, /^(?=.*bottom)(?!.*rail)/).first()).toContainText(String(900 - 2 * 6 - 2 * 18 + 2 * 6))
  // Two doors and three gaps of 3 fill the opening; a rail of a door is between stiles of 57, and 10 longer at each end.
  const door = (900 - 2 * 40 - 3 * 3) / 2
  await expect(row(shop, /door rail/)).toContainText(String(door - 2 * 57 + 2 * 10))
})

test('a base with a door over its face frame is built by hand, and its cut list is the sum on paper', async ({
  shop,
}) => {
  await startProject(shop, 'Millimetres')
  await drag(shop, await middleOf(shop.locator('[data-tray="base"]')), await onScreen(shop, 300, 300))
  await expect(cabinet(shop, 'B1')).toHaveCount(1)
  const card = properties(shop)
  await type(card.getByLabel('Width', { exact: true }), '620')
  await button(shop, /Built differently/).click()
  await card.getByLabel('Face frame', { exact: true }).selectOption('overlay fronts, pocket screws')
  for (const [field, length] of [
    ['· Overlay', 14],
    ['· Frame stiles', 45],
    ['· Top rail', 50],
    ['· Bottom rail', 40],
    ['· Past the left side', 6],
    ['· Past the right side', 8],
  ] as const) {
    await type(card.getByLabel(field, { exact: true }), String(length))
  }
  await expect(card).toContainText('Face frame')

  // All boards are 18 thick. The rail of 40 ends level with the floor of the cabinet, which is at 100 + 18.
  const stile = 868 - (100 + 18 - 40)
  const opening = { width: 620 - 2 * 45, height: stile - 50 - 40 }
  await expectRows(shop, 'B1', {
    stile: size(stile, 45),
    'top rail': size(opening.width, 50),
    'bottom rail': size(opening.width, 40),
    // Over the frame by 14 on all four sides; its edges are banded by 1.
    door: size(opening.height + 2 * 14 - 2, opening.width + 2 * 14 - 2),
    // Between two sides, 6 and 8 inside the frame, with a tongue of 6 at each end.
    bottom: size(620 - 6 - 8 - 2 * 18 + 2 * 6, 580 - 18),
    // The frame covers the front edge of the carcass, which has no band.
    side: size(868 - 100, 580 - 18),
  })
})
