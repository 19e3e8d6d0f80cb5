import { expectRows, putReady, size } from './cutlist'
import { button, cabinet, expect, openTab, startProject, test, type } from './shop'

test('the countertop of an island stands out behind it, is told where that is too far, and has no splash of its own', async ({
  shop,
}) => {
  await startProject(shop, 'Millimetres')
  const card = shop.getByRole('region', { name: 'Properties' })
  await putReady(shop, 'island base, finished back')
  await expect(cabinet(shop, 'B1')).toHaveCount(1)
  await type(card.getByLabel('From left', { exact: true }), '500')
  await type(card.getByLabel('Width', { exact: true }), '900')
  const elevation = shop.locator('section[aria-label^="Elevation"]')
  await elevation.focus()
  await shop.keyboard.press('Escape')
  await button(shop, /Build and boards/).click()
  await button(shop, 'Kick, top, trims').click()
  await shop.getByLabel('Board', { exact: true }).selectOption('18 mm birch ply')
  await type(shop.getByLabel('Splash, or 0'), '80')
  await button(shop, /Build and boards/).click()
  // It stands out by 15 at both ends, and by 20 before the fronts of 580 and 18; an island has no wall for a splash.
  await expectRows(shop, 'BT1', { countertop: size(15 + 900 + 15, 580 + 18 + 20), splash: [] })
  await cabinet(shop, 'B1').click({ position: { x: 20, y: 40 } })
  await type(card.getByLabel('Past the back', { exact: true }), '350')
  await expect(button(shop, /^Undo change the countertop over B1/)).toBeVisible()
  await expectRows(shop, 'BT1', { countertop: size(15 + 900 + 15, 350 + 580 + 18 + 20) })
  await card.getByLabel('Splash', { exact: true }).selectOption('on it here')
  await expectRows(shop, 'BT1', { splash: size(15 + 900 + 15, 80) })
  await card.getByLabel('Splash', { exact: true }).selectOption('none here')
  await openTab(shop, 'Findings')
  const findings = shop.getByRole('table', { name: 'Findings' })
  await expect(findings).toContainText('stands out 350 mm behind with nothing under it')
  await expect(findings).toContainText('381 mm for the knees')
  await button(shop, /^Do it: Let the countertop of B1 stand out/).click()
  await expect(findings).not.toContainText('with nothing under it')
})
