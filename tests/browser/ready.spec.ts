import { cabinet, expect, test } from './shop'

test('a ready kind is picked beside the tray, put in a free place, and is one undo step', async ({ shop }) => {
  await shop.getByRole('button', { name: 'Ready kinds' }).click()
  await shop.getByRole('menuitem', { name: 'sink base' }).click()
  await expect(shop.getByText('Pick a place for a sink base')).toBeVisible()
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
