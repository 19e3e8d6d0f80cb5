import type { Beside, Cabinet, Side } from '../project/document'
import type { Rules } from './build'
import type { Carcass } from './carcass'
import { fillerOf } from './filler'
import { finishedEndOf } from './finishedEnd'
import type { Piece } from './piece'
import type { Report } from './report'

/** The boards that stand beside a carcass, in its frame: those at its left have an x of less than 0. */
export function besideOf(
  { beside }: Cabinet,
  carcass: Carcass,
  materials: Rules['materials'],
  report: Report,
): Piece[] {
  return (['left', 'right'] as const).flatMap((side) => atSide(beside[side], side, carcass, materials, report))
}

function atSide(beside: Beside, side: Side, carcass: Carcass, materials: Rules['materials'], report: Report): Piece[] {
  switch (beside.kind) {
    case 'none':
      return []
    case 'filler':
      return fillerOf(beside, side, carcass, materials, report)
    case 'skin':
    case 'panel':
      return finishedEndOf(beside, side, carcass, materials, report)
  }
}
