import { APPLIANCE, METHOD } from '../basics/source'
import type { Interval } from '../geometry/interval'
import { type Mm, settle } from '../units/length'
import { type Bay, rearAt } from './bay'
import type { Board } from './board'
import { backFront, type Carcass, clearBottom, clearTop, insideFront } from './carcass'
import { clearAcross, clearUp } from './clear'
import { inBoard, notchOf } from './frame'
import type { Cell } from './openings'
import type { Notch } from './operation'
import { type Piece, room } from './piece'
import type { Report } from './report'
import { nicheBoardOf } from './shelf'

/** What is left of a back around the window behind a niche, so that it still sits in its grooves. Common practice, no source. */
export const BACK_LEFT = 40

/** The room for an appliance, between the boards it stands on and under, in the cabinet's frame. */
export interface Niche {
  readonly bay: Interval
  readonly opening: Interval
  /** What is kept free behind it for air; 0 where the back stays whole. */
  readonly air: Mm
}

/** The boards an appliance or a parted row stands on and under, where that is not the bottom or the top. */
export function nicheBoardsOf(
  cells: readonly Cell[],
  bay: Bay,
  obstacles: readonly Piece[],
  carcass: Carcass,
): readonly Piece[] {
  const airs = new Map<Mm, Mm>()
  for (const { front, opening, parted } of cells) {
    if (front.kind !== 'appliance' && !parted) continue
    const air = front.kind === 'appliance' ? front.air : 0
    for (const at of [opening.from, opening.to]) {
      if (at > clearBottom(carcass) && at < clearTop(carcass)) airs.set(at, Math.max(airs.get(at) ?? 0, air))
    }
  }
  return [...airs].map(([middle, air]) => {
    const low = settle(middle - carcass.thickness / 2)
    const y = { from: low, to: settle(low + carcass.thickness) }
    const rear = Math.max(rearAt(y, obstacles, carcass), settle(backFront(carcass) + air))
    return nicheBoardOf(bay, y, rear, carcass)
  })
}

/** A niche must hold what its maker asks for; it may be larger. */
export function nicheIn(cell: Cell, bay: Bay, opening: Interval, carcass: Carcass, report: Report): Niche[] {
  const { front } = cell
  if (front.kind !== 'appliance') return []
  const [across, up] = [clearAcross<Interval>(bay, cell.clear), clearUp(opening, cell.clear)]
  const [width, height] = [settle(across.to - across.from), settle(up.to - up.from)]
  if (width < front.width) {
    report.stop(
      `the niche is ${report.left(width)} wide between its boards; the appliance asks for ${report.say(front.width)}.`,
      { is: report.left(width), limit: front.width, source: APPLIANCE },
    )
  }
  if (height < front.height) {
    report.stop(
      `the niche is ${report.left(height)} high between its boards; the appliance asks for ${report.say(front.height)}.`,
      { is: report.left(height), limit: front.height, source: APPLIANCE },
    )
  }
  const depth = settle(insideFront(carcass) - backFront(carcass))
  const clear = settle(depth - front.air)
  if (front.depth !== undefined && front.air < depth && clear < front.depth) {
    const before = front.air > 0 ? ` before the ${report.say(front.air)} for air` : ''
    report.stop(
      `the niche is ${report.left(clear)} deep${before}; the appliance asks for ${report.say(front.depth)}.`,
      {
        is: report.left(clear),
        limit: front.depth,
        source: APPLIANCE,
      },
    )
  }
  if (front.air >= depth) {
    report.stop(
      `the gap for air behind the appliance is ${report.say(front.air)}; the inside is ${report.left(depth)} deep.`,
      { is: front.air, limit: report.left(depth) },
    )
  }
  if (carcass.method.fixedShelf === 'pinned' && front.air > carcass.method.shelves.rowSetback) {
    report.mind(
      `the boards of the niche begin ${report.say(front.air)} before the back, so their rear pins, ${report.say(carcass.method.shelves.rowSetback)} before it, hold nothing.`,
      { is: front.air, limit: carcass.method.shelves.rowSetback, source: METHOD },
    )
  }
  return [{ bay, opening, air: front.air }]
}

/** The windows in a back for the air behind appliances. */
export function windowsIn(back: Board, niches: readonly Niche[], carcass: Carcass): Notch[] {
  return niches.flatMap(({ bay, opening, air }): Notch[] => {
    const x = [bay.from + BACK_LEFT, bay.to - BACK_LEFT] as const
    const y = [opening.from + BACK_LEFT, opening.to - BACK_LEFT] as const
    if (!(air > 0 && x[1] > x[0] && y[1] > y[0])) return []
    const window = room(x, y, [backFront(carcass) - carcass.backThickness, backFront(carcass)])
    return [{ ...notchOf(inBoard(back, window)), for: 'air' }]
  })
}
