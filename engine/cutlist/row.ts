import type { MaterialId, PartId, RowKey, StockId } from '../basics/id'
import type { Outline } from '../cabinets/board'
import type { PartBank } from '../parts/part'
import type { Mm } from '../units/length'

/** Boards that are equal to the saw: one material, one size to cut, the same bands. */
export interface CutRow {
  readonly key: RowKey
  /** `A3`: the third row of the first material. */
  readonly mark: string
  /** What the boards are called: `side`. Several names are joined by commas. */
  readonly name: string
  readonly material: MaterialId
  /** To be cut. */
  readonly length: Mm
  readonly width: Mm
  readonly thickness: Mm
  readonly quantity: number
  readonly isGrainBound: boolean
  /** The bank that its one board is cut in; null for boards that are cut by themselves. */
  readonly bank: PartBank | null
  /** The sheets that they must come from; null for any of their material. */
  readonly from: StockId | null
  /** The number of the sheet that they must come from, among those of their material; any where it is left out. */
  readonly sheet?: number
  /** How many of the long edges and how many of the ends are banded. */
  readonly bandedEdges: { readonly long: number; readonly ends: number; readonly thickness: Mm }
  /** What is sawn out of the rectangle afterwards: an L, or a corner cut off; null for a plain rectangle. */
  readonly outline: Outline | null
  /** Whether ends of its boards are mitred afterwards: its length is to their long points. */
  readonly isMitred?: true
  /** The thickness of the band on what is sawn out; 0 for none. */
  readonly insideBand: Mm
  /** Whether they are cut when the carcasses stand and are measured. */
  readonly isLate: boolean
  /** In the order of cabinets, then of boards in a cabinet. */
  readonly parts: readonly PartId[]
  /** Those of them that are made to an opening as it was measured. */
  readonly measured: readonly PartId[]
  /** Marks of the cabinets it goes into, each once: B1 B2 U1. */
  readonly cabinets: readonly string[]
}

export interface MaterialTotal {
  readonly material: MaterialId
  readonly parts: number
  /** In square metres, as cut. */
  readonly area: number
  /** In kg, as cut. */
  readonly weight: number
  /** In metres, without an allowance. */
  readonly banding: number
}

export interface CutList {
  readonly rows: readonly CutRow[]
  readonly totals: readonly MaterialTotal[]
}

const OUTLINES = { L: 'L-shaped', clipped: 'corner cut off' } as const satisfies Record<Outline, string>

/** What a row is called, with what is sawn out of its boards: `bottom, top, L-shaped`; `crown, mitred, to its long points`. */
export function rowName({ name, outline, isMitred }: Pick<CutRow, 'name' | 'outline' | 'isMitred'>): string {
  const shaped = outline ? `${name}, ${OUTLINES[outline]}` : name
  return isMitred ? `${shaped}, mitred, to its long points` : shaped
}
