import type { MaterialId } from '../../../engine/basics/id'
import type { Breakdown, Step } from '../../../engine/breakdown/step'
import type { BreakdownInput } from '../../../engine/breakdown/steps'
import type { CutList, CutRow } from '../../../engine/cutlist/row'
import type { Material, Shop } from '../../../engine/project/document'
import type { SheetJob } from '../../../engine/sheets/job'
import type { Piece, Placement2D, SheetAnswer, SheetLayout } from '../../../engine/sheets/layout'
import { settle } from '../../../engine/units/length'

export const SHOP: Shop = {
  kerf: 3,
  trim: 10,
  stages: 3,
  firstCut: 'rip',
  goals: { isOffcutLarge: true, areSettingsFew: true },
  offcutLeast: { length: 300, width: 150 },
  currency: '€',
  railLength: 2700,
  canJoinRails: true,
  guides: { least: 190, greatest: 650 },
  narrowRips: { least: 0, greatest: 230 },
  benchCrosscut: 650,
  onePersonLift: 25,
  roughLength: 10,
  blades: { rip: { teeth: 18 }, crosscut: { teeth: 48 } },
  cutOrder: null,
  minutes: { perSetting: 2, perCut: 1.5, perSheet: 6 },
  late: { fronts: false, drawerBoxes: false, fitted: false },
}

export const PLY: Material = {
  id: 'm1' as MaterialId,
  name: 'ply',
  nominal: 18,
  thickness: 18,
  hasGrain: true,
  density: 685,
  stiffness: 9000,
}

/** A sheet of 2440 x 1220 less 10 all round leaves 2420 x 1200. */
export const SHEET = { id: 's1', material: 'm1', length: 2440, width: 1220, trim: { length: 10, width: 10 } }

export function rip(...pieces: readonly Cutting[]): Cutting {
  return { kind: 'cut', direction: 'rip', pieces }
}

export function crosscut(...pieces: readonly Cutting[]): Cutting {
  return { kind: 'cut', direction: 'crosscut', pieces }
}

export function part(id: string): Cutting {
  return { kind: 'part', part: id }
}

export const OFFCUT: Cutting = { kind: 'offcut' }
export const WASTE: Cutting = { kind: 'waste' }

/** A tree of cuts without its measures. */
export type Cutting =
  | { readonly kind: 'part'; readonly part: string }
  | { readonly kind: 'offcut' | 'waste' }
  | { readonly kind: 'cut'; readonly direction: 'rip' | 'crosscut'; readonly pieces: readonly Cutting[] }

export type Sizes = Readonly<Record<string, readonly [length: number, width: number]>>

interface At {
  readonly x: number
  readonly y: number
  readonly length: number
  readonly width: number
}

/** Lays a tree of cuts into a rectangle: parts are as large as they are, and the last piece takes what is left. */
export function lay(cutting: Cutting, at: At, sizes: Sizes, kerf: number): Piece {
  if (cutting.kind === 'part') {
    const [length, width] = sizes[cutting.part]!
    return { kind: 'part', part: cutting.part, rotated: false, x: at.x, y: at.y, length, width }
  }
  if (cutting.kind !== 'cut') return { kind: cutting.kind, ...at }
  const isRip = cutting.direction === 'rip'
  let from = isRip ? at.y : at.x
  const end = isRip ? at.y + at.width : at.x + at.length
  const pieces = cutting.pieces.map((child) => {
    const need = needOf(child, sizes, kerf)[isRip ? 1 : 0]
    const extent = need === 0 ? settle(end - from) : need
    const place = isRip ? { ...at, y: from, width: extent } : { ...at, x: from, length: extent }
    from = settle(from + extent + kerf)
    return lay(child, place, sizes, kerf)
  })
  return { kind: 'cut', direction: cutting.direction, pieces, ...at }
}

function needOf(cutting: Cutting, sizes: Sizes, kerf: number): readonly [number, number] {
  if (cutting.kind === 'part') return sizes[cutting.part]!
  if (cutting.kind !== 'cut') return [0, 0]
  const needs = cutting.pieces.map((child) => needOf(child, sizes, kerf))
  const sum = (axis: 0 | 1) => settle(needs.reduce((all, need) => all + need[axis], kerf * (needs.length - 1)))
  const most = (axis: 0 | 1) => Math.max(...needs.map((need) => need[axis]))
  return cutting.direction === 'rip' ? [most(0), sum(1)] : [sum(0), most(1)]
}

/** The job, the answer and the cut list of some sheets, each a tree of cuts and how often it is cut alike. */
export function sheets(
  sizes: Sizes,
  layouts: readonly (readonly [copies: number, Cutting])[],
  kerf = 3,
  stock = SHEET,
) {
  const room = {
    x: stock.trim.length,
    y: stock.trim.width,
    length: stock.length - 2 * stock.trim.length,
    width: stock.width - 2 * stock.trim.width,
  }
  const laid = layouts.map(([copies, cutting]): SheetLayout => {
    const root = lay(cutting, room, sizes, kerf)
    return { stock: stock.id, copies, root, placements: placementsOf(root) }
  })
  const counts = new Map<string, number>()
  for (const { copies, placements } of laid) {
    for (const { part } of placements) counts.set(part, (counts.get(part) ?? 0) + copies)
  }
  const answer: SheetAnswer = { sheets: laid, unplaced: [], bounds: {}, proved: false }
  const parts = [...counts].map(([id, quantity]) => {
    return { id, material: 'm1', length: sizes[id]![0], width: sizes[id]![1], quantity }
  })
  const job: SheetJob = { kerf, stock: [stock], parts }
  return { job, answer, cutList: listOf(parts) }
}

/** Row `A` has the parts `A-1`, `A-2`... */
function listOf(parts: SheetJob['parts']): CutList {
  const rows = parts.map(({ id, length, width, quantity }) => {
    const names = Array.from({ length: quantity }, (_, at) => `${id}-${at + 1}`)
    return { key: id, mark: id, name: id, material: 'm1', length, width, thickness: 18, quantity, parts: names }
  })
  return { rows: rows as unknown as CutRow[], totals: [] }
}

export function placementsOf(piece: Piece): Placement2D[] {
  if (piece.kind === 'cut') return piece.pieces.flatMap(placementsOf)
  if (piece.kind !== 'part') return []
  const { part, x, y, length, width, rotated } = piece
  return [{ part, x, y, length: rotated ? width : length, width: rotated ? length : width, rotated }]
}

/** `rip 580: 2 of 2440 x 1210 | 4 strip 2440 x 580 | 2 waste 2440 x 44` */
export function showStep(step: Step): string {
  const setting = step.setting === null ? step.tool : `${step.setting}`
  const leaves = step.leaves.map(({ kind, length, width, count }) => `${count} ${kind} ${length} x ${width}`)
  return [`${step.kind} ${setting}: ${step.count} of ${step.takes.length} x ${step.takes.width}`, ...leaves].join(' | ')
}

interface OnTheFloor {
  readonly kind: string
  readonly length: number
  readonly width: number
}

/**
 * Does what the steps say, beginning with full sheets, and gives what lies on the floor at the end. It knows only sizes:
 * a step that takes a piece that is not there, or leaves more or less than it took, is an error.
 */
export function replay(breakdown: Breakdown, job: SheetJob, answer: SheetAnswer): OnTheFloor[] {
  const floor: OnTheFloor[] = answer.sheets.flatMap(({ stock, copies }) => {
    const { length, width } = job.stock.find(({ id }) => id === stock)!
    return Array.from({ length: copies }, () => ({ kind: 'sheet', length, width }))
  })
  for (const step of breakdown.steps) {
    for (let piece = 0; piece < step.count; piece++) take(floor, step)
    weigh(step, job.kerf)
    for (const { kind, length, width, count } of step.leaves) {
      for (let piece = 0; piece < count; piece++) floor.push({ kind, length, width })
    }
  }
  return floor
}

function take(floor: OnTheFloor[], { id, takes }: Step): void {
  const at = floor.findIndex(({ kind, length, width }) => {
    return length === takes.length && width === takes.width && !['part', 'offcut', 'waste'].includes(kind)
  })
  if (at < 0) throw new Error(`step ${id} takes a piece of ${takes.length} x ${takes.width}; there is none`)
  floor.splice(at, 1)
}

/** Pieces and kerfs are the whole piece; only the last cut of a piece may lie partly beyond its edge. */
export function weigh(step: Step, kerf: number): void {
  const isRip = step.sketch.measuredFrom === 'edge'
  const along = ({ length, width }: { length: number; width: number }) => (isRip ? width : length)
  const across = ({ length, width }: { length: number; width: number }) => (isRip ? length : width)
  if (step.leaves.some((leaf) => across(leaf) !== across(step.takes)))
    throw new Error(`step ${step.id} is not edge to edge`)
  const left = step.leaves.reduce((sum, leaf) => sum + leaf.count * along(leaf), 0)
  const spare = settle(step.count * along(step.takes) - left - step.cuts * kerf)
  if (spare > 0 || (spare < 0 && spare <= -kerf * step.count))
    throw new Error(`step ${step.id} (${showStep(step)}) loses ${spare}`)
}

/** What lies there of one kind, as `3 of 720 x 560`, sorted. */
export function countsOf(pieces: readonly { readonly length: number; readonly width: number }[]): string[] {
  const counts = new Map<string, number>()
  for (const { length, width } of pieces) {
    const size = `${length} x ${width}`
    counts.set(size, (counts.get(size) ?? 0) + 1)
  }
  return [...counts].map(([size, count]) => `${count} of ${size}`).sort()
}

/** What the breakdown of such sheets starts from, in the shop of these tests or one that differs from it. */
export function inputOf(given: ReturnType<typeof sheets>, shop: Partial<BreakdownInput['shop']> = {}): BreakdownInput {
  const materials = { m1: PLY } as unknown as BreakdownInput['materials']
  return { ...given, shop: { ...SHOP, ...shop }, marks: new Map(), materials }
}
