import { type Rect, rectsOverlap, rightOf, topOf } from '../geometry/rect'
import { type Mm, settle } from '../units/length'
import { type CleanCut, cleanCuts } from './clean'
import type { Rough } from './factoryEdges'
import { letter } from './names'
import { AS_IT_CAME } from './stage'
import type { Child, Task } from './task'
import type { Left, Work } from './work'

/** A damaged piece as it lies, factory edges counted. Rectangles are on the piece, from the corner of its first edges, mm. */
export interface Damaged {
  readonly name: string
  readonly material: string
  /** The id of the kind of sheet that it is of. */
  readonly kind: string
  readonly isWhole: boolean
  readonly length: Mm
  readonly width: Mm
  readonly rough: Rough
  readonly damages: readonly Rect[]
}

/** What is to be cut away of a piece before anything else, and what that frees. */
export interface CutAway extends Damaged {
  /** Its own number: what is freed of 31 is called 31a, 31b. */
  readonly sheet: number
  readonly cuts: readonly AwayCut[]
}

export interface AwayCut {
  readonly direction: 'rip' | 'crosscut'
  readonly takes: NamedPiece
  /** What is clean, and what is left with the damage in it. */
  readonly leaves: readonly NamedPiece[]
}

export interface NamedPiece {
  readonly kind: 'piece' | 'waste'
  readonly name: string
  /** What to write on it; null where it is waste, or cut on at once. */
  readonly mark: string | null
  readonly rect: Rect
  readonly rough: Rough
}

/** The cuts that free of a damaged piece whatever is worth keeping; none where nothing is. */
export function cutAwayOf(
  damaged: Damaged,
  sheet: number,
  kerf: Mm,
  isWorthKeeping: (usable: { readonly length: Mm; readonly width: Mm }) => boolean,
): CutAway {
  const whole: Rect = { left: 0, bottom: 0, width: damaged.length, height: damaged.width }
  const isKept = (rect: Rect) => isWorthKeeping(usableOf(rect, roughOn(rect, damaged)))
  const cuts = cleanCuts(whole, damaged.damages, kerf, isKept)
  const cutOn = new Set(cuts.map(({ takes }) => takes))
  let named = 0
  const nameOf = (rect: Rect): NamedPiece => {
    const common = { rect, rough: roughOn(rect, damaged) }
    if (cutOn.has(rect)) return { ...common, kind: 'piece', name: `rest of ${bareName(damaged.name)}`, mark: null }
    const isClean = !damaged.damages.some((damage) => rectsOverlap(rect, damage)) && isKept(rect)
    if (!isClean) return { ...common, kind: 'waste', name: 'waste', mark: null }
    const name = `${sheet}${letter(named++)}`
    return { ...common, kind: 'piece', name, mark: name }
  }
  const pieces = new Map<Rect, NamedPiece>([[whole, { ...nameOf(whole), name: damaged.name }]])
  const awayCut = ({ direction, takes, clean, rest }: CleanCut): AwayCut => {
    const leaves = [clean, rest].filter(({ width, height }) => width > 0 && height > 0).map(nameOf)
    for (const piece of leaves) pieces.set(piece.rect, piece)
    return { direction, takes: pieces.get(takes)!, leaves }
  }
  return { ...damaged, sheet, cuts: cuts.map(awayCut) }
}

/** The clean pieces that are freed. */
export function cleanOf({ cuts }: CutAway): NamedPiece[] {
  return cuts.flatMap(({ leaves }) => leaves.filter(({ mark }) => mark !== null))
}

/** Inside its factory edges: what a layout may use. */
export function usableOf({ width, height }: Pick<Rect, 'width' | 'height'>, { start, end, low, high }: Rough) {
  return { length: settle(width - start - end), width: settle(height - low - high) }
}

/** What a piece is called whose rests are called after it. */
export function bareName(name: string): string {
  return name.replace(/^rest of /, '')
}

/** An edge of the damaged piece keeps what is factory of it; a cut edge is clean. */
function roughOn(rect: Rect, { length, width, rough }: Damaged): Rough {
  return {
    start: rect.left === 0 ? rough.start : 0,
    low: rect.bottom === 0 ? rough.low : 0,
    end: settle(rightOf(rect)) === length ? rough.end : 0,
    high: settle(topOf(rect)) === width ? rough.high : 0,
  }
}

/**
 * Cutting damages away is the first work of all, along the rail: its lines are where the damage is. A crosscut blade that
 * is in rips them too, which is no reason to change it; a rip blade would tear the ends.
 */
export function worksOfCutAways(cutAways: readonly CutAway[], bladeIn?: Work['blade']): Work[] {
  let run = 0
  return cutAways.flatMap((cutAway) => {
    const tasks = { rip: taskOf(cutAway, 'rip'), crosscut: taskOf(cutAway, 'crosscut') }
    return cutAway.cuts.map((cut) => {
      const blade = bladeIn === 'crosscut' ? bladeIn : cut.direction
      return workOf(cut, tasks[cut.direction], { blade, run: --run })
    })
  })
}

function workOf({ direction, takes, leaves }: AwayCut, task: Task, { blade, run }: Pick<Work, 'blade' | 'run'>): Work {
  const [from, to] = direction === 'rip' ? (['bottom', topOf] as const) : (['left', rightOf] as const)
  const clean = leaves[0]!.rect
  const isBefore = clean[from] === takes.rect[from]
  // The line is the edge of what is clean; the blade stands on the side of the damage.
  const size = settle((isBefore ? to(clean) : clean[from]) - takes.rect[from])
  const { rect, rough, name } = takes
  return {
    ...{ task, kind: 'away', tool: 'rail', hasAttachment: false, blade, setting: null, size, cuts: 1, run },
    isLate: false,
    takes: { name, x: rect.left, y: rect.bottom, length: rect.width, width: rect.height, rough },
    leaves: leaves.map(leftOf),
  }
}

function leftOf({ kind, name, mark, rect, rough }: NamedPiece): Left {
  const size = { length: rect.width, width: rect.height }
  const drawn = { kind: 'waste', x: 0, y: 0, ...size } as const
  const future = { drawn, called: [], stage: AS_IT_CAME }
  const child: Child = { kind, name, key: name, mark, part: null, isLate: false, ...size, rough, future }
  return { ...child, x: rect.left, y: rect.bottom }
}

/** No rough crosscut may part a damaged piece: to the steps it is drawn as one board. */
function taskOf(
  { name, sheet, material, isWhole, length, width, rough }: CutAway,
  direction: 'rip' | 'crosscut',
): Task {
  const isRip = direction === 'rip'
  const place = { x: 0, y: 0, length, width }
  return {
    ...{ name, sheet, material, direction, kind: direction, isLate: false, isSheet: isWhole, phase: 0, trim: 0, rough },
    ...{ called: [name], stage: AS_IT_CAME, runOf: () => null },
    ...{ span: isRip ? width : length, across: isRip ? length : width, groups: [], tail: [], rest: null, restSize: 0 },
    drawn: { kind: 'cut', direction, pieces: [{ kind: 'part', part: name, rotated: false, ...place }], ...place },
    next: [],
  }
}
