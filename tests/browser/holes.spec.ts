import { writeProject } from '../../engine/project/schema'
import { fortyCabinets } from '../../engine/samples/workshop'
import { countDraws, mostDraws } from './draws'
import { button, expect, openShop, test } from './shop'

test.use({ looksOn: false })

/** What a frame may cost in draw calls: forty cabinets with all their holes, and all kicks, tops and trims over them. */
const MOST = 150

test('forty cabinets are drawn in few calls, and their holes from near', async ({ page, said }) => {
  await countDraws(page)
  await openShop(page, said)
  const chooser = page.waitForEvent('filechooser')
  await page.keyboard.press('Control+o')
  const buffer = Buffer.from(writeProject(fortyCabinets()))
  await (await chooser).setFiles({ name: 'forty.json', mimeType: 'application/json', buffer })
  // All but the four in the corners of the other wall stand on the one that is looked at, with five spaces among them.
  await expect(page.locator('[data-cabinet]')).toHaveCount(40 - 4 + 5, { timeout: 30_000 })
  const picture = page.getByRole('group', { name: /^3D view/ })
  await button(page, 'Fit all').click()
  await picture.focus()
  await page.waitForTimeout(1000)
  await mostDraws(page)
  await page.keyboard.press('ArrowLeft')
  await expect.poll(() => mostDraws(page)).toBeGreaterThan(80)
  const far = await drawsOf(() => page.keyboard.press('ArrowRight'))
  for (let step = 0; step < 14; step++) await page.keyboard.press('+')
  await page.waitForTimeout(300)
  const near = await drawsOf(() => page.keyboard.press('ArrowLeft'))
  expect(near).toBeGreaterThan(far)
  expect(near).toBeLessThanOrEqual(MOST)

  // Boards over several cabinets are lit as any, though they are drawn together.
  const crown = page.locator('tr[data-row]').filter({ hasText: 'crown' }).first()
  await page.getByRole('grid', { name: 'Cut list' }).hover()
  for (let turn = 0; turn < 60 && (await crown.count()) === 0; turn++) await page.mouse.wheel(0, 300)
  const before = await picture.screenshot()
  const lit = await drawsOf(() => crown.locator('td').nth(1).click())
  expect(lit).toBeLessThanOrEqual(MOST)
  await expect.poll(async () => (await picture.screenshot()).equals(before)).toBe(false)

  async function drawsOf(turn: () => Promise<void>): Promise<number> {
    await mostDraws(page)
    await turn()
    let most = 0
    await expect.poll(async () => (most = Math.max(most, await mostDraws(page)))).toBeGreaterThan(0)
    return most
  }
})
