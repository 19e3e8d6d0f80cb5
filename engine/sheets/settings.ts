import type { Mm } from '../units/length'
import { ticks } from '../units/length'
import type { Piece, SheetAnswer } from './layout'

/** What an answer asks of the hands at the saw. */
export interface Settings {
  /** Parts on all sheets. */
  readonly parts: number
  /** Strips ripped, on all sheets. */
  readonly rips: number
  /** Different widths that the strips are ripped to. */
  readonly ripWidths: number
  /** Different widths of strips on each sheet, summed: how often the guides are set where sheets are cut one by one. */
  readonly setups: number
  /** Different lengths that strips are crosscut to. */
  readonly crosscutLengths: number
  /** Parts that are not done after a rip and a crosscut. */
  readonly trimmed: number
  /** Different sizes that are cut off then. */
  readonly trimSizes: number
  /** Different sheets; those that are cut alike are one. */
  readonly patterns: number
}

/** What cuts and settings cost beside each other. */
export interface HandlingWeights extends Readonly<Record<Exclude<keyof Settings, 'parts'>, number>> {
  /**
   * For a late part among others, or one of the others among late ones: what is left of the sheet is carried off until
   * the carcasses stand, and set for again. By trial a third fewer sheets are mixed then, for one or two more minutes in
   * a hundred at the saw.
   */
  readonly mixed: number
  /** What it counts that many of all parts are trimmed, beside what each costs. */
  readonly crowding: number
}

/** From so many parts on a whole width can be spared, and it pays to put strips together anew for it (found by trial). */
export const MANY_PARTS = 100

/** For a few parts: setting a guide takes long, and so does a rip, which takes a whole sheet in hand (found by trial). */
const OF_FEW: HandlingWeights = {
  ...{ rips: 4, ripWidths: 3, setups: 0.5, crosscutLengths: 4 },
  ...{ trimmed: 1.5, trimSizes: 0.5, patterns: 0.5, mixed: 2, crowding: 0 },
}

/**
 * For many parts: a rip is by far the dearest, and trimmed parts count little until they are many (found by trial: one
 * rip in twenty is spared, and the minutes at the saw are the same within one in a hundred).
 */
const OF_MANY: HandlingWeights = {
  ...{ rips: 20, ripWidths: 11, setups: 0.5, crosscutLengths: 7 },
  ...{ trimmed: 2, trimSizes: 0.5, patterns: 0.5, mixed: 7, crowding: 1000 },
}

/** Where crowding sets in, in shares of all parts, and how steeply. */
const CROWDED = { power: 7, most: 0.33, spare: 5 }

/** The weights for a number of parts of one material. */
export function weightsFor(parts: number): HandlingWeights {
  return parts >= MANY_PARTS ? OF_MANY : OF_FEW
}

/**
 * What trimmed parts cost for being many among all parts: next to nothing up to a fifth of them; one more at two sevenths
 * as much again as two by themselves, and from a third on each as much as half a rip in all.
 */
export function crowdingOf({ crowding }: HandlingWeights, trimmed: number, parts: number): number {
  if (crowding === 0) return 0
  const { power, most, spare } = CROWDED
  const whole = parts + spare
  const rising = Math.min(trimmed, most * whole)
  return crowding * (whole * (rising / whole) ** power + power * most ** (power - 1) * (trimmed - rising))
}

/** One number for all of it on sheets of one material: the goal of few settings is a low one. */
export function handlingCost(settings: Settings): number {
  const { parts, ...counts } = settings
  const weights = weightsFor(parts)
  const kinds = Object.keys(counts) as (keyof typeof counts)[]
  const each = kinds.reduce((sum, kind) => sum + weights[kind] * counts[kind], 0)
  return each + crowdingOf(weights, settings.trimmed, parts)
}

/** Counts the settings of all sheets together: a guide that is set serves every sheet and material. */
export function settingsOf({ sheets }: SheetAnswer): Settings {
  const widths = new Set<number>()
  const lengths = new Set<number>()
  const trims = new Set<number>()
  let [parts, rips, setups, trimmed] = [0, 0, 0, 0]
  for (const { root, copies, placements } of sheets) {
    parts += copies * placements.length
    const own = new Set<number>()
    for (const { isRip, piece, level } of cutsIn(root, 1)) {
      if (level > 2) {
        trimmed += piece.kind === 'part' ? copies : 0
        trims.add(ticks(isRip ? piece.width : piece.length))
      } else if (isRip) {
        rips += copies
        own.add(ticks(piece.width))
      } else lengths.add(ticks(piece.length))
    }
    setups += copies * own.size
    for (const width of own) widths.add(width)
  }
  return {
    ...{ parts, rips, ripWidths: widths.size, setups, crosscutLengths: lengths.size },
    ...{ trimmed, trimSizes: trims.size, patterns: sheets.length },
  }
}

interface Cut {
  readonly isRip: boolean
  readonly piece: Piece
  /** Which direction in turn it is cut in: 1 for the sheet's first. */
  readonly level: number
}

/** Every piece that is cut out and used, with the direction it is cut in. */
function cutsIn(piece: Piece, level: number): Cut[] {
  if (piece.kind !== 'cut') return []
  const isRip = piece.direction === 'rip'
  return piece.pieces
    .filter(({ kind }) => kind === 'part' || kind === 'cut')
    .flatMap((inner) => [{ isRip, piece: inner, level }, ...cutsIn(inner, level + 1)])
}

/**
 * The largest piece left over that runs from end to end of a sheet: how far across, in mm. Across is the width where the
 * sheet is ripped first, and the length where it is crosscut first.
 */
export function largestLeft({ sheets }: SheetAnswer): Mm {
  let most = 0
  for (const { root } of sheets) {
    if (root.kind !== 'cut') continue
    for (const piece of root.pieces) {
      const isLeft = piece.kind === 'offcut' || piece.kind === 'waste'
      if (isLeft) most = Math.max(most, root.direction === 'rip' ? piece.width : piece.length)
    }
  }
  return most
}
