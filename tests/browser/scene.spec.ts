import type { Page } from '@playwright/test'
import { button, cabinet, drag, expect, middleOf, openTab, test, type } from './shop'

/** The picture as it is now. */
async function pictureOf(page: Page): Promise<Buffer> {
  return page.getByRole('img', { name: /in 3D/ }).screenshot()
}

/** How the edges of what is drawn are: jagged in motion, smooth at rest. */
async function edgesOf(page: Page): Promise<string | null> {
  return page.getByRole('img', { name: /in 3D/ }).locator('canvas').getAttribute('data-edges')
}

/** Waits until nothing moves in the picture any more, and its edges are smooth. */
async function stillPicture(page: Page): Promise<Buffer> {
  let last = await pictureOf(page)
  await expect(async () => {
    expect(await edgesOf(page)).toBe('smooth')
    const now = await pictureOf(page)
    const isStill = now.equals(last)
    last = now
    expect(isStill).toBe(true)
  }).toPass()
  return last
}

/** Waits until the picture is another one than before, and still. */
async function pictureAfter(page: Page, before: Buffer): Promise<Buffer> {
  await expect.poll(async () => (await pictureOf(page)).equals(before)).toBe(false)
  return stillPicture(page)
}

function areAllDifferent(pictures: readonly Buffer[]): boolean {
  return pictures.every((picture, at) => pictures.slice(0, at).every((other) => !other.equals(picture)))
}

test('the cabinets come apart in 3D, turn, and are seen without their fronts', async ({ shop }) => {
  const picture = shop.getByRole('group', { name: /^3D view/ })
  const slider = shop.getByRole('slider', { name: 'Take apart' })
  const closed = await stillPicture(shop)
  await slider.fill('50')
  const half = await pictureAfter(shop, closed)
  await slider.fill('100')
  const apart = await pictureAfter(shop, half)
  await expect(slider).toHaveAttribute('aria-valuetext', 'fully exploded')
  const { x, y } = await middleOf(picture)
  await drag(shop, { x, y }, { x: x + 90, y: y - 30 })
  const turned = await pictureAfter(shop, apart)
  await picture.focus()
  await shop.keyboard.press('ArrowLeft')
  // The line round what has the keys belongs to no picture.
  await button(shop, 'Hide fronts').focus()
  const turnedByKey = await pictureAfter(shop, turned)
  await button(shop, 'Hide fronts').click()
  await expect(shop.getByRole('img', { name: /100 % apart, fronts hidden$/ })).toBeVisible()
  const bare = await pictureAfter(shop, turnedByKey)
  expect(areAllDifferent([closed, half, apart, turned, turnedByKey, bare])).toBe(true)
  await button(shop, 'Hide fronts').click()
  await expect.poll(async () => (await pictureOf(shop)).equals(turnedByKey)).toBe(true)
})

test('a board that is clicked in 3D is named, and its row of the cut list is chosen', async ({ shop }) => {
  const mark = shop.getByText('B3', { exact: true }).and(shop.locator('div[aria-hidden] span'))
  const { x, y } = await middleOf(mark)
  await shop.mouse.click(x, y + 20)
  const caption = shop.getByRole('region', { name: 'The run in 3D' }).locator('p').first()
  await expect(caption).toContainText(/^B3-/)
  const name = (await caption.locator('strong').textContent())!
  const row = shop.locator('tr[data-row][aria-selected=true]')
  await expect(row).toHaveCount(1)
  await expect(row).toBeInViewport()
  await row.getByRole('button', { name: /^Parts of/ }).click()
  await expect(shop.locator('button[data-part][aria-pressed=true]')).toHaveText(name)
  await expect(cabinet(shop, 'B3')).toHaveAttribute('aria-pressed', 'false')
})

test('a row of the cut list is chosen in 3D and on its sheets, and 3D follows what is typed', async ({ shop }) => {
  const before = await stillPicture(shop)
  const row = shop.locator('tr[data-row]').filter({ hasText: 'B3' }).first()
  const key = (await row.getAttribute('data-row'))!
  await row.locator('td').nth(1).click()
  await expect(row).toHaveAttribute('aria-selected', 'true')
  await pictureAfter(shop, before)

  await row.getByRole('button', { name: /^Parts of/ }).click()
  const marks = await shop.locator('button[data-part][aria-pressed=true]').allTextContents()
  expect(marks.length).toBeGreaterThan(0)
  const chosen = await shop.locator('div[data-chosen]').getAttribute('data-chosen')
  expect(chosen?.split(' ').sort()).toEqual(marks.sort())

  await openTab(shop, 'Sheets')
  const lit = shop.locator('[data-sheet] [data-part][aria-pressed=true]')
  await expect(lit.first()).toBeVisible()
  const rows = await lit.evaluateAll((parts) => parts.map((part) => part.getAttribute('data-row')))
  expect(new Set(rows)).toEqual(new Set([key]))
  await expect(shop.locator(`[data-sheet] [data-row="${key}"][aria-pressed=false]`)).toHaveCount(0)

  const chosen3d = await stillPicture(shop)
  await openTab(shop, 'Schedule')
  await type(shop.getByLabel('Width of B1', { exact: true }), '300')
  await pictureAfter(shop, chosen3d)
})

test('without a graphics card edges are jagged while the picture turns, and smooth when it stands', async ({
  shop,
}) => {
  await stillPicture(shop)
  const { x, y } = await middleOf(shop.getByRole('group', { name: /^3D view/ }))
  await shop.mouse.move(x, y)
  await shop.mouse.down()
  await expect(async () => {
    for (let step = 0; step <= 20; step++) await shop.mouse.move(x + step * 3, y)
    expect(await edgesOf(shop)).toBe('jagged')
  }).toPass()
  await shop.mouse.up()
  await expect.poll(() => edgesOf(shop)).toBe('smooth')
})
