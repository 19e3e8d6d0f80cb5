import type { Interval } from '../geometry/interval'
import { type Rect, rightOf, topOf } from '../geometry/rect'
import type { Front, FrontColumn, FrontRow } from '../project/document'
import { hungAs } from '../project/doors'
import type { FrontPath } from '../project/frontTree'
import { type Mm, settle } from '../units/length'
import { baysBetween, wholeBay } from './bay'
import { type Carcass, clearBottom, clearTop } from './carcass'
import { betweenFramed, coveredBy, frameOpening, openingBehind } from './frameRects'
import { type Report, SILENT } from './report'
import { sharedOut } from './sharing'

/** One opening of the front: what closes it, the room of that seen from the room, and the opening behind it. */
export interface Cell {
  readonly front: Exclude<Front, { kind: 'rows' | 'columns' }>
  /** Which column it is in, from 0 at the left. */
  readonly column: number
  readonly rect: Rect
  /** From board to board inside; between two fronts the openings meet in the middle of the gap, or of the member there. */
  readonly opening: Interval
  /** The opening of the face frame before it, seen from the room; null without a frame. */
  readonly clear: Rect | null
  /** From upright to upright inside; where none stands between two fronts, to the middle of the gap. */
  readonly across: Interval
  readonly path: FrontPath
  /** Beside others in a row that short boards part: their left faces, and which of the rooms between them it is. */
  readonly parted?: { readonly posts: readonly Mm[]; readonly at: number }
}

/** The front's openings, column by column, from the bottom up. */
export function cellsOf(front: Front, carcass: Carcass, report: Report): Cell[] {
  const opening = { from: clearBottom(carcass), to: clearTop(carcass) }
  if (front.kind !== 'columns') {
    const place = { path: [], column: 0, rect: frontArea(carcass), opening, across: acrossOf(wholeBay(carcass)) }
    return cellsIn(front, place, carcass, report)
  }
  const rects = columnRects(front.columns, carcass, report)
  const bays = baysBetween(columnPosts(rects, carcass), carcass)
  return front.columns.flatMap(({ front: inner }, column) => {
    const across = acrossOf(bays[column]!)
    const place = { path: [column], column, rect: rects[column]!, opening, across }
    return cellsIn(inner, place, carcass, report)
  })
}

/** What the fronts of each column cover, from the left. Inset fronts have the board that parts them between them. */
export function columnRects(columns: readonly FrontColumn[], carcass: Carcass, report: Report): Rect[] {
  return sideBySide(columns, frontArea(carcass), betweenColumns(carcass), report)
}

function sideBySide(columns: readonly FrontColumn[], area: Rect, between: Mm, report: Report): Rect[] {
  const widths = columnWidths(columns, area.width, between, report)
  return widths.map((width, at) => {
    const before = widths.slice(0, at).reduce((sum, one) => sum + one + between, 0)
    return { ...area, left: settle(area.left + before), width }
  })
}

/** From the fronts of one column to those of the next. */
function betweenColumns(carcass: Carcass): Mm {
  const { isInset, thickness, frame, method } = carcass
  if (frame) return betweenFramed(frame, method)
  return isInset ? thickness + 2 * method.fronts.endReveal : method.fronts.gap
}

/** From the fronts of one row to those of the next. */
export function betweenRows({ frame, method }: Carcass): Mm {
  return frame ? betweenFramed(frame, method) : method.fronts.gap
}

/** The left faces of the boards that part the columns: in the middle between the fronts, which are `rects`. */
export function columnPosts(rects: readonly Rect[], carcass: Carcass): Mm[] {
  return rects.slice(0, -1).map((rect) => settle(rightOf(rect) + betweenColumns(carcass) / 2 - carcass.thickness / 2))
}

/** What the fronts cover in all, with a face frame round the whole of its opening, seen from the room. */
export function frontArea(carcass: Carcass): Rect {
  if (carcass.frame) return coveredBy(frameOpening(carcass, carcass.frame), carcass.frame, carcass.method)
  const { topReveal, bottomReveal, endReveal } = carcass.method.fronts
  const left = frontInset(carcass)
  // Between boards a front needs as much play above and below as beside it, whatever one that covers them is let do.
  const [low, high] = carcass.isInset
    ? [clearBottom(carcass) + Math.max(bottomReveal, endReveal), clearTop(carcass) - Math.max(topReveal, endReveal)]
    : [carcass.floorHeight + bottomReveal, carcass.height - topReveal]
  const [bottom, top] = [settle(low), settle(high)]
  return { left, bottom, width: settle(carcass.width - 2 * left), height: settle(top - bottom) }
}

/**
 * From the outside of the carcass to the fronts, each side. A full overlay leaves the reveal; a half overlay leaves the
 * other half of a side it shares, and half of the gap to its neighbour; an inset front stands inside the side.
 */
export function frontInset(carcass: Carcass): Mm {
  const { endReveal, gap } = carcass.method.fronts
  switch (carcass.method.frontMount) {
    case 'fullOverlay':
      return settle(endReveal)
    case 'halfOverlay':
      return settle(carcass.thickness / 2 + gap / 2)
    case 'inset':
      return settle(carcass.thickness + endReveal)
  }
}

type Place = Pick<Cell, 'path' | 'column' | 'rect' | 'opening' | 'across'>

/** The opening of the face frame before a front. */
function clearFor(rect: Rect, { frame, method }: Carcass): Rect | null {
  return frame && openingBehind(rect, frame, method)
}

function cellsIn(front: Front, place: Place, carcass: Carcass, report: Report): Cell[] {
  const { rect, opening } = place
  const between = betweenRows(carcass)
  if (front.kind === 'columns') return cellsBeside(front.columns, place, carcass, report)
  if (front.kind !== 'rows') return [{ front: hungIn(front, rect, carcass), ...place, clear: clearFor(rect, carcass) }]
  const heights = rowHeights(front.rows, rect.height, between, report)
  let top = topOf(rect)
  const cells = front.rows.map((row, at) => {
    const height = heights[at]!
    const bottom = settle(top - height)
    const isFirst = at === 0
    const isLast = at === heights.length - 1
    const behind = {
      from: isLast ? opening.from : settle(bottom - between / 2),
      to: isFirst ? opening.to : settle(top + between / 2),
    }
    const own = { left: rect.left, bottom, width: rect.width, height }
    top = settle(bottom - between)
    return cellsIn(row.front, { ...place, path: [...place.path, at], rect: own, opening: behind }, carcass, report)
  })
  return cells.reverse().flat()
}

/**
 * Columns inside a row have no board between them where nothing needs one: doors at the two ends, false fronts, open
 * places. Drawers and doors in the middle have short boards between them, and the row is closed by fixed boards.
 */
function cellsBeside(asked: readonly FrontColumn[], place: Place, carcass: Carcass, report: Report): Cell[] {
  const columns = hungColumns(asked, place.rect, carcass)
  const rects = rowColumnRects(columns, place.rect, carcass, report)
  const posts = columnPosts(rects, carcass)
  const isParted = isRowParted(columns, place.rect, carcass) && areRoomsLeft(posts, carcass, report)
  return columns.map(({ front }, at): Cell => {
    const why = whyNotBeside(front, at === 0, at === columns.length - 1, carcass)
    const stands = !why || (isParted && HANGS_ON_POSTS.has(front.kind))
    if (!stands)
      report.stop(`column ${at + 1} of ${columns.length} inside a row ${why}; its place is left open.`, {
        is: 'no board beside it',
        limit: 'one to hang on',
      })
    const across = isParted ? acrossOf(baysBetween(posts, carcass)[at]!) : acrossAmong(rects, at, place.across, carcass)
    const path = [...place.path, at]
    const own = {
      ...place,
      path,
      across,
      rect: rects[at]!,
      clear: clearFor(rects[at]!, carcass),
      front: stands ? (front as Cell['front']) : ({ kind: 'open' } as const),
    }
    return isParted ? { ...own, parted: { posts, at } } : own
  })
}

/** A leaf of the front as it hangs there. */
function hungIn(front: Cell['front'], rect: Rect, { method }: Carcass): Cell['front'] {
  return hungAs(front, rect, method) as Cell['front']
}

/** Columns inside a row as they hang: by the widths that they have with nothing but gaps between them. */
function hungColumns(columns: readonly FrontColumn[], rect: Rect, carcass: Carcass): readonly FrontColumn[] {
  if (!columns.some(({ front }) => front.kind === 'door' && front.orPair)) return columns
  const rects = sideBySide(columns, rect, carcass.method.fronts.gap, SILENT)
  return columns.map((column, at) => ({ ...column, front: hungAs(column.front, rects[at]!, carcass.method) }))
}

function acrossOf({ from, to }: Interval): Interval {
  return { from, to }
}

/** Of one of several fronts side by side with nothing between them. */
function acrossAmong(rects: readonly Rect[], at: number, whole: Interval, { method: { fronts } }: Carcass): Interval {
  const half = fronts.gap / 2
  return {
    from: at === 0 ? whole.from : settle(rects[at]!.left - half),
    to: at === rects.length - 1 ? whole.to : settle(rightOf(rects[at]!) + half),
  }
}

/** Whether something is left between the boards that part a row, and between them and the sides. */
function areRoomsLeft(posts: readonly Mm[], { thickness, width }: Carcass, report: Report): boolean {
  const ends = [...posts, settle(width - thickness)]
  const rooms = ends.map((end, at) => settle(end - (posts[at - 1] ?? 0) - thickness))
  const least = Math.min(...rooms)
  if (least > 0) return true
  report.stop(
    `a column inside a row would be ${report.left(least)} clear between its boards; the row is not parted.`,
    report.room(least),
  )
  return false
}

/** What a short board on either side is enough for. */
const HANGS_ON_POSTS: ReadonlySet<Front['kind']> = new Set<Front['kind']>(['door', 'pair', 'drawer', 'pullOut'])

/** Whether boards part the columns of a row: where one needs them, and the row reaches from side to side. */
function isRowParted(columns: readonly FrontColumn[], rect: Rect, carcass: Carcass): boolean {
  if (rect.width !== frontArea(carcass).width) return false
  return columns.some(({ front }, at) => {
    return HANGS_ON_POSTS.has(front.kind) && whyNotBeside(front, at === 0, at === columns.length - 1, carcass) !== null
  })
}

/** What the fronts of columns inside a row cover, from the left. */
export function rowColumnRects(columns: readonly FrontColumn[], rect: Rect, carcass: Carcass, report: Report): Rect[] {
  const hasBoards = carcass.frame !== null || isRowParted(hungColumns(columns, rect, carcass), rect, carcass)
  const between = hasBoards ? betweenColumns(carcass) : carcass.method.fronts.gap
  return sideBySide(columns, rect, between, report)
}

function whyNotBeside(front: Front, isFirst: boolean, isLast: boolean, { frame }: Carcass): string | null {
  // A face frame has a mullion there, which doors hang on.
  if (frame && (front.kind === 'door' || front.kind === 'pair')) return null
  switch (front.kind) {
    case 'open':
    case 'falseFront':
    case 'blind':
      return null
    case 'door': {
      const hangs = front.hinge === 'top' || (front.hinge === 'left' ? isFirst : isLast)
      return hangs ? null : `is a door hinged ${front.hinge}, where no upright stands beside it`
    }
    case 'pair':
      return 'is a pair of doors, and one of them would have no upright beside it'
    case 'drawer':
    case 'pullOut':
      return 'is a drawer, and its slides would have no upright between the columns'
    case 'appliance':
      return 'is a niche for an appliance, and it would have no board beside it'
    case 'rows':
    case 'columns':
      return 'is divided once more, which needs a board between the columns'
  }
}

/**
 * Fixed rows keep their height; the others share what is left beside the gaps and beside what some of them are more than
 * their share. Equal shares are equal to the tick.
 */
export function rowHeights(rows: readonly FrontRow[], height: Mm, gap: Mm, report: Report): Mm[] {
  const sizes = rows.map(({ size }) => (size.kind === 'fixed' ? { fixed: size.height } : size))
  return sharedOut(sizes, height, gap, { one: 'row', long: 'high', ...FRONTS }, report)
}

const FRONTS = { between: 'gaps', of: 'front' } as const

/** Fixed columns keep their width; the others share what is left beside what is between them. */
export function columnWidths(columns: readonly FrontColumn[], width: Mm, between: Mm, report: Report): Mm[] {
  const sizes = columns.map(({ size }) => (size.kind === 'fixed' ? { fixed: size.width } : size))
  return sharedOut(sizes, width, between, { one: 'column', long: 'wide', ...FRONTS }, report)
}

/** Each of two doors that meet in the middle: half of what the gap between them leaves. */
export function pairDoorWidth(width: Mm, gap: Mm): Mm {
  return settle((width - gap) / 2)
}

/** The two halves of a pair, left and right. */
export function pairRects(rect: Rect, gap: Mm): readonly [Rect, Rect] {
  const width = pairDoorWidth(rect.width, gap)
  return [
    { ...rect, width },
    { ...rect, width, left: settle(rightOf(rect) - width) },
  ]
}
