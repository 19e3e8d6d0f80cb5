import { expect, type Page, test } from '@playwright/test'

/** Chromium's own remark about reading a picture back from the graphics card, made when a test takes one. */
const NOT_OURS = /GPU stall due to ReadPixels/

async function openShop(page: Page): Promise<string[]> {
  const said: string[] = []
  page.on('console', (message) => {
    const isLoud = message.type() === 'error' || message.type() === 'warning'
    if (isLoud && !NOT_OURS.test(message.text())) said.push(message.text())
  })
  page.on('pageerror', (error) => said.push(error.message))
  await page.goto('/')
  await expect(page.locator('[data-cabinet]')).toHaveCount(10)
  return said
}

test('the first run opens on the demonstration, whole and quiet', async ({ page }) => {
  const said = await openShop(page)
  await expect(page.getByRole('tab', { name: /^Cut list/ })).toBeVisible()
  await expect(page.getByRole('tab', { name: /^Sheets [1-9]/ })).toBeVisible()
  expect(said).toEqual([])
})

test('a width is typed at its dimension, and is undone as one step', async ({ page }) => {
  await openShop(page)
  await page.getByRole('button', { name: /^Width of B1: 500/ }).click()
  await page.keyboard.type('450')
  await page.keyboard.press('Enter')
  await expect(page.getByRole('button', { name: /^B1 base, 450 wide/ })).toBeVisible()
  await page.getByRole('button', { name: /^Undo/ }).click()
  await expect(page.getByRole('button', { name: /^B1 base, 500 wide/ })).toBeVisible()
})

test('what was changed is there again after a reload', async ({ page }) => {
  await openShop(page)
  await page.getByRole('button', { name: /^Width of B1: 500/ }).click()
  await page.keyboard.type('17 3/4"')
  await page.keyboard.press('Enter')
  await expect(page.getByRole('button', { name: /^B1 base, 450\.9 wide/ })).toBeVisible()
  await page.waitForTimeout(1500)
  await page.reload()
  await expect(page.getByRole('button', { name: /^B1 base, 450\.9 wide/ })).toBeVisible()
})

test('a row of the cut list is picked', async ({ page }) => {
  const said = await openShop(page)
  const row = page.locator('tr[data-row]').first()
  await row.locator('td').nth(1).click()
  await expect(row).toHaveAttribute('aria-selected', 'true')
  expect(said).toEqual([])
})
