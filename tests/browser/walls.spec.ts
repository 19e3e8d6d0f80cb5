import { button, cabinet, cabinets, expect, test } from './shop'

test('a second wall is added, built on and removed with all on it', async ({ shop }) => {
  await button(shop, 'Site').click()
  await button(shop, 'Add a wall').click()
  await expect(shop.getByRole('group', { name: 'Walls' }).getByRole('button', { pressed: true })).toHaveText('Wall 2')
  await button(shop, 'Design').click()
  await expect(cabinets(shop)).toHaveCount(0)
  await button(shop, 'Base').click()
  await shop.locator('[data-slot]').first().click()
  await expect(cabinet(shop, 'B6')).toBeVisible()
  await expect(shop.getByRole('grid', { name: 'Cut list' })).toContainText('B6')

  // Whatever is chosen on another wall is brought into sight.
  await button(shop, 'Window wall').click()
  await expect(cabinets(shop)).toHaveCount(10)
  await cabinet(shop, 'B1').click()
  await shop.getByLabel('On wall').selectOption('Wall 2')
  await expect(button(shop, 'Undo move B1 to Wall 2')).toBeVisible()
  await expect(cabinets(shop)).toHaveCount(2)

  await button(shop, 'Site').click()
  await button(shop, 'Remove Wall 2 and the 2 cabinets on it').click()
  await button(shop, 'Design').click()
  await expect(cabinets(shop)).toHaveCount(9)
  await button(shop, /^Undo delete Wall 2/).click()
  await expect(button(shop, 'Wall 2')).toBeVisible()
})
