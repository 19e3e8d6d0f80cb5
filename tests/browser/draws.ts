import type { Page } from '@playwright/test'

interface Counted {
  /** The draw calls of each frame in which anything was drawn. */
  draws: number[]
}

/** Counts what is drawn in each frame from now on. To be called before the page is opened. */
export async function countDraws(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const counted = globalThis as unknown as Counted
    const context = WebGL2RenderingContext.prototype as unknown as Record<string, (...args: unknown[]) => unknown>
    counted.draws = []
    let now = 0
    for (const name of ['drawElements', 'drawArrays', 'drawElementsInstanced', 'drawArraysInstanced']) {
      const draw = context[name]!
      context[name] = function (...args: unknown[]) {
        now++
        return draw.apply(this, args)
      }
    }
    const frame = () => {
      if (now > 0) counted.draws.push(now)
      now = 0
      requestAnimationFrame(frame)
    }
    requestAnimationFrame(frame)
  })
}

/** The most draw calls of a frame since this was asked last. */
export async function mostDraws(page: Page): Promise<number> {
  return page.evaluate(() => {
    const counted = globalThis as unknown as Counted
    return Math.max(0, ...counted.draws.splice(0))
  })
}

/** How many frames were drawn since this or the most draws were asked last. */
export async function framesDrawn(page: Page): Promise<number> {
  return page.evaluate(() => (globalThis as unknown as Counted).draws.splice(0).length)
}
