import type { Locator, Page } from '@playwright/test'
import { button, cabinet, cabinets, drag, expect, middleOf, onScreen, test, type } from './shop'

test.use({ looksOn: false, draws3D: false })

interface Box {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

function card(page: Page): Locator {
  return page.getByRole('region', { name: 'Properties' })
}

/** What of a box is over another, in pixels each way. */
function shared(a: Box, b: Box) {
  const along = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x)
  const up = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y)
  return Math.min(along, up)
}

async function boxOf(thing: Locator): Promise<Box> {
  return (await thing.boundingBox())!
}

/** A cabinet is whole in the pane of the wall, and the card is over none of it. */
async function expectInSight(page: Page, mark: string): Promise<void> {
  await expect(card(page)).toContainText(mark)
  await expect(async () => {
    const [drawn, wall] = [
      await boxOf(cabinet(page, mark)),
      await boxOf(page.getByRole('region', { name: /^Elevation/ })),
    ]
    expect(shared(drawn, await boxOf(card(page))), `${mark} under the card`).toBeLessThanOrEqual(0)
    expect(drawn.x).toBeGreaterThanOrEqual(wall.x)
    expect(drawn.x + drawn.width).toBeLessThanOrEqual(wall.x + wall.width + 1)
    expect(drawn.y).toBeGreaterThanOrEqual(wall.y)
    expect(drawn.y + drawn.height).toBeLessThanOrEqual(wall.y + wall.height + 1)
  }).toPass()
}

const SIZES = [
  { width: 1440, height: 900 },
  { width: 1024, height: 768 },
  { width: 390, height: 844 },
]

for (const viewport of SIZES) {
  test(`whatever is picked stands clear of its card at ${viewport.width}, fitted or seen from nearer`, async ({
    shop,
  }) => {
    await shop.setViewportSize(viewport)
    const marks = ['T1', 'U1', 'B3', 'U4', 'B5']
    for (const mark of marks) {
      await cabinet(shop, mark).click({ position: { x: 8, y: 12 } })
      await expectInSight(shop, mark)
      await type(card(shop).getByLabel('Depth', { exact: true }), mark.startsWith('U') ? '340' : '590')
      await expectInSight(shop, mark)
    }
    await expect(cabinets(shop)).toHaveCount(10)

    // From nearer the wall is larger than its pane, and what the list picks is brought into sight.
    if (viewport.width < 800) return
    for (let step = 0; step < 4; step++) await button(shop, 'Nearer').click()
    await shop.getByRole('tab', { name: /^Schedule/ }).click()
    for (const mark of ['B5', 'U1']) {
      await shop
        .getByRole('row', { name: new RegExp(`^${mark} `) })
        .getByRole('button', { name: mark, exact: true })
        .click()
      await expectInSight(shop, mark)
    }
  })
}

test('on a phone the card takes at most half of the height, folds to a line and stays so', async ({ shop }) => {
  await shop.setViewportSize(SIZES[2]!)
  await cabinet(shop, 'B3').click({ position: { x: 8, y: 12 } })
  const wall = shop.getByRole('region', { name: /^Elevation/ })
  await expect.poll(async () => (await boxOf(card(shop))).y).toBeGreaterThan(400)
  expect((await boxOf(wall)).height).toBeGreaterThanOrEqual((await boxOf(shop.locator('main'))).height * 0.45)
  await button(shop, 'Fold').click()
  await expect.poll(async () => (await boxOf(card(shop))).height).toBeLessThan(80)
  await cabinet(shop, 'B5').click({ position: { x: 8, y: 12 } })
  await expect(card(shop)).toContainText('B5')
  expect((await boxOf(card(shop))).height).toBeLessThan(80)
})

test('a section that was folded stays folded for the next cabinet and the next visit', async ({ shop }) => {
  await cabinet(shop, 'B3').click({ position: { x: 20, y: 40 } })
  const shelves = card(shop).getByLabel('Loose shelves')
  await expect(shelves).toBeVisible()
  await card(shop).getByText('Front and inside').click()
  await expect(shelves).toHaveCount(0)
  await cabinet(shop, 'U1').click({ position: { x: 20, y: 40 } })
  await expect(card(shop)).toContainText('U1')
  await expect(shelves).toHaveCount(0)
  await shop.reload()
  await cabinet(shop, 'B3').click({ position: { x: 20, y: 40 } })
  await expect(card(shop)).toContainText('B3')
  await expect(shelves).toHaveCount(0)
})

test('nothing of the drawing moves while something is dragged, and the typed sizes follow the hand', async ({
  shop,
}) => {
  const before = await onScreen(shop, 0, 0)
  const from = await middleOf(cabinet(shop, 'B5'))
  const by = (await onScreen(shop, 200, 0)).x - before.x
  await drag(shop, from, { x: from.x + by, y: from.y })
  expect(await onScreen(shop, 0, 0)).toEqual(before)
  const left = card(shop).getByLabel('From left', { exact: true })
  await expect(left).toHaveValue('2850')
  const again = await middleOf(cabinet(shop, 'B5'))
  await shop.mouse.move(again.x, again.y)
  await shop.mouse.down()
  await shop.mouse.move(again.x + by, again.y, { steps: 4 })
  await expect(left).toHaveValue('3050')
  await shop.keyboard.press('Escape')
  await expect(left).toHaveValue('2850')
  await shop.mouse.up()
})

test('Escape lets go what is selected, with the keys on the wall, in the card or nowhere', async ({ shop }) => {
  const card = shop.getByRole('region', { name: 'Properties' })
  const pick = async () => {
    await cabinet(shop, 'B3').click({ position: { x: 20, y: 40 } })
    await expect(card).toBeVisible()
  }
  await pick()
  await shop.keyboard.press('Escape')
  await expect(card).toHaveCount(0)
  await pick()
  await card.getByLabel('Front', { exact: true }).focus()
  await shop.keyboard.press('Escape')
  await expect(card).toHaveCount(0)
  await pick()
  const width = card.getByLabel('Width', { exact: true })
  const before = await width.inputValue()
  await width.fill('612')
  await shop.keyboard.press('Escape')
  // The first lets go what was typed, and only the next what is selected.
  await expect(width).toHaveValue(before)
  await shop.keyboard.press('Escape')
  await expect(card).toHaveCount(0)
})

test('words that are chosen are read in full, on as many lines as they take', async ({ shop }) => {
  await cabinet(shop, 'B1').click()
  const build = card(shop).getByLabel('Build', { exact: true })
  await expect(build.locator('option:checked')).toHaveText('as the project (Shop standard)')
  await card(shop).getByText('Built differently').click()
  await card(shop).getByLabel('Nailers', { exact: true }).selectOption('top, bottom, middle if high: behind')
  await expect(card(shop).locator('[data-picked="top, bottom, middle if high: behind"]')).toBeVisible()
  const fields = await card(shop)
    .locator('[data-picked]')
    .evaluateAll((all) =>
      all.map((field) => {
        const { width, font, lineHeight, paddingLeft, paddingRight } = getComputedStyle(field, '::after')
        const pen = document.createElement('canvas').getContext('2d')!
        pen.font = font
        const words = field.getAttribute('data-picked')!
        const room = Number.parseFloat(width) - Number.parseFloat(paddingLeft) - Number.parseFloat(paddingRight)
        const longest = Math.max(...words.split(' ').map((word) => pen.measureText(word).width))
        const lines = Math.ceil(pen.measureText(words).width / room)
        return { words, over: longest - room, short: lines * Number.parseFloat(lineHeight) - field.clientHeight }
      }),
    )
  expect(fields.length).toBeGreaterThan(15)
  for (const { words, over, short } of fields) {
    expect(over, `the longest word of "${words}" over its field, px`).toBeLessThanOrEqual(0)
    expect(short, `what "${words}" lacks of lines, px`).toBeLessThanOrEqual(0)
  }
  // One line is 26 px high, and these take three.
  const { height } = (await card(shop).getByLabel('Nailers', { exact: true }).boundingBox())!
  expect(height).toBeGreaterThan(40)
})

test('the drawings of a board that is opened low in the list come into sight with it', async ({ shop }) => {
  const list = shop.getByRole('grid', { name: 'Cut list' })
  // The fourth row is the last that is whole in sight, with 30 px and less under it.
  const row = list.locator('tr[data-row]').nth(3)
  await row.getByRole('button', { name: /^Parts of/ }).click()
  const drawing = list.getByRole('img', { name: /^Drawing of / }).first()
  await expect(drawing).toBeVisible()
  const pane = (await shop.getByRole('tabpanel').boundingBox())!
  await expect(async () => {
    const [at, under] = [(await row.boundingBox())!, (await drawing.boundingBox())!]
    expect(at.y).toBeGreaterThanOrEqual(pane.y)
    expect(at.y - pane.y).toBeLessThan(100)
    expect(pane.y + pane.height - under.y, 'of the drawing in sight, px').toBeGreaterThan(60)
  }).toPass()
})

test('an opening that was measured has its buttons within the card', async ({ shop }) => {
  await cabinet(shop, 'B4').click()
  await card(shop).getByText('Openings as built').click()
  const width = card(shop).getByLabel('Measured width').first()
  await type(width, `${Number(await width.inputValue()) - 1}`)
  const back = card(shop).getByRole('button', { name: 'Make it as drawn' })
  await expect(back).toBeVisible()
  const [inside, around] = [await boxOf(back), await boxOf(card(shop))]
  expect(inside.x + inside.width).toBeLessThanOrEqual(around.x + around.width)
})
