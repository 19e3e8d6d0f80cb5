import { readFile } from 'node:fs/promises'
import type { Page } from '@playwright/test'
import { button, cabinet, expect, notice, openTab, startProject, test, type, untilSaved } from './shop'

test.use({ looksOn: false, draws3D: false })

async function openMethods(page: Page): Promise<void> {
  await button(page, /Build and boards/).click()
}

function change(page: Page) {
  return page.getByRole('region', { name: 'Change of the build method' })
}

/** The method that the panel shows, by its name. */
function method(page: Page) {
  return page.getByLabel('Name', { exact: true })
}

function choice(page: Page, label: string) {
  return page.getByRole('region', { name: 'Project' }).getByLabel(label, { exact: true })
}

test('a copied method is changed freely, and shows what it would change once the project is built by it', async ({
  shop,
}) => {
  await openMethods(shop)
  await button(shop, 'Copy').click()
  await expect(method(shop)).toHaveValue('Shop standard, copy')
  await expect(change(shop)).toHaveText('')
  await choice(shop, 'Bottom').selectOption('under the sides')
  await expect(button(shop, 'Undo change Shop standard, copy')).toBeEnabled()

  await button(shop, 'Use for the project').click()
  await expect(change(shop)).toContainText('Changes 10 cabinets: 30 parts of other sizes.')
  await choice(shop, 'Top of bases').selectOption('full top')
  await expect(change(shop)).toContainText(/30 parts of other sizes.* new, \d+ gone/)
  await button(shop, 'Apply').click()
  await expect(change(shop)).toHaveText('')
  await expect(choice(shop, 'Method')).toContainText('Shop standard, copy (used)')
  await button(shop, 'Undo build by Shop standard, copy').click()
  await expect(choice(shop, 'Top of bases')).toHaveValue('stretchersFlat')
  await expect(button(shop, 'Undo change Shop standard, copy')).toBeEnabled()
})

test('a change of the method in use waits for a yes, by hand or by Enter, and Escape leaves it', async ({ shop }) => {
  await openMethods(shop)
  const width = choice(shop, '· Nailer width')
  await type(width, '110')
  await expect(change(shop)).toContainText(/^Changes .*parts of other sizes/)
  await shop.keyboard.press('Escape')
  await expect(width).toHaveValue('90')
  await type(width, '105')
  await width.press('Enter')
  await expect(button(shop, 'Undo change Shop standard')).toBeEnabled()
  await expect(change(shop)).toHaveText('')

  await choice(shop, 'Back').selectOption('applied')
  await cabinet(shop, 'B1').click()
  await button(shop, 'Leave it').click()
  await expect(change(shop)).toHaveText('')
  await button(shop, 'Undo change Shop standard').click()
  await expect(button(shop, /^Undo/)).toBeDisabled()
})

test('the chart of hinges is the maker’s to change, row by row and rising', async ({ shop }) => {
  await openMethods(shop)
  const height = choice(shop, '2 hinges up to a height of')
  await expect(height).toHaveValue('1016')
  await type(height, '1600')
  await expect(
    shop.getByText('The height for 2 hinges is 1600 mm; it must be below 1524 mm, which is for 3.'),
  ).toBeVisible()
  await shop.keyboard.press('Escape')
  const weight = choice(shop, '3 hinges below a weight of, kg')
  // 30 lb; the rows beside it are 15 and 45 lb, 6.8 and 20.4 kg.
  await expect(weight).toHaveValue('13.6')
  await type(weight, '6.8')
  await expect(shop.getByText('3 hinges below a weight of, kg is 6.8; it must be at least 6.9.')).toBeVisible()
  await type(weight, '20.5')
  await expect(shop.getByText('3 hinges below a weight of, kg is 20.5; it can be at most 20.4.')).toBeVisible()
  await shop.keyboard.press('Escape')

  await openTab(shop, 'Hardware')
  const hinges = shop.getByRole('row', { name: /full overlay hinge/ }).first()
  const before = (await hinges.textContent())!
  await type(height, '300')
  await button(shop, 'Apply').click()
  await expect(height).toHaveValue('300')
  await expect(hinges).not.toHaveText(before)
})

test('the chart of hinges gets another row and loses it again', async ({ shop }) => {
  await openMethods(shop)
  // 100 and 80 in, so that the next is 120: 3048 mm. No door of the kitchen is so high, and nothing waits for a yes.
  await button(shop, 'Add a row for 6 hinges').click()
  await expect(choice(shop, '6 hinges up to a height of')).toHaveValue('3048')
  await button(shop, 'Remove the row for 6').click()
  await button(shop, 'Remove the row for 5').click()
  await expect(choice(shop, '5 hinges up to a height of')).toHaveCount(0)
  await expect(choice(shop, '4 hinges up to a height of')).toHaveValue('2032')
})

test('sides are balanced by one choice, with the plates of hinges in their grid', async ({ shop }) => {
  await openMethods(shop)
  const inGrid = shop.getByRole('region', { name: 'Project' }).getByLabel('Hinge plates sit in the grid')
  await expect(inGrid).toHaveCount(0)
  await choice(shop, 'Rows of holes').selectOption('asLeft')
  await expect(inGrid).toBeChecked()
  await expect(change(shop)).toContainText(/^Changes \d+ cabinets/)
  await button(shop, 'Apply').click()
  await choice(shop, 'Rows of holes').selectOption('floors')
  await button(shop, 'Apply').click()
  await expect(inGrid).toHaveCount(0)
})

test('a method goes to another project as a file and finds its boards there', async ({ shop }) => {
  await openMethods(shop)
  await type(method(shop), 'Ferry standard')
  const coming = shop.waitForEvent('download')
  await button(shop, 'Save as file').click()
  const download = await coming
  expect(download.suggestedFilename()).toBe('Ferry standard.casewright-method.json')
  const text = await readFile(await download.path(), 'utf8')

  await startProject(shop, 'Inches')
  await openMethods(shop)
  await bringIn(shop, text.replace('"pitch": 32', '"pitch": -32'))
  await expect(notice(shop)).toContainText('method.shelves.pitch is -32; it must be between 1 and 1000 mm.')
  await bringIn(shop, text)
  await expect(method(shop)).toHaveValue('Ferry standard')
  const boards = shop.getByRole('list', { name: 'Boards of the method that was brought in' })
  await expect(boards).toContainText('18 mm birch ply is 3/4 in birch ply here: it measures 23/32 in too.')
  await button(shop, 'Remove').click()
  await expect(button(shop, 'Undo remove Ferry standard')).toBeEnabled()
})

async function bringIn(page: Page, text: string): Promise<void> {
  const coming = page.waitForEvent('filechooser')
  await button(page, 'Bring in a file').click()
  const chooser = await coming
  await chooser.setFiles({ name: 'method.json', mimeType: 'application/json', buffer: Buffer.from(text) })
}

test('a cabinet that is built differently says so on the wall, in its card and in the schedule', async ({ shop }) => {
  await cabinet(shop, 'B1').click()
  await button(shop, /Built differently/).click()
  const card = shop.getByRole('region', { name: 'Properties' })
  await card.getByLabel('Back', { exact: true }).selectOption('applied')
  await card.getByLabel('Slides', { exact: true }).selectOption('undermount')
  await expect(button(shop, /Built differently: 2/)).toBeVisible()
  await expect(card).toContainText('Back, Slides')
  await expect(cabinet(shop, 'B1')).toHaveAccessibleName(/, built differently$/)
  await openTab(shop, 'Schedule')
  await expect(shop.getByRole('row', { name: /^B1/ })).toContainText('built differently: Back, Slides')
  await untilSaved(shop)
  await button(shop, 'All as the build method').click()
  await expect(cabinet(shop, 'B1')).not.toHaveAccessibleName(/built differently/)
})
