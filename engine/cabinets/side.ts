import { type Mm, settle } from '../units/length'
import { sideways, WAYS } from './apart'
import { type Carcass, clearBottom, kickRear, levelTop, sideRear } from './carcass'
import type { Notch } from './operation'
import { type Piece, room } from './piece'

/** A side stands on the floor (notched), on the floor line of the carcass, or in the bottom that carries it. */
export function sideFoot(carcass: Carcass): Mm {
  if (carcass.isNotched) return 0
  return carcass.bottom === 'under' ? settle(clearBottom(carcass) - carcass.jointDepth) : carcass.floorHeight
}

/** A side ends at the top of the carcass, or in the top that lies over it. */
export function sideHead(carcass: Carcass): Mm {
  return carcass.topOver ? settle(levelTop(carcass) + carcass.jointDepth) : carcass.height
}

/** A side is as high as the carcass, less the plinth or legs, less the boards over and under it. */
export function sideLength(carcass: Carcass): Mm {
  return settle(sideHead(carcass) - sideFoot(carcass))
}

/** A side is as deep as the carcass, less the applied back and the nailers that lie behind it. */
export function sideWidth(carcass: Carcass): Mm {
  return settle(carcass.depth - sideRear(carcass))
}

export function sidesOf(carcass: Carcass): Piece[] {
  const { width, thickness } = carcass
  const foot = sideFoot(carcass)
  const y = [foot, foot + sideLength(carcass)] as const
  const z = [carcass.depth - sideWidth(carcass), carcass.depth] as const
  const banded = { edges: 'front', thickness: carcass.method.banding.carcass } as const
  const common = { number: 1, material: carcass.method.carcassMaterial, banded } as const
  return [
    {
      ...common,
      role: 'leftSide',
      box: room([0, thickness], y, z),
      lie: 'uprightLookingRight',
      explode: sideways(-1, WAYS.side),
    },
    {
      ...common,
      role: 'rightSide',
      box: room([width - thickness, width], y, z),
      lie: 'uprightLookingLeft',
      explode: sideways(1, WAYS.side),
    },
  ]
}

/** The kick is cut out of the lower front corner of a side, as high as the bottom and as deep as the recess. */
export function kickNotch(carcass: Carcass, side: 'leftSide' | 'rightSide'): Notch | null {
  const { floor } = carcass.method
  if (!carcass.isNotched || floor.kind !== 'notched') return null
  const width = settle(Math.min(carcass.depth - kickRear(carcass), sideWidth(carcass)))
  const length = Math.min(carcass.floorHeight, sideLength(carcass))
  if (!(width > 0 && length > 0)) return null
  const y = side === 'leftSide' ? settle(sideWidth(carcass) - width) : 0
  return { kind: 'notch', x: 0, y, length, width }
}
