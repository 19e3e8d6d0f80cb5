import { type Mm, settle } from '../units/length'
import { upward, WAYS } from './apart'
import { type Carcass, sideRear } from './carcass'
import { type Piece, room } from './piece'

/** A full top between the sides is as long as a bottom there; over them it is as long as the carcass is wide. */
export function topLength(carcass: Carcass): Mm {
  if (carcass.topOver) return carcass.width
  return settle(carcass.width - 2 * carcass.thickness + 2 * carcass.jointDepth)
}

/** A full top is as deep as the side; between the sides it makes room for a back that sits in their rabbets. */
export function topWidth(carcass: Carcass): Mm {
  const isBehindIt = carcass.method.back.kind === 'rabbet' && !carcass.topOver
  return settle(carcass.depth - sideRear(carcass) - (isBehindIt ? carcass.backThickness : 0))
}

export function topOf(carcass: Carcass): Piece {
  const length = topLength(carcass)
  const left = settle((carcass.width - length) / 2)
  return {
    role: 'top',
    number: 1,
    material: carcass.method.carcassMaterial,
    box: room(
      [left, left + length],
      [carcass.height - carcass.thickness, carcass.height],
      [carcass.depth - topWidth(carcass), carcass.depth],
    ),
    lie: 'levelLookingDown',
    banded: { edges: 'front', thickness: carcass.method.banding.carcass },
    explode: upward(WAYS.outermost),
  }
}
