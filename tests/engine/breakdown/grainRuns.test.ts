import { describe, expect, it } from 'vitest'
import type { CabinetId, PartId } from '../../../engine/basics/id'
import { floorAfter } from '../../../engine/breakdown/floor'
import { replanAfter } from '../../../engine/breakdown/mishap'
import { type BreakdownInput, breakdownOf } from '../../../engine/breakdown/steps'
import type { Work } from '../../../engine/breakdown/work'
import type { CutRow } from '../../../engine/cutlist/row'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { CutOrder, Project } from '../../../engine/project/document'
import { demonstrationKitchen } from '../../../engine/samples/kitchen'
import { fortyCabinets } from '../../../engine/samples/workshop'
import { packSheets } from '../../../engine/sheets/pack'
import { crosscut, OFFCUT, PLY, part, rip, SHOP, sheets, WASTE } from './sawyer'
import { tornApart, worksIn } from './torn'

const ORDERS: readonly CutOrder[] = ['sheet by sheet', 'setting by setting']

/** Rows named in `run` are a run of grain in this order, each of one board. */
function running(given: ReturnType<typeof sheets>, run: readonly string[], cutOrder: CutOrder): BreakdownInput {
  const rows = given.cutList.rows.map((row): CutRow => {
    const place = run.indexOf(row.key) + 1
    return place > 0 ? { ...row, bank: { id: 'fronts', along: 'length', place } } : row
  })
  const materials = { m1: PLY } as unknown as BreakdownInput['materials']
  return { ...given, cutList: { rows }, shop: { ...SHOP, cutOrder }, marks: new Map(), materials }
}

const cutOff = ({ leaves, cuts }: Work) => leaves.slice(0, cuts)
/** A and B are one run, C and D another. */
function inTwoBanks(row: CutRow): CutRow {
  if (!row.bank) return row
  const { place } = row.bank
  return { ...row, bank: { ...row.bank, id: place > 2 ? 'sides' : 'fronts', place: place > 2 ? place - 2 : place } }
}

describe('boards over which the grain runs on', () => {
  const sizes = { A: [295, 140], B: [795, 140], C: [495, 140], D: [400, 140] } as const
  const strip = rip(crosscut(part('A'), part('B'), part('C'), part('D'), WASTE), OFFCUT)
  const given = sheets(sizes, [[1, strip]])

  it.each(ORDERS)('come off a strip in their order, behind those that are in no run: %s', (order) => {
    const input = running(given, ['A', 'B', 'C'], order)
    const names = worksIn(input).filter(({ kind }) => kind === 'crosscut')
    expect(names.flatMap(cutOff).map(({ name }) => name)).toEqual(['D', 'A', 'B', 'C'])
    expect(tornApart(input)).toEqual([])
  })

  it('of one size are cut when that is set, each strip to its end before the next', () => {
    const alike = { A: [495, 140], B: [495, 140], C: [495, 140], D: [495, 140], E: [495, 140], F: [795, 140] } as const
    const two = rip(
      crosscut(part('A'), part('B'), WASTE),
      crosscut(part('C'), part('D'), part('E'), part('F'), WASTE),
      OFFCUT,
    )
    const input = running(sheets(alike, [[1, two]]), ['A', 'B', 'C', 'D'], 'setting by setting')
    const twice = { ...input, cutList: { rows: input.cutList.rows.map(inTwoBanks) } }
    const steps = breakdownOf(twice).steps.filter(({ kind }) => kind === 'crosscut')
    expect(steps.map(({ leaves }) => leaves[0]!.name)).toEqual(['F', 'E', 'A', 'B', 'C', 'D'])
    expect(steps.filter(({ isNewSetting }) => isNewSetting).map(({ setting }) => setting)).toEqual([795, 495])
    // After the last board of a run there is no next.
    const isTold = (words: RegExp) => steps.map(({ cautions }) => cautions.some((caution) => words.test(caution)))
    expect(isTold(/The grain runs on over/)).toEqual([false, false, true, false, true, false])
    expect(isTold(/to the next board/)).toEqual([false, false, false, false, false, false])
  })

  it('have their lines drawn, and no more asked of the last, where they still have factory ends', () => {
    const strips = { A: [2420, 300], B: [2420, 300], C: [2420, 300] } as const
    const input = running(
      sheets(strips, [[1, rip(part('A'), part('B'), part('C'), OFFCUT)]]),
      ['A', 'B', 'C'],
      'sheet by sheet',
    )
    const rips = breakdownOf(input).steps.filter(({ kind }) => kind === 'rip')
    const said = rips.map(({ cautions }) => cautions.filter((caution) => caution.startsWith('The grain')).join())
    expect(said.map((words) => words.slice(0, 26))).toEqual([
      'The grain runs on over A, ',
      'The grain runs on to the n',
      '',
    ])
  })

  it('are not parted where the last of them is what all cuts leave', () => {
    const full = { A: [600, 200], B: [600, 200], T: [600, 200], S: [600, 150] } as const
    const filled = rip(crosscut(rip(part('A'), part('B'), part('T'), part('S')), WASTE), OFFCUT)
    for (const order of ORDERS) expect(tornApart(running(sheets(full, [[1, filled]]), ['A', 'B'], order))).toEqual([])
  })

  it('are cut by the length where they are in no run', () => {
    const names = worksIn(running(given, [], 'sheet by sheet')).filter(({ kind }) => kind === 'crosscut')
    expect(names.flatMap(cutOff).map(({ name }) => name)).toEqual(['B', 'C', 'D', 'A'])
  })

  it('have two lines drawn over them before they are parted, and no board between them', () => {
    const { steps } = breakdownOf(running(given, ['A', 'B', 'C'], 'sheet by sheet'))
    const [first, second] = steps.filter(({ leaves }) => leaves.some(({ name }) => ['A', 'B'].includes(name)))
    expect(first!.cautions.join(' ')).toContain(
      'The grain runs on over A, B and C, in this order: draw two slanted lines across all of them before they are cut apart',
    )
    expect(second!.cautions.join(' ')).toContain('The grain runs on to the next board: keep to this order')
  })

  it('are told when one of them is spoiled: all anew while the others are uncut, or one that no longer goes with them', () => {
    const input = running(given, ['A', 'B', 'C'], 'sheet by sheet')
    const { steps } = breakdownOf(input)
    const after = (last: string, spoiled: string) => {
      const at = steps.findIndex(({ write }) => write.includes(last))
      const done = new Set(steps.slice(0, at + 1).map(({ id }) => id))
      const plan = replanAfter(input, { done }, { kind: 'spoiled', parts: [spoiled] as unknown as PartId[] })
      return plan.ok ? plan.value.told.filter((words) => words.includes('grain')) : [plan.message]
    }
    expect(after('A', 'A-1')).toEqual([
      'The grain runs on over A-1, B-1 and C-1: all of them are cut from one sheet again, in this order.',
    ])
    expect(after('B', 'B-1')).toEqual([
      'B-1 no longer continues the grain of the others of its run. Where that matters, tell those that are cut as spoiled too: all of it is cut from one sheet again.',
    ])
    expect(after('D', 'D-1')).toEqual([])
  })

  it('are told when one of them is made to another size and parts from the others', () => {
    const input = running(given, ['A', 'B', 'C'], 'sheet by sheet')
    const rows = (width: number) =>
      input.cutList.rows.map((row): CutRow => (String(row.key) === 'A' ? { ...row, width, bank: null } : row))
    const told = (width: number) => {
      const plan = replanAfter(input, { done: new Set() }, { kind: 'openings', rows: rows(width) })
      return plan.ok ? plan.value.told.filter((words) => words.includes('grain')) : [plan.message]
    }
    expect(told(138)).toEqual([
      'A-1 no longer continues the grain of B-1 and C-1, since its size is another now. Where that matters, have the run cut as drawn, and trim what is too large afterwards.',
    ])
    expect(told(140)).toEqual([])
  })

  it('go on at once, in their order, when the first of them is cut and something else goes wrong', () => {
    const two = sheets({ ...sizes, E: [500, 300] }, [[1, rip(crosscut(part('E'), WASTE), ...stripsOf(strip))]])
    const input = running(two, ['A', 'B', 'C'], 'sheet by sheet')
    const { steps } = breakdownOf(input)
    const at = steps.findIndex(({ write }) => write.includes('A'))
    const done = new Set(steps.slice(0, at + 1).map(({ id }) => id))
    const cut = floorAfter(input, { done })
    expect(cut.ok && cut.value.some(({ part: id }) => id === ('A-1' as PartId))).toBe(true)
    const plan = replanAfter(input, { done }, { kind: 'spoiled', parts: ['E-1'] as unknown as PartId[] })
    if (!plan.ok || !plan.value.kept) throw new Error('no layout stays')
    const { kept } = plan.value
    const answer = { sheets: kept.sheets, unplaced: [], bounds: {}, proved: false }
    const after = { ...input, ...kept, answer, firstSheet: plan.value.firstSheet }
    const names = worksIn(after).filter(({ kind }) => kind === 'crosscut')
    const off = names.flatMap(cutOff).map(({ name }) => name)
    expect(off.filter((name) => ['B', 'C'].includes(name))).toEqual(['B', 'C'])
  })
})

/** The strips of a sheet that is ripped. */
function stripsOf(cutting: ReturnType<typeof rip>) {
  return cutting.kind === 'cut' ? cutting.pieces : [cutting]
}

describe('whole kitchens whose grain runs on', () => {
  const all = (project: Project) => Object.keys(project.cabinets) as CabinetId[]
  const inputOf = (project: Project, order: CutOrder): BreakdownInput => {
    const { sheetJob: job, cutList, partOf } = derive(project)
    const marks = new Map([...partOf].map(([id, { mark }]) => [id, mark]))
    const { materials, shop } = project
    const answer = packSheets({ ...job, effort: 'glance' })
    return { job, answer, cutList, marks, materials, shop: { ...shop, cutOrder: order } }
  }

  it.each([
    ['demonstration', 'running', demonstrationKitchen()],
    ['demonstration', 'across', demonstrationKitchen()],
    ['forty cabinets', 'running', fortyCabinets()],
    ['forty cabinets', 'across', fortyCabinets()],
  ] as const)('come off the saw with no run torn apart: %s, %s', (_, way, plain) => {
    const project = applyEdit(plain, { kind: 'letGrainRun', ids: all(plain), way })
    for (const order of ORDERS) {
      const input = inputOf(project, order)
      expect(input.cutList.rows.some(({ bank }) => bank)).toBe(true)
      expect(tornApart(input)).toEqual([])
    }
  })
})
