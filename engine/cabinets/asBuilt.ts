import { PRACTICE } from '../basics/source'
import type { Rect } from '../geometry/rect'
import { isMadeToOpening, openingKey } from '../project/asBuilt'
import type { FrontPath } from '../project/frontTree'
import type { AsBuilt, MeasuredOpening } from '../project/measured'
import { type Mm, settle } from '../units/length'
import type { DrawerPlace } from './drawerBox'
import type { FrontOpening, Size } from './frontOpening'
import type { Cell } from './openings'
import type { Piece } from './piece'
import type { Report } from './report'
import { besideLines } from './rowPosts'

/** A carcass that is farther off than this was built to another drawing. Common practice, no source. */
export const MOST_OFF: Mm = 20

const AS_DRAWN: Size = { width: 0, height: 0 }

/** The openings of a front, narrowed by the boards that part them; `pieces` are those inside the carcass. */
export function openingsOf(
  cells: readonly Cell[],
  pieces: readonly Piece[],
  asBuilt: AsBuilt,
  report: Report,
): FrontOpening[] {
  return cells
    .filter(({ front }) => isMadeToOpening(front))
    .map((cell): FrontOpening => {
      const { front, path } = cell
      const key = openingKey(path)
      const drawn = clearSize(cell, pieces)
      const measured = asBuilt[key] ?? null
      const off = measured ? offOf(drawn, measured, report) : AS_DRAWN
      return { key, path, front, drawn, measured, off: off ?? AS_DRAWN, isMade: measured !== null && off !== null }
    })
}

/** The opening of the face frame where there is one, else from board to board. */
function clearSize({ across, opening, clear }: Cell, pieces: readonly Piece[]): Size {
  if (clear) return { width: clear.width, height: clear.height }
  const lines = pieces.filter(({ role, box }) => {
    return role === 'fixedShelf' && box.min.x < across.to && box.max.x > across.from
  })
  const { from, to } = besideLines(opening, lines)
  return { width: settle(across.to - across.from), height: settle(to - from) }
}

/** Null where that is more than can be, which is told. */
function offOf(drawn: Size, { width, height }: MeasuredOpening, report: Report): Size | null {
  const off = {
    width: width === null ? 0 : settle(width - drawn.width),
    height: height === null ? 0 : settle(height - drawn.height),
  }
  for (const [side, long] of [
    ['width', 'wide'],
    ['height', 'high'],
  ] as const) {
    if (Math.abs(off[side]) <= MOST_OFF) continue
    const [is, was] = [drawn[side] + off[side], drawn[side]].map(report.say)
    report.stop(
      `an opening was measured ${is} ${long} and is drawn ${was}; ${report.say(MOST_OFF)} is the most between them. It is made as drawn.`,
      { is: Math.abs(off[side]), limit: MOST_OFF, source: PRACTICE },
    )
    return null
  }
  return off
}

/** The opening of a cell; nothing where nothing is made to it. */
export function openingOf({ path }: Cell, openings: readonly FrontOpening[]): FrontOpening | undefined {
  return openings.find(({ key }) => key === openingKey(path))
}

/** The cell with its front grown by what its opening is off, half of it on each side: the gaps stay equal. */
export function asMeasured(cell: Cell, openings: readonly FrontOpening[]): Cell {
  const off = openingOf(cell, openings)?.off ?? AS_DRAWN
  return isOff(off) ? { ...cell, rect: grown(cell.rect, off) } : cell
}

function grown({ left, bottom, width, height }: Rect, by: Size): Rect {
  return {
    left: settle(left - by.width / 2),
    bottom: settle(bottom - by.height / 2),
    width: settle(width + by.width),
    height: settle(height + by.height),
  }
}

/** The place of a drawer box in the opening as it was measured, the same one where that is as drawn. Behind several doors the narrowest counts. */
export function measuredPlace(place: DrawerPlace, openings: readonly FrontOpening[]): DrawerPlace | null {
  const before = openings.filter(({ path, isMade }) => isMade && place.before.some((one) => isSamePath(one, path)))
  if (before.length === 0) return null
  const width = Math.min(...before.map(({ off }) => off.width))
  const height = place.setback === undefined ? (before[0]?.off.height ?? 0) : 0
  if (!isOff({ width, height })) return place
  const { bay, opening } = place
  return {
    ...place,
    bay: { ...bay, from: settle(bay.from - width / 2), to: settle(bay.to + width / 2) },
    opening: { ...opening, to: settle(opening.to + height) },
  }
}

function isSamePath(a: FrontPath, b: FrontPath): boolean {
  return openingKey(a) === openingKey(b)
}

function isOff({ width, height }: Size): boolean {
  return width !== 0 || height !== 0
}
