import { expect, goTo, test } from './shop'

test('other cut directions are compared with rip, crosscut, re-rip where they are chosen', async ({ shop }) => {
  test.slow()
  await goTo(shop, 'Cut')
  const words = shop.getByText(/Rip, crosscut, re-rip: \d+ sheets?, about .* and \d+ blade changes?\./)
  await expect(words).toHaveCount(0)
  await shop.getByLabel('Cut directions').selectOption('any')
  await expect(words).toBeVisible({ timeout: 60_000 })
  await expect(words).toContainText(/These directions: \d+ sheets?, about/)
  await shop.getByLabel('Cut directions').selectOption('three')
  await expect(words).toHaveCount(0)
})
