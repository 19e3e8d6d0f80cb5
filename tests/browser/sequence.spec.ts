import type { Page } from '@playwright/test'
import { button, expect, openTab, pickBoard, test, type } from './shop'

test.describe.configure({ timeout: 90_000 })

/** The sheets when their layout has settled. */
async function openSheets(page: Page): Promise<void> {
  await openTab(page, 'Sheets')
  await expect(page.locator('[data-layout=current]')).toBeVisible({ timeout: 20_000 })
  await expect(page.getByText(/still looking for/i)).toHaveCount(0, { timeout: 20_000 })
}

test('boards that are marked one after the other are cut in that order, and stay so', async ({ shop }) => {
  test.slow()
  await openSheets(shop)
  await pickBoard(shop, 'B1-LS')
  const choice = shop.getByLabel('Grain runs on', { exact: true })
  await choice.selectOption({ label: 'the first of more, end to end' })
  await expect(choice.locator('option:checked')).toHaveText('end to end, none follows yet')
  await openSheets(shop)
  await pickBoard(shop, 'B3-RS')
  await choice.selectOption({ label: 'end to end after B1-LS' })
  await expect(choice.locator('option:checked')).toHaveText('end to end, 2 of 2 from B1-LS on')
  await openTab(shop, 'Cut list')
  await expect(shop.getByText('grain runs on, B1-LS to B3-RS, place 1')).toHaveCount(1)
  await openSheets(shop)
  await shop.reload()
  await openTab(shop, 'Steps')
  await expect(shop.getByText(/grain runs on over B1-LS.* B3-RS/).first()).toBeVisible({ timeout: 20_000 })
  // A deeper cabinet has sides that do not go on beside the others.
  await openTab(shop, 'Schedule')
  await type(shop.getByLabel('Depth of B3', { exact: true }), '620')
  await openTab(shop, 'Findings')
  const finding = shop.getByRole('row', { name: /B3-RS: marked to be cut in sequence with B1-LS/ })
  await finding.getByRole('button', { name: 'Take B3-RS out of the sequence' }).click()
  await expect(finding).toHaveCount(0)
  await button(shop, 'Undo take B3-RS out of the sequence').click()
  await expect(finding).toHaveCount(1)
})

test('a row of the cut list is marked as a whole, and stays selected', async ({ shop }) => {
  await openTab(shop, 'Cut list')
  await shop
    .getByRole('row', { name: /\bA1\b/ })
    .first()
    .click()
  await openSheets(shop)
  const choice = shop.getByLabel('Grain runs on', { exact: true })
  await choice.selectOption({ label: 'these 2, edge to edge' })
  await expect(choice.locator('option:checked')).toHaveText(/^edge to edge, 1 of 2 from /)
  await choice.selectOption({ label: 'cut by itself' })
  await expect(choice.locator('option:checked')).toHaveText('cut by itself')
})
