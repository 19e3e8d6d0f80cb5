import type { Locator, Page } from '@playwright/test'
import { button, expect, goTo, notice, openTab, pickBoard, test, type } from './shop'

test.describe.configure({ timeout: 90_000 })

/** The sheets when their layout has settled. */
async function openSheets(page: Page): Promise<void> {
  await openTab(page, 'Sheets')
  await expect(page.locator('[data-layout=current]')).toBeVisible({ timeout: 20_000 })
  await expect(page.getByText(/still looking for/i)).toHaveCount(0, { timeout: 20_000 })
}

function sheet(page: Page, number: number): Locator {
  return page.locator('figure', { has: page.getByText(new RegExp(`^Sheets? (\\d+, )*${number}\\b`)) })
}

/** A board as it is drawn on the sheets. */
function board(place: Page | Locator, mark: string): Locator {
  return place.getByRole('button', { name: new RegExp(`\\b${mark}\\b`) })
}

test('a board comes from the sheet that is chosen for it, and stays on it while the design goes on', async ({
  shop,
}) => {
  // One layout after another is waited for.
  test.slow()
  await openSheets(shop)
  await pickBoard(shop, 'B3-LS')
  const choice = shop.getByLabel('From sheet')
  await expect(choice.locator('option').first()).toHaveText('any sheet')
  const number = (await board(sheet(shop, 2), 'B3-LS').count()) > 0 ? 3 : 2
  await choice.selectOption({ label: `sheet ${number}` })
  await openSheets(shop)
  const lies = board(sheet(shop, number), 'B3-LS')
  await expect(lies).toHaveCount(1)
  // The words for a screen reader, and the pin for the eye.
  await expect(lies).toHaveAccessibleName(/, pinned to its sheet: B3-LS$/)
  await expect(lies.locator('circle')).toHaveCount(1)
  await expect(shop.locator('figure svg circle')).toHaveCount(1)
  await openTab(shop, 'Cut list')
  await expect(shop.getByText('from its own sheet')).toHaveCount(1)
  await openTab(shop, 'Schedule')
  await type(shop.getByLabel('Width of U4', { exact: true }), '340')
  await openSheets(shop)
  await expect(lies).toHaveCount(1)
  await shop.reload()
  await openSheets(shop)
  await expect(lies).toHaveCount(1)
  await lies.click()
  await expect(choice).toHaveValue(/^\d+$/)
  await choice.selectOption({ label: 'any sheet' })
  await openSheets(shop)
  await expect(shop.locator('figure svg circle')).toHaveCount(0)
  await button(shop, 'Undo take boards from any sheet').click()
  await openSheets(shop)
  await expect(lies).toHaveCount(1)
  await expect(notice(shop)).toHaveCount(0)
})

test.describe('on a narrow screen', () => {
  test.use({ viewport: { width: 390, height: 844 } })

  test('the sheet of a board, and what it lies beside, is chosen within the width of the screen', async ({ shop }) => {
    await goTo(shop, 'Cut')
    await board(shop, 'B3-LS').first().click({ timeout: 20_000 })
    for (const label of ['Cut from', 'From sheet', 'Grain runs on']) {
      const box = (await shop.getByLabel(label).boundingBox())!
      expect(box.x).toBeGreaterThanOrEqual(0)
      expect(box.x + box.width).toBeLessThanOrEqual(390)
      expect(box.height).toBeGreaterThanOrEqual(24)
    }
  })
})
