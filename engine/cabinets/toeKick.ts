import { type Mm, settle } from '../units/length'
import { forward, plinthApart, WAYS } from './apart'
import { type Carcass, clearWidth } from './carcass'
import { type Piece, room, UNBANDED } from './piece'

/** The kick board stands between the notched sides, so that its face is at the setback. */
export function kickBoardLength(carcass: Carcass): Mm {
  return clearWidth(carcass)
}

/** A plinth reaches from the wall to its setback behind the front edge of the carcass. */
export function plinthDepth(carcass: Carcass, setback: Mm): Mm {
  return settle(carcass.depth - setback)
}

/** The ends of a plinth stand between its front and its back. */
export function plinthEndLength(carcass: Carcass, setback: Mm): Mm {
  return settle(plinthDepth(carcass, setback) - 2 * carcass.thickness)
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
    const box = room([thickness, thickness + kickBoardLength(carcass)], y, [face - thickness, face])
    return [{ ...common, role: 'kickBoard', box, lie: 'onEdgeLookingIn', explode: forward(WAYS.kick) }]
  }
  return plinthOf(carcass, floor.setback, common)
}

function plinthOf(carcass: Carcass, setback: Mm, common: Pick<Piece, 'number' | 'material' | 'banded'>): Piece[] {
  const { thickness, width, floorHeight } = carcass
  const front = plinthDepth(carcass, setback)
  const y = [0, floorHeight] as const
  const z = [thickness, thickness + plinthEndLength(carcass, setback)] as const
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
