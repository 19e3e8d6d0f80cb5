import { button, expect, test } from './shop'

test('a build method is copied, changed, and used for the project once it is seen what changes', async ({ shop }) => {
  await button(shop, /Build and boards/).click()
  const method = shop.getByLabel('Method', { exact: true })
  await button(shop, 'Copy it').click()
  await expect(method.locator('option:checked')).toHaveText('Shop standard, copy')
  await shop.getByLabel('Bottom', { exact: true }).selectOption('under')
  await expect(shop.getByText('Not made yet.')).toHaveCount(0)
  await button(shop, 'Use for the project').click()
  const told = shop.getByRole('status').filter({ hasText: 'Not made yet.' })
  await expect(told).toContainText(/B1, B2, B3, B4, B5, U1 and 4 more: \d+ boards change/)
  await expect(method.locator('option:checked')).toContainText('(used)')
  await button(shop, 'Make the change').click()
  await expect(told).toHaveCount(0)
  await button(shop, /^Undo build by Shop standard, copy/i).click()
  await expect(method.locator('option:checked')).toHaveText('Shop standard, copy')
})

test('a choice of the method in use is shown before it is made, and left as it was', async ({ shop }) => {
  await button(shop, /Build and boards/).click()
  const bottom = shop.getByLabel('Bottom', { exact: true })
  await bottom.selectOption('under')
  await expect(shop.getByRole('status').filter({ hasText: 'Not made yet.' })).toContainText('boards change')
  await button(shop, 'Leave it as it was').click()
  await expect(bottom).toHaveValue('between')
  await expect(button(shop, /^Undo/)).toBeDisabled()
})
