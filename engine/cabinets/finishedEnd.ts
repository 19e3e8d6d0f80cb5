import { MATERIALS, METHOD } from '../basics/source'
import type { Beside, Side } from '../project/document'
import { type Mm, settle } from '../units/length'
import { sideways, WAYS } from './apart'
import type { Board } from './board'
import type { Rules } from './build'
import { type Carcass, frontsRear, kickRear, outerFront } from './carcass'
import type { Notch } from './operation'
import { pastLeft, pastRight } from './past'
import { type Piece, room } from './piece'
import type { Report } from './report'
import { sideFoot } from './side'

type End = Extract<Beside, { kind: 'skin' | 'panel' }>

/** A skin ends where the carcass ends, or its face frame; a panel covers the edges of overlay fronts as well. */
export function endDepth(end: End, carcass: Carcass): Mm {
  if (end.kind === 'skin' || carcass.isInset) return outerFront(carcass)
  return settle(frontsRear(carcass) + carcass.frontThickness)
}

/** A skin begins where the side does; a panel stands on the floor, with the kick cut out of it or not. */
export function endFoot(end: End, carcass: Carcass): Mm {
  return end.kind === 'skin' ? sideFoot(carcass) : 0
}

/** As high as the carcass, from its foot. */
export function endLength(end: End, carcass: Carcass): Mm {
  return settle(carcass.height - endFoot(end, carcass))
}

/** A board on the outside of a side, its good face outward. */
export function finishedEndOf(
  end: End,
  side: Side,
  carcass: Carcass,
  materials: Rules['materials'],
  report: Report,
): Piece[] {
  const thickness = materials[end.material]?.thickness
  if (thickness === undefined) {
    report.stop(`the board of the ${end.kind} at its ${side} is not in the list of materials.`, {
      is: 'no material',
      limit: 'one of the list',
      source: MATERIALS,
    })
    return []
  }
  const foot = endFoot(end, carcass)
  const isLeft = side === 'left'
  const past = isLeft ? pastLeft(carcass) : pastRight(carcass)
  if (past > 0) {
    report.mind(
      `the ${end.kind} at its ${side} stands ${report.say(past)} off the side, as its face frame does. Let the frame end flush with that side.`,
      { is: past, limit: 0, source: METHOD, way: 'flushFrame' },
    )
  }
  return [
    {
      role: isLeft ? 'leftEnd' : 'rightEnd',
      number: 1,
      material: end.material,
      box: room(
        isLeft ? [-past - thickness, -past] : [carcass.width + past, carcass.width + past + thickness],
        [foot, foot + endLength(end, carcass)],
        [0, endDepth(end, carcass)],
      ),
      lie: isLeft ? 'uprightLookingRight' : 'uprightLookingLeft',
      banded: { edges: 'front', thickness: carcass.method.banding.carcass },
      explode: sideways(isLeft ? -1 : 1, WAYS.beside),
    },
  ]
}

/** The kick is cut out of an end as high as the kick, and so deep that its face is at the setback. */
export function endNotch(board: Board, end: Beside, carcass: Carcass): Notch[] {
  const { floor } = carcass.method
  if (floor.kind === 'none' || carcass.floorHeight === 0) return []
  const isCut = end.kind === 'panel' ? end.foot === 'notched' : end.kind === 'skin' && carcass.isNotched
  const width = settle(board.width - kickRear(carcass))
  const length = carcass.floorHeight
  if (!isCut || !(width > 0 && width < board.width && length < board.length)) return []
  const y = board.role === 'leftEnd' ? settle(board.width - width) : 0
  return [{ kind: 'notch', x: 0, y, length, width }]
}
