import { expectRows, size } from './cutlist'
import { button, cabinet, drag, expect, goTo, middleOf, onScreen, openTab, startProject, test, type } from './shop'

test.use({ looksOn: false })

test('a gap is filled from its own figure, and the filler is measured and cut', async ({ shop }) => {
  await cabinet(shop, 'U4').click()
  await shop.getByRole('button', { name: /^Gap between U4/ }).click()
  await button(shop, 'Fill the gap').click()
  await expect(shop.getByLabel('· Right filler')).toHaveValue('50')
  await expect(button(shop, /^Undo put a filler at the right of U4/)).toBeVisible()
  await expect(shop.getByRole('grid', { name: 'Cut list' })).toContainText('filler')
})

test('a countertop lies on the bases, with a sink let into it', async ({ shop }) => {
  await button(shop, /Build and boards/).click()
  await button(shop, 'Kick, top, trims').click()
  await shop.getByLabel('Made').selectOption('in lengths, before each run')
  await shop.getByLabel('Board', { exact: true }).selectOption('18 mm birch ply')
  await type(shop.getByLabel('Splash, or 0'), '80')
  const list = shop.getByRole('grid', { name: 'Cut list' })
  await expect(list).toContainText('countertop')
  await expect(list).toContainText('long kick board')
  await cabinet(shop, 'B3').click({ position: { x: 20, y: 40 } })
  await shop.getByLabel('Let into top').selectOption('sink')
  await expect(button(shop, /^Undo cut out for a sink over B3/)).toBeVisible()
  // It begins in the middle of 800, 480 wide; 50 from the left is 110 before the middle.
  const card = shop.getByRole('region', { name: 'Properties' })
  await expect(card.getByLabel('· From left', { exact: true })).toHaveValue(String((800 - 480) / 2))
  await type(card.getByLabel('· From left', { exact: true }), '50')
  await expect(card.getByLabel('· Off middle', { exact: true })).toHaveValue('-110')
  await type(card.getByLabel('· Off middle', { exact: true }), '30')
  await expect(card.getByLabel('· From left', { exact: true })).toHaveValue(String((800 - 480) / 2 + 30))
})

test('a filler beside a base and one beside an upper are built by hand, and are the sums on paper', async ({
  shop,
}) => {
  await startProject(shop, 'Millimetres')
  const card = shop.getByRole('region', { name: 'Properties' })
  await drag(shop, await middleOf(shop.locator('[data-tray="base"]')), await onScreen(shop, 1300, 300))
  await expect(cabinet(shop, 'B1')).toHaveCount(1)
  await card.getByLabel('Beside left').selectOption('filler')
  await type(card.getByLabel('· Left filler'), '85')
  await type(card.getByLabel('· Left scribe'), '12')
  // A filler takes its width of the wall: what was free is less by it.
  await expect(card.getByLabel('Gap left', { exact: true })).toHaveValue(String(1000 - 85))
  await drag(shop, await middleOf(shop.locator('[data-tray="upper"]')), await onScreen(shop, 1300, 1800))
  await expect(cabinet(shop, 'U1')).toHaveCount(1)
  await card.getByLabel('Beside right').selectOption('filler')
  await type(card.getByLabel('· Right filler'), '40')
  await type(card.getByLabel('· Right scribe'), '0')

  // As high as the box above its kick of 100; what is scribed is sawn with it. Its return is 60 deep. Bands of 1 are in the
  // finished size: at both ends and along the cabinet, and, where nothing is scribed, along the other edge too.
  await expectRows(shop, 'B1', {
    filler: size(868 - 100 - 2, 85 - 1 + 12),
    'filler return': size(868 - 100, 60),
  })
  await expectRows(shop, 'U1', { filler: size(720 - 2, 40 - 2), 'filler return': size(720, 60) })
  // It cannot be wider than what is free to the end of the wall.
  await cabinet(shop, 'B1').click({ position: { x: 20, y: 40 } })
  await type(card.getByLabel('From left', { exact: true }), '85')
  await expect(card.getByLabel('Gap left', { exact: true })).toHaveValue('0')
  await type(card.getByLabel('· Left filler'), '90')
  // At the end of the wall the cabinet makes room for what is more, in one step with its filler.
  await expect(card).toContainText('B1 moved 5 mm to the right for it.')
  await expect(card.getByLabel('From left', { exact: true })).toHaveValue('90')
  await button(shop, /^Undo/).click()
  await expect(card.getByLabel('· Left filler')).toHaveValue('85')
  await expect(card).not.toContainText('B1 moved')
})

test('a valance goes over a window from one upper to the next, clear of a filler, and is the sum on paper', async ({
  shop,
}) => {
  await startProject(shop, 'Millimetres')
  await goTo(shop, 'Site')
  await button(shop, 'Add window').click()
  for (const [field, length] of [
    ['Width', 1000],
    ['From left', 1000],
    ['Height', 900],
    ['Above floor', 1100],
  ] as const) {
    await type(shop.getByLabel(`${field} of window 1`), String(length))
  }
  await goTo(shop, 'Design')
  const card = shop.getByRole('region', { name: 'Properties' })
  for (const [number, left, depth] of [
    [1, 200, 330],
    [2, 2200, 300],
  ] as const) {
    const tray = await middleOf(shop.locator('[data-tray="upper"]'))
    await drag(shop, tray, await onScreen(shop, left + 300, 1800))
    await expect(cabinet(shop, `U${number}`)).toHaveCount(1)
    await type(card.getByLabel('From left', { exact: true }), String(left))
    await type(card.getByLabel('Depth', { exact: true }), String(depth))
  }
  await card.getByLabel('Beside left').selectOption('filler')
  await type(card.getByLabel('· Left filler'), '60')
  await shop.locator('section[aria-label^="Elevation"]').focus()
  await shop.keyboard.press('Escape')
  await button(shop, /Build and boards/).click()
  await button(shop, 'Kick, top, trims').click()
  await shop.getByLabel('Valance over windows').selectOption('18 mm front ply')
  // From the right side of U1, at 200 + 600, to the filler of 60 at the left of U2; 100 high, as it begins, with a band of 1
  // along its lower edge.
  await expectRows(shop, 'UV1', { valance: size(2200 - 60 - (200 + 600), 100 - 1) })
  const between = shop.getByRole('region', { name: 'Project' })
  await type(between.getByLabel('· Height').last(), '140')
  await expectRows(shop, 'UV1', { valance: size(2200 - 60 - (200 + 600), 140 - 1) })
  // Without the window there is nothing for it to go over.
  await goTo(shop, 'Site')
  await button(shop, 'Delete window 1').click()
  await goTo(shop, 'Design')
  await openTab(shop, 'Cut list')
  await expect(shop.getByRole('grid', { name: 'Cut list' })).not.toContainText('valance')
})
