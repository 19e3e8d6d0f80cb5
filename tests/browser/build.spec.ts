import type { Page } from '@playwright/test'
import {
  applyEdit,
  type Cabinet,
  demonstrationKitchen,
  derive,
  newCabinetAt,
  newProject,
  type Opening,
  type Project,
  valuesOf,
  type Wall,
} from '../../engine/index'
import {
  button,
  cabinets,
  countOf,
  drag,
  expect,
  goTo,
  middleOf,
  onScreen,
  openTab,
  type Standing,
  schedule,
  startProject,
  test,
  type,
} from './shop'

test.use({ looksOn: false })

const SAMPLE = valuesOf<Cabinet>(demonstrationKitchen().cabinets)
const [WALL] = valuesOf<Wall>(demonstrationKitchen().walls)
const [WINDOW] = valuesOf<Opening>(WALL!.openings)

/** The sample's cabinets with the fronts and shelves that new ones come with. */
function plainKitchen(): Project {
  return SAMPLE.reduce((project, { kind, left, width }) => {
    const fresh = newCabinetAt(project, kind, left, Math.min(width, 600))!
    return applyEdit(project, { kind: 'addCabinet', cabinet: { ...fresh, width } })
  }, newProject('mm'))
}

function byPlace(all: readonly Standing[]): Standing[] {
  return all
    .map(({ kind, left, width }) => ({ kind, left, width }))
    .sort((a, b) => (a.kind < b.kind ? -1 : a.kind > b.kind ? 1 : a.left - b.left))
}

/** What stands is what the sample says, and what it is cut from is the same whichever way it was drawn. */
async function expectTheKitchen(page: Page): Promise<void> {
  expect(byPlace(await schedule(page))).toEqual(byPlace(SAMPLE))
  const { cutList, partOf, problems } = derive(plainKitchen())
  await expect(page.locator('[data-figure="parts"]')).toContainText(String(partOf.size))
  expect(await countOf(page, 'Cut list')).toBe(cutList.rows.length)
  const toMind = problems.filter(({ weight }) => weight !== 'know')
  expect(await countOf(page, 'Findings')).toBe(toMind.length || problems.length)
}

const { left, bottom, width, height } = WINDOW!
const SIZES = { Width: width, Height: height, 'Above floor': bottom, 'From left': left }

async function putTheWindow(page: Page): Promise<void> {
  await goTo(page, 'Site')
  await button(page, 'Add window').click()
  for (const [name, length] of Object.entries(SIZES)) {
    await type(page.getByLabel(`${name} of window 1`), String(length))
  }
  await goTo(page, 'Design')
  // The wall alone: what is seen in 3D has tests of its own.
  await button(page, 'Let the wall fill the window').click()
}

test.describe('the wall of the demonstration is built from a new project', () => {
  test.slow()

  test('by pulling boxes from the tray and stretching them', async ({ shop }) => {
    await startProject(shop, 'Millimetres')
    await putTheWindow(shop)
    await pull(shop, 'tall', 0)
    await pull(shop, 'base', 600, ['right', 1100])
    await pull(shop, 'base', 1100, ['right', 1400])
    await pull(shop, 'base', 1400, ['right', 2200])
    await pull(shop, 'base', 2200, ['right', 2650])
    await pull(shop, 'base', 2650, ['right', 2950])
    await pull(shop, 'upper', 600, ['right', 1250])
    await pull(shop, 'upper', 2950, ['left', 3250])
    await pull(shop, 'upper', 2650, ['left', 2850])
    await pull(shop, 'upper', 2400, ['left', 2550])
    await button(shop, 'Show all panes again').click()
    await openTab(shop, 'Schedule')
    await expectTheKitchen(shop)
  })

  /** Pulls a box of 600 so that its left side would be at a place, then stretches one of its edges to another. */
  async function pull(page: Page, kind: string, left: number, stretch?: ['left' | 'right', number]) {
    const count = await cabinets(page).count()
    const height = kind === 'upper' ? 1800 : 400
    await drag(page, await middleOf(page.locator(`[data-tray="${kind}"]`)), await onScreen(page, left + 300, height))
    await expect(cabinets(page)).toHaveCount(count + 1)
    if (!stretch) return
    const [edge, to] = stretch
    const handle = page.locator(`[data-handle="${edge}"]`)
    const from = await middleOf(handle)
    await drag(page, from, { x: (await onScreen(page, to, 0)).x, y: from.y })
    // The next box is pulled when this edge stands.
    const off = async () => Math.abs((await middleOf(handle)).x - (await onScreen(page, to, 0)).x)
    await expect.poll(off).toBeLessThan(3)
  }

  test('by the keyboard alone', async ({ shop }) => {
    const press = (key: string) => shop.keyboard.press(key)
    await shop.evaluate(() => addEventListener('pointerdown', () => console.error('the mouse was used'), true))
    await tabTo(shop, 'Project menu')
    await press('Enter')
    await expect(shop.getByRole('menuitem', { name: 'New project' })).toBeFocused()
    await press('Enter')
    await tabTo(shop, 'Millimetres')
    await press('Enter')
    await expect(cabinets(shop)).toHaveCount(0)

    await tabTo(shop, 'Site')
    await press('Enter')
    await tabTo(shop, 'Add window')
    await press('Enter')
    for (const [name, length] of Object.entries(SIZES)) {
      await tabTo(shop, `${name} of window 1`)
      await shop.keyboard.type(String(length))
      await press('Enter')
    }
    await tabTo(shop, 'Design')
    await press('Enter')

    await tabTo(shop, 'Tall')
    await press('Enter')
    await expect(button(shop, /^Put a new tall at 0,/)).toBeFocused()
    await press('Enter')
    await expect(cabinets(shop).first()).toBeFocused()
    for (const width of [500, 300, 800, 450, 300]) await add(shop, 'b', width)
    await add(shop, 'u', 650)
    await add(shop, 'u', 300)
    for (let step = 0; step < 5; step++) await press('Shift+ArrowRight')
    await add(shop, 'u', 400)
    await add(shop, 'u', 300)
    await tabTo(shop, /^Cut list/)
    for (let step = 0; step < 4; step++) await press('ArrowRight')
    await expectTheKitchen(shop)
  })

  /** Adds a cabinet in the first free place and types its width. */
  async function add(page: Page, key: string, width: number) {
    const count = await cabinets(page).count()
    await page.keyboard.press(key)
    await expect(cabinets(page)).toHaveCount(count + 1)
    await expect(page.locator('[data-cabinet]:focus')).toHaveCount(1)
    await page.keyboard.press('Enter')
    // What is typed before the field has the keyboard is lost.
    await expect(page.locator('input:focus')).toHaveCount(1)
    await page.keyboard.type(String(width))
    await page.keyboard.press('Enter')
    await expect(page.locator(`[data-cabinet][aria-pressed=true]`)).toHaveAccessibleName(new RegExp(`, ${width} wide`))
  }

  test('by clicking free places and typing sizes', async ({ shop }) => {
    await startProject(shop, 'Millimetres')
    await putTheWindow(shop)
    await placeAt(shop, 'tall', 0)
    await placeAt(shop, 'base', 600, { Width: 500 })
    await placeAt(shop, 'base', 1100, { Width: 300 })
    await placeAt(shop, 'base', 1400, { Width: 800 })
    await placeAt(shop, 'base', 2200, { Width: 450 })
    await placeAt(shop, 'base', 2650, { Width: 300 })
    await placeAt(shop, 'upper', 600, { Width: 650 })
    await placeAt(shop, 'upper', 2500, { Width: 300, 'From left': 3250 })
    await placeAt(shop, 'upper', 2500, { Width: 400, 'From left': 2850 })
    await placeAt(shop, 'upper', 2500, { Width: 300, 'From left': 2550 })
    await button(shop, 'Show all panes again').click()
    await openTab(shop, 'Schedule')
    await expectTheKitchen(shop)
  })

  /** Presses a thing of the tray, picks the free place that begins at a length, and types sizes into the card. */
  async function placeAt(page: Page, kind: string, left: number, sizes: Record<string, number> = {}) {
    await page.locator(`[data-tray="${kind}"]`).click()
    await button(page, new RegExp(`^Put a new ${kind} at ${left},`)).click()
    await expect(page.locator('[data-slot]')).toHaveCount(0)
    const card = page.getByRole('region', { name: 'Properties' })
    for (const [name, length] of Object.entries(sizes)) {
      await type(card.getByLabel(name, { exact: true }), String(length))
      await expect(card.getByLabel(name, { exact: true })).toHaveValue(String(length))
    }
  }
})

const MOST_STOPS = 200

/** Presses Tab until what has the keys is called so. */
async function tabTo(page: Page, name: string | RegExp): Promise<void> {
  for (let stop = 0; stop < MOST_STOPS; stop++) {
    await page.keyboard.press('Tab')
    const heard = await page.evaluate(() => {
      const held = document.activeElement
      const label = held instanceof HTMLInputElement ? held.labels?.[0]?.textContent : null
      return (held?.getAttribute('aria-label') ?? label ?? held?.textContent ?? '').trim()
    })
    if (typeof name === 'string' ? heard === name : name.test(heard)) return
  }
  throw new Error(`${MOST_STOPS} presses of Tab do not lead to ${name}.`)
}
