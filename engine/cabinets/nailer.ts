import { METHOD } from '../basics/source'
import { gapsIn, type Interval } from '../geometry/interval'
import type { Nailers } from '../project/method'
import { inch, type Mm, settle } from '../units/length'
import { downward, rearward, rearwardFirst, upward, WAYS } from './apart'
import type { BoardRole, Explode } from './board'
import { backFront, backRear, type Carcass, clearBottom, clearWidth, levelTop, sideRear } from './carcass'
import { areNailersLetIn, hasNailersBehind } from './nailersBehind'
import { type Piece, room, UNBANDED } from './piece'
import type { Report } from './report'

export const NAILERS = ['topNailer', 'bottomNailer', 'middleNailer'] as const satisfies readonly BoardRole[]

/** What is higher has a strip between the upper and the lower one. Source: AWS 2009, 4.4.18. */
export const MIDDLE_FROM: Mm = inch(60)

/** Between the sides; one that is let into them, or behind a back that is flush with their rear edges, runs across both. */
export function nailerLength(carcass: Carcass): Mm {
  return isAcrossSides(carcass) || areNailersLetIn(carcass) ? carcass.width : clearWidth(carcass)
}

function isAcrossSides(carcass: Carcass): boolean {
  return hasNailersBehind(carcass) && carcass.method.back.kind !== 'groove'
}

/** Between the rear face of the back and the wall, flush with the sides that it is let into, or against the front face of the back. */
function nailerRear(carcass: Carcass): Mm {
  if (areNailersLetIn(carcass)) return sideRear(carcass)
  return hasNailersBehind(carcass) ? settle(backRear(carcass) - carcass.thickness) : backFront(carcass)
}

/**
 * The nailers a cabinet is hung by, flush with the carcass behind it or between its boards. A stretcher on edge at the
 * rear is itself the upper one. The middle one goes as near half way between as `taken` heights allow, where niches and
 * drawers are.
 */
export function nailersOf(carcass: Carcass, report: Report, taken: readonly Interval[] = []): Piece[] {
  const { nailers } = carcass.method
  const isBehind = hasNailersBehind(carcass)
  const isAcross = isAcrossSides(carcass)
  const between = {
    from: isAcross ? carcass.floorHeight : clearBottom(carcass),
    to: isAcross ? carcass.height : levelTop(carcass),
  }
  const wanted: Pick<Nailers, 'top' | 'bottom'> = {
    top: nailers.top && (isBehind || carcass.top !== 'onEdge' || !carcass.hasBackStretcher),
    bottom: nailers.bottom,
  }
  const need = settle((wanted.top ? nailers.width : 0) + (wanted.bottom ? nailers.width : 0))
  const height = settle(between.to - between.from)
  if (need > height) {
    report.stop(
      `its nailers of ${report.say(nailers.width)} take ${report.say(need)} of height; there is ${report.left(height)}. They are left out.`,
      { is: need, limit: report.left(height), source: METHOD },
    )
    return []
  }
  const nailer = (role: Piece['role'], from: Mm, explode: Explode) => nailerAt(role, from, explode, carcass)
  const behind = isBehind ? rearwardFirst(WAYS.nailerBehind) : null
  const free = {
    from: settle(between.from + (wanted.bottom ? nailers.width : 0)),
    to: settle(between.to - (wanted.top ? nailers.width : 0)),
  }
  const middle = nailers.middle && carcass.height > MIDDLE_FROM ? middleIn(free, taken, carcass, report) : null
  return [
    ...(wanted.bottom ? [nailer('bottomNailer', between.from, behind ?? downward(WAYS.nailer))] : []),
    // Before the back, and out of the notches of partitions with it.
    ...(middle !== null ? [nailer('middleNailer', middle, behind ?? rearward(WAYS.nailer))] : []),
    ...(wanted.top ? [nailer('topNailer', settle(between.to - nailers.width), behind ?? upward(WAYS.nailer))] : []),
  ]
}

/** The lower edge of a middle nailer, nearest half way up what is free; null, and told, where it finds no place. */
function middleIn(free: Interval, taken: readonly Interval[], { method }: Carcass, report: Report): Mm | null {
  const { width } = method.nailers
  const wish = settle((free.from + free.to - width) / 2)
  const places = gapsIn(free, taken)
    .filter(({ from, to }) => settle(to - from) >= width)
    .map(({ from, to }) => settle(Math.max(from, Math.min(wish, to - width))))
    .sort((a, b) => Math.abs(a - wish) - Math.abs(b - wish))
  if (places[0] !== undefined) return places[0]
  report.mind(
    `there is no ${report.say(width)} of height between niches and drawers for its middle nailer; it is left out.`,
  )
  return null
}

function nailerAt(role: Piece['role'], from: Mm, explode: Explode, carcass: Carcass): Piece {
  const length = nailerLength(carcass)
  const left = settle((carcass.width - length) / 2)
  const rear = nailerRear(carcass)
  const y = [from, settle(from + carcass.method.nailers.width)] as const
  return {
    role,
    number: 1,
    material: carcass.method.carcassMaterial,
    box: room([left, left + length], y, [rear, rear + carcass.thickness]),
    lie: 'onEdgeLookingOut',
    banded: UNBANDED,
    explode,
  }
}
