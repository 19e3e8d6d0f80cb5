import { METHOD } from '../basics/source'
import { type Mm, settle } from '../units/length'
import { downward, rearwardFirst, upward, WAYS } from './apart'
import { backFront, backRear, type Carcass, clearBottom, clearWidth, hasNailersBehind, levelTop } from './carcass'
import { type Piece, room, UNBANDED } from './piece'
import type { Report } from './report'

/** Between the sides; behind a back that is flush with their rear edges a nailer runs across both sides. */
export function nailerLength(carcass: Carcass): Mm {
  return isAcrossSides(carcass) ? carcass.width : clearWidth(carcass)
}

function isAcrossSides(carcass: Carcass): boolean {
  return hasNailersBehind(carcass) && carcass.method.back.kind !== 'groove'
}

/** Between the rear face of the back and the wall, or against the front face of the back. */
function nailerRear(carcass: Carcass): Mm {
  return hasNailersBehind(carcass) ? settle(backRear(carcass) - carcass.thickness) : backFront(carcass)
}

/**
 * The nailers a cabinet is hung by, flush with the carcass behind it or between its boards. A stretcher on edge at the
 * rear is itself the upper one.
 */
export function nailersOf(carcass: Carcass, report: Report): Piece[] {
  const { nailers } = carcass.method
  const isBehind = hasNailersBehind(carcass)
  const isAcross = isAcrossSides(carcass)
  const length = nailerLength(carcass)
  const left = settle((carcass.width - length) / 2)
  const rear = nailerRear(carcass)
  const high = isAcross ? carcass.height : levelTop(carcass)
  const low = isAcross ? carcass.floorHeight : clearBottom(carcass)
  const wanted = { top: nailers.top && (isBehind || carcass.top !== 'onEdge' || !carcass.hasBackStretcher) }
  const need = settle((wanted.top ? nailers.width : 0) + (nailers.bottom ? nailers.width : 0))
  if (need > settle(high - low)) {
    report.stop(
      `its nailers of ${report.say(nailers.width)} take ${report.say(need)} of height; there is ${report.left(settle(high - low))}. They are left out.`,
      { is: need, limit: report.left(high - low), source: METHOD },
    )
    return []
  }
  const common = {
    number: 1,
    material: carcass.method.carcassMaterial,
    lie: 'onEdgeLookingOut',
    banded: UNBANDED,
  } as const
  const box = (from: Mm) => room([left, left + length], [from, from + nailers.width], [rear, rear + carcass.thickness])
  const pieces: Piece[] = []
  if (nailers.bottom) {
    const explode = isBehind ? rearwardFirst(WAYS.nailerBehind) : downward(WAYS.nailer)
    pieces.push({ ...common, role: 'bottomNailer', box: box(low), explode })
  }
  if (wanted.top) {
    const explode = isBehind ? rearwardFirst(WAYS.nailerBehind) : upward(WAYS.nailer)
    pieces.push({ ...common, role: 'topNailer', box: box(high - nailers.width), explode })
  }
  return pieces
}
