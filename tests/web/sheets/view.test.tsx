import { renderToStaticMarkup } from 'react-dom/server'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import type { Derived, SheetJob, SheetLayout } from '../../../engine/index'
import type { Layout, State } from '../../../web/store/state'

let state: Partial<State> = {}
vi.mock('../../../web/store/store', () => ({ useStore: (read: (from: Partial<State>) => unknown) => read(state) }))
vi.mock('../../../web/store/turns', () => ({
  useFollowing: (_follower: string, read: (from: Partial<State>) => unknown) => read(state),
  useCurrency: () => 'now',
}))

const { SheetsView } = await import('../../../web/sheets/SheetsView')
const { begunBeforeWords, cuttingWords, handWords, countWords } = await import('../../../web/sheets/words')
const { figuresOf, proofOf } = await import('../../../web/stages/figures')
const { StepsView } = await import('../../../web/sheets/StepsView')
const { CutListTable } = await import('../../../web/tables/CutListTable')

type Lies = Parameters<typeof handWords>[0][number]

const MATERIAL = { id: 'm1', name: '18 mm ply', nominal: 18, thickness: 18, hasGrain: true, density: 685 }
const STOCK = { id: 's1', material: 'm1', length: 1000, width: 500, trim: { length: 10, width: 10 }, price: 40 }
const PART = { id: 'r1', material: 'm1', length: 400, width: 200, quantity: 5 }
const JOB: SheetJob = { kerf: 4, stages: null, stock: [STOCK], parts: [PART] }

/** Two alike sheets with one side on each: 980 x 480 inside the trim. */
const SHEET: SheetLayout = {
  stock: 's1',
  copies: 2,
  placements: [{ part: 'r1', x: 10, y: 10, length: 400, width: 200, rotated: false }],
  root: {
    ...{ kind: 'cut', direction: 'rip', x: 10, y: 10, length: 980, width: 480 },
    pieces: [
      {
        ...{ kind: 'cut', direction: 'crosscut', x: 10, y: 10, length: 980, width: 200 },
        pieces: [
          { kind: 'part', part: 'r1', rotated: false, x: 10, y: 10, length: 400, width: 200 },
          { kind: 'waste', x: 414, y: 10, length: 576, width: 200 },
        ],
      },
      { kind: 'offcut', x: 10, y: 214, length: 980, width: 276 },
    ],
  },
}

const LAYOUT: Layout = {
  job: JOB,
  answer: { sheets: [SHEET], unplaced: [], bounds: { m1: 1 }, proved: false },
  isSettled: true,
}

const ROW = {
  ...{ key: 'r1', mark: 'A1', name: 'side', material: 'm1', length: 400, width: 200, thickness: 18, quantity: 2 },
  ...{
    isGrainBound: true,
    bandedEdges: { long: 1, ends: 0, thickness: 1 },
    isLate: false,
    parts: ['k1/left', 'k1/right'],
    measured: [],
    cabinets: ['B1'],
  },
}

const DERIVED = {
  project: {
    kept: {},
    display: { unit: 'mm', step: 1 },
    materials: { m1: MATERIAL },
    stock: {},
    shop: {
      ...{
        kerf: 4,
        trim: 10,
        currency: '€',
        railLength: 2700,
        guides: { least: 190, greatest: 650 },
        benchCrosscut: 650,
      },
      ...{ onePersonLift: 25, minutes: { perSetting: 2, perCut: 1, perSheet: 5 } },
      ...{ narrowRips: null, blades: { rip: { teeth: 18 }, crosscut: { teeth: 48 } }, cutOrder: null },
    },
  },
  cabinetOf: {},
  partOf: new Map([
    ['k1/left', { id: 'k1/left', cabinet: 'k1', mark: 'B1-LS', cutLength: 400, cutWidth: 200, operations: [] }],
    ['k1/right', { id: 'k1/right', cabinet: 'k1', mark: 'B1-RS', cutLength: 400, cutWidth: 200, operations: [] }],
  ]),
  heldSheets: [],
  cutList: { rows: [ROW], totals: [{ material: 'm1', parts: 2, area: 0.16, weight: 1.97, banding: 0.8 }] },
  sheetJob: JOB,
  problems: [],
} as unknown as Derived

beforeEach(() => {
  state = {
    derived: DERIVED,
    preview: null,
    before: null,
    layout: LAYOUT,
    packing: 'idle',
    selection: { kind: 'nothing' },
    actions: {} as State['actions'],
  }
})

describe('the sheets on screen', () => {
  it('draw alike sheets once, with their parts, yield and price', () => {
    const page = renderToStaticMarkup(<SheetsView />)
    expect(page.match(/<svg viewBox/g)).toHaveLength(1)
    expect(page).toContain('Sheets 1 and 2')
    // 400 x 200 of 1000 x 500 is 16 %
    expect(page).toContain('2 alike, 16 % used')
    expect(page).toContain('A1 400 × 200: B1-LS, B1-RS')
    // 2 x 40
    expect(page).toContain('80.00')
  })

  it('tell what is taken from what is on hand apart from what is to be bought', () => {
    expect(renderToStaticMarkup(<SheetsView />)).toMatch(/>To buy<.*>To pay<.*>80\.00</)
    const job = { ...JOB, stock: [{ ...STOCK, quantity: 7 }] }
    const layout = { ...LAYOUT, job }
    state = { ...state, layout, derived: { ...state.derived!, sheetJob: job } }
    const page = renderToStaticMarkup(<SheetsView />)
    expect(page).toMatch(
      />To buy<.*>Nothing to buy<.*>0\.00<.*>From what is on hand<.*>2<.*>40\.00<.*>Worth<.*>80\.00</,
    )
    expect(figuresOf(state.derived!, layout)).toMatchObject({ cost: 80, onHand: 80 })
  })

  it('light up what is selected', () => {
    expect(renderToStaticMarkup(<SheetsView />)).toContain('aria-pressed="false"')
    state = { ...state, selection: { kind: 'part', owner: 'k1', part: 'k1/right' } as never }
    expect(renderToStaticMarkup(<SheetsView />)).toContain('aria-pressed="true"')
  })

  it('never show an old layout as the current one', () => {
    state = { ...state, layout: { ...LAYOUT, job: { ...JOB } }, packing: 'thinking' }
    const page = renderToStaticMarkup(<SheetsView />)
    expect(page).toContain('Laying the boards out on sheets')
    expect(page).not.toContain('Sheets 1 and 2')
    expect(renderToStaticMarkup(<StepsView />)).not.toContain('<ol')
  })

  it('say in words whether fewer sheets are possible', () => {
    expect(countWords({ ...LAYOUT, answer: { ...LAYOUT.answer, proved: true } })).toBe(
      '2 sheets, and no layout of these parts needs fewer.',
    )
    expect(countWords(LAYOUT)).toBe('2 sheets; any layout of these parts needs at least 1. None with fewer was found.')
    expect(countWords({ ...LAYOUT, isSettled: false })).toBe(
      '2 sheets; any layout of these parts needs at least 1. Still looking for one with fewer.',
    )
  })

  it('say of kept sheets only what holds while they are kept', () => {
    const job = { ...JOB, locked: [{ ...SHEET, copies: 2 }] }
    const kept = { ...LAYOUT, job, answer: { ...LAYOUT.answer, provedWithLocked: true } }
    expect(countWords(kept)).toBe(
      '2 sheets, and no layout that keeps the 2 kept sheets needs fewer; any layout of these parts needs at least 1.',
    )
    expect(proofOf(kept)).toEqual({ text: 'no layout that keeps the 2 kept sheets needs fewer', isProved: false })
    expect(countWords({ ...kept, answer: LAYOUT.answer })).toBe(
      '2 sheets; any layout of these parts needs at least 1. None with fewer that keeps the 2 kept sheets was found.',
    )
  })

  it('say so where boards are cut from sheets that were chosen for them', () => {
    const parts = [{ id: 'r1', material: 'm1', length: 400, width: 200, quantity: 2, from: 's1' }]
    const job = { ...JOB, parts }
    expect(countWords({ ...LAYOUT, job, answer: { ...LAYOUT.answer, proved: true } })).toBe(
      '2 sheets, and no layout of these parts, cut from the sheets chosen for them, needs fewer.',
    )
  })

  it('count offcuts apart', () => {
    const offcut = { ...STOCK, id: 's2', offcut: true }
    const job = { ...JOB, stock: [STOCK, offcut] }
    const answer = { ...LAYOUT.answer, sheets: [SHEET, { ...SHEET, stock: 's2', copies: 1 }] }
    expect(countWords({ ...LAYOUT, job, answer })).toBe(
      '2 sheets and 1 offcut; any layout of these parts needs at least 1, offcuts counted. None with fewer new sheets was found.',
    )
  })

  it('say only that none is cheaper where sheets of one board differ in price', () => {
    const job = { ...JOB, stock: [STOCK, { ...STOCK, id: 's2', price: 2 * (STOCK.price ?? 1) }] }
    expect(countWords({ ...LAYOUT, job })).toBe(
      '2 sheets; any layout of these parts needs at least 1. None that costs less was found.',
    )
  })

  it('say of a proved number that it may cost less where that is not proved', () => {
    const job = { ...JOB, stock: [STOCK, { ...STOCK, id: 's2', price: 2 * (STOCK.price ?? 1) }] }
    const layout = { ...LAYOUT, job, answer: { ...LAYOUT.answer, proved: true, mayCostLess: true as const } }
    const few = '2 sheets, and no layout of these parts needs fewer'
    expect(countWords(layout)).toBe(`${few}; whether there is one that costs less is not known, and none was found.`)
    expect(countWords({ ...layout, isSettled: false })).toBe(`${few}; still looking for one that costs less.`)
    expect(proofOf(layout)?.isProved).toBe(false)
  })

  it('say of a search that was stopped what it was looking for', () => {
    const stopped = { ...LAYOUT, isStopped: true }
    expect(countWords(stopped)).toBe(
      '2 sheets; any layout of these parts needs at least 1. None with fewer was found before looking was stopped.',
    )
    expect(proofOf(stopped)?.text).toBe('at least 1 needed, looking was stopped')
    expect(countWords({ ...stopped, answer: { ...LAYOUT.answer, proved: true } })).toBe(
      '2 sheets, and no layout of these parts needs fewer; looking for a larger offcut and fewer settings was stopped.',
    )
    const unplaced = [{ part: 'r1', quantity: 3, reason: '' }]
    expect(countWords({ ...stopped, answer: { ...LAYOUT.answer, unplaced } })).toBe(
      '2 sheets; 3 boards are on no sheet. Looking for room was stopped.',
    )
  })

  it('say what becomes of the sheets of an earlier plan', () => {
    expect(begunBeforeWords({})).toBeNull()
    // The number of the first new sheet counts damages that are cut away too, so it says nothing of how many there were.
    expect(begunBeforeWords({ firstSheet: 14 })).toBe(
      'Sheets that were begun before this plan are known by their pieces: choose the piece that is damaged, and tell a part that was cut before as spoiled.',
    )
  })

  it('say what is at hand, and apart from it what is still to be bought', () => {
    const [sheet, piece] = [true, false].map((isWhole) => ({ isWhole, isToCut: true })) as [Lies, Lies]
    expect(handWords([sheet, piece, piece])).toBe('At hand: 1 sheet and 2 pieces')
    expect(handWords([piece, { ...sheet, isToBuy: true }])).toBe('At hand: 1 piece; to be bought: 1')
    expect(handWords([{ ...sheet, isToBuy: true }])).toBe('At hand: nothing; to be bought: 1')
    expect(handWords([piece, { ...piece, isToCut: false }])).toBe('At hand: 2 pieces, 1 of them still to be cut')
    expect(handWords([{ ...piece, isToCut: false }])).toBe('At hand: 1 piece, left over')
  })

  it('say of the layouts being cut how far they are, what was cut before and what is still to be bought', () => {
    const laid = (name: string, sheet: number, state: 'cut' | 'begun' | 'to come', isToBuy = false) => {
      return { name, sheet, state, isToBuy }
    }
    expect(
      cuttingWords([laid('1a', 15, 'cut'), laid('sheet 2', 2, 'begun'), laid('sheet 14', 14, 'to come', true)], 1),
    ).toBe(
      'What is being cut, as the steps have it: 2 sheets and 1 piece, 1 cut and 1 begun. A part that is cut is struck through. 1 part was cut before this plan and is on none of them. Still to be bought: sheet 14.',
    )
  })

  it('speak of fewer sheets, not of cheaper ones, where the number comes first', () => {
    const [sheet] = JOB.stock
    const stock = [
      { ...sheet!, price: 40 },
      { ...sheet!, id: 'other', price: 50 },
    ]
    const layout = { ...LAYOUT, job: { ...JOB, stock } }
    expect(countWords(layout)).toContain('None that costs less was found')
    expect(countWords({ ...layout, job: { ...layout.job, isCountFirst: true } })).toContain('None with fewer was found')
  })

  it('say what is still looked for when no layout needs fewer sheets', () => {
    const layout = { ...LAYOUT, answer: { ...LAYOUT.answer, proved: true }, isSettled: false }
    const proof = 'no layout of these parts needs fewer'
    expect(countWords(layout)).toBe(`2 sheets, and ${proof}; still looking for a larger offcut and fewer settings.`)
    expect(proofOf(layout)?.text).toBe(`${proof} than 1; still looking for a larger offcut and fewer settings`)
    const settings = { ...layout, job: { ...JOB, goals: ['settings'] as const } }
    expect(countWords(settings)).toBe(`2 sheets, and ${proof}; still looking for fewer settings.`)
  })
})

describe('the steps on screen', () => {
  it('stand under the cautions, one after another', () => {
    const page = renderToStaticMarkup(<StepsView />)
    expect(page.indexOf('The instructions of the makers')).toBeLessThan(page.indexOf('<ol'))
    // straighten and rip at 200, square, crosscut at 400, on two alike sheets; the sheets one after another
    expect(page).toContain('Set both guides to 200\u00a0mm')
    expect(page).toContain('Set the stop to 400\u00a0mm and crosscut each of 1a and 2a, once.')
    expect(page).toContain('B1-LS B1-RS')
  })

  it('mark those that free a selected part', () => {
    state = { ...state, selection: { kind: 'row', row: 'r1' } as never }
    expect(renderToStaticMarkup(<StepsView />).match(/data-chosen="true"/g)).toHaveLength(1)
  })
})

describe('the cut list on screen', () => {
  it('names the sheets of a row and totals its material', () => {
    const page = renderToStaticMarkup(<CutListTable />)
    expect(page).toMatch(/1, 2<\/td><\/tr>/)
    expect(page).toContain('Length (mm)')
    expect(page).toContain('0.16')
  })

  it('shows in words what a drag changed', () => {
    const was = new Map([['k1/left', { cutLength: 380, cutWidth: 200 }]])
    state = { ...state, before: { ...DERIVED, partOf: was, cutList: { rows: [], totals: [] } } as unknown as Derived }
    expect(renderToStaticMarkup(<CutListTable />)).toContain(', was 380')
  })
})
