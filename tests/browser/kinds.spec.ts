import type { Page } from '@playwright/test'
import { expectRows, putReady, size } from './cutlist'
import { button, cabinet, drag, expect, middleOf, onScreen, startProject, test, type } from './shop'

test.use({ looksOn: false })

/*
 * Every kind of cabinet by hand, and its parts by a sum on paper. All boards are 18 thick, backs 6, drawer boxes 12; tongues
 * sink 6; bases are 868 high with a plinth of 100 and 580 deep, uppers 720 by 330, talls 2152 by 580. Fronts leave 1.5 at each
 * end and 3 at the top, and 3 between them. What is banded by 1 is sawn smaller by it: the front edge of carcass boards, all
 * four edges of fronts.
 */
const T = 18
const SIDE = 868 - 100
const TALL_SIDE = 2152 - 100
const UPPER = 720
const FRONTS = SIDE - 3

const banded = (height: number, width: number) => size(height - 2, width - 2)
const inside = (width: number) => width - 2 * T
/** The back sinks 6 into both sides, and into the bottom; over it are flat stretchers, or nothing; 1.5 of play each way. */
const back = (width: number, side: number, over: 'stretcher' | 'nothing' = 'stretcher') =>
  size(side - T + 6 - (over === 'stretcher' ? T - 6 : 0) - 1.5, inside(width) + 2 * 6 - 1.5)
/** Between the sides with a tongue of 6 at each end. */
const level = (width: number, depth = 580) => size(inside(width) + 2 * 6, depth - 1)
/** On pins, with 1.5 of play at each end; before a back of 6 in a groove 10 from the rear, and 10 behind the front edge. */
const loose = (width: number, depth = 580) => size(inside(width) - 3, depth - 10 - 6 - 10 - 1)
const housed = (width: number, depth = 580) => size(inside(width) + 2 * 6, depth - 10 - 6 - 10 - 1)
/** Between the sides of a box that leaves 12.7 beside it for each slide. */
const boxFront = (width: number) => inside(width) - 2 * 12.7 - 2 * 12

function properties(page: Page) {
  return page.getByRole('region', { name: 'Properties' })
}

/** Pulls a plain base from the tray to a place on the wall. */
async function pullBase(page: Page, left: number): Promise<void> {
  await drag(page, await middleOf(page.locator('[data-tray="base"]')), await onScreen(page, left + 300, 300))
}

test('bases with a door, with drawers, for a sink, for an island, an end shelf and a vanity that hangs', async ({
  shop,
}) => {
  await startProject(shop, 'Millimetres')
  await pullBase(shop, 0)
  await expect(cabinet(shop, 'B1')).toHaveCount(1)
  for (const name of ['drawer base', 'sink base', 'island base, finished back', 'end shelf']) await putReady(shop, name)
  await putReady(shop, 'wall-hung vanity base')
  await expect(cabinet(shop, 'B6')).toHaveCount(1)
  // Its rail is on no row of another cabinet then.
  await type(properties(shop).getByLabel('Width', { exact: true }), '620')

  await expectRows(shop, 'B1', {
    side: size(SIDE, 580 - 1),
    bottom: level(600),
    back: back(600, SIDE),
    'front stretcher': size(inside(600), 75 - 1),
    'top nailer': size(inside(600), 90),
    'plinth front': size(600, 100),
    'plinth end': size(580 - 60 - 2 * T, 100),
    'adjustable shelf': loose(600),
    door: banded(FRONTS, 600 - 2 * 1.5),
  })
  const lower = (FRONTS - 140 - 2 * 3) / 2
  // Over the top front begins the front stretcher; under it the opening ends in the middle of the gap.
  const topBox = SIDE - T - (FRONTS - 140 - 3 / 2) - 16 - 16
  await expectRows(shop, 'B2', {
    'drawer front': [banded(600 - 3, lower), banded(600 - 3, 140)],
    'drawer side': [
      size(550, lower + 3 - 16 - 16),
      size(550, lower + 3 / 2 - T - 16 - 16),
      // Behind it is the nailer: the next shorter slide.
      size(500, topBox),
    ],
    'drawer bottom': [
      size(boxFront(600) + 2 * 6 - 1.6, 550 - 2 * 12 + 2 * 6 - 1.6),
      size(boxFront(600) + 2 * 6 - 1.6, 500 - 2 * 12 + 2 * 6 - 1.6),
    ],
  })
  await expectRows(shop, 'B3', {
    bottom: level(800),
    'front stretcher': size(inside(800), 75),
    'back stretcher': [],
    back: back(800, SIDE, 'nothing'),
    'false front': banded(800 - 3, 160),
    door: banded(FRONTS - 160 - 3, (800 - 3 - 3) / 2),
  })
  await expectRows(shop, 'B4', {
    side: size(SIDE, 580 - T - 1),
    // It is seen, so it is banded all round as fronts are.
    back: banded(SIDE, 600),
    'top nailer': [],
    door: banded(FRONTS, 600 - 3),
  })
  await expectRows(shop, 'B5', {
    bottom: level(250),
    'fixed shelf': housed(250),
    door: [],
  })
  // It hangs by a rail before its back, 600 high and 480 deep, with nothing under it and nothing behind the rail over the basin.
  await expectRows(shop, 'B6', {
    side: size(600, 480 - 1),
    bottom: level(620, 480),
    back: back(620, 600, 'nothing'),
    'front stretcher': size(inside(620), 75),
    'back stretcher': [],
    'top nailer': size(inside(620), 90),
    'plinth front': [],
    'false front': banded(620 - 3, 100),
    door: banded(600 - 3 - 100 - 3, (620 - 3 - 3) / 2),
  })
})

test('a blind corner below and above, a bench box, open shelves, a pantry and a housing', async ({ shop }) => {
  await startProject(shop, 'Millimetres')
  for (const name of ['blind corner base', 'bench box with a lid', 'tall pantry', 'appliance housing'])
    await putReady(shop, name)
  for (const name of ['blind corner upper', 'open shelves']) await putReady(shop, name)
  await expect(cabinet(shop, 'U2')).toHaveCount(1)

  // The other run is 580 deep, its fronts are 18, and a filler of 80 keeps what opens clear of it: in steps of 10 that is 680.
  await expectRows(shop, 'B1', {
    bottom: level(680 + 450),
    'blind panel': banded(FRONTS, 680 - 80),
    'corner filler': banded(FRONTS, 80),
    door: banded(FRONTS, 450 - 1.5 - 3 - 1.5),
  })
  await expectRows(shop, 'U1', {
    side: size(UPPER, 330 - 1),
    'blind panel': banded(UPPER - 3, 330 + T + 80 + 2 - 80),
    door: banded(UPPER - 3, 450 - 1.5 - 3 - 1.5),
  })
  // The seat is at 450 with its lid, which with its strip and hinge is as deep as the carcass and the front.
  const bench = 450 - T - 100
  await expectRows(shop, 'B2', {
    side: size(bench, 450 - 1),
    lid: banded(900 - 2 * 1.5, 450 + T - 70 - 2),
    'strip behind the lid': banded(900, 70),
    'false front': banded(900 - 3, bench - 3),
    back: back(900, bench, 'nothing'),
  })
  await expectRows(shop, 'U2', {
    bottom: level(600, 330),
    'adjustable shelf': loose(600, 330),
    back: size(UPPER - 2 * T + 2 * 6 - 1.5, inside(600) + 2 * 6 - 1.5),
  })
  await expectRows(shop, 'T1', {
    side: size(TALL_SIDE, 580 - 1),
    door: [banded(((TALL_SIDE - 3 - 3) * 3) / 5, 600 - 3), banded(((TALL_SIDE - 3 - 3) * 2) / 5, 600 - 3)],
    'fixed shelf': housed(600),
    'adjustable shelf': loose(600),
  })
  // A niche of 590 lies between two boards, each half of it behind a gap of 3; 45 of air behind the boards.
  const niche = 590 + T - 3
  await expectRows(shop, 'T2', {
    door: banded(TALL_SIDE - 3 - niche - 2 * 300 - 3 * 3, 600 - 3),
    'drawer front': banded(600 - 3, 300),
    'fixed shelf': size(inside(600) + 2 * 6, 580 - 10 - 6 - 45 - 1),
  })
})

test('L and diagonal corners below and above', async ({ shop }) => {
  await startProject(shop, 'Millimetres')
  await putReady(shop, 'L corner base')
  await putReady(shop, 'L corner upper')
  await putReady(shop, 'diagonal corner base', 'last')
  await putReady(shop, 'diagonal corner upper', 'last')
  await expect(cabinet(shop, 'U2')).toHaveCount(1)
  // The board through the corner is as long and as wide as the legs less the side at the end of each, with its tongue.
  const through = (leg: number) => size(leg - T + 6, leg - T + 6)
  // From the other leg to the end; the second leaf stands a gap before the first.
  const leaves = (leg: number, depth: number, height: number) => [
    banded(height, leg - depth - 1.5),
    banded(height, leg - depth - T - 3 - 1.5),
  ]
  // From leg to leg at 45 degrees; its outer corners stay 1.5 inside the end of each leg.
  const slant = (leg: number, depth: number) => (leg - depth) * Math.SQRT2 - 2 * (T + 1.5 * Math.SQRT2)
  await expectRows(shop, 'B1', {
    bottom: through(900),
    top: through(900),
    door: leaves(900, 580, FRONTS),
    'plinth back': [size(900, 100), size(900 - T, 100)],
  })
  await expectRows(shop, 'U1', { bottom: through(600), door: leaves(600, 330, UPPER - 3) })
  await expectRows(shop, 'B2', { bottom: through(900), door: banded(FRONTS, slant(900, 580)) })
  await expectRows(shop, 'U2', { bottom: through(600), door: banded(UPPER - 3, slant(600, 330)) })
})

test('a pull-out, roll-outs, tray dividers, and columns with rows in one of them', async ({ shop }) => {
  await startProject(shop, 'Millimetres')
  const card = properties(shop)
  await pullBase(shop, 0)
  await type(card.getByLabel('Width', { exact: true }), '420')
  await card.getByLabel('Front', { exact: true }).selectOption('pull-out on a low box')
  await putReady(shop, 'end shelf')
  await type(card.getByLabel('Width', { exact: true }), '600')
  await card.getByLabel('Front', { exact: true }).selectOption('door, hinged right')
  await type(card.getByLabel('Fixed shelves'), '0')
  await card.getByText('Roll-outs, trays, pipes').click()
  await type(card.getByLabel('Roll-outs'), '2')
  await putReady(shop, 'end shelf')
  await type(card.getByLabel('Width', { exact: true }), '450')
  await card.getByLabel('Front', { exact: true }).selectOption('door, hinged right')
  await type(card.getByLabel('Fixed shelves'), '0')
  await type(card.getByLabel('Tray dividers'), '3')
  await putReady(shop, 'end shelf')
  await type(card.getByLabel('Width', { exact: true }), '1200')
  await type(card.getByLabel('Fixed shelves'), '0')
  await card.getByLabel('Front', { exact: true }).selectOption('columns')
  await card.getByText('Rows and columns').click()
  await type(card.getByLabel('Columns', { exact: true }), '3')
  await card.getByLabel('· Column 2 is').selectOption('divided into rows')
  await card.getByLabel('· Column 3 is').selectOption('door, hinged right')
  await type(card.getByLabel('· Rows in it'), '3')
  await expect(cabinet(shop, 'B4')).toHaveCount(1)

  await expectRows(shop, 'B1', {
    'drawer front': banded(FRONTS, 420 - 3),
    'drawer box front': size(boxFront(420), 150),
  })
  // A door that stands open takes its thickness of the width at its hinges, and 5 more.
  await expectRows(shop, 'B2', {
    door: banded(FRONTS, 600 - 3),
    'drawer box front': size(boxFront(600) - T - 5, 100),
  })
  await expectRows(shop, 'B3', {
    // From the bottom to the underside of the front stretcher, before the back.
    'tray divider': size(SIDE - 2 * T, 580 - 10 - 6 - T - 10 - 1),
  })
  const column = (1200 - 2 * 1.5 - 2 * 3) / 3
  await expectRows(shop, 'B4', {
    bottom: level(1200),
    // From the bottom, 6 into it, to the underside of the front stretcher; before the back.
    partition: size(SIDE - 2 * T + 6, 580 - 10 - 6 - 1),
    door: banded(FRONTS, column),
    'drawer front': banded(column, (FRONTS - 2 * 3) / 3),
  })
})

test('a wall with a countertop, trims and a finished end', async ({ shop }) => {
  await startProject(shop, 'Millimetres')
  const card = properties(shop)
  await pullBase(shop, 0)
  await putReady(shop, 'sink base')
  await expect(cabinet(shop, 'B2')).toHaveCount(1)
  await card.getByLabel('Beside right').selectOption('panel to the floor')
  await putReady(shop, 'open shelves')
  await expect(cabinet(shop, 'U1')).toHaveCount(1)
  await shop.locator('section[aria-label^="Elevation"]').focus()
  await shop.keyboard.press('Escape')
  await button(shop, /Build and boards/).click()
  await button(shop, 'Kick, top, trims').click()
  await shop.getByLabel('Made').selectOption('in lengths, before each run')
  await shop.getByLabel('Board', { exact: true }).selectOption('18 mm front ply')
  await shop.getByLabel('Light rail').selectOption('18 mm front ply')
  await shop.getByLabel('Crown').selectOption('18 mm front ply')
  // A panel of 18 beside two bases of 600 and 800; it covers the edges of the fronts too.
  await expectRows(shop, 'B2', { 'right end': size(868, 580 + T - 1) })
  await expectRows(shop, 'BK1', { 'long kick board': size(600 + 800, 100) })
  // One end at the wall, the other 15 past the panel.
  await expectRows(shop, 'BT1', { countertop: size(600 + 800 + T + 15, 580 + T + 20) })
  // Bands of 1 along what is seen from below, and on the one end that stands free.
  await expectRows(shop, 'UL1', { 'light rail': size(600 - 1, 40 - 1), 'light rail return': size(330 - T, 40 - 1) })
  await expectRows(shop, 'UC1', { crown: size(600 - 1, 80 - 1), 'crown return': size(330 + 20 - T, 80) })
})
