import { button, cabinet, expect, test, untilSaved } from './shop'

test('the first run opens on the demonstration, whole and quiet', async ({ shop }) => {
  await expect(shop.getByRole('tab', { name: /^Cut list [1-9]/ })).toBeVisible()
  await expect(shop.getByRole('tab', { name: /^Sheets [1-9]/ })).toBeVisible()
})

test('a width typed at its dimension is one step to undo, and is there again after a reload', async ({ shop }) => {
  await button(shop, /^Width of B1: 500/).click()
  await shop.keyboard.type('450')
  await shop.keyboard.press('Enter')
  await expect(cabinet(shop, 'B1')).toHaveAccessibleName(/^B1 base, 450 wide/)
  await button(shop, 'Undo narrow B1').click()
  await expect(cabinet(shop, 'B1')).toHaveAccessibleName(/^B1 base, 500 wide/)
  await button(shop, /^Width of B1: 500/).click()
  await shop.keyboard.type('17 3/4"')
  await shop.keyboard.press('Enter')
  await expect(cabinet(shop, 'B1')).toHaveAccessibleName(/^B1 base, 450\.9 wide/)
  await untilSaved(shop)
  await shop.reload()
  await expect(cabinet(shop, 'B1')).toHaveAccessibleName(/^B1 base, 450\.9 wide/)
})
