import type { Locator } from '@playwright/test'
import { button, expect, openTab, test, type } from './shop'

test.use({ looksOn: false, draws3D: false })

const NAME = 'Kitchen and utility room of the Orchard Lane house'

/** Whether all of its words are seen: nothing of them is hidden past an edge. */
function isWhole(thing: Locator): Promise<boolean> {
  return thing.evaluate((one) => one.scrollWidth <= one.clientWidth + 1 && one.scrollHeight <= one.clientHeight + 1)
}

for (const [width, height] of [
  [1440, 900],
  [1024, 768],
  [390, 844],
] as const) {
  test(`the name of the project is read in full at ${width}`, async ({ shop }) => {
    await shop.setViewportSize({ width, height })
    const name = shop.getByLabel('Name of the project')
    await type(name, NAME)
    await expect(name).toHaveValue(NAME)
    expect(await isWhole(name)).toBe(true)
    const header = await shop.getByRole('banner').boundingBox()
    const box = (await name.boundingBox())!
    expect(box.y + box.height).toBeLessThanOrEqual(header!.y + header!.height)
  })
}

test('what would be undone is read in full in a middling window', async ({ shop }) => {
  await shop.setViewportSize({ width: 1024, height: 768 })
  await openTab(shop, 'Findings')
  await button(shop, /^Do it: Put .*nailers into T1/).click()
  const undo = button(shop, /^Undo put .*nailers into T1/)
  await expect(undo).toBeVisible()
  expect(await isWhole(undo.locator('span'))).toBe(true)
  const [box, header] = [(await undo.boundingBox())!, (await shop.getByRole('banner').boundingBox())!]
  expect(box.y).toBeGreaterThanOrEqual(header.y)
  expect(box.y + box.height).toBeLessThanOrEqual(header.y + header.height)
})
