import { type Mm, settle } from '../units/length'
import { forward, plinthApart, WAYS } from './apart'
import { type Carcass, clearWidth, kickRear } from './carcass'
import { type Piece, room, UNBANDED } from './piece'

/** The kick board stands between the notched sides, so that its face is at the setback. */
export function kickBoardLength(carcass: Carcass): Mm {
  return clearWidth(carcass)
}

/** A plinth reaches from the wall to its setback behind the front edge of the carcass, or to the long board before it. */
export function plinthDepth(carcass: Carcass): Mm {
  return kickRear(carcass)
}

/** The ends of a plinth stand between its front and its back. */
export function plinthEndLength(carcass: Carcass): Mm {
  return settle(plinthDepth(carcass) - 2 * carcass.thickness)
}

/** What closes the floor: a kick board or the four boards of a plinth; legs are hardware and uppers have nothing. */
export function toeKickOf(carcass: Carcass): Piece[] {
  const { floor } = carcass.method
  const { floorHeight, thickness, depth } = carcass
  if (floorHeight === 0 || floor.kind === 'none' || floor.kind === 'legs') return []
  const face = settle(depth - floor.setback)
  const y = [0, floorHeight] as const
  const common = { number: 1, material: carcass.method.carcassMaterial, banded: UNBANDED } as const
  if (floor.kind === 'notched') {
    if (carcass.isKickLong) return []
    const box = room([thickness, thickness + kickBoardLength(carcass)], y, [face - thickness, face])
    return [{ ...common, role: 'kickBoard', box, lie: 'onEdgeLookingIn', explode: forward(WAYS.kick) }]
  }
  return plinthOf(carcass, common)
}

function plinthOf(carcass: Carcass, common: Pick<Piece, 'number' | 'material' | 'banded'>): Piece[] {
  const { thickness, width, floorHeight } = carcass
  const front = plinthDepth(carcass)
  const y = [0, floorHeight] as const
  const z = [thickness, thickness + plinthEndLength(carcass)] as const
  const spread = WAYS.plinthSpread
  return [
    {
      ...common,
      role: 'plinthFront',
      box: room([0, width], y, [front - thickness, front]),
      lie: 'onEdgeLookingIn',
      explode: plinthApart(0, spread),
    },
    {
      ...common,
      role: 'plinthBack',
      box: room([0, width], y, [0, thickness]),
      lie: 'onEdgeLookingOut',
      explode: plinthApart(0, -spread),
    },
    {
      ...common,
      role: 'plinthEnd',
      box: room([0, thickness], y, z),
      lie: 'onEdgeLookingRight',
      explode: plinthApart(-spread, 0),
    },
    {
      ...common,
      role: 'plinthEnd',
      number: 2,
      box: room([width - thickness, width], y, z),
      lie: 'onEdgeLookingLeft',
      explode: plinthApart(spread, 0),
    },
  ]
}
