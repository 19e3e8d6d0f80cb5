import { describe, expect, it } from 'vitest'
import type { MaterialId, PartId } from '../../../engine/basics/id'
import { once } from '../../../engine/basics/remember'
import { floorAfter } from '../../../engine/breakdown/floor'
import { replanAfter } from '../../../engine/breakdown/mishap'
import type { Step } from '../../../engine/breakdown/step'
import { type BreakdownInput, breakdownOf } from '../../../engine/breakdown/steps'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { SheetLayout } from '../../../engine/sheets/layout'
import { packSheets } from '../../../engine/sheets/pack'
import { settle } from '../../../engine/units/length'
import { type After, after, expectCuttable, INPUT, KITCHEN, STEPS, spoiled } from './mishaps'
import { crosscut, OFFCUT, PLY, part, rip, SHOP, sheets, showStep, WASTE } from './sawyer'

const COUNTS = [0.1, 0.5, 0.65, 0.95].map((share) => Math.round(share * STEPS.length))

describe('what is not cut yet', () => {
  it.each(COUNTS)('is cut by the very same steps when nothing is missing, after %i steps', async (count) => {
    const gone = await after(INPUT, count, () => spoiled())
    const setting = ({ kind, setting }: Step) => `${kind} ${setting}`
    expect(gone.steps.map(setting)).toEqual(gone.left.map(setting))
    // Pieces of one setting may be taken up in another order.
    expect(gone.steps.map(showStep).sort()).toEqual(gone.left.map(showStep).sort())
    const marks = (steps: readonly Step[]) => steps.flatMap(({ write }) => write.filter((mark) => mark.includes('-')))
    expect(marks(gone.steps).sort()).toEqual(marks(gone.left).sort())
    expectCuttable(gone)
  })
})

describe('a part that is spoiled', () => {
  /** Straightened, ripped, squared and crosscut: more is not done to any part of a layout in three directions, but a re-rip. */
  const MOST = 5

  it.each(COUNTS)('takes no more steps than its own cuts, after %i steps', async (count) => {
    for (const at of [0.3, 0.99]) {
      const gone = await after(INPUT, count, (cut) => spoiled(cut[Math.floor(at * cut.length)]?.part ?? null))
      expect(gone.steps.length).toBeLessThanOrEqual(gone.left.length + MOST * gone.plan.lost.length)
      expectCuttable(gone)
    }
  })

  it('leaves every other part where it was to be cut', async () => {
    const whole = floorAfter(INPUT, { done: new Set(STEPS.map(({ id }) => id)) })
    if (!whole.ok) throw new Error(whole.message)
    const was = new Map(whole.value.map(({ part, x, y }) => [part, [x, y]]))
    const gone = await after(INPUT, COUNTS[2]!, (cut) => spoiled(cut.at(-1)!.part))
    const end = floorAfter(gone.input, { done: new Set(gone.steps.map(({ id }) => id)) })
    if (!end.ok) throw new Error(end.message)
    const lay = new Map(gone.plan.pieces.map(({ name, place }) => [name, place]))
    const named = new Map(
      [...gone.input.atHand!.values()].flatMap(({ names }) => names.map((name) => [name, lay.get(name)!])),
    )
    const start = floorAfter(gone.input, { done: new Set() })
    const nameOf = new Map(start.ok ? start.value.map(({ sheet, name }) => [sheet, name]) : [])
    let compared = 0
    for (const { part, x, y, sheet } of end.value) {
      if (part === null || gone.plan.lost.includes(part)) continue
      const { left, bottom } = named.get(nameOf.get(sheet)!) ?? { left: 0, bottom: 0 }
      expect([settle(left + x), settle(bottom + y)], INPUT.marks.get(part)).toEqual(was.get(part))
      compared++
    }
    expect(compared).toBe(gone.plan.cutList.rows.flatMap(({ parts }) => parts).length - 1)
  })

  it('is told with what it is cut from', async () => {
    const gone = await after(INPUT, COUNTS[2]!, (cut) => spoiled(cut.at(-1)!.part))
    const mark = INPUT.marks.get(gone.plan.lost[0]!)!
    const step = gone.steps.find(({ write }) => write.includes(mark))!
    expect(gone.told[0]).toBe(`${mark} is spoiled and is cut again.`)
    const [, from = ''] = new RegExp(`^${mark} is cut from (.*)\\.$`).exec(gone.told[1]!) ?? []
    expect(step.takes.name).toContain(from)
    const { cut, cutList: left } = gone.plan
    const open = left.rows.flatMap(({ parts }) => parts).length - 1
    expect(gone.told.at(-1)).toBe(
      `All else stays as it was: ${cut.length} parts that are cut and ${open} parts still to be cut.`,
    )
  })

  it('is told with the sheet that was chosen for it, which it does not come from any more', async () => {
    const first = await after(INPUT, COUNTS[2]!, (cut) => spoiled(cut.at(-1)!.part))
    const [lost] = first.plan.lost
    const rows = INPUT.cutList.rows.map((row) => (row.parts.includes(lost!) ? { ...row, sheet: 1 } : row))
    const asked = { ...INPUT, cutList: { ...INPUT.cutList, rows } }
    const gone = await after(asked, COUNTS[2]!, (cut) => spoiled(cut.at(-1)!.part))
    const told = `${INPUT.marks.get(lost!)} was chosen from one sheet, and now is cut from where there is room.`
    expect(gone.told.filter((line) => line === told)).toHaveLength(1)
    expect(first.told.filter((line) => line.includes('was chosen from'))).toEqual([])
  })
})

/** The layouts of what is left when nothing has gone wrong. */
function replanned(input: BreakdownInput, count: number) {
  const done = new Set(
    breakdownOf(input)
      .steps.slice(0, count)
      .map(({ id }) => id),
  )
  const plan = replanAfter(input, { done }, spoiled())
  return plan.ok ? plan.value.kept!.sheets : []
}

const settledAnswer = once(() => packSheets(INPUT.job))

const materialOf = ({ job }: BreakdownInput, stock: string) => job.stock.find(({ id }) => id === stock)!.material

describe('many parts that are spoiled', () => {
  it('give up layouts only of boards of which that saves a sheet', async () => {
    const settled = { ...INPUT, answer: settledAnswer() }
    const spoiledEvenly = (at: number, many: number) =>
      after(settled, at, (cut) =>
        spoiled(...Array.from({ length: many }, (_, one) => cut[Math.floor(((one + 0.5) * cut.length) / many)]!.part)),
      )
    const isGivenUp = ({ told }: After) => told.some((line) => line.startsWith('To save a sheet'))
    // Where there is room for what is spoiled on what is left over, nothing is given up.
    const at = 90
    let many = 9
    let gone = await spoiledEvenly(at, many)
    for (; !isGivenUp(gone) && many < 30; gone = await spoiledEvenly(at, ++many));
    expect(isGivenUp(gone)).toBe(true)
    expect(gone.plan.lost.length).toBe(many)
    // Every part is counted once: those that are laid out anew, those that are to save a sheet, and all else.
    const counts = [
      /^(\d+) parts are laid out anew/,
      /^To save a sheet, (\d+) parts? that w\w+ to be cut from .* laid out anew too\.$/,
      /^All else stays as it was: (\d+) parts that are cut/,
      /^All else stays .* (\d+) parts still to be cut\.$/,
    ].map((line) => Number(gone.told.map((told) => line.exec(told)?.[1]).find(Boolean)))
    expect(counts.reduce((sum, count) => sum + count)).toBe(
      INPUT.cutList.rows.reduce((sum, { quantity }) => sum + quantity, 0),
    )
    expect(gone.told.filter((line) => line.startsWith('Laying all of it out anew'))).toEqual([])
    // All that stays as it was is as many as are not laid out anew, of boards of which no sheet is saved.
    const [, stay] = gone.told.map((line) => /^All else .* (\d+) parts still to be cut\.$/.exec(line)).find(Boolean)!
    const whole = replanned(settled, at)
    const before = new Set(whole.map(({ root }) => JSON.stringify(root)))
    const same = gone.input.answer.sheets.filter(({ root }) => before.has(JSON.stringify(root)))
    expect(Number(stay)).toBeGreaterThan(2 * many)
    expect(new Set(same.map(({ stock }) => materialOf(gone.input, stock))).size).toBeGreaterThan(1)
    expectCuttable(gone)
  })
})

describe('a damaged sheet', () => {
  it('changes its own layout, and one more only where that saves a sheet', async () => {
    const rect = { left: 100, bottom: 100, width: 300, height: 200 }
    const gone = await after(INPUT, 0, () => ({ kind: 'damaged', on: 5, rect }))
    const whole = ({ answer, atHand }: BreakdownInput) =>
      answer.sheets.filter(({ stock }) => !atHand?.has(stock)).map(({ root }) => JSON.stringify(root))
    const stay = new Set(whole(gone.input))
    const given = gone.told.filter((line) => line.startsWith('To save a sheet')).length
    expect(given).toBeLessThanOrEqual(1)
    // What is put on the free places of another sheet leaves all as it was that lies there.
    const places = ({ placements }: SheetLayout) => placements.map((place) => JSON.stringify(place))
    const now = gone.input.answer.sheets.map((sheet) => new Set(places(sheet)))
    const changed = INPUT.answer.sheets.filter(
      (sheet) =>
        !stay.has(JSON.stringify(sheet.root)) && !now.some((there) => places(sheet).every((at) => there.has(at))),
    )
    expect(changed).toHaveLength(1 + given)
    expect(changed).toContain(INPUT.answer.sheets[4])
    expectCuttable(gone)
  })
})

describe('a damaged piece', () => {
  it('takes no sheet more while there is room, cuts every strip that lies ripped, and renumbers no sheet', async () => {
    const count = 11
    const done = new Set(STEPS.slice(0, count).map(({ id }) => id))
    const floor = floorAfter(INPUT, { done })
    if (!floor.ok) throw new Error(floor.message)
    const strips = floor.value.filter(({ kind, future }) => kind === 'strip' && future.drawn.kind === 'cut')
    const [hit, ...others] = strips.map(({ name }) => name)
    const rect = { left: 0, bottom: 0, width: 1800, height: 300 }
    const gone = await after(INPUT, count, () => ({ kind: 'damaged', on: hit!, rect }))
    expect(gone.told.filter((line) => line.includes('more sheet'))).toEqual([])
    const taken = new Set(gone.steps.map(({ takes }) => takes.name).flatMap((names) => names.split(/, | and /)))
    expect(others.length).toBeGreaterThan(3)
    expect(others.filter((name) => !taken.has(name))).toEqual([])
    const numbers = (steps: readonly Step[]) => [
      ...steps
        .map(({ takes }) => takes.name)
        .join(' ')
        .matchAll(/sheet (\d+)/g),
    ]
    const last = INPUT.answer.sheets.reduce((sum, { copies }) => sum + copies, 0)
    expect(numbers(gone.steps).filter(([, number]) => Number(number) > last)).toEqual([])
    expectCuttable(gone)
  })
})

describe('another thickness', () => {
  it('leaves the layouts of boards that do not change as they were', async () => {
    const carcass = 'carcass' as MaterialId
    const thinner = applyEdit(KITCHEN.project, { kind: 'editMaterial', id: carcass, change: { thickness: 17.6 } })
    const { rows } = derive(thinner).cutList
    const gone = await after(INPUT, 0, () => ({ kind: 'thickness', material: carcass, rows }))
    // Fronts are of another material, and nothing of them changes; backs and drawer boxes are let into the carcass.
    const fronts = ({ answer }: BreakdownInput) => {
      const own = answer.sheets.filter(({ placements }) => placements.some(({ part }) => part.startsWith('front')))
      return own.map(({ root }) => JSON.stringify(root))
    }
    expect(fronts(gone.input).length).toBeGreaterThan(0)
    expect(fronts(gone.input)).toEqual(fronts(INPUT))
    expect(gone.told.at(-1)).toMatch(/^All else stays as it was: \d+ parts still to be cut\.$/)
    expectCuttable(gone)
  })
})

/** One sheet is cut: two A and a B; the other is to be cut, with an offcut of 2420 x 291 that A does not fit. */
const GIVEN = sheets({ A: [768, 580], B: [1000, 320] }, [
  [2, rip(crosscut(part('A'), part('A'), OFFCUT), crosscut(part('B'), WASTE), OFFCUT)],
])
const SMALL: BreakdownInput = {
  ...GIVEN,
  job: { ...GIVEN.job, stock: [{ ...GIVEN.job.stock[0]!, quantity: 5 }], offcutLeast: SHOP.offcutLeast },
  shop: { ...SHOP, cutOrder: 'sheet by sheet' },
  marks: new Map(),
  materials: { m1: PLY } as unknown as BreakdownInput['materials'],
}

describe('two sheets', () => {
  const id = (name: string) => name as PartId

  it('give a spoiled A from what is left beside the others, with the two cuts that it takes', async () => {
    const all = breakdownOf(SMALL).steps.length
    const gone = await after(SMALL, all, () => spoiled(id('A-1')))
    // 2420 - 2 x (768 + 3) = 878 is left behind the two A, of their own width.
    expect(gone.steps.map(showStep)).toEqual(['crosscut 768: 1 of 888 x 580 | 1 part 768 x 580 | 1 waste 117 x 580'])
    expect(gone.told).toEqual([
      'A-1 is spoiled and is cut again.',
      'A is cut from 1a3.',
      'All else stays as it was: 5 parts that are cut.',
    ])
  })
})
