import type { MaterialId } from '../basics/id'
import { NO_BANDING } from '../cabinets/board'
import { aroundClip, type Bevel, type Clip, isMitre, type Notch, tiltOf } from '../cabinets/operation'
import type { Rect } from '../geometry/rect'
import type { Part } from '../parts/part'
import type { Shop } from '../project/document'
import { isKeptLeft } from '../sheets/draw'
import { formatWithUnit } from '../units/format'
import { type LengthDisplay, type Mm, settle } from '../units/length'

/** What is sawn out of boards once they are rectangles. What it frees is in no layout: it is there only afterwards. */
export interface SawnOut {
  readonly material: MaterialId
  /** `B1-BT`: the boards that it is sawn out of, all alike. */
  readonly boards: readonly string[]
  readonly what: 'corner' | 'slanted corner' | 'edge' | 'cut-out' | 'bevel' | 'mitre'
  /** Of a bevel or a mitre, in degrees from square. */
  readonly tilt?: number
  /** Along the grain, and across it, of what goes. */
  readonly length: Mm
  readonly width: Mm
  /** The rectangle that can be kept of it, its kerfs taken off; null where it is too small to be kept. */
  readonly keeps: { readonly length: Mm; readonly width: Mm } | null
  /** In plain words: what to do. */
  readonly text: string
}

/** Every outline that is no rectangle, and everything else that frees a piece worth keeping, the largest first. */
export function sawnOutOf(parts: readonly Part[], shop: Shop, display: LengthDisplay): SawnOut[] {
  const groups = new Map<string, { readonly cut: Cut; readonly boards: string[] }>()
  for (const part of parts) {
    for (const cut of cutsIn(part, shop)) {
      const key = `${part.material} ${cut.what} ${cut.tilt} ${cut.length} ${cut.width} ${cut.keeps?.length} ${cut.keeps?.width}`
      const before = groups.get(key)
      if (before) before.boards.push(part.mark)
      else groups.set(key, { cut, boards: [part.mark] })
    }
  }
  return [...groups.values()]
    .map(({ cut, boards }) => ({ ...cut, boards, text: wordsOf(cut, boards, display) }))
    .sort((a, b) => b.length * b.width - a.length * a.width)
}

/** What can be kept of what is sawn out of a board, where it lies in it: in the board's own frame, mm. */
export function freedIn(part: Part, shop: Shop): Rect[] {
  return part.operations.flatMap((one): Rect[] => {
    if (one.kind !== 'notch' && one.kind !== 'clip') return []
    const { x, y, length, width } = one.kind === 'clip' ? aroundClip(one, part) : one
    const { keeps } = one.kind === 'clip' ? slantedCut(one, part, shop) : squareCut(one, part, shop)
    if (!keeps) return []
    // It lies in the corner of the board that is cut off, or a kerf from the lines within the board.
    const isFar = one.kind === 'clip' ? one.end === 'end' : x > 0 && settle(x + length) >= part.length
    const isHigh = one.kind === 'clip' ? one.edge === 'high' : y > 0 && settle(y + width) >= part.width
    const from = (near: Mm, size: Mm, kept: Mm, isAtEnd: boolean) =>
      isAtEnd ? settle(near + size - kept) : near > 0 ? settle(near + shop.kerf) : 0
    return [
      {
        left: from(x, length, keeps.length, isFar),
        bottom: from(y, width, keeps.width, isHigh),
        ...{ width: keeps.length, height: keeps.width },
      },
    ]
  })
}

type Cut = Omit<SawnOut, 'boards' | 'text'>

function cutsIn(part: Part, shop: Shop): Cut[] {
  return part.operations.flatMap((one, at): Cut[] => {
    if (one.kind === 'bevel') return [bevelCut(one, part)]
    if (one.kind !== 'notch' && one.kind !== 'clip') return []
    const cut = one.kind === 'clip' ? slantedCut(one, part, shop) : squareCut(one, part, shop)
    const isOutline = part.outline !== undefined && at === 0
    return isOutline || cut.keeps ? [cut] : []
  })
}

/** A wedge along a whole edge or end, which nobody keeps. */
function bevelCut(bevel: Bevel, { material, length, width, thickness }: Part): Cut {
  const wedge = isMitre(bevel)
    ? ({ what: 'mitre', length: bevel.by, width } as const)
    : ({ what: 'bevel', length, width: bevel.by } as const)
  return { material, tilt: tiltOf(bevel, thickness), ...wedge, keeps: null }
}

/**
 * The blade takes its kerf of what goes, on every side that was in the board. What is banded after it is sawn is sawn
 * farther in, and what was cut back for a band at its outside has less to lose there.
 */
function squareCut(notch: Notch, part: Part, shop: Shop): Cut {
  const { x, y } = notch
  const ends = Number(x > 0) + Number(settle(x + notch.length) < part.length)
  const edges = Number(y > 0) + Number(settle(y + notch.width) < part.width)
  const sawnIn = notch === part.operations[0] ? (part.sawnIn ?? 0) : 0
  const isCutBack = part.cutLength < part.length || part.cutWidth < part.width
  const { start, end, low, high } = isCutBack ? part.banding : NO_BANDING
  const offEnds = (x > 0 ? 0 : start) + (settle(x + notch.length) < part.length ? 0 : end)
  const offEdges = (y > 0 ? 0 : low) + (settle(y + notch.width) < part.width ? 0 : high)
  const length = settle(notch.length + ends * sawnIn - offEnds)
  const width = settle(notch.width + edges * sawnIn - offEdges)
  const what = ends === 2 && edges === 2 ? 'cut-out' : ends === 2 || edges === 2 ? 'edge' : 'corner'
  const left = { length: settle(length - ends * shop.kerf), width: settle(width - edges * shop.kerf) }
  return { material: part.material, what, length, width, keeps: kept(left, shop) }
}

/** Half as long and half as wide is the largest rectangle in a corner cut off; the kerf is square to the slant. */
function slantedCut(clip: Clip, part: Part, shop: Shop): Cut {
  const finished = aroundClip(clip, part)
  const slant = Math.hypot(finished.length, finished.width) * (part.sawnIn ?? 0)
  const length = settle(finished.length + slant / finished.width)
  const width = settle(finished.width + slant / finished.length)
  const lost = (shop.kerf * Math.hypot(length, width)) / 2
  const left = { length: settle(length / 2 - lost / width), width: settle(width / 2 - lost / length) }
  return { material: part.material, what: 'slanted corner', length, width, keeps: kept(left, shop) }
}

function kept(left: { readonly length: Mm; readonly width: Mm }, shop: Shop): Cut['keeps'] {
  return isKeptLeft({ x: 0, y: 0, ...left }, shop) ? left : null
}

/** What most saws tilt to. Common practice, no source. */
const MOST_TILT = 45

/** Cut across, on the ends that are drawn. A board with a mitre at both ends is named once. */
function mitreWords(tilt: number, by: Mm, boards: readonly string[], display: LengthDisplay): string {
  const angle = `${tilt.toFixed(1)}°`
  return `Mitre the ends of ${[...new Set(boards)].join(', ')} that are drawn so, with the blade tilted ${angle}: one face stays as long as the board was cut, to its long point, and the other gets ${formatWithUnit(by, display)} shorter, to its short point; the drawing of the part shows which.${steepWords(tilt, 'cut with the board on end against a tall fence')} Try the two that meet on scraps.`
}

/** What most saws do not tilt to. */
function steepWords(tilt: number, how: string): string {
  return tilt > MOST_TILT + 0.05
    ? ` Most saws tilt to ${MOST_TILT}°: tilt it ${(90 - tilt).toFixed(1)}° and ${how}, or plane the rest off.`
    : ''
}

/** Ripped last, on the one edge that is drawn, with the face that stays whole where the maker of the saw wants it. */
function bevelWords(tilt: number, by: Mm, boards: readonly string[], display: LengthDisplay): string {
  const angle = `${tilt.toFixed(1)}°`
  const steep = steepWords(tilt, 'rip with the board on edge against a tall fence')
  return `Rip one edge of ${boards.join(', ')} with the blade tilted ${angle}: one face stays as wide as it is, the other gets ${formatWithUnit(by, display)} narrower; the drawing of the part shows which. Try it on a scrap, and keep the offcut from being caught under the blade.${steep}`
}

const HOW: Readonly<Record<Exclude<SawnOut['what'], 'bevel' | 'mitre'>, string>> = {
  corner: 'Along the rail to just before the inside corner, the rest with the jigsaw',
  'slanted corner': 'Along the rail, from edge to edge',
  edge: 'Into the board with the jigsaw, along the rail between its corners',
  'cut-out': 'Bore a hole in each corner, then the jigsaw along the lines',
}

function wordsOf(
  { what, tilt = 0, length, width, keeps }: Cut,
  boards: readonly string[],
  display: LengthDisplay,
): string {
  if (what === 'bevel') return bevelWords(tilt, width, boards, display)
  if (what === 'mitre') return mitreWords(tilt, length, boards, display)
  const size = (a: Mm, b: Mm) => `${formatWithUnit(a, display)} by ${formatWithUnit(b, display)}`
  const out =
    what === 'slanted corner' ? 'Cut the corner off' : what === 'corner' ? 'Cut the corner out of' : 'Cut out of'
  const keep = keeps ? ` Keep ${size(keeps.length, keeps.width)} of it as an offcut.` : ''
  return `${out} ${boards.join(', ')}: ${size(length, width)}. ${HOW[what]}.${keep}`
}
