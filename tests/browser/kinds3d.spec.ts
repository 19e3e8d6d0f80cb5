import type { Page } from '@playwright/test'
import { putReady } from './cutlist'
import { cabinets, drag, expect, middleOf, onScreen, openTab, startProject, test } from './shop'

test.use({ looksOn: false })

const BASES = ['base', 'drawer base', 'sink base', 'wall-hung vanity base', 'island base, finished back', 'end shelf']
const OTHERS = ['upper', 'tall', 'open shelves', 'tall pantry', 'appliance housing', 'bench box with a lid']
const IN_CORNERS = [
  ...['blind corner base', 'blind corner upper', 'L corner base', 'L corner upper'],
  ...['diagonal corner base', 'diagonal corner upper'],
]

async function put(page: Page, name: string): Promise<void> {
  const isPlain = ['base', 'upper', 'tall'].includes(name)
  if (!isPlain) return putReady(page, name)
  const at = await onScreen(page, 600, name === 'upper' ? 1700 : 300)
  await drag(page, await middleOf(page.locator(`[data-tray="${name}"]`)), at)
}

function picture(page: Page) {
  return page.getByRole('img', { name: /in 3D/ })
}

/** The parts that the cut list has in all. */
async function partsListed(page: Page): Promise<number> {
  await openTab(page, 'Cut list')
  const counts = await page
    .locator('tr[data-row]')
    .evaluateAll((rows) => rows.map((row) => row.children[2]!.textContent))
  return counts.reduce((sum, count) => sum + Number(count), 0)
}

/** Where the marks of boards are written, in pixels of the picture, and what they say. */
async function marks(page: Page): Promise<{ readonly text: string; readonly x: number; readonly y: number }[]> {
  return page.locator('div[data-chosen] > span').evaluateAll((all) =>
    all.map((mark) => {
      const [, x, y] = /\) translate\(([-\d.]+)px, ([-\d.]+)px\)/.exec((mark as HTMLElement).style.transform) ?? []
      return { text: mark.textContent ?? '', x: Number(x), y: Number(y) }
    }),
  )
}

for (const [of, kinds] of [
  ['bases', BASES],
  ['uppers, talls and a bench', OTHERS],
  ['what stands in corners', IN_CORNERS],
] as const) {
  test(`each kind is drawn closed and exploded, every part of its cut list with a place of its own: ${of}`, async ({
    shop,
  }) => {
    test.setTimeout(240_000)
    const slider = shop.getByRole('slider', { name: 'Take apart' })
    for (const name of kinds) {
      await startProject(shop, 'Millimetres')
      await slider.fill('0')
      await expect(picture(shop)).toHaveAccessibleName(/closed/)
      const empty = await picture(shop).screenshot()
      await put(shop, name)
      await expect(cabinets(shop)).toHaveCount(1)
      await expect(cabinets(shop).first(), name).toHaveAttribute('aria-pressed', 'true')
      await expect.poll(async () => (await picture(shop).screenshot()).equals(empty), name).toBe(false)
      const closed = await picture(shop).screenshot()
      const parts = await partsListed(shop)
      expect(parts, name).toBeGreaterThan(6)

      await slider.fill('100')
      await expect.poll(async () => (await marks(shop)).length, `boards of the ${name}`).toBe(parts)
      await expect.poll(async () => (await picture(shop).screenshot()).equals(closed), name).toBe(false)
      const written = await marks(shop)
      expect(new Set(written.map(({ text }) => text)).size, `marks of the ${name}`).toBe(parts)
      expect(new Set(written.map(({ x, y }) => `${x},${y}`)).size, `places of the ${name}`).toBe(parts)
      const { width, height } = (await picture(shop).boundingBox())!
      await expect
        .poll(async () => (await marks(shop)).filter(({ x, y }) => !(x > 0 && x < width && y > 0 && y < height)), name)
        .toEqual([])
    }
  })
}
