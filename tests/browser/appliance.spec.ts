import { expectRows, putReady, size } from './cutlist'
import {
  button,
  cabinet,
  drag,
  expect,
  middleOf,
  onScreen,
  openFile,
  openTab,
  pickTop,
  save,
  startProject,
  test,
  type,
} from './shop'

test.use({ looksOn: false })

test('a dishwasher is pulled in between two bases, and countertop and kick go on over and before it', async ({
  shop,
}) => {
  await startProject(shop, 'Millimetres')
  const card = shop.getByRole('region', { name: 'Properties' })
  for (const [number, left] of [
    [1, 500],
    [2, 1700],
  ] as const) {
    await drag(shop, await middleOf(shop.locator('[data-tray="base"]')), await onScreen(shop, left + 300, 300))
    await expect(cabinet(shop, `B${number}`)).toHaveCount(1)
    await type(card.getByLabel('From left', { exact: true }), String(left))
  }
  await shop.locator('section[aria-label^="Elevation"]').focus()
  await shop.keyboard.press('Escape')
  await button(shop, /Build and boards/).click()
  await button(shop, 'Kick, top, trims').click()
  await shop.getByLabel('Made').selectOption('in lengths, before each run')
  await shop.getByLabel('Board', { exact: true }).selectOption('18 mm birch ply')
  await type(shop.getByLabel('Past free ends'), '10')
  // Two runs of 600, apart by 600: each top stands out by 10 at both ends, and before the fronts of 580 and 18 by 20.
  const top = (length: number) => size(length, 580 + 18 + 20)
  await expectRows(shop, 'BT2', { countertop: top(10 + 600 + 10) })
  await button(shop, /Build and boards/).click()

  await drag(shop, await middleOf(shop.locator('[data-tray="dishwasherSpace"]')), await onScreen(shop, 1405, 300))
  await expect(cabinet(shop, 'S1')).toHaveAttribute('aria-label', /^S1 space for a dishwasher, 600 wide/)
  // It snapped to the bases.
  await expect(card.getByLabel('From left', { exact: true })).toHaveValue('1100')
  await expectRows(shop, 'BT1', { countertop: top(10 + 3 * 600 + 10) })
  await expectRows(shop, 'BK1', { 'long kick board': size(3 * 600, 100) })

  // A range parts both, and the top stops at it.
  await card.getByLabel('Appliance', { exact: true }).selectOption('range')
  await expectRows(shop, 'BT1', { countertop: top(10 + 600) })
  await expectRows(shop, 'BT2', { countertop: top(600 + 10) })
  await expectRows(shop, 'BK2', { 'long kick board': size(600, 100) })
  await expect(button(shop, /^Undo change the appliance of S1/)).toBeVisible()
  await shop.keyboard.press('Control+z')
  await expectRows(shop, 'BT1', { countertop: top(10 + 3 * 600 + 10) })
  // Chosen one by one: the kick stops, the top goes on.
  await card.getByLabel('Kick board', { exact: true }).selectOption('stops at it')
  await expectRows(shop, 'BT1', { countertop: top(10 + 3 * 600 + 10) })
  await expectRows(shop, 'BK1', { 'long kick board': size(600, 100) })
  // It is kept in the file as it stands.
  const { text } = await save(shop)
  await openFile(shop, text)
  await expect(cabinet(shop, 'S1')).toHaveAttribute('aria-label', /^S1 space for a dishwasher, 600 wide/)
})

test('a space that is too narrow is told and widened, and one at the end of a run gets a panel to hold the top', async ({
  shop,
}) => {
  await startProject(shop, 'Millimetres')
  const card = shop.getByRole('region', { name: 'Properties' })
  await drag(shop, await middleOf(shop.locator('[data-tray="base"]')), await onScreen(shop, 800, 300))
  await expect(cabinet(shop, 'B1')).toHaveCount(1)
  await type(card.getByLabel('From left', { exact: true }), '500')
  await putReady(shop, 'space for a washing machine')
  await expect(cabinet(shop, 'S1')).toHaveCount(1)
  // The first free place is the 500 before B1, and it was narrowed to that.
  await expect(card.getByLabel('Width', { exact: true })).toHaveValue('500')
  await type(card.getByLabel('From left', { exact: true }), '1100')
  await type(card.getByLabel('Width', { exact: true }), '600')
  await type(card.getByLabel('· Asks width'), '605')
  await pickTop(shop, '18 mm birch ply')
  await openTab(shop, 'Findings')
  const findings = shop.getByRole('table', { name: /Findings/ })
  await expect(findings).toContainText('S1: the space is 600 mm wide; the washing machine asks for 605 mm')
  await button(shop, 'Do it: Widen S1 to 605 mm').click()
  await expect(findings).not.toContainText('the space is 600 mm wide')
  await expect(findings).toContainText('nothing holds the right end of the countertop')
  await button(shop, 'Do it: Put a panel at the right of S1').click()
  await expect(findings).not.toContainText('nothing holds the right end')
  // The panel is 18 of front ply, as high as the bases and as deep as their fronts; the top goes past it by 15.
  await expectRows(shop, 'BT1', { countertop: size(15 + 600 + 605 + 18 + 15, 580 + 18 + 20) })
  await expectRows(shop, 'S1', { 'right end': size(868, 580 + 18 - 1) })
})
