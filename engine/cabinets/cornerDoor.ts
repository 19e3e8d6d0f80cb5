import type { Rect } from '../geometry/rect'
import { rightOf, topOf } from '../geometry/rect'
import { type Mm, settle } from '../units/length'
import { WAYS } from './apart'
import type { Board, Explode, FrontFace } from './board'
import { boxOf } from './boardBox'
import { insideFront } from './carcass'
import type { Legs } from './cornerLegs'
import { frontLine } from './cornerLevels'
import { cupCentre, hingeLine, hingesFor } from './hinge'
import { boreDepth, withHoles } from './holes'
import { frontArea } from './openings'
import type { HoleRow } from './operation'
import { type Piece, room } from './piece'
import { slantBoard } from './slantBoard'

/**
 * The two leaves of an L. The one on the own leg hangs on the side there and runs into the inside corner; the other is
 * hinged to it and stands before it, a gap away.
 *
 *      |
 *    o |
 *    t |   gap
 *    h #_________________
 *    e  #################  hung leaf
 *    r #
 *      #  leaf
 */
export function cornerLeaves(legs: Legs): Piece[] {
  const hung = hungLeaf(legs)
  const { own, other } = legs
  const area = frontArea(other)
  const { frontThickness, method } = own
  const x = insideFront(other)
  const z = settle(insideFront(own) + frontThickness + method.fronts.gap)
  const common = {
    role: 'door',
    material: method.frontMaterial,
    banded: { edges: 'all', thickness: method.banding.fronts },
    explode: outOfCorner(1, 1),
  } as const
  const y = [hung.bottom, topOf(hung)] as const
  const rear = insideFront(own)
  return [
    {
      ...common,
      number: 1,
      box: room([hung.left, rightOf(hung)], y, [rear, rear + frontThickness]),
      lie: 'uprightLookingIn',
    },
    {
      ...common,
      number: 2,
      box: room([x, x + frontThickness], y, [z, other.width - area.left]),
      lie: 'uprightLookingLeft',
    },
  ]
}

/** Seen from the room, at the own wall. */
function hungLeaf({ own, other }: Legs): Rect {
  const area = frontArea(own)
  const left = insideFront(other)
  return { ...area, left, width: settle(rightOf(area) - left) }
}

export function hungFace(legs: Legs): FrontFace {
  return { kind: 'door', hinge: 'right', rect: hungLeaf(legs) }
}

/** Both leaves, or one door, come out of the corner together. */
function outOfCorner(x: number, z: number): Explode {
  return { by: { x: x * WAYS.front, y: 0, z: z * WAYS.front }, from: 0, to: 0.35 }
}

/**
 * The one door of a diagonal lies on the line from side to side. It ends where its outer corners are as far inside the
 * ends of both legs as its reveal, so that it is clear of the fronts beside it.
 */
export function slantDoor(legs: Legs): Board {
  const { own } = legs
  const { left: reveal, bottom, height } = frontArea(own)
  const { frontThickness, method } = own
  const line = frontLine(legs, 0)
  const { along, out, long } = line
  const start = slantReveal(reveal, frontThickness, along, out, long)
  const end = slantReveal(reveal, frontThickness, out, along, long)
  const turn = { cos: along / long, sin: out / long }
  return slantBoard(
    {
      role: 'door',
      material: method.frontMaterial,
      banded: { edges: 'all', thickness: method.banding.fronts },
      lie: 'uprightLookingIn',
      box: room([start, long - end], [bottom, bottom + height], [0, frontThickness]),
    },
    { x: legs.other.depth, z: legs.other.width },
    turn,
    { ...outOfCorner(out / long, along / long) },
  )
}

/** Along the line, from the front edge of a side: the thickness leans out over the end, and the reveal is square to it. */
function slantReveal(reveal: Mm, thickness: Mm, along: Mm, out: Mm, long: Mm): Mm {
  return settle((thickness * along + reveal * long) / out)
}

/** A door of a diagonal as it is seen from the room: as wide as it looks. */
export function slantFace(door: Board, hinge: 'left' | 'right'): FrontFace {
  const { min, max } = boxOf(door)
  const rect = { left: settle(min.x), bottom: settle(min.y), width: settle(max.x - min.x), height: door.length }
  return { kind: 'door', hinge, rect }
}

/** The cups of the hinges of a door that stands slantwise. What is bored in its side is by the drawing of the hinge. */
export function withSlantCups(door: Board, side: 'left' | 'right', { own }: Legs, density: number): Board {
  const { hinge } = own.method
  const kg = ((door.length * door.width * door.thickness) / 1e9) * density
  const across = (by: Mm) => settle(side === 'left' ? by : door.width - by)
  const middles = hingeLine({ from: 0, to: door.length }, hingesFor(door.length, kg), hinge)
  const holes = middles.flatMap((middle): HoleRow[] => [
    {
      ...{ kind: 'holeRow', purpose: 'hingeCup', face: 'inside', step: 0, count: 1 },
      ...{ x: middle, y: across(cupCentre(hinge)) },
      ...{ diameter: hinge.cupDiameter, depth: boreDepth(hinge.cupDepth, door) },
    },
    {
      ...{ kind: 'holeRow', purpose: 'hingeScrew', face: 'inside', step: hinge.screwSpread, count: 2 },
      ...{ x: settle(middle - hinge.screwSpread / 2), y: across(cupCentre(hinge) + hinge.screwBehind) },
      ...{ diameter: hinge.screwDiameter, depth: boreDepth(hinge.screwDepth, door) },
    },
  ])
  return withHoles(door, holes.filter(isSound(door)))
}

/** A door too small for a hole, or a hole of nothing, goes without. */
function isSound(door: Board): (hole: HoleRow) => boolean {
  return ({ x, y, step, count, diameter, depth }) => {
    const end = x + (count - 1) * step
    const edge = diameter / 2
    return diameter > 0 && depth > 0 && x >= edge && y >= edge && end <= door.length - edge && y <= door.width - edge
  }
}
