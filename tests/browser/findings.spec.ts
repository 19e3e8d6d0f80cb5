import type { Page } from '@playwright/test'
import { button, cabinet, expect, goTo, openTab, test, type } from './shop'

test.use({ looksOn: false, draws3D: false })

test('a finding shows its number, its limit and its source, and its way out is one step to undo', async ({ shop }) => {
  await openTab(shop, 'Findings')
  const table = shop.getByRole('table', { name: 'Findings' })
  const door = table.locator('tr', { hasText: 'T1: a door hinged at its left' })
  await expect(door).toContainText('Source: common practice, no source.')
  await expect(door.getByRole('cell', { name: '40 mm', exact: true })).toBeVisible()
  await button(shop, 'Do it: Put a filler at the left of T1').click()
  await expect(door).toHaveCount(0)
  await button(shop, 'Undo put a filler at the left of T1').click()
  await expect(door).toHaveCount(1)
  await expect(button(shop, 'Undo')).toBeDisabled()
})

test('what is found alike in several cabinets is one line, with a jump to each and one way out for all', async ({
  shop,
}) => {
  await openTab(shop, 'Findings')
  const table = shop.getByRole('table', { name: 'Findings' })
  const strips = table.locator('tr', { hasText: 'anchor strip at its bottom:' })
  await expect(strips).toHaveCount(1)
  await expect(strips).toContainText('U1 to U4, each: its wall side has no anchor strip at its bottom')
  await strips.getByRole('button', { name: 'Show U3', exact: true }).click()
  await expect(cabinet(shop, 'U3')).toHaveAttribute('aria-pressed', 'true')
  await expect(cabinet(shop, 'U1')).toHaveAttribute('aria-pressed', 'false')
  await strips.getByRole('button', { name: 'Show all 4' }).click()
  await expect(cabinet(shop, 'U1')).toHaveAttribute('aria-pressed', 'true')
  await button(shop, 'Do it: Put a bottom nailer into U1 to U4').click()
  await expect(strips).toHaveCount(0)
  await button(shop, 'Undo put a bottom nailer into U1 to U4').click()
  await expect(strips).toHaveCount(1)
})

test('in a middling window a finding has most of the width, and what is said beside it goes on to more lines', async ({
  shop,
}) => {
  await shop.setViewportSize({ width: 1024, height: 768 })
  await openTab(shop, 'Findings')
  const table = shop.getByRole('table', { name: 'Findings' })
  const strips = table.locator('tr', { hasText: 'anchor strip at its bottom:' })
  const words = (await strips.getByRole('cell').nth(2).boundingBox())!
  expect(words.width).toBeGreaterThan(1024 / 2.5)
  const high = (await table
    .locator('tr', { hasText: 'T1: is 2152' })
    .getByText('2152\u00a0mm', { exact: true })
    .boundingBox())!
  const line = (await strips.getByRole('cell', { name: '1 strip', exact: true }).boundingBox())!
  expect(high.width).toBeLessThanOrEqual(line.width + 1)
})

test('on a phone every finding is a card that is no wider than the screen', async ({ shop }) => {
  await shop.setViewportSize({ width: 390, height: 844 })
  await shop.getByRole('navigation', { name: 'Pages of the design' }).getByRole('button', { name: 'Lists' }).click()
  await openTab(shop, 'Findings')
  const table = shop.getByRole('table', { name: 'Findings' })
  const door = table.locator('tr', { hasText: 'T1: a door hinged at its left' })
  const { width, most } = await table.evaluate((each) => {
    const around = each.parentElement!
    return { width: around.scrollWidth, most: around.clientWidth }
  })
  expect(width).toBeLessThanOrEqual(most)
  const way = (await button(shop, 'Do it: Put a filler at the left of T1').boundingBox())!
  expect(way.x + way.width).toBeLessThanOrEqual(390)
  await button(shop, 'Do it: Put a filler at the left of T1').click()
  await expect(door).toHaveCount(0)
})

test('what the house asks is set with the wall, and the findings follow it', async ({ shop }) => {
  await goTo(shop, 'Site')
  await shop.getByLabel('The narrowest way in was measured').check()
  await type(shop.getByLabel('Doorway, clear width'), '560')
  await type(shop.getByLabel('Doorway, clear height'), '590')
  await shop.getByLabel('Walls are framed with studs').uncheck()
  await shop.getByLabel('Shelves carry').selectOption('books')
  await goTo(shop, 'Design')
  await openTab(shop, 'Findings')
  const table = shop.getByRole('table', { name: 'Findings' })
  await expect(table).toContainText(
    'T1: assembled, its smallest side is 580 mm x 600 mm; the doorway is 560 mm x 590 mm.',
  )
  await expect(table).not.toContainText('one stud at most')
})

test('the stiffness of a board is set with its density', async ({ shop }) => {
  await goTo(shop, 'Cut')
  const carcass = shop.locator('[data-material="carcass"]')
  await expect(carcass.getByLabel('Stiffness, N/mm²')).toHaveValue('9000')
  await type(carcass.getByLabel('Stiffness, N/mm²'), '150')
  await goTo(shop, 'Design')
  await openTab(shop, 'Findings')
  await expect(shop.getByRole('table', { name: 'Findings' })).toContainText('T1: 4 loose shelves')
})

// Source: the Architectural Woodwork Standards print ply of 950,000 psi; one N/mm² is 145.038 psi.
test('a project of inches asks for stiffness in thousands of psi, and for how much longer slides are', async ({
  shop,
}) => {
  await showIn(shop, 'in')
  await goTo(shop, 'Cut')
  const carcass = shop.locator('[data-material="carcass"]')
  await expect(carcass.getByLabel('Stiffness, 1000 psi')).toHaveValue('1305.3')
  await type(carcass.getByLabel('Stiffness, 1000 psi'), '950')
  await showIn(shop, 'mm')
  await expect(carcass.getByLabel('Stiffness, N/mm²')).toHaveValue(String(Math.round(950_000 / 145.038)))
  await goTo(shop, 'Design')
  await showIn(shop, 'in')
  await button(shop, /Build and boards/).click()
  const panel = shop.getByRole('region', { name: 'Project' })
  await panel.getByLabel('Slides', { exact: true }).selectOption('undermount')
  await expect(panel.getByLabel('· Longer than called')).toHaveValue('1/2')
  await expect(panel.getByLabel('Drawers come out').locator('option')).toHaveText(['all the way', 'all but 4 to 6 in'])
})

function showIn(page: Page, unit: 'mm' | 'in') {
  return page.getByRole('group', { name: 'Unit of lengths' }).getByRole('button', { name: unit }).click()
}
