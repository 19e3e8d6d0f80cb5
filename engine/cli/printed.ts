import type { BuiltRun } from '../between/run'
import type { Turn } from '../geometry/placement'
import { isCutLate } from '../parts/late'
import type { Part } from '../parts/part'
import type { DerivedCabinet } from '../pipeline'
import type { CutLate } from '../project/late'
import type { SheetAnswer } from '../sheets/layout'

/** A cabinet of a plan: where it stands along its wall, and its parts; of a space for an appliance what that asks for. */
export function printedCabinet({ cabinet, mark, parts }: DerivedCabinet, late: CutLate) {
  const { id, kind, left, bottom, width, height, depth, space } = cabinet
  const place = { left, bottom, width, height, depth, ...(space && { space }) }
  return { id, mark, kind, ...place, parts: parts.map((part) => printedPart(part, late)) }
}

/** Boards over several cabinets, as a plan has them. */
export function printedRun({ id, kind, mark, place, parts }: BuiltRun, late: CutLate) {
  return { id, mark, kind, ...place, parts: parts.map((part) => printedPart(part, late)) }
}

/**
 * Sizes are finished; the size to cut stands beside them. Where a board lies in its cabinet: its corner at `origin`, its
 * length, width and thickness along `axes`, and all of it then turned about the upright through that corner by `turn`, so
 * many degrees from the right towards the wall; 0 for what stands square.
 */
function printedPart(part: Part, late: CutLate) {
  const { id, mark, role, material, length, width, thickness, cutLength, cutWidth, banding, operations, placement } =
    part
  const { origin, turn, ...axes } = placement
  const grain = part.isGrainBound ? 'length' : 'any'
  const size = { length, width, thickness, cutLength, cutWidth }
  const made = { cutLate: isCutLate(role, late), toMeasured: part.isMeasured === true }
  return {
    id,
    mark,
    role,
    material,
    ...size,
    quantity: 1,
    grain,
    banding,
    operations,
    origin,
    axes,
    turn: degreesOf(turn),
    ...made,
  }
}

function degreesOf(turn: Turn | undefined): number {
  return turn ? (Math.atan2(turn.sin, turn.cos) * 180) / Math.PI : 0
}

/** An answer as the contract of sheet jobs has it: no trees, and how long it took. */
export function printedAnswer({ sheets, ...said }: SheetAnswer, elapsedMs: number) {
  const plain = sheets.map(({ stock, copies, placements }) => ({ stock, copies, placements }))
  return { sheets: plain, ...said, elapsedMs: Math.round(elapsedMs) }
}
