import { button, cabinet, carry, expect, middleOf, notice, onScreen, openTab, save, test } from './shop'

test.use({ looksOn: false, draws3D: false })

test('Escape in the midst of a drag leaves everything as it was', async ({ shop }) => {
  const before = await save(shop)
  const from = await middleOf(cabinet(shop, 'B5'))
  await carry(shop, from, { x: from.x + 60, y: from.y })
  await expect(cabinet(shop, 'B5')).toBeVisible()
  await expect(shop.locator('[data-words=fits]')).toContainText('B5 at')
  await shop.keyboard.press('Escape')
  await expect(shop.locator('[data-words]')).toHaveCount(0)
  await shop.mouse.up()
  await expect(button(shop, 'Undo')).toBeDisabled()
  expect(await save(shop)).toEqual(before)
})

test('a drag says live what it comes to, and its undo step is named after it', async ({ shop }) => {
  const from = await middleOf(cabinet(shop, 'B5'))
  const by = (await onScreen(shop, 650, 0)).x - (await onScreen(shop, 0, 0)).x
  await carry(shop, from, { x: from.x + by, y: from.y })
  await expect(shop.locator('[data-words=fits]')).toContainText('B5 at 3300: fits, 650 left to B4')
  await expect(shop.locator('[data-figure="parts"]')).toContainText('no change')
  await shop.mouse.up()
  await button(shop, 'Undo move B5').click()
  await expect(button(shop, 'Redo move B5')).toBeEnabled()
  await openTab(shop, 'Schedule')
  await expect(shop.getByLabel('From left of B5', { exact: true })).toHaveValue('2650')
})

test('a stretch shows what it changes before it is let go', async ({ shop }) => {
  await cabinet(shop, 'B5').click()
  const from = await middleOf(shop.locator('[data-handle=left]'))
  const to = await onScreen(shop, 2700, 0)
  await carry(shop, from, { x: to.x, y: from.y })
  await expect(shop.locator('[data-words=fits]')).toContainText('B5 to 250')
  await expect(cabinet(shop, 'B5')).toHaveAccessibleName(/^B5 base, 250 wide/)
  await shop.mouse.up()
  await button(shop, 'Undo narrow B5').click()
  await expect(cabinet(shop, 'B5')).toHaveAccessibleName(/^B5 base, 300 wide/)
})

test('a cabinet let go over another drops back, and it is said why', async ({ shop }) => {
  const before = await save(shop)
  const from = await middleOf(cabinet(shop, 'B1'))
  const to = await onScreen(shop, 1960, 300)
  await carry(shop, from, { x: to.x, y: from.y })
  const words = shop.locator('[data-words=wrong]')
  await expect(words).toContainText(/B1 would overlap B3 by \d+ mm/)
  await shop.mouse.up()
  await expect(notice(shop)).toHaveAttribute('data-tone', 'stop')
  await expect(notice(shop)).toContainText(/B1 would overlap B3 by \d+ mm\. Nothing was changed\./)
  await expect(button(shop, 'Undo')).toBeDisabled()
  expect(await save(shop)).toEqual(before)
})
