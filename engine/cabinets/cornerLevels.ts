import type { Box } from '../geometry/box'
import { type Mm, settle } from '../units/length'
import { bottomOf } from './bottom'
import { insideFront } from './carcass'
import type { Legs } from './cornerLegs'
import { type Piece, room } from './piece'
import { topOf } from './top'

/** The bottom and the top go through the corner in one board. */
export function cornerBottom(legs: Legs): Piece {
  return throughCorner(bottomOf(legs.own), bottomOf(legs.other), legs)
}

export function cornerTop(legs: Legs): Piece {
  return throughCorner(topOf(legs.own), topOf(legs.other), legs)
}

/** A level board of the own leg, going on as far as one of the other leg goes along that wall. */
function throughCorner(piece: Piece, inOther: Piece, legs: Legs): Piece {
  const { min, max } = piece.box
  return levelBoard(piece, [min.y, max.y], min.z, [max.x, inOther.box.max.x], 0, legs)
}

/**
 * A level board from the two rears to its ends along either wall. What lies before both legs is cut away: of an L the
 * rectangle between them, of a diagonal the corner before the line from one front edge to the other.
 */
export function levelBoard(
  piece: Pick<Piece, 'role' | 'number' | 'material' | 'lie' | 'explode' | 'banded'>,
  y: readonly [Mm, Mm],
  rear: Mm,
  ends: readonly [Mm, Mm],
  setback: Mm,
  legs: Legs,
): Piece {
  const box = room([rear, ends[0]], y, [rear, ends[1]])
  const at = legs.kind === 'L' ? insideCorner(legs, setback) : cutCorner(box, legs, setback)
  const away = room([at.x, ends[0]], y, [at.z, ends[1]])
  return {
    ...piece,
    box,
    banded: { edges: 'inside', thickness: piece.banded.thickness },
    away: { outline: legs.kind === 'L' ? 'L' : 'clipped', box: away },
  }
}

/** Where the front edges of both legs meet. */
function insideCorner({ own, other }: Legs, setback: Mm): { readonly x: Mm; readonly z: Mm } {
  return { x: settle(other.depth - setback), z: settle(own.depth - setback) }
}

/**
 * Where the line of the fronts, so far behind the front edges of both sides, leaves the rectangle around a board:
 * x on its far edge along the other wall, z on its far edge along the own wall.
 */
function cutCorner({ max }: Box, legs: Legs, setback: Mm): { readonly x: Mm; readonly z: Mm } {
  const { x, z } = frontLine(legs, setback)
  return { x: x(max.z), z: z(max.x) }
}

/** The line from the front edge of one side to that of the other, moved in by a setback: x by z, and z by x. */
export function frontLine({ own, other }: Legs, setback: Mm) {
  const along = settle(own.width - other.depth)
  const out = settle(other.width - own.depth)
  const long = Math.hypot(along, out)
  return {
    along,
    out,
    long,
    x: (z: Mm) => settle(own.width - (setback * long + along * (z - own.depth)) / out),
    z: (x: Mm) => settle(own.depth - (setback * long + out * (x - own.width)) / along),
  }
}

/** How far behind the front edges the room inside ends: behind inset fronts, else with them. */
export function frontSetback({ own }: Pick<Legs, 'own'>): Mm {
  return settle(own.depth - insideFront(own))
}

/** How far behind the front edges shelves end that have a setback of their own; behind inset fronts that much more. */
export function shelfSetback({ own }: Legs): Mm {
  return settle(frontSetback({ own }) + own.method.shelves.setback)
}
