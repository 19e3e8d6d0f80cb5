import AxeBuilder from '@axe-core/playwright'
import type { Page } from '@playwright/test'
import { button, cabinet, expect, goTo, openTab, test } from './shop'

const TABS = ['Cut list', 'Sheets', 'Steps', 'Hardware', 'Schedule', 'Findings']
const STAGES = ['Site', 'Show', 'Cut', 'Build'] as const
/** Only what differs from list to list is looked at again. */
const LIST = '[role=tabpanel]'
/** Colours are the same on a narrow screen, and the only thing that is another in the dark. */
const COLOURS = ['color-contrast']

test.slow()

/** Fails with what is seriously or critically in the way of somebody, and where. */
async function expectNoBarriers(page: Page, where: string, within = 'html', looked = everything): Promise<void> {
  const { violations } = await looked(axeOn(page, within)).analyze()
  const barriers = violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(' ')}`))
  expect(barriers, where).toEqual([])
}

/** There are no frames, so the judging is done in the page itself and no second page is opened for it. */
function axeOn(page: Page, within: string): AxeBuilder {
  return new AxeBuilder({ page }).include(within).setLegacyMode()
}

type Look = (axe: AxeBuilder) => AxeBuilder

const everything: Look = (axe) => axe
const colours: Look = (axe) => axe.withRules(COLOURS)
const allButColours: Look = (axe) => axe.disableRules(COLOURS)

for (const [theme, looked] of [
  ['light', everything],
  ['dark', colours],
] as const) {
  test.describe(`in the ${theme}`, () => {
    test.use({ colorScheme: theme })

    test('Design has no barriers with any list, with a cabinet and its build open, or the menu', async ({ shop }) => {
      for (const tab of TABS) {
        await openTab(shop, tab)
        await expectNoBarriers(shop, tab, LIST, looked)
      }
      await cabinet(shop, 'B2').click()
      await button(shop, /Built differently/).click()
      await expectNoBarriers(shop, 'Design with the card of a cabinet', 'html', looked)
      await button(shop, 'Project menu').click()
      await expectNoBarriers(shop, 'the project menu', '[role=menu]', looked)
    })

    test('the other stages have no barriers', async ({ shop }) => {
      for (const stage of STAGES) {
        await goTo(shop, stage)
        await expectNoBarriers(shop, stage, 'main', looked)
      }
    })
  })
}

test.describe('on a narrow screen', () => {
  test.use({ viewport: { width: 390, height: 844 } })

  test('Design has no barriers on any page or list', async ({ shop }) => {
    const pages = shop.getByRole('navigation', { name: 'Pages of the design' })
    for (const name of ['Wall', '3D', 'Properties', 'Lists']) {
      await pages.getByRole('button', { name }).click()
      await expectNoBarriers(shop, name, 'html', allButColours)
    }
    for (const tab of TABS) {
      await openTab(shop, tab)
      await expectNoBarriers(shop, tab, LIST, allButColours)
      // What is wider moves aside in its own frame.
      const width = await shop.evaluate(() => document.querySelector('#root > *')!.scrollWidth)
      expect(width, tab).toBeLessThanOrEqual(390)
    }
  })

  test('the other stages have no barriers and are no wider than the screen', async ({ shop }) => {
    for (const stage of STAGES) {
      await goTo(shop, stage)
      await expectNoBarriers(shop, stage, 'main', allButColours)
      expect(await shop.evaluate(() => document.documentElement.scrollWidth), stage).toBeLessThanOrEqual(390)
    }
  })
})
