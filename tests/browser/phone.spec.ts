import type { Page } from '@playwright/test'
import { button, expect, openTab, test } from './shop'

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true })

/** What a thumb needs. Source: WCAG 2.2, 2.5.5. */
const THUMB = 44

async function openPage(page: Page, name: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Pages of the design' }).getByRole('button', { name }).click()
}

test('what a board is called and both its sizes are in sight, and hardware needs no moving aside', async ({ shop }) => {
  await openPage(shop, 'Lists')
  const cells = shop.locator('tr[data-row]').first().locator('th, td')
  for (const [at, text] of [
    [1, 'side'],
    [3, '2052'],
    [4, '579'],
  ] as const) {
    await expect(cells.nth(at)).toHaveText(text)
    const { x, width } = (await cells.nth(at).boundingBox())!
    expect(x + width).toBeLessThanOrEqual(390)
  }
  await openTab(shop, 'Hardware')
  const show = (await button(shop, /^Show the cabinets with full overlay hinge/).boundingBox())!
  expect(show.x + show.width).toBeLessThanOrEqual(390)
})

test('everything to be pressed in the pages of the project is large enough for a thumb', async ({ shop }) => {
  await openPage(shop, 'Properties')
  for (const name of ['Build method', 'Boards and sheets', 'Kick, top, trims', 'Shop', 'New cabinets']) {
    await button(shop, name).click()
    const small = await shop.getByRole('region', { name: 'Project' }).evaluate((panel, least) => {
      const pressed = [
        ...panel.querySelectorAll('button, select, label:has(input[type=checkbox]), input:not([type=checkbox])'),
      ]
      return pressed.flatMap((one) => {
        const { height, width } = one.getBoundingClientRect()
        return width > 0 && height < least ? `${one.textContent?.slice(0, 40)} ${height}` : []
      })
    }, THUMB)
    expect(small, name).toEqual([])
  }
})
