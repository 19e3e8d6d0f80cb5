import { writeProject } from '../../engine/project/schema'
import { fortyCabinets } from '../../engine/samples/workshop'
import { countDraws, mostDraws } from './draws'
import { button, expect, openShop, test } from './shop'

/** What a frame may cost in draw calls, all holes of forty cabinets among them. */
const MOST = 150

test('forty cabinets are drawn in few calls, and their holes from near', async ({ page, said }) => {
  await countDraws(page)
  await openShop(page, said)
  const chooser = page.waitForEvent('filechooser')
  await page.keyboard.press('Control+o')
  const buffer = Buffer.from(writeProject(fortyCabinets()))
  await (await chooser).setFiles({ name: 'forty.json', mimeType: 'application/json', buffer })
  // All but the four in the corners of the other wall stand on the one that is looked at.
  await expect(page.locator('[data-cabinet]')).toHaveCount(40 - 4)
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

  async function drawsOf(turn: () => Promise<void>): Promise<number> {
    await mostDraws(page)
    await turn()
    let most = 0
    await expect.poll(async () => (most = Math.max(most, await mostDraws(page)))).toBeGreaterThan(0)
    return most
  }
})
