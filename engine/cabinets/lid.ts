import { upward, WAYS } from './apart'
import { type Carcass, frontsRear } from './carcass'
import { pastLeft, pastRight } from './past'
import { type Piece, room } from './piece'

/** A lid reaches from the wall over the faces of the fronts, and over both sides. */
export function lidWidth(carcass: Carcass): number {
  return frontsRear(carcass) + carcass.frontThickness
}

/** The board that lies on the carcass and is lifted at its front. It leaves ahead of the stretchers under it. */
export function lidOf(carcass: Carcass): Piece[] {
  const { width, height, lidThickness, method } = carcass
  if (lidThickness === 0) return []
  return [
    {
      role: 'lid',
      number: 1,
      material: method.frontMaterial,
      box: room(
        [-pastLeft(carcass), width + pastRight(carcass)],
        [height, height + lidThickness],
        [0, lidWidth(carcass)],
      ),
      lie: 'levelLookingDown',
      banded: { edges: 'all', thickness: method.banding.fronts },
      explode: upward(WAYS.outermost + WAYS.lidAhead),
    },
  ]
}
