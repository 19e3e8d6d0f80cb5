import { type Mm, settle } from '../units/length'
import { downward, WAYS } from './apart'
import { type Carcass, clearBottom, sideRear } from './carcass'
import { type Piece, room } from './piece'

/**
 * A bottom between the sides loses both their thicknesses and gains back what it sinks into each; a bottom under them
 * is as long as the carcass is wide.
 */
export function bottomLength(carcass: Carcass): Mm {
  if (carcass.bottom === 'under') return carcass.width
  return settle(carcass.width - 2 * carcass.thickness + 2 * carcass.jointDepth)
}

/** A bottom is as deep as the side; between the sides it makes room for a back that sits in their rabbets. */
export function bottomWidth(carcass: Carcass): Mm {
  const isBehindIt = carcass.method.back.kind === 'rabbet' && carcass.bottom === 'between'
  return settle(carcass.depth - sideRear(carcass) - (isBehindIt ? carcass.backThickness : 0))
}

export function bottomOf(carcass: Carcass): Piece {
  const length = bottomLength(carcass)
  const left = settle((carcass.width - length) / 2)
  return {
    role: 'bottom',
    number: 1,
    material: carcass.method.carcassMaterial,
    box: room(
      [left, left + length],
      [carcass.floorHeight, clearBottom(carcass)],
      [carcass.depth - bottomWidth(carcass), carcass.depth],
    ),
    lie: 'levelLookingUp',
    banded: { edges: 'front', thickness: carcass.method.banding.carcass },
    explode: downward(WAYS.outermost),
  }
}
