import type { Locator, Page } from '@playwright/test'
import { button, cabinet, expect, goTo, openTab, test, type } from './shop'

test.use({ looksOn: false, draws3D: false })

/** The message under a field that was not taken. */
async function refusal(field: Locator): Promise<Locator> {
  await expect(field).toHaveAttribute('aria-invalid', 'true')
  const id = (await field.getAttribute('aria-describedby'))!
  return field.page().locator(`[id="${id}"]`)
}

/** After whatever was refused, the next edit is taken, and it is the only step to undo. */
async function expectAllWorks(page: Page): Promise<void> {
  const field = page.getByLabel('Width of B2', { exact: true })
  await type(field, '250')
  await expect(cabinet(page, 'B2')).toHaveAccessibleName(/^B2 base, 250 wide/)
  await button(page, 'Undo narrow B2').click()
  await expect(button(page, 'Undo')).toBeDisabled()
}

const REFUSED = [
  ['Width of B1', '0', 'The width is 0 mm; it must be at least 50 mm.'],
  ['Width of B1', '-500', 'The width is -500 mm; it must be at least 50 mm.'],
  ['Width of B1', '1e9', '"e9" is not understood'],
  ['Width of B1', '99999999999', 'The width is 99999999999 mm; it can be at most 6000 mm.'],
  ['Width of B1', 'NaN', '"NaN" is not understood.'],
  ['Width of B1', '1/0', 'That divides by zero.'],
  ['Width of B1', '4200', 'B1 is 4200 mm wide; the wall is 3600 mm long.'],
  ['Width of B4', '1400', 'B4 would'],
  ['Height of T1', '2600', 'T1 would reach 200 mm above the ceiling (2400 mm).'],
  ['From left of B5', '3450', 'B5 would stand 150 mm past the right end of the wall (3600 mm).'],
  ['From left of U2', '1500', 'U2 would cover the window by 500 mm.'],
] as const

test('a size or place that cannot be is refused with the reason, and everything else goes on', async ({ shop }) => {
  test.slow()
  await openTab(shop, 'Schedule')
  for (const [field, text, words] of REFUSED) {
    const asked = shop.getByLabel(field, { exact: true })
    const before = await asked.inputValue()
    await type(asked, text)
    await expect(await refusal(asked)).toContainText(words)
    await expect(button(shop, 'Undo')).toBeDisabled()
    await asked.press('Escape')
    await expect(asked).toHaveValue(before)
    await expectAllWorks(shop)
  }
})

test('a thickness that no board has, and a number that is none, are refused', async ({ shop }) => {
  await goTo(shop, 'Cut')
  const measures = shop.locator('[data-material="carcass"]').getByLabel('Measures')
  const lifts = shop.getByLabel('One lifts, kg')
  for (const [field, text, words] of [
    [measures, '0', 'The thickness is 0 mm; it must be at least 1 mm.'],
    [measures, '500', 'The thickness is 500 mm; it can be at most 100 mm.'],
    [lifts, 'strong', '"strong" is not a number.'],
    [lifts, '-5', 'One lifts, kg is -5; it must be at least 0.'],
    [lifts, '1e6', 'One lifts, kg is 1000000; it can be at most 200.'],
  ] as const) {
    await type(field, text)
    await expect(await refusal(field)).toHaveText(words)
  }
  await expect(button(shop, 'Undo')).toBeDisabled()
  await measures.press('Escape')
  await expect(measures).toHaveValue('18')
})

test('boards thicker than a cabinet is wide are a finding with value and limit, and are undone', async ({ shop }) => {
  await openTab(shop, 'Schedule')
  await type(shop.getByLabel('Width of B2', { exact: true }), '100')
  await goTo(shop, 'Cut')
  await type(shop.locator('[data-material="carcass"]').getByLabel('Measures'), '60')
  await goTo(shop, 'Design')
  await openTab(shop, 'Findings')
  const findings = shop.getByRole('table', { name: 'Findings' }).locator('tr[data-weight=stop]')
  await expect(findings.first()).toContainText('B2: two sides of 60 mm leave nothing clear in a width of 100 mm.')
  await button(shop, /^Undo/).click()
  await button(shop, /^Undo/).click()
  await expect(findings).toHaveCount(0)
  await expect(shop.getByRole('tab', { name: /^Sheets [1-9]/ })).toBeVisible()
})

test('a part longer than any sheet is named with its size and that of the sheet; the rest is laid out', async ({
  shop,
}) => {
  await goTo(shop, 'Cut')
  const carcass = shop.locator('[data-material="carcass"]')
  await type(carcass.getByLabel('Sheet length'), '1500')
  await goTo(shop, 'Design')
  await openTab(shop, 'Findings')
  const finding = shop.getByRole('table', { name: 'Findings' }).locator('tr[data-weight=stop]').first()
  await expect(finding).toContainText(
    /2052\smm x \d+\smm is larger than 1480\smm x 1200\smm, what the sheet of 18\smm birch ply \(1500\smm x 1220\smm\) gives less its trim\. 1480\smm x \d+\smm would fit\./,
  )
  await openTab(shop, 'Sheets')
  await expect(shop.locator('[data-sheet]').first()).toBeVisible()
  await expect(shop.getByText(/on no sheet:/).first()).toBeVisible()
  await openTab(shop, 'Schedule')
  await type(shop.getByLabel('Width of B2', { exact: true }), '250')
  await expect(cabinet(shop, 'B2')).toHaveAccessibleName(/^B2 base, 250 wide/)
})

test('a wall made too short keeps its cabinets and says which stand past its end', async ({ shop }) => {
  await goTo(shop, 'Site')
  await type(shop.getByLabel('Length', { exact: true }), '2500')
  await goTo(shop, 'Design')
  await openTab(shop, 'Findings')
  const table = shop.getByRole('table', { name: 'Findings' })
  await expect(table).toContainText('B5 would stand 450 mm past the right end of the wall (2500 mm)')
  await button(shop, /^Undo/).click()
  await expect(shop.getByText('past the right end')).toHaveCount(0)
  await expect(cabinet(shop, 'B5')).toHaveAccessibleName(/^B5 base, 300 wide/)
})

test('a window stays within its wall: one that would not is refused with by how much, a new one is made lower', async ({
  shop,
}) => {
  await goTo(shop, 'Site')
  const left = shop.getByLabel('From left of window 1')
  await type(left, '2700')
  await expect(await refusal(left)).toHaveText(
    'The window would reach 300 mm past the right end of the wall (3600 mm).',
  )
  await left.press('Escape')
  const height = shop.getByLabel('Height of window 1')
  await type(height, '1450')
  await expect(await refusal(height)).toHaveText('The window would reach 50 mm above the ceiling (2400 mm).')
  await expect(button(shop, 'Undo')).toBeDisabled()
  await height.press('Escape')

  await button(shop, 'Delete window 1').click()
  await type(shop.getByLabel('Height', { exact: true }), '800')
  await button(shop, 'Add window').click()
  await expect(shop.getByLabel('Height of window 1')).toHaveValue('800')
  await expect(shop.getByLabel('Above floor of window 1')).toHaveValue('0')
})

test('a gap that cannot be is refused by its own name', async ({ shop }) => {
  await cabinet(shop, 'B3').click({ position: { x: 20, y: 40 } })
  const card = shop.getByRole('region', { name: 'Properties' })
  for (const [label, text, words] of [
    ['Gap left', '-5', 'The gap at the left is -5 mm; it must be at least 0 mm.'],
    ['Gap right', '99999', 'The gap at the right is 99999 mm; it can be at most 60000 mm.'],
  ] as const) {
    const gap = card.getByLabel(label, { exact: true })
    await type(gap, text)
    await expect(await refusal(gap)).toHaveText(words)
    await gap.press('Escape')
  }
})
