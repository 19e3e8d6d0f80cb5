import { describe, expect, it } from 'vitest'
import type { SheetJob } from '../../engine/sheets/job'
import type { SheetAnswer } from '../../engine/sheets/layout'
import { checkJob, packing, packSheets } from '../../engine/sheets/pack'
import { handlingCost, settingsOf } from '../../engine/sheets/settings'
import { sheetCount } from '../../engine/sheets/tally'
import { verify } from '../../engine/sheets/verify'
import { aJob, aSheet, boards } from '../engine/sheets/yard'

const sheet = { id: 's', material: 'm', length: 2440, width: 1220 }
const scattered = (count: number) =>
  Array.from({ length: count }, (_, at) => ({
    id: `p${at}`,
    material: 'm',
    length: 100 + ((at * 37) % 1700),
    width: 50 + ((at * 91) % 600),
    quantity: 1,
  }))

function ends(job: SheetJob, most: number): void {
  let turns = 0
  for (const answer of packing(job)) {
    if (answer) expect(verify(job, answer)).toEqual([])
    if (++turns > most) throw new Error(`still searching after ${most} turns`)
  }
}

describe('packings that once went wrong', () => {
  it('ends at once when there is not a single sheet to search on', () => {
    ends({ kerf: 3, stock: [{ ...sheet, quantity: 0 }], parts: scattered(5) }, 10)
  })

  it('says that the trim leaves nothing, instead of a size below nothing', () => {
    const job = { kerf: 3, stock: [{ ...sheet, trim: { length: 3000, width: 0 } }], parts: scattered(1) }
    expect(packSheets(job).unplaced[0]!.reason).toBe('the trim leaves nothing of the sheets of m')
  })

  it('keeps an offcut in use, although the new sheets would hold all parts without it', () => {
    const piece = { id: 'o', material: 'm', length: 1200, width: 600, offcut: true, quantity: 2 }
    const answer = packSheets({ kerf: 3, effort: 'quick', stock: [sheet, piece], parts: scattered(60) })
    expect(answer.sheets.filter(({ stock }) => stock === 'o').length).toBeGreaterThan(0)
  })

  it('leaves no sliver beside a strip that need not be so wide', () => {
    const two = { id: 'p', material: 'm', length: 1000, width: 600, quantity: 2 }
    const { root } = packSheets({ kerf: 3, stock: [sheet], parts: [two] }).sheets[0]!
    expect(JSON.stringify(root)).not.toContain('"width":14')
  })

  it('does not draw every sheet again for each better answer, so that ten thousand parts do not take minutes', () => {
    const job: SheetJob = { kerf: 3, effort: 'quick', stock: [sheet], parts: scattered(10_000) }
    let before: SheetAnswer | null = null
    const drawn: number[] = []
    for (const answer of packing(job)) {
      if (!answer) continue
      if (before) drawn.push(answer.sheets.filter((one) => !before!.sheets.includes(one)).length / answer.sheets.length)
      before = answer
    }
    expect(verify(job, before!)).toEqual([])
    expect(drawn.length).toBeGreaterThan(0)
    expect(drawn.filter((share) => share > 0.5)).toEqual([])
  }, 60_000)

  it('gives a dear sheet that boards ask for by its number up for two cheap ones', () => {
    const asked = [boards('307 x 145 x 4', { rotate: true, sheet: 4 }), boards('162 x 150 x 1', { sheet: 4 })]
    const stock = [
      aSheet({ id: 'cheap', length: 600, width: 500, price: 1 }),
      aSheet({ id: 'dear', length: 613, width: 598, price: 62.5 }),
    ]
    const job = aJob([...asked, boards('301 x 106 x 2')], { kerf: 3.175, firstCut: 'crosscut', stock })
    expect(packSheets(job).sheets.map(({ stock, copies }) => `${copies} ${stock}`)).toEqual(['1 cheap', '1 cheap'])
  })

  it.each([2, 3, 4, 11])('takes no answer for handier that was so only while a part was missing (seed %i)', (seed) => {
    const sizes = [
      '720 x 560 x 12',
      '564 x 560 x 4',
      '864 x 560 x 2',
      '564 x 100 x 8',
      '864 x 100 x 4',
      '560 x 540 x 6',
    ]
    const parts = [...sizes, '720 x 300 x 8', '664 x 300 x 6', '660 x 285 x 5'].map((text) => boards(text))
    const stock = [aSheet({ trim: { length: 10, width: 10 } })]
    const job = aJob(parts, { stock, seed, effort: 'glance', goals: ['settings'] })
    let last = { sheets: Infinity, cost: Infinity }
    for (const answer of packing(job)) {
      if (!answer) continue
      const now = { sheets: sheetCount(answer), cost: handlingCost(settingsOf(answer)) }
      if (now.sheets === last.sheets) expect(now.cost).toBeLessThanOrEqual(last.cost)
      last = now
    }
    expect(last.cost).toBeLessThan(Infinity)
  })

  it('takes names that objects have of their own for names', () => {
    const named = JSON.parse(
      '{"kerf":3,"stock":[{"id":"__proto__","material":"__proto__","length":100,"width":100}],' +
        '"parts":[{"id":"constructor","material":"__proto__","length":50,"width":50,"quantity":3}]}',
    )
    const checked = checkJob(named)
    if (!checked.ok) throw new Error(checked.message)
    expect(verify(checked.value, packSheets(checked.value))).toEqual([])
  })
})
