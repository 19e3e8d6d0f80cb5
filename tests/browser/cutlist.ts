import { expect, type Page } from '@playwright/test'
import { button, cabinets, openTab } from './shop'

interface Row {
  readonly names: readonly string[]
  readonly size: string
  readonly marks: readonly string[]
}

/** The sizes, as sawn, of the parts of a name in a cabinet: `length x width` of each row they are on, in their order there. */
export type Expected = Readonly<Record<string, string | readonly string[]>>

/** Compares rows of the cut list with a sum on paper, part by part. */
export async function expectRows(page: Page, mark: string, expected: Expected): Promise<void> {
  await openTab(page, 'Cut list')
  const wanted = Object.fromEntries(Object.entries(expected).map(([part, sizes]) => [part, [sizes].flat()]))
  await expect
    .poll(async () => {
      const own = (await rowsOf(page)).filter(({ marks }) => marks.includes(mark))
      const sizesOf = (part: string) => own.filter(({ names }) => names.includes(part)).map(({ size }) => size)
      return Object.fromEntries(Object.keys(wanted).map((part) => [part, sizesOf(part)]))
    }, `the rows of ${mark}`)
    .toEqual(wanted)
}

/** A size as the list shows it: tenths of a millimetre, and no nought after the point. */
export function size(length: number, width: number): string {
  return [length, width].map((one) => String(Math.round(one * 10) / 10)).join(' x ')
}

async function rowsOf(page: Page): Promise<Row[]> {
  const cells = await page
    .locator('tr[data-row]')
    .evaluateAll((rows) => rows.map((row) => [...row.children].map((cell) => cell.textContent ?? '')))
  return cells.map(([, names, , length, width, , , cabinets]) => ({
    names: names!.replace(/ ·.*/, '').split(', '),
    size: `${length} x ${width}`,
    marks: marksIn(cabinets!),
  }))
}

/** `B1 to B3 U1` as B1, B2, B3 and U1. */
function marksIn(stretches: string): string[] {
  return [...stretches.matchAll(/([A-Z]+)(\d+)(?: to [A-Z]+(\d+))?/g)].flatMap(([, letters, from, to = from]) => {
    const count = Number(to) - Number(from) + 1
    return Array.from({ length: count }, (_, at) => `${letters}${Number(from) + at}`)
  })
}

/** Picks a ready kind beside the tray and presses a free place, the first from the left or the last. */
export async function putReady(page: Page, name: string, where: 'first' | 'last' = 'first'): Promise<void> {
  const count = await cabinets(page).count()
  await button(page, /Ready kinds/).click()
  await page.getByRole('menuitem', { name, exact: true }).click()
  await page.locator('[data-slot]')[where]().click({ force: true })
  await expect(cabinets(page)).toHaveCount(count + 1)
}
