import { type Mm, settle } from '../units/length'
import { plinthApart, WAYS } from './apart'
import type { Board, Explode } from './board'
import { kickRear } from './carcass'
import type { Legs } from './cornerLegs'
import { frontLine } from './cornerLevels'
import { type Piece, room, UNBANDED } from './piece'
import { slantBoard } from './slantBoard'
import { plinthEndLength } from './toeKick'

/**
 * What closes the floor of an L, but for what stands slantwise: two kick boards, or the six boards of a plinth. Before legs
 * there are boards where the kick of the runs beside it is made of boards too, which end at the corner.
 */
export function cornerFloor(legs: Legs, isKickLong: boolean): Piece[] {
  const { own } = legs
  const { floor } = own.method
  if (own.floorHeight === 0 || floor.kind === 'none') return []
  if (floor.kind === 'legs') return legs.kind === 'L' && isKickLong ? facesOfKick(legs, 'kickBoard', 0) : []
  if (floor.kind === 'notched') return legs.kind === 'L' ? facesOfKick(legs, 'kickBoard', own.thickness) : []
  return [...(legs.kind === 'L' ? facesOfKick(legs, 'plinthFront', 0) : []), ...restOfPlinth(legs)]
}

/** Along both inside faces: the one along the own wall runs into the corner, the other stands before it. */
function facesOfKick({ own, other }: Legs, role: 'kickBoard' | 'plinthFront', endsAt: Mm): Piece[] {
  const [z, x] = [kickRear(own), kickRear(other)]
  const { thickness, floorHeight } = own
  const y = [0, floorHeight] as const
  const common = { role, material: own.method.carcassMaterial, banded: UNBANDED, explode: downAndForward() } as const
  const along = room([x - thickness, own.width - endsAt], y, [z - thickness, z])
  const across = room([x - thickness, x], y, [z, other.width - endsAt])
  return [
    { ...common, number: 1, box: along, lie: 'onEdgeLookingIn' },
    { ...common, number: 2, box: across, lie: 'onEdgeLookingLeft' },
  ]
}

/** Two boards at the walls, and one at each free end. */
function restOfPlinth({ own, other }: Legs): Piece[] {
  const { thickness, floorHeight } = own
  const y = [0, floorHeight] as const
  const spread = WAYS.plinthSpread
  const common = { material: own.method.carcassMaterial, banded: UNBANDED } as const
  const [deep, deepOther] = [plinthEndLength(own), plinthEndLength(other)]
  return [
    {
      ...common,
      ...{ role: 'plinthBack', number: 1, lie: 'onEdgeLookingOut', explode: plinthApart(0, -spread) },
      box: room([0, own.width], y, [0, thickness]),
    },
    {
      ...common,
      ...{ role: 'plinthBack', number: 2, lie: 'onEdgeLookingRight', explode: plinthApart(-spread, 0) },
      box: room([0, thickness], y, [thickness, other.width]),
    },
    {
      ...common,
      ...{ role: 'plinthEnd', number: 1, lie: 'onEdgeLookingLeft', explode: plinthApart(spread, 0) },
      box: room([own.width - thickness, own.width], y, [thickness, thickness + deep]),
    },
    {
      ...common,
      ...{ role: 'plinthEnd', number: 2, lie: 'onEdgeLookingIn', explode: plinthApart(0, spread) },
      box: room([thickness, thickness + deepOther], y, [other.width - thickness, other.width]),
    },
  ]
}

/** Down, ahead of the bottom, and out of the corner together. */
function downAndForward(): Explode {
  return plinthApart(WAYS.plinthSpread, WAYS.plinthSpread)
}

/**
 * The one board before the floor of a diagonal, between its sides or the ends of its plinth. Its ends are mitred to lie against
 * them: behind its face it is longer. Before legs it is a board of the kicks in lengths.
 *
 *      |\   \
 *      | \   \        side | \ face
 *      |  \___\
 */
export function slantKick(legs: Legs): Board[] {
  const { own, other, kind } = legs
  const { floor } = own.method
  if (kind === 'L' || own.floorHeight === 0 || floor.kind === 'none' || floor.kind === 'legs') return []
  const line = frontLine(legs, floor.setback)
  const [right, far] = [settle(own.width - own.thickness), settle(other.width - own.thickness)]
  const from = { x: line.x(far), z: far }
  const length = settle(Math.hypot(right - from.x, from.z - line.z(right)))
  const [byOwn, byOther] = [(own.thickness * line.out) / line.along, (own.thickness * line.along) / line.out].map(
    settle,
  )
  return [
    slantBoard(
      {
        role: floor.kind === 'plinth' ? 'plinthFront' : 'kickBoard',
        material: own.method.carcassMaterial,
        banded: UNBANDED,
        lie: 'onEdgeLookingIn',
        box: room([-byOther!, length + byOwn!], [0, own.floorHeight], [-own.thickness, 0]),
        // Its length runs from the own end to the other.
        bevels: [
          { kind: 'bevel', edge: 'start', face: 'outside', by: byOwn! },
          { kind: 'bevel', edge: 'end', face: 'outside', by: byOther! },
        ],
      },
      from,
      { cos: line.along / line.long, sin: line.out / line.long },
      downAndForward(),
    ),
  ]
}
