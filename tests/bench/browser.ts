/** What a real pointer drag costs in headless Chromium, on the forty-cabinet sample. */
import { setTimeout } from 'node:timers/promises'
import { type Browser, chromium, type Page } from '@playwright/test'
import { preview } from 'vite'
import { writeProject } from '../../engine/project/schema'
import { fortyCabinets } from '../../engine/samples/workshop'
import { QUIET } from '../browser/chromium'
import { countDraws, framesDrawn, mostDraws } from '../browser/draws'
import { median, quantile } from './engine'
import { traced, workPerMove } from './trace'

const MOVES = 300
const DRAGS = 3
const ENDINGS = 7
/** A hand moves the pointer sixty times a second. */
const PACE_MS = 1000 / 60

export async function benchBrowser() {
  const server = await preview({
    root: 'web',
    configFile: 'vite.config.ts',
    logLevel: 'silent',
    preview: { port: 4187 },
  })
  const browser = await chromium.launch({ executablePath: process.env.CASEWRIGHT_CHROMIUM, args: QUIET })
  try {
    const address = server.resolvedUrls!.local[0]!
    // Draws are counted in a page of their own, since counting them takes time.
    const counting = await samplePage(browser, address, countDraws)
    const drawCalls = await drawCallsOf(counting)
    const orbitFramesPerSecond = await orbitFramesOf(counting)
    await counting.close()
    const page = await samplePage(browser, address)
    const withCutList = await workOf(browser, page, /^Cut list/)
    const withSheets = await workOf(browser, page, /^Sheets/)
    const waits = await waitsForSheets(page)
    const orbit = { framesPerSecond: orbitFramesPerSecond, ...(await workOfOrbit(browser, page)) }
    return { drawCalls, orbit, withCutList, withSheets, sheetsCurrentAfterLastMoveMs: median(waits) }
  } finally {
    await browser.close()
    await server.close()
  }
}

async function samplePage(browser: Browser, address: string, prepare?: (page: Page) => Promise<void>): Promise<Page> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 }, serviceWorkers: 'block' })
  // tsx names functions by a helper that the page does not have.
  await page.addInitScript('globalThis.__name = (named) => named')
  await prepare?.(page)
  // Choosers are caught from the start: one that opens before it is waited for would be lost.
  page.on('filechooser', () => {})
  await page.goto(address)
  await openSample(page)
  return page
}

async function openSample(page: Page) {
  await page.locator('[data-cabinet]').first().waitFor()
  const chooser = page.waitForEvent('filechooser')
  await page.keyboard.press('Control+o')
  const file = await chooser
  await file.setFiles({
    name: 'forty.json',
    mimeType: 'application/json',
    buffer: Buffer.from(writeProject(fortyCabinets())),
  })
  await page.locator('[data-cabinet]').nth(30).waitFor()
}

/** The most draw calls of a frame in 3D: with everything in sight, and among the cabinets, where holes are seen. */
async function drawCallsOf(page: Page) {
  const picture = page.getByRole('group', { name: /^3D view/ })
  await page.getByRole('button', { name: 'Fit all' }).click()
  await setTimeout(1000)
  await picture.focus()
  await mostDraws(page)
  await page.keyboard.press('ArrowLeft')
  await setTimeout(500)
  const far = await mostDraws(page)
  for (let step = 0; step < 14; step++) await page.keyboard.press('+')
  await setTimeout(500)
  await page.keyboard.press('ArrowLeft')
  await setTimeout(500)
  const near = await mostDraws(page)
  await page.getByRole('button', { name: 'Fit all' }).click()
  return { far, near }
}

/** Turns the whole run in 3D by a hand that moves sixty times a second: how many frames of it are drawn in a second. */
async function orbitFramesOf(page: Page): Promise<number> {
  const from = await pressPicture(page)
  await framesDrawn(page)
  const began = performance.now()
  await moveLikeAHand(page, from)
  const frames = await framesDrawn(page)
  const seconds = (performance.now() - began) / 1000
  await page.mouse.up()
  return frames / seconds
}

/** The same, and what each move costs the main thread. */
async function workOfOrbit(browser: Browser, page: Page) {
  const from = await pressPicture(page)
  const work = workPerMove(await traced(browser, () => moveLikeAHand(page, from)))
  await page.mouse.up()
  return { moves: work.length, medianMs: median(work), p95Ms: quantile(work, 0.95) }
}

async function pressPicture(page: Page): Promise<{ x: number; y: number }> {
  await page.getByRole('button', { name: 'Fit all' }).click()
  await setTimeout(1000)
  const box = (await page.getByRole('group', { name: /^3D view/ }).boundingBox())!
  const from = { x: box.x + box.width / 2, y: box.y + box.height / 2 }
  await page.mouse.move(from.x, from.y)
  await page.mouse.down()
  return from
}

/** Some drags while a list is open: what a move costs in the one in the middle, of each figure by itself. */
async function workOf(browser: Browser, page: Page, tab: RegExp) {
  const drags: Awaited<ReturnType<typeof workOfDrag>>[] = []
  for (let drag = 0; drag < DRAGS; drag++) drags.push(await workOfDrag(browser, page, tab))
  const middle = (of: (drag: (typeof drags)[number]) => number) => median(drags.map(of))
  return {
    drags: DRAGS,
    moves: drags.reduce((sum, { moves }) => sum + moves, 0),
    medianMs: middle(({ medianMs }) => medianMs),
    p95Ms: middle(({ p95Ms }) => p95Ms),
  }
}

/** A drag, begun after the layout of the design as it stands has settled. */
async function workOfDrag(browser: Browser, page: Page, tab: RegExp) {
  await page.getByRole('tab', { name: tab }).click()
  await page.locator('section[aria-label="Consequences"][data-settled="true"]').waitFor({ timeout: 30_000 })
  const from = await press(page)
  await page.mouse.move(from.x + 5, from.y)
  const work = workPerMove(await traced(browser, () => moveLikeAHand(page, from)))
  await page.keyboard.press('Escape')
  await page.mouse.up()
  return { moves: work.length, medianMs: median(work), p95Ms: quantile(work, 0.95) }
}

/**
 * A hand does not wait for the page to answer. The moves go straight to the browser: those of the test library run a
 * script of its own in the page at every move while a button is down.
 */
async function moveLikeAHand(page: Page, from: { readonly x: number; readonly y: number }) {
  const cdp = await page.context().newCDPSession(page)
  const began = performance.now()
  const sent: Promise<unknown>[] = []
  for (let move = 1; move <= MOVES; move++) {
    const x = from.x + ((move * 7) % 120)
    sent.push(cdp.send('Input.dispatchMouseEvent', { type: 'mouseMoved', x, y: from.y, button: 'left', buttons: 1 }))
    await setTimeout(Math.max(0, began + move * PACE_MS - performance.now()))
  }
  await Promise.all(sent)
}

/** From the last move until the sheets shown are those of what is shown, as the page itself sees it. */
async function waitsForSheets(page: Page): Promise<number[]> {
  const waits: number[] = []
  for (let ending = 0; ending < ENDINGS; ending++) {
    const from = await press(page)
    for (let move = 1; move <= 12; move++) await page.mouse.move(from.x + move * 5, from.y)
    const watch = await page.evaluateHandle(watchLastMove)
    await page.mouse.move(from.x + 63 + ending, from.y)
    waits.push(await watch.evaluate(({ current }) => current))
    await page.keyboard.press('Escape')
    await page.mouse.up()
  }
  return waits
}

/** In the page: times the next pointer move until the sheets are current again. */
function watchLastMove(): { readonly current: Promise<number> } {
  const current = new Promise<number>((resolve) => {
    addEventListener(
      'pointermove',
      () => {
        const start = performance.now()
        const isCurrent = () => document.querySelector('[data-layout="current"]') !== null
        const end = () => resolve(performance.now() - start)
        // The page answers a move in the frame after it; until then the sheets are those of the move before.
        const afterFrame = () => {
          if (isCurrent()) return end()
          const watch = new MutationObserver(() => {
            if (!isCurrent()) return
            watch.disconnect()
            end()
          })
          watch.observe(document.body, { subtree: true, attributeFilter: ['data-layout'] })
        }
        requestAnimationFrame(() => requestAnimationFrame(() => requestAnimationFrame(afterFrame)))
      },
      { once: true, capture: true },
    )
  })
  return { current }
}

/** Presses on the right edge of a selected cabinet, so that the drag changes boards and sheets and not only places. */
async function press(page: Page): Promise<{ x: number; y: number }> {
  const cabinet = page.locator('[data-cabinet]').nth(17)
  // What is chosen already has handles in its middle.
  if ((await cabinet.getAttribute('aria-pressed')) !== 'true') await cabinet.click()
  const handle = page.locator('[data-handle="right"]').last()
  const box = (await handle.boundingBox())!
  const from = { x: box.x + box.width / 2, y: box.y + box.height / 2 }
  await page.mouse.move(from.x, from.y)
  await page.mouse.down()
  return from
}
