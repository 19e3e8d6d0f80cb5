import { cabinet, expect, test } from './shop'

test.use({ looksOn: false })

test('columns are chosen and typed in the card, and are one undo step each', async ({ shop }) => {
  await cabinet(shop, 'B3').click()
  const card = shop.getByRole('region', { name: 'Properties' })
  await card.getByLabel('Front', { exact: true }).selectOption('columns')
  await card.getByText('Rows and columns').click()
  const width = card.getByLabel('Column 1 width')
  await width.fill('200')
  await width.press('Enter')
  await expect(card.getByLabel('· Size').first()).toHaveValue('fixed')
  await expect(width).toHaveValue('200')
  await shop.locator('section[aria-label^="Elevation"]').focus()
  await shop.keyboard.press('Control+z')
  await expect(card.getByLabel('· Size').first()).toHaveValue('share')
})
