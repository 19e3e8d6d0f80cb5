import type { Page } from '@playwright/test'
import { button, cabinet, expect, goTo, openTab, save, startProject, test, type } from './shop'

test.use({ looksOn: false, draws3D: false })

/** Types a length over the width of B1 in the elevation. */
async function typeWidth(page: Page, text: string): Promise<void> {
  await button(page, /^Width of B1: .* Type another$/).click()
  await page.keyboard.type(text)
  await page.keyboard.press('Enter')
}

async function savedWidths(page: Page): Promise<number[]> {
  const { text } = await save(page)
  const { cabinets } = JSON.parse(text) as { cabinets: Record<string, { kind: string; number: number; width: number }> }
  return Object.values(cabinets)
    .filter(({ kind, number }) => kind === 'base' && number === 1)
    .map(({ width }) => width)
}

async function show(page: Page, unit: 'mm' | 'in'): Promise<void> {
  await page.getByRole('group', { name: 'Unit of lengths' }).getByRole('button', { name: unit }).click()
}

// 30 1/4 in are 30.25 x 25.4 = 768.35 mm.
test('30 1/4 typed in an inch project is 768.35 mm, and its new window measures whole inches', async ({ shop }) => {
  await startProject(shop, 'Inches')
  await goTo(shop, 'Site')
  await button(shop, 'Add window').click()
  for (const name of ['From left', 'Above floor', 'Width', 'Height']) {
    await expect(shop.getByLabel(`${name} of window 1`)).toHaveValue(/^\d+$/)
  }
  await goTo(shop, 'Design')
  await openTab(shop, 'Schedule')
  await button(shop, 'Add base').click()
  await typeWidth(shop, '30 1/4')
  await expect(cabinet(shop, 'B1')).toHaveAccessibleName(/^B1 base, 30 1\/4 wide/)
  expect(await savedWidths(shop)).toEqual([768.35])
  await show(shop, 'mm')
  await expect(shop.getByLabel('Width of B1', { exact: true })).toHaveValue('768.4')
})

test('30 1/4" typed in a millimetre project is 768.35 mm, and reads 30 1/4 in inches', async ({ shop }) => {
  await startProject(shop, 'Millimetres')
  await openTab(shop, 'Schedule')
  await button(shop, 'Add base').click()
  await typeWidth(shop, '30 1/4"')
  await expect(cabinet(shop, 'B1')).toHaveAccessibleName(/^B1 base, 768\.4 wide/)
  await expect(button(shop, /^Width of B1: 768\.4/)).toHaveText('768.4')
  expect(await savedWidths(shop)).toEqual([768.35])
  await show(shop, 'in')
  await expect(cabinet(shop, 'B1')).toHaveAccessibleName(/^B1 base, 30 1\/4 wide/)
  await expect(shop.getByLabel('Width of B1', { exact: true })).toHaveValue('30 1/4')
  expect(await savedWidths(shop)).toEqual([768.35])
})

test('a length that only looked like what is typed becomes it', async ({ shop }) => {
  await startProject(shop, 'Millimetres')
  await openTab(shop, 'Schedule')
  await button(shop, 'Add base').click()
  await show(shop, 'in')
  const width = shop.getByLabel('Width of B1', { exact: true })
  await expect(width).toHaveValue('23 5/8')
  expect(await savedWidths(shop)).toEqual([600])
  // Key by key, since what is put in as a whole and stands there already is no change.
  await width.click()
  await shop.keyboard.type('23 5/8')
  await shop.keyboard.press('Enter')
  // 23.625 x 25.4.
  expect(await savedWidths(shop)).toEqual([600.075])
})

test('in an inch project bits and hardware are told in mm where they are no fraction', async ({ shop }) => {
  await startProject(shop, 'Inches')
  await button(shop, /Build and boards/).click()
  const panel = shop.getByRole('region', { name: 'Project' })
  const pitch = panel.getByLabel('Pitch of holes', { exact: true })
  await expect(pitch).toHaveValue('32 mm')
  await expect(panel.getByLabel('Cup diameter', { exact: true })).toHaveValue('35 mm')
  await expect(panel.getByLabel('First from the end', { exact: true })).toHaveValue('3')
  // The pitch of 1 1/4 is another one than 32 mm, though it looks like it in 32nds.
  await type(pitch, '1 1/4')
  await expect(pitch).toHaveValue('1 1/4')
})

const NONSENSE = [
  ['wide', '"wide" is not understood.'],
  ['30 1/4 x 2', '"x" is not understood.'],
  ['30 1/0"', '"30 1/0"" divides by zero.'],
  ['500,5', '"500,5" has a comma'],
  ['(400', 'A bracket is not closed.'],
] as const

test('what is no length is answered with what was not understood and changes nothing; a sum is worked out', async ({
  shop,
}) => {
  for (const [text, words] of NONSENSE) {
    await typeWidth(shop, text)
    await expect(shop.getByRole('alert')).toContainText(words)
    await expect(shop.getByRole('textbox', { name: 'Width of B1' })).toHaveValue(text)
    await expect(button(shop, 'Undo')).toBeDisabled()
    await shop.keyboard.press('Escape')
    await expect(shop.getByRole('alert')).toHaveCount(0)
    await expect(cabinet(shop, 'B1')).toHaveAccessibleName(/^B1 base, 500 wide/)
  }
  await typeWidth(shop, '600/2 + 18')
  await expect(cabinet(shop, 'B1')).toHaveAccessibleName(/^B1 base, 318 wide/)
})
