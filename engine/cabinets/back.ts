import type { Box } from '../geometry/box'
import { hasFinishedBack } from '../project/builtBy'
import { type Mm, settle } from '../units/length'
import { rearward, WAYS } from './apart'
import { backFront, backRear, type Carcass, clearBottom, levelTop } from './carcass'
import { type Piece, room, UNBANDED } from './piece'

/**
 * A back in grooves or rabbets spans the clear width and what it sinks into each side, less its play; an applied one
 * covers the carcass but for its margin.
 */
export function backWidth(carcass: Carcass): Mm {
  const { back } = carcass.method
  if (back.kind === 'applied') return settle(carcass.width - 2 * back.margin)
  const play = back.kind === 'groove' ? back.clearance : 0
  return settle(carcass.width - 2 * carcass.thickness + 2 * carcass.backDepth - play)
}

/** The lower and the upper end of the room the back is given: from groove to groove, or over the boards it covers. */
export function backSeat(carcass: Carcass): readonly [Mm, Mm] {
  const { back } = carcass.method
  const { floorHeight, height, backDepth } = carcass
  if (back.kind === 'groove') {
    const isGroovedAbove = carcass.top !== 'onEdge'
    return [settle(clearBottom(carcass) - backDepth), settle(levelTop(carcass) + (isGroovedAbove ? backDepth : 0))]
  }
  if (back.kind === 'applied') return [settle(floorHeight + back.margin), settle(height - back.margin)]
  return [
    carcass.bottom === 'between' ? floorHeight : clearBottom(carcass),
    carcass.topOver ? levelTop(carcass) : height,
  ]
}

/** As high as its seat, less its play in all. */
export function backLength(carcass: Carcass): Mm {
  const [low, high] = backSeat(carcass)
  return settle(high - low - (carcass.method.back.kind === 'groove' ? carcass.method.back.clearance : 0))
}

export function backOf(carcass: Carcass): Piece | null {
  const { method } = carcass
  if (method.back.kind === 'none') return null
  const [low, high] = backSeat(carcass)
  const width = backWidth(carcass)
  const length = backLength(carcass)
  const left = settle((carcass.width - width) / 2)
  const foot = settle((low + high - length) / 2)
  return {
    role: 'back',
    number: 1,
    material: method.backMaterial,
    box: room([left, left + width], [foot, foot + length], [backRear(carcass), backFront(carcass)]),
    seat: backRoom(carcass),
    lie: 'uprightLookingOut',
    banded: hasFinishedBack(method) ? { edges: 'all', thickness: method.banding.fronts } : UNBANDED,
    explode: rearward(WAYS.back),
  }
}

/** The room that is cut for the back in the boards around it: the back and its play. */
function backRoom(carcass: Carcass): Box {
  const [low, high] = backSeat(carcass)
  const play = carcass.method.back.kind === 'groove' ? carcass.method.back.clearance : 0
  const width = backWidth(carcass) + play
  const left = settle((carcass.width - width) / 2)
  return room([left, left + width], [low, high], [backRear(carcass), backFront(carcass)])
}
