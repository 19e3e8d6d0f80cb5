import {
  type CutList,
  type Drawing,
  type JobStock,
  type Material,
  type PartId,
  type PlacedPart,
  type Project,
  type SheetLayout,
  sheetDrawing,
  valuesOf,
} from '../../engine/index'
import type { Layout, Selection } from '../store/state'
import { placedParts } from '../tables/places'

/** Sheets that are cut alike, drawn once. */
export interface Fold {
  readonly layout: SheetLayout
  readonly stock: JobStock
  /** The number of the first of them, from 1; the others follow it. */
  readonly first: number
  readonly drawing: Drawing
  /** For each place on the sheet, the parts that lie there on the first, second... of the alike sheets. */
  readonly parts: readonly (readonly PlacedPart[])[]
}

/** Small letters on a sheet that is drawn a hand wide: 2440 mm on 300 px. */
const TEXT_SIZE = 78

/** Every distinct sheet of a layout, with what lies on it in the design that it was made for. */
export function foldsOf(
  { job, answer }: Layout,
  cutList: CutList,
  { display, materials }: Pick<Project, 'display' | 'materials'>,
): Fold[] {
  const marks = new Map<string, string>(cutList.rows.map(({ key, mark }) => [key, mark]))
  const placed = placedParts(cutList, answer)
  let sheet = 1
  return answer.sheets.flatMap((layout, layoutIndex): Fold[] => {
    const stock = job.stock.find(({ id }) => id === layout.stock)
    if (!stock) return []
    const first = sheet
    sheet += layout.copies
    const here = placed.filter((part) => part.layoutIndex === layoutIndex)
    const parts = layout.placements.map((_, placement) => here.filter((part) => part.placement === placement))
    const drawing = sheetDrawing({
      ...{ layout, stock, kerf: job.kerf, display, textSize: TEXT_SIZE, isMeasured: false },
      markOf: (part) => marks.get(part) ?? part,
      hasGrain: valuesOf<Material>(materials).some(({ id, hasGrain }) => id === stock.material && hasGrain),
    })
    return [{ layout, stock, first, drawing, parts }]
  })
}

/** What a click on a place selects: its part, or the next of the alike sheets when one of them is selected already. */
export function nextPart(parts: readonly PlacedPart[], selection: Selection): PartId | null {
  const at = selection.kind === 'part' ? parts.findIndex(({ part }) => part === selection.part) : -1
  return parts[(at + 1) % parts.length]?.part ?? null
}

/** The places where something that is selected lies, as one word: the same word means that nothing changed. */
export function litPlaces(fold: Fold, chosen: ReadonlySet<PartId>): string {
  return fold.parts.flatMap((parts, place) => (parts.some(({ part }) => chosen.has(part)) ? [place] : [])).join(' ')
}
