import AxeBuilder from '@axe-core/playwright'
import type { Page } from '@playwright/test'
import { button, cabinet, cabinets, expect, goTo, openShop, openTab, test } from './shop'

const TABS = ['Cut list', 'Sheets', 'Steps', 'Hardware', 'Schedule', 'Findings']
/** Only what differs from list to list is looked at again. */
const LIST = '[role=tabpanel]'
const STAGES = ['Site', 'Show', 'Cut', 'Build'] as const

/** What is seriously or critically in the way of somebody, and where. */
async function barriers(page: Page, within: string): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).include(within).analyze()
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(' ')}`))
}

async function expectNoBarriers(page: Page, where: string, within = 'html'): Promise<void> {
  expect(await barriers(page, within), where).toEqual([])
}

for (const theme of ['light', 'dark'] as const) {
  test.describe(`in the ${theme}`, () => {
    test.use({ colorScheme: theme })

    test('Design has no barriers with any list, with a cabinet and its build open, or the project menu', async ({
      shop,
    }) => {
      for (const tab of TABS) {
        await openTab(shop, tab)
        await expectNoBarriers(shop, tab, LIST)
      }
      await cabinet(shop, 'B2').click()
      await button(shop, /Built differently/).click()
      await expectNoBarriers(shop, 'Design with the card of a cabinet')
      await shop.keyboard.press('Escape')
      await button(shop, 'Project menu').click()
      await expectNoBarriers(shop, 'the project menu', '[role=menu]')
    })

    test('the other stages have no barriers', async ({ shop }) => {
      for (const stage of STAGES) {
        await goTo(shop, stage)
        await expectNoBarriers(shop, stage, 'main')
      }
    })
  })
}

test.describe('on a narrow screen', () => {
  test.use({ viewport: { width: 390, height: 844 } })

  test('no page and no stage has barriers or is wider than the screen', async ({ page, said }) => {
    await openShop(page, said)
    const pages = page.getByRole('navigation', { name: 'Pages of the design' })
    for (const name of ['Wall', '3D', 'Properties', 'Lists']) {
      await pages.getByRole('button', { name }).click()
      await expectNoBarriers(page, name)
    }
    for (const tab of TABS) {
      await openTab(page, tab)
      await expectNoBarriers(page, tab, LIST)
    }
    for (const stage of STAGES) {
      await goTo(page, stage)
      await expectNoBarriers(page, stage, 'main')
      expect(await page.evaluate(() => document.documentElement.scrollWidth), stage).toBeLessThanOrEqual(390)
    }
    await goTo(page, 'Design')
    await expect(cabinets(page)).toHaveCount(10)
  })
})
