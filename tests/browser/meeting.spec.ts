import { button, cabinet, carry, expect, middleOf, onScreen, openTab, schedule, test } from './shop'

test.use({ looksOn: false, draws3D: false })

test('a base at a wall cannot be put into the leg of a corner cabinet at the wall that meets it', async ({ shop }) => {
  await button(shop, 'Site').click()
  await button(shop, 'Add a wall').click()
  await button(shop, 'Add a wall').click()
  await shop.getByLabel('Its left end meets the right end of Wall 2 in a corner').check()

  await button(shop, 'Design').click()
  await button(shop, 'Wall 2').click()
  await button(shop, 'Ready kinds').click()
  await shop.getByRole('menuitem', { name: 'L corner base', exact: true }).click()
  await shop.locator('[data-slot]').last().click({ force: true })
  await expect(cabinet(shop, 'B6')).toHaveCount(1)
  const other = shop.getByRole('region', { name: 'Properties' }).getByLabel('· Other leg')
  const leg = Number(await other.inputValue())

  await shop.keyboard.press('Escape')
  await button(shop, 'Wall 3').click()
  await expect(shop.locator('[data-reaching] [data-mark="B6"]')).toHaveCount(1)
  await button(shop, 'Base').click()
  await shop.locator('[data-slot]').first().click({ force: true })
  await openTab(shop, 'Schedule')
  const lefts = async () => (await schedule(shop)).filter(({ kind }) => kind === 'base').map(({ left }) => left)
  expect(await lefts()).toContain(leg)

  const from = await middleOf(cabinet(shop, 'B7'))
  const origin = await onScreen(shop, 0, 0)
  const into = await onScreen(shop, 400, 0)
  await carry(shop, from, { x: from.x - (into.x - origin.x), y: from.y })
  await expect(shop.locator('[data-gesture="wrong"]')).toBeVisible()
  await expect(shop.getByText(/B7 would overlap B6 by .* in the corner with Wall 2/).first()).toBeVisible()
  await shop.mouse.up()
  expect(await lefts()).toContain(leg)
})
