import type { Shop } from '../project/document'
import type { Mm } from '../units/length'
import type { Step } from './step'
import type { CutKind } from './work'

/** What cuts a piece, and whether the guides need their attachment for narrow rips. */
export interface Grip {
  readonly tool: Step['tool']
  readonly hasAttachment: boolean
}

export interface Reach {
  readonly least: Mm
  readonly greatest: Mm
}

export function isWithin(size: Mm, { least, greatest }: Reach): boolean {
  return size >= least && size <= greatest
}

/**
 * The guides set a rip, the bench and its stop set a crosscut; beyond their reach the rail follows a line. `size` is what
 * is cut off, null where nothing is set; `across` is the length of the cut. In mm.
 */
export function gripFor(kind: CutKind, size: Mm | null, across: Mm, shop: Shop): Grip {
  const { guides, narrowRips, benchCrosscut } = shop
  switch (kind) {
    case 'away':
    case 'trim':
      return RAIL
    case 'rip':
    case 'rerip':
      if (size === null) return RAIL
      if (isWithin(size, guides)) return { tool: 'guides', hasAttachment: false }
      return narrowRips && size < guides.least && isWithin(size, narrowRips)
        ? { tool: 'guides', hasAttachment: true }
        : RAIL
    case 'square':
    case 'crosscut':
      return across <= benchCrosscut ? { tool: 'bench', hasAttachment: false } : RAIL
  }
}

const RAIL: Grip = { tool: 'rail', hasAttachment: false }
