import { counted } from '../basics/counted'
import { type Interval, intervalsOverlap } from '../geometry/interval'
import type { ColumnShelves } from '../project/document'
import { type Mm, settle } from '../units/length'
import type { Bay } from './bay'
import type { Carcass } from './carcass'
import { clearAcross, clearUp } from './clear'
import type { DrawerPlace } from './drawerBox'
import { hingeEdge } from './hang'
import type { Cell } from './openings'
import type { Report } from './report'

/** So far behind the front edge a box is clear of the door and its bumpers. Common practice, no source. */
const SETBACK: Mm = 10
/** Beside a door that stands open at a right angle. Common practice, no source. */
const PLAY: Mm = 5

/**
 * What a box keeps from the upright that a door hangs on: a door that stands open reaches into the opening by its
 * thickness at most, and the box must pass it. The slide is packed out by as much.
 */
export function hingeClearance({ frontThickness }: Pick<Carcass, 'frontThickness'>): Mm {
  return settle(frontThickness + PLAY)
}

/** What of a room between two uprights is free for boxes when the doors that hang on these stand open. */
function besideDoors(room: Bay, bay: Bay, cells: readonly Cell[], carcass: Carcass): Bay {
  const clearance = hingeClearance(carcass)
  // A bay behind a door that hangs on another upright need not keep clear of it.
  const hung = (side: 'left' | 'right', end: 'from' | 'to') =>
    cells.some(({ front, across }) => hingeEdge(front, side) && across[end] === bay[end])
  return {
    ...room,
    from: settle(room.from + (hung('left', 'from') ? clearance : 0)),
    to: settle(room.to - (hung('right', 'to') ? clearance : 0)),
  }
}

/** The height that each box takes: its own, and what slides keep free below and above it. */
export function rollOutPitch(height: Mm, { method: { drawers } }: Carcass): Mm {
  return settle(height + drawers.bottomClearance + drawers.topClearance)
}

/**
 * Boxes behind doors from the bottom of a height up, all of them behind its lowest opening where a face frame has several;
 * a mullion before them leaves them no width, and the height that
 * they leave; all of it where they find no room.
 */
export function rollOutsIn(
  { rollOuts }: ColumnShelves,
  free: Interval,
  bay: Bay,
  cells: readonly Cell[],
  carcass: Carcass,
  report: Report,
): { readonly places: readonly DrawerPlace[]; readonly rest: Interval } {
  const count = rollOuts?.count ?? 0
  if (!rollOuts || count === 0) return { places: [], rest: free }
  const pitch = rollOutPitch(rollOuts.height, carcass)
  const need = settle(count * pitch)
  const before = cells.filter(({ opening }) => intervalsOverlap(opening, free))
  const lowest = before.filter(({ opening }) => opening.from === before[0]!.opening.from)
  const passing = clearUp(free, before[0]?.clear ?? null)
  if (need > passing.to - passing.from) {
    report.stop(
      `${counted(count, 'roll-out')} take${count === 1 ? 's' : ''} ${report.say(need)} of height; there is ${report.left(passing.to - passing.from)}. They are left out.`,
      { is: need, limit: report.left(passing.to - passing.from) },
    )
    return { places: [], rest: free }
  }
  const narrow = besideDoors(
    lowest.reduce((width, { clear }) => clearAcross(width, clear), bay),
    bay,
    cells,
    carcass,
  )
  const doors = cells.filter(({ front }) => front.kind === 'door' || front.kind === 'pair').map(({ path }) => path)
  const places = Array.from({ length: count }, (_, at): DrawerPlace => {
    const from = settle(passing.from + at * pitch)
    const opening = { from, to: settle(from + pitch) }
    return { bay: narrow, before: doors, opening, height: rollOuts.height, setback: SETBACK }
  })
  return { places, rest: { from: settle(passing.from + need), to: free.to } }
}
