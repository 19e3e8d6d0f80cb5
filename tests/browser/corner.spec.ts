import { button, cabinet, cabinets, expect, openTab, startProject, test, type } from './shop'

test.use({ looksOn: false })

test('an L corner base built by hand has the boards that a sum on paper gives', async ({ shop }) => {
  await shop.locator('section[aria-label^="Elevation"]').focus()
  await shop.keyboard.press('Control+a')
  await shop.keyboard.press('Delete')
  await expect(cabinets(shop)).toHaveCount(0)
  await shop.getByRole('button', { name: 'Ready kinds' }).click()
  await shop.getByRole('menuitem', { name: 'L corner base', exact: true }).click()
  await shop.locator('[data-slot]').first().click({ force: true })
  await expect(cabinet(shop, 'B1')).toHaveCount(1)
  const card = shop.getByRole('region', { name: 'Properties' })
  await type(card.getByLabel('· Other leg'), '850')
  await type(card.getByLabel('· Its depth'), '560')
  await openTab(shop, 'Cut list')
  // Butted or housed, the board through the corner is as long and as wide as both legs, less the sides, with its tongues.
  const width = Number(await card.getByLabel('Width', { exact: true }).inputValue())
  const row = shop.getByRole('row').filter({ hasText: 'L-shaped' }).filter({ hasText: 'bottom' })
  await expect(row).toHaveCount(1)
  await expect(row).toContainText(String(width - 18 + 6))
  await expect(row).toContainText(String(850 - 18 + 6))
  await openTab(shop, 'Steps')
  // The band of 1 that goes on inside the corner is sawn for.
  const [long, wide] = [width - 18 + 6 - 560 + 1, 850 - 18 + 6 - 580 + 1]
  await expect(shop.getByText(`Cut the corner out of B1-BT, B1-TP: ${long} mm by ${wide} mm.`)).toBeVisible()
  // What goes is kept set aside, so that no board is laid out on it before it is there.
  await shop.getByRole('button', { name: /^Keep as offcut .*B1-BT/ }).click()
  await expect(shop.getByText('set aside until it is there')).toBeVisible()
  await expect(shop.getByRole('button', { name: /^Undo keep as offcut/i })).toBeEnabled()
  await openTab(shop, 'Sheets')
  await expect(shop.locator('[data-layout=current] svg [class*=freed]').first()).toBeVisible()
  await shop.getByRole('button', { name: /^It is there: use offcut/ }).click()
  await expect(shop.getByText('Kept, and in use')).toBeVisible()
  await openTab(shop, 'Cut list')
  await card.getByLabel('Corner', { exact: true }).selectOption('diagonal')
  await expect(shop.getByRole('row').filter({ hasText: 'bottom, top, corner cut off' })).toHaveCount(1)
})

test('a diagonal with a face frame, five-part door, dowels and a pull is built by hand, as a sum on paper has it', async ({
  shop,
}) => {
  await startProject(shop, 'Millimetres')
  await shop.getByRole('button', { name: 'Ready kinds' }).click()
  await shop.getByRole('menuitem', { name: 'diagonal corner base', exact: true }).click()
  await shop.locator('[data-slot]').first().click({ force: true })
  await expect(cabinet(shop, 'B1')).toHaveCount(1)
  const card = shop.getByRole('region', { name: 'Properties' })
  await button(shop, /Built differently/).click()
  await card.getByLabel('Face frame', { exact: true }).selectOption('inset fronts, pocket screws')
  await type(card.getByLabel('· Frame stiles'), '40')
  await type(card.getByLabel('· Past the left side'), '6')
  await type(card.getByLabel('· Past the right side'), '6')
  await card.getByLabel('Doors', { exact: true }).selectOption('five-part')
  await card.getByLabel('Corner joint', { exact: true }).selectOption('butt')
  await card.getByLabel('Corner fixing', { exact: true }).selectOption('dowels')
  await card.getByLabel('Pulls of doors', { exact: true }).selectOption('bar')

  await openTab(shop, 'Cut list')
  const row = (name: RegExp) => shop.locator('tr[data-row]').filter({ hasText: name })
  // 900 each way and 580 deep: the face is 320 along and 320 out, and the frame is 18 thick.
  const long = 320 * Math.SQRT2
  await expect(row(/stile/).filter({ hasText: String(40 + 18) })).toHaveCount(1)
  await expect(row(/top rail/)).toContainText((long - 2 * 40).toFixed(1))
  await expect(row(/door rail/)).toContainText((long - 2 * 40 - 2 * 3 - 2 * 57 + 2 * 10).toFixed(1))
  await openTab(shop, 'Steps')
  // Both stiles, and both sides behind them.
  await expect(shop.getByText(/^Rip one edge of B1-.*, B1-.* with the blade tilted 45\.0°/)).toHaveCount(2)
  await openTab(shop, 'Hardware')
  await expect(shop.getByRole('row').filter({ hasText: 'pull with holes 128 mm apart' })).toContainText('1')
  await expect(shop.getByRole('row').filter({ hasText: 'dowel of 8 mm' })).toHaveCount(1)
})

test('a fresh L corner base has a fixed shelf and nothing to mind about it, and the shelf is typed to its height', async ({
  shop,
}) => {
  await startProject(shop, 'Millimetres')
  await shop.getByRole('button', { name: 'Ready kinds' }).click()
  await shop.getByRole('menuitem', { name: 'L corner base', exact: true }).click()
  await shop.locator('[data-slot]').first().click({ force: true })
  const card = shop.getByRole('region', { name: 'Properties' })
  await expect(card.getByLabel('Fixed shelves')).toHaveValue('1')
  await expect(card.getByLabel('Loose shelves')).toHaveValue('0')
  // 868 less a plinth of 100 and two boards of 18 are 732; a shelf of 18 leaves 714, half of them under it.
  const height = card.getByLabel('· Shelf 1 over bottom')
  await expect(height).toHaveValue('357')
  await type(height, '300')
  await expect(card.getByLabel('· Its place')).toHaveValue('typed')
  await type(height, '715')
  await expect(card.getByRole('alert')).toContainText('714')
  await height.press('Escape')
  await expect(height).toHaveValue('300')
  await openTab(shop, 'Findings')
  await expect(shop.getByText(/cannot be put in/)).toHaveCount(0)
})
