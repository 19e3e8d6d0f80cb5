import type { Interval } from '../geometry/interval'
import { type Mm, settle } from '../units/length'
import { upward, WAYS } from './apart'
import { type Carcass, frontsRear } from './carcass'
import { pastLeft, pastRight } from './past'
import { type Piece, room } from './piece'

/** Of the strip that a lid is hung to, and the play between the two for the hinge. Common practice, no source. */
const STRIP: Mm = 70
const HINGE_PLAY: Mm = 2

/** From behind the strip over the faces of the fronts. */
function lidWidth(carcass: Carcass): Mm {
  return settle(frontsRear(carcass) + carcass.frontThickness - STRIP - HINGE_PLAY)
}

/**
 * The board that lies on the carcass and is lifted at its front, and the strip that it is hung to. Hung at the wall
 * itself it could not be lifted: its rear edge would go into the wall.
 *
 *      wall |####|############|   # strip and lid, over the carcass and the faces of its fronts
 *
 * The lid leaves the reveal of fronts at either end, so that it moves beside a wall, a higher cabinet or another lid. They
 * leave ahead of the stretchers under them.
 */
export function lidOf(carcass: Carcass): Piece[] {
  const { width, height, lidThickness, method } = carcass
  if (lidThickness === 0) return []
  const front = STRIP + HINGE_PLAY + lidWidth(carcass)
  const board = (role: 'lid' | 'lidStrip', z: Interval, play: Mm): Piece => ({
    role,
    number: 1,
    material: method.frontMaterial,
    box: room(
      [settle(play - pastLeft(carcass)), settle(width + pastRight(carcass) - play)],
      [height, height + lidThickness],
      [z.from, z.to],
    ),
    lie: 'levelLookingDown',
    banded: { edges: 'all', thickness: method.banding.fronts },
    explode: upward(WAYS.outermost + WAYS.lidAhead),
  })
  return [
    board('lidStrip', { from: 0, to: STRIP }, 0),
    board('lid', { from: STRIP + HINGE_PLAY, to: front }, method.fronts.endReveal),
  ]
}
