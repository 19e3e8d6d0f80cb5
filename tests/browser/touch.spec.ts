import { button, cabinet, expect, middleOf, onScreen, openTab, stroke, test } from './shop'

test.use({ looksOn: false, draws3D: false, hasTouch: true })

test('a tap selects, and a drag on the selected box moves it', async ({ shop }) => {
  const middle = await middleOf(cabinet(shop, 'B5'))
  await shop.touchscreen.tap(middle.x, middle.y)
  await expect(cabinet(shop, 'B5')).toHaveAttribute('aria-pressed', 'true')
  // The wall end, 50 away, catches it.
  const by = (await onScreen(shop, 650, 0)).x - (await onScreen(shop, 0, 0)).x
  await stroke(shop, { from: middle, to: { x: middle.x + by + 6, y: middle.y } })
  await expect(button(shop, 'Undo move B5')).toBeEnabled()
  await openTab(shop, 'Schedule')
  await expect(shop.getByLabel('From left of B5', { exact: true })).toHaveValue('3300')
})

test('a finger on a box that is not selected moves the view and nothing else', async ({ shop }) => {
  const middle = await middleOf(cabinet(shop, 'B3'))
  await stroke(shop, { from: middle, to: { x: middle.x - 80, y: middle.y } })
  await expect.poll(async () => (await middleOf(cabinet(shop, 'B3'))).x).toBeLessThan(middle.x - 50)
  await expect(button(shop, 'Undo')).toBeDisabled()
})

test('two fingers go nearer, and what is between them stays there', async ({ shop }) => {
  const before = (await cabinet(shop, 'B3').boundingBox())!
  const middle = await middleOf(cabinet(shop, 'B3'))
  const finger = (side: -1 | 1) => ({
    from: { x: middle.x + side * 30, y: middle.y },
    to: { x: middle.x + side * 60, y: middle.y },
  })
  await stroke(shop, finger(-1), finger(1))
  await expect.poll(async () => (await cabinet(shop, 'B3').boundingBox())!.width / before.width).toBeCloseTo(2, 0)
  const after = await middleOf(cabinet(shop, 'B3'))
  expect(Math.hypot(after.x - middle.x, after.y - middle.y)).toBeLessThan(12)
  await expect(button(shop, 'Undo')).toBeDisabled()
  await button(shop, 'Fit').click()
  await expect.poll(async () => (await cabinet(shop, 'B3').boundingBox())!.width).toBeCloseTo(before.width, 0)
})
