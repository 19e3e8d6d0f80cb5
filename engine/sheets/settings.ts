import type { Mm } from '../units/length'
import { ticks } from '../units/length'
import type { Piece, SheetAnswer } from './layout'

/** What an answer asks of the hands at the saw. */
export interface Settings {
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

/**
 * For a late part among others, or one of the others among late ones: what is left of the sheet is carried off until the
 * carcasses stand, and set for again. As much as a part trimmed: by trial a third fewer sheets are mixed then, for one or
 * two more minutes in a hundred at the saw.
 */
export const MIXED = 1

/** What cuts and settings cost beside each other (common practice, no source): setting a guide takes longest. */
export const HANDLING = {
  rips: 2,
  ripWidths: 3,
  setups: 0.5,
  crosscutLengths: 2,
  trimmed: 1,
  trimSizes: 0.5,
  patterns: 0.5,
} as const

/** One number for all of it, in parts trimmed: the goal of few settings is a low one. */
export function handlingCost(settings: Settings): number {
  const kinds = Object.keys(HANDLING) as (keyof Settings)[]
  return kinds.reduce((sum, kind) => sum + HANDLING[kind] * settings[kind], 0)
}

/** Counts the settings of all sheets together: a guide that is set serves every sheet and material. */
export function settingsOf({ sheets }: SheetAnswer): Settings {
  const widths = new Set<number>()
  const lengths = new Set<number>()
  const trims = new Set<number>()
  let [rips, setups, trimmed] = [0, 0, 0]
  for (const { root, copies } of sheets) {
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
    ...{ rips, ripWidths: widths.size, setups, crosscutLengths: lengths.size },
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
