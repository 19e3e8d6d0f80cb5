import { readFile } from 'node:fs/promises'
import { test as base, type Download, expect, type Locator, type Page } from '@playwright/test'

/** Remarks about the tests themselves: a picture was read from the graphics card, or no copies may be kept. */
const NOT_OURS = /GPU stall due to ReadPixels|Service Worker registration blocked by Playwright/

interface Choices {
  /**
   * Whether the packer goes on looking for better layouts after its first, as it does for a person. That is half of what a
   * page takes, and is spared where a file of tests looks at no layout or at any that there is.
   */
  readonly looksOn: boolean
  /**
   * Whether the browser has graphics for the 3D, which the processor draws here. A fifth of the rest is spared without them
   * where a file of tests looks at the wall or the lists of cabinets that other files draw in 3D.
   */
  readonly draws3D: boolean
}

interface Fixtures {
  /** What the page has said that it should not; it must be nothing when the test is over. */
  readonly said: string[]
  /** A page with the demonstration open, as a first visitor finds it. */
  readonly shop: Page
}

/** A test of the real app. It fails when the page warned, failed or called anywhere outside this machine. */
export const test = base.extend<Fixtures & Choices>({
  looksOn: [true, { option: true }],
  draws3D: [true, { option: true }],
  page: async ({ page, looksOn, draws3D }, use) => {
    if (!looksOn) await page.addInitScript(takeFirstLayouts)
    if (!draws3D) await page.addInitScript(giveNoGraphics)
    await use(page)
  },
  // biome-ignore lint/correctness/noEmptyPattern: Playwright reads from the pattern that nothing else is needed.
  said: async ({}, use) => {
    const said: string[] = []
    await use(said)
    expect(said, 'warnings, errors and requests to other machines').toEqual([])
  },
  shop: async ({ page, said }, use) => {
    await openShop(page, said)
    await use(page)
  },
})

export { expect }

/** Gives every job of the page no time beyond its first answer. What else is written to a worker goes as it is. */
function takeFirstLayouts(): void {
  const { postMessage } = Worker.prototype
  Worker.prototype.postMessage = function (this: Worker, letter: { readonly job?: object }) {
    postMessage.call(this, letter.job ? { ...letter, job: { ...letter.job, seconds: 0 } } : letter)
  }
}

/** Opens the demonstration and notes from then on all that the page should not say. */
export async function openShop(page: Page, said: string[]): Promise<void> {
  listen(page, said)
  // Choosers are caught from the start: one that opens before it is waited for would be lost.
  page.on('filechooser', () => {})
  await page.goto('/')
  await expect(cabinets(page)).toHaveCount(10)
}

function listen(page: Page, said: string[]): void {
  page.on('console', (message) => {
    const isLoud = message.type() === 'error' || message.type() === 'warning'
    if (isLoud && !NOT_OURS.test(message.text())) said.push(message.text())
  })
  page.on('pageerror', (error) => said.push(error.message))
  page.on('request', (request) => {
    const { protocol, hostname } = new URL(request.url())
    if (protocol.startsWith('http') && hostname !== 'localhost') said.push(`asked ${request.url()}`)
  })
}

function giveNoGraphics(): void {
  const { getContext } = HTMLCanvasElement.prototype
  HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, kind: string, ...more: unknown[]) {
    return kind.startsWith('webgl') ? null : Reflect.apply(getContext, this, [kind, ...more])
  } as typeof getContext
}

export function cabinets(page: Page): Locator {
  return page.locator('[data-cabinet]')
}

/** A cabinet of the elevation by its mark. */
export function cabinet(page: Page, mark: string): Locator {
  return page.locator(`[data-cabinet][aria-label^="${mark} "]`)
}

export function button(page: Page, name: string | RegExp): Locator {
  return page.getByRole('button', { name, exact: typeof name === 'string' })
}

export async function goTo(page: Page, stage: 'Site' | 'Design' | 'Show' | 'Cut' | 'Build'): Promise<void> {
  await page.getByRole('navigation', { name: 'Stages of the work' }).getByRole('button', { name: stage }).click()
}

export async function openTab(page: Page, name: string): Promise<void> {
  await page.getByRole('tab', { name: new RegExp(`^${name}`) }).click()
}

/** Types over what a field holds, and settles it. */
export async function type(field: Locator, text: string): Promise<void> {
  await field.fill(text)
  await field.press('Enter')
}

/** Picks an entry of the project menu. */
export async function pickInMenu(page: Page, name: RegExp): Promise<void> {
  await button(page, 'Project menu').click()
  await page.getByRole('menuitem', { name }).click()
}

export async function startProject(page: Page, unit: 'Millimetres' | 'Inches'): Promise<void> {
  await pickInMenu(page, /^New project/)
  await button(page, unit).click()
  await expect(cabinets(page)).toHaveCount(0)
}

/**
 * Picks a board on the sheets of Design. A better layout may come between the look and the click, and put another board
 * under it: then it is picked again.
 */
export async function pickBoard(page: Page, mark: string): Promise<void> {
  const sheets = page.getByRole('tabpanel', { name: 'Sheets' })
  await expect(async () => {
    await sheets
      .getByRole('button', { name: new RegExp(`\\b${mark}\\b`) })
      .first()
      .click()
    await expect(sheets.getByText(mark, { exact: true })).toBeVisible({ timeout: 1000 })
  }).toPass({ timeout: 20_000 })
}

/** Picks what the countertops of the project are made of, with nothing chosen on the wall, and folds the page of it again. */
export async function pickTop(page: Page, board: string): Promise<void> {
  await page.locator('section[aria-label^="Elevation"]').focus()
  await page.keyboard.press('Escape')
  await button(page, /Build and boards/).click()
  await button(page, 'Kick, top, trims').click()
  await page.getByLabel('Board', { exact: true }).selectOption(board)
  await button(page, /Build and boards/).click()
}

/** Where a point of the wall is in the window, in pixels: x along the wall, y up from the floor, in mm. */
export async function onScreen(page: Page, x: number, y: number): Promise<{ x: number; y: number }> {
  return page.locator('svg[aria-label$="seen from the room"] > g').evaluate(
    (wall, at) => {
      const { x, y } = new DOMPoint(at.x, -at.y).matrixTransform((wall as SVGGElement).getScreenCTM()!)
      return { x, y }
    },
    { x, y },
  )
}

interface Point {
  readonly x: number
  readonly y: number
}

/** Presses the mouse at a point of the window and carries it to another, a few moves on the way; it stays down. */
export async function carry(page: Page, from: Point, to: Point): Promise<void> {
  await page.mouse.move(from.x, from.y)
  await page.mouse.down()
  await page.mouse.move(from.x + 6, from.y, { steps: 2 })
  await page.mouse.move(to.x, to.y, { steps: 4 })
}

export async function drag(page: Page, from: Point, to: Point): Promise<void> {
  await carry(page, from, to)
  await page.mouse.up()
}

/** Fingers put down, moved and lifted together, a few moves on the way. The page must have touch. */
export async function stroke(
  page: Page,
  ...fingers: readonly { readonly from: Point; readonly to: Point }[]
): Promise<void> {
  const glass = await page.context().newCDPSession(page)
  const steps = 6
  const at = (share: number) =>
    fingers.map(({ from, to }, id) => ({
      id,
      x: from.x + (to.x - from.x) * share,
      y: from.y + (to.y - from.y) * share,
    }))
  await glass.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: at(0) })
  for (let step = 1; step <= steps; step++) {
    await glass.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: at(step / steps) })
  }
  await glass.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] })
}

/** The middle of what is drawn, in the window. */
export async function middleOf(thing: Locator): Promise<Point> {
  const { x, y, width, height } = (await thing.boundingBox())!
  return { x: x + width / 2, y: y + height / 2 }
}

export interface Standing {
  readonly kind: string
  readonly left: number
  readonly width: number
}

/** Every cabinet as the open Schedule has it, from left to right, in the unit that is shown. */
export async function schedule(page: Page): Promise<Standing[]> {
  return page.getByRole('table', { name: 'Schedule of cabinets' }).evaluate((table) =>
    [...table.querySelectorAll('tbody tr')].map((row) => {
      const [left, , width] = [...row.querySelectorAll('input')].map((field) => Number(field.value))
      return { kind: row.querySelector('select')!.value, left: left!, width: width! }
    }),
  )
}

/** The number beside the name of a tab of the lists. */
export async function countOf(page: Page, tab: string): Promise<number> {
  const words = await page.getByRole('tab', { name: new RegExp(`^${tab}`) }).textContent()
  return Number(/\d+/.exec(words ?? '')?.[0])
}

export async function save(page: Page): Promise<{ readonly name: string; readonly text: string }> {
  const coming = page.waitForEvent('download')
  await page.keyboard.press('Control+s')
  const download: Download = await coming
  return { name: download.suggestedFilename(), text: await readFile(await download.path(), 'utf8') }
}

/** Opens a project file of a given text, as a person would pick it. */
export async function openFile(page: Page, text: string): Promise<void> {
  const coming = page.waitForEvent('filechooser')
  await page.keyboard.press('Control+o')
  const chooser = await coming
  await chooser.setFiles({ name: 'kitchen.casewright.json', mimeType: 'application/json', buffer: Buffer.from(text) })
}

/** The message about what just happened. */
export function notice(page: Page): Locator {
  return page.locator('[data-tone]')
}

/** Waits until everything done so far is kept. */
export async function untilSaved(page: Page): Promise<void> {
  await expect(page.getByText(/^● saved/)).toBeVisible()
}
