import type { Page } from '@playwright/test'
import { demonstrationKitchen, writeProject } from '../../engine/index'
import {
  button,
  cabinet,
  cabinets,
  expect,
  notice,
  openFile,
  openTab,
  pickInMenu,
  save,
  startProject,
  test,
  type,
  untilSaved,
} from './shop'

test.use({ looksOn: false, draws3D: false })

const NAME = 'Name of the project'

async function rename(page: Page, name: string): Promise<void> {
  await type(page.getByLabel(NAME), name)
  await untilSaved(page)
}

test('a project that is begun is called apart from those that are there', async ({ shop }) => {
  await startProject(shop, 'Millimetres')
  await expect(shop.getByLabel(NAME)).toHaveValue('New project')
  await untilSaved(shop)
  await startProject(shop, 'Millimetres')
  await expect(shop.getByLabel(NAME)).toHaveValue('New project (2)')
})

test('every project is there after a reload, and the one at work is open', async ({ shop }) => {
  await startProject(shop, 'Inches')
  await rename(shop, 'Boat house')
  await openTab(shop, 'Schedule')
  await button(shop, 'Add base').click()
  await startProject(shop, 'Millimetres')
  await rename(shop, 'Lock cottage')
  await shop.reload()
  await expect(shop.getByLabel(NAME)).toHaveValue('Lock cottage')
  await expect(cabinets(shop)).toHaveCount(0)

  await pickInMenu(shop, /^Projects in this browser/)
  const list = shop.getByRole('dialog', { name: 'Projects in this browser' })
  await expect(list.getByRole('listitem')).toHaveCount(3)
  await expect(list.getByRole('listitem').filter({ hasText: 'Boat house' })).toContainText('1 cabinet,')
  await list.getByRole('button', { name: 'Open Boat house' }).click()
  await expect(cabinet(shop, 'B1')).toHaveAccessibleName('B1 base, 24 wide, 1 of 1')
  await shop.reload()
  await expect(shop.getByLabel(NAME)).toHaveValue('Boat house')
  await expect(cabinets(shop)).toHaveCount(1)

  await pickInMenu(shop, /^Projects in this browser/)
  await list.getByRole('button', { name: 'Open Ferry Cottage kitchen' }).click()
  await expect(cabinets(shop)).toHaveCount(10)
})

test('a saved file opens again as the same project', async ({ shop }) => {
  await type(shop.getByLabel(NAME), 'Ferry Cottage, second visit')
  await openTab(shop, 'Schedule')
  await type(shop.getByLabel('Width of B1', { exact: true }), '17 3/4"')
  const first = await save(shop)
  expect(first.name).toBe('Ferry Cottage, second visit.casewright.json')
  await startProject(shop, 'Inches')
  await openFile(shop, first.text)
  await expect(cabinets(shop)).toHaveCount(10)
  const own = 'Ferry Cottage, second visit (2)'
  await expect(notice(shop)).toHaveText(
    new RegExp(`in this browser already.*opened beside it as ${own.replace(/[()]/g, '.')}`),
  )
  await expect(shop.getByLabel(NAME)).toHaveValue(own)
  const again = await save(shop)
  expect(asItIs(again.text)).toEqual(asItIs(first.text))
})

/** An opened file is a project of its own, so its id and its name are new; all else is the same. */
function asItIs(text: string): unknown {
  return { ...(JSON.parse(text) as object), id: null, name: null }
}

const { version: VERSION } = demonstrationKitchen()
const SOUND = writeProject(demonstrationKitchen())

/** What ails a file, its text, and what is said of it. */
const BROKEN = [
  ['a file cut short', SOUND.slice(0, 900), 'it is not JSON, or it is cut short'],
  [
    'a file with a length that is no number',
    SOUND.replace('"width": 450', '"width": NaN'),
    /Line \d+, cabinets\.\w+\.width: the value is NaN, which is no JSON number/,
  ],
  [
    'a file of a later version',
    SOUND.replace(`"version": ${VERSION}`, '"version": 77'),
    `of version 77; this Casewright reads up to version ${VERSION}`,
  ],
  [
    'a file with a length too great',
    SOUND.replace('"width": 450', '"width": 45000'),
    'width is 45000; it must be between',
  ],
  ['a file with a kind that is not known', SOUND.replace('"kind": "tall"', '"kind": "round"'), 'kind is "round"'],
  ['a file with a field missing', SOUND.replace(/\n {2}"kerf": [\d.]+,/, ''), 'shop.kerf is missing'],
] as const

test('a file that cannot be read is refused with what is wrong, and what was open stays', async ({ shop }) => {
  await openTab(shop, 'Schedule')
  await type(shop.getByLabel('Width of B2', { exact: true }), '250')
  const before = await save(shop)
  for (const [what, text, words] of BROKEN) {
    expect(text, what).not.toBe(SOUND)
    await openFile(shop, text)
    await expect(notice(shop), what).toHaveAttribute('data-tone', 'stop')
    await expect(notice(shop), what).toContainText(words)
    await expect(button(shop, 'Undo narrow B2')).toBeEnabled()
    await button(shop, 'Dismiss this message').click()
    expect(await save(shop), what).toEqual(before)
  }
})
