import { type Mm, settle } from '../units/length'
import { STAYS } from './apart'
import { backOf } from './back'
import { backFront, backRear, clearBottom, levelTop, sideRear } from './carcass'
import { type Legs, turnedLeg } from './cornerLegs'
import { nailersOf } from './nailer'
import { hasNailersBehind } from './nailersBehind'
import { type Piece, room, UNBANDED } from './piece'
import type { Report } from './report'

/** What is left of a corner post to be screwed into along the own wall. Common practice, no source. */
const POST: Mm = 60

/**
 * Two backs and their nailers, and the post that both are screwed to. The boards along the own wall run into the corner;
 * those along the other wall end at their front face.
 *
 *      ____________________  own back
 *     |  |####|_  nailer
 *     |  |    post
 *     |  |
 *      other back
 */
export function cornerRear(legs: Legs, report: Report): Piece[] {
  return [...backsOf(legs), ...cornerNailers(legs, report), cornerPost(legs)]
}

function backsOf(legs: Legs): Piece[] {
  const [own, other] = [backOf(legs.own), backOf(legs.other)]
  if (!own || !other) return []
  const start = ownBackStart(legs)
  const seat = own.seat ?? own.box
  const along = {
    ...own,
    box: from(own.box, start),
    seat: from(seat, start),
  }
  // In the frame of its own leg the corner is at the right.
  const end = settle(legs.other.width - backFront(legs.own))
  const across = { ...other, number: 2, box: upTo(other.box, end), seat: upTo(other.seat ?? other.box, end) }
  return [along, turnedLeg(across, legs)]
}

/** A back in a groove starts flush with the rear of the bottom, or before nailers behind it; another at the other back. */
function ownBackStart({ own }: Legs): Mm {
  const { back } = own.method
  if (back.kind === 'groove' && !hasNailersBehind(own)) return sideRear(own)
  return settle(backRear(own) + (back.kind === 'applied' ? back.margin : 0))
}

function cornerNailers(legs: Legs, report: Report): Piece[] {
  const isBehind = hasNailersBehind(legs.own)
  const { thickness } = legs.own
  const rear = backFront(legs.own)
  const start = isBehind ? settle(backRear(legs.own) - thickness) : settle(rear + POST)
  const along = nailersOf(legs.own, report).map((piece) => ({ ...piece, box: from(piece.box, start) }))
  const end = settle(legs.other.width - (isBehind ? backRear(legs.own) : rear + thickness))
  const across = nailersOf(legs.other, report).map((piece) => ({ ...piece, number: 2, box: upTo(piece.box, end) }))
  return [...along, ...across.map((piece) => turnedLeg(piece, legs))]
}

/** From the bottom to the top in the corner, flat against the own back. What is let round it has half a shelf's play. */
function cornerPost({ own }: Legs): Piece {
  const rear = backFront(own)
  const y = [clearBottom(own), levelTop(own)] as const
  const play = own.method.shelves.sideClearance / 2
  return {
    role: 'cornerPost',
    number: 1,
    material: own.method.carcassMaterial,
    box: room([rear, rear + POST], y, [rear, rear + own.thickness]),
    seat: room([rear, rear + POST + play], y, [rear, rear + own.thickness + play]),
    lie: 'uprightLookingOut',
    banded: UNBANDED,
    explode: STAYS,
  }
}

function from({ min, max }: Piece['box'], x: Mm): Piece['box'] {
  return { min: { ...min, x }, max }
}

function upTo({ min, max }: Piece['box'], x: Mm): Piece['box'] {
  return { min, max: { ...max, x } }
}
