import { cabinet, cabinets, expect, openTab, startProject, test, type } from './shop'

test.use({ looksOn: false })

test('a ready kind is picked beside the tray, put in a free place, and is one undo step', async ({ shop }) => {
  await shop.getByRole('button', { name: 'Ready kinds' }).click()
  await shop.getByRole('menuitem', { name: 'sink base' }).click()
  await expect(shop.getByText('Pick where to put a sink base')).toBeVisible()
  await shop.locator('[data-slot]').first().click({ force: true })
  await expect(cabinet(shop, 'B6')).toHaveCount(1)
  const card = shop.getByRole('region', { name: 'Properties' })
  await expect(card.getByLabel('Front', { exact: true })).toHaveValue('sink')
  await card.getByText('Roll-outs, trays, pipes').click()
  await expect(card.getByLabel('Pipes')).toHaveValue('window')
  await shop.locator('section[aria-label^="Elevation"]').focus()
  await shop.keyboard.press('Control+z')
  await expect(cabinet(shop, 'B6')).toHaveCount(0)
})

test('a base that hangs says how high in its card, and is hung higher there', async ({ shop }) => {
  const card = shop.getByRole('region', { name: 'Properties' })
  const height = card.getByLabel('Above floor', { exact: true })
  await cabinet(shop, 'B1').click()
  await expect(card.getByLabel('Width', { exact: true })).toBeVisible()
  await expect(height).toHaveCount(0)
  await shop.getByRole('button', { name: 'Ready kinds' }).click()
  await shop.getByRole('menuitem', { name: 'wall-hung vanity base' }).click()
  await shop.locator('[data-slot]').first().click({ force: true })
  await expect(height).toHaveValue(String(868 - 600))
  await type(height, '350')
  await expect(shop.getByRole('button', { name: /^Undo/ })).toBeEnabled()
  await expect(height).toHaveValue('350')
})

test('a new upper has two doors as wide as it begins, one when it is made narrower, and what its maker says', async ({
  shop,
}) => {
  await startProject(shop, 'Millimetres')
  await shop.locator('[data-tray="upper"]').click()
  await shop.getByRole('button', { name: /^Put a new upper at 0,/ }).click()
  await expect(cabinets(shop)).toHaveCount(1)
  const card = shop.getByRole('region', { name: 'Properties' })
  await type(card.getByLabel('From left', { exact: true }), '1200')
  const front = card.getByLabel('Front', { exact: true })
  await expect(front).toHaveValue('doorsLeft')
  const doors = shop.locator('tr[data-row]').filter({ hasText: 'door' })
  const pieces = doors.locator('td').nth(1)
  await openTab(shop, 'Cut list')
  await expect(pieces).toHaveText('2')
  await openTab(shop, 'Findings')
  await expect(shop.locator('tr[data-weight=mind], tr[data-weight=stop]')).toHaveCount(0)
  await openTab(shop, 'Cut list')

  const width = card.getByLabel('Width', { exact: true })
  await type(width, '400')
  await expect(pieces).toHaveText('1')
  await front.selectOption('pair of doors')
  await expect(pieces).toHaveText('2')
  await front.selectOption('door or pair, right')
  await expect(pieces).toHaveText('1')
  await type(width, '800')
  await expect(pieces).toHaveText('2')
})

test.describe('on a narrow screen', () => {
  test.use({ viewport: { width: 390, height: 844 } })

  test('the menu of ready kinds is whole on the screen', async ({ shop }) => {
    await shop.getByRole('button', { name: 'Ready kinds' }).click()
    const box = await shop.getByRole('menu', { name: 'Ready kinds' }).boundingBox()
    expect(box!.x).toBeGreaterThanOrEqual(0)
    expect(box!.x + box!.width).toBeLessThanOrEqual(390)
    expect(box!.y).toBeGreaterThanOrEqual(0)
    expect(box!.y + box!.height).toBeLessThanOrEqual(844)
  })
})
