import { button, cabinet, expect, test, type } from './shop'

test('a gap is filled from its own figure, and the filler is measured and cut', async ({ shop }) => {
  await cabinet(shop, 'U4').click()
  await shop.getByRole('button', { name: /^Gap between U4/ }).click()
  await button(shop, 'Fill the gap').click()
  await expect(shop.getByLabel('· Right filler')).toHaveValue('50')
  await expect(button(shop, /^Undo put a filler at the right of U4/)).toBeVisible()
  await expect(shop.getByRole('grid', { name: 'Cut list' })).toContainText('filler')
})

test('a countertop lies on the bases, with a sink let into it', async ({ shop }) => {
  await button(shop, /Build and boards/).click()
  await button(shop, 'Kick, top, trims').click()
  await shop.getByLabel('Made').selectOption('in lengths, before each run')
  await shop.getByLabel('Board', { exact: true }).selectOption('18 mm birch ply')
  await type(shop.getByLabel('Splash, or 0'), '80')
  const list = shop.getByRole('grid', { name: 'Cut list' })
  await expect(list).toContainText('countertop')
  await expect(list).toContainText('long kick board')
  await cabinet(shop, 'B3').click({ position: { x: 20, y: 40 } })
  await shop.getByLabel('Let into top').selectOption('sink')
  await expect(button(shop, /^Undo cut out for a sink over B3/)).toBeVisible()
})
