import type { Interval } from '../geometry/interval'
import type { Corner } from '../project/corner'
import type { Cabinet, ColumnShelves, Project } from '../project/document'
import { baysOf } from '../project/interior'
import { type Mm, settle } from '../units/length'
import { type Carcass, clearBottom, clearTop, clearWidth } from './carcass'
import { cornerCarcass, cornerRules, plainCabinet } from './cornerCarcass'
import { countsOf } from './filledBay'
import { carcassIn, rulesIn } from './frontPlaces'
import { interiorOf } from './interior'
import { cellsOf } from './openings'
import { SILENT } from './report'
import { fixedLevels } from './shelfLevels'

/** A fixed shelf: where its underside is over the upper face of the bottom, and from and to where it can be typed, in mm. */
export interface ShelfPlace {
  readonly at: Mm
  readonly least: Mm
  readonly most: Mm
}

/** A bay of a cabinet as it is typed, in mm; heights are over the upper face of the bottom. */
export interface BayPlace {
  readonly width: Mm
  /** The widest that it can be typed; null for the only one that takes what the others leave. */
  readonly widest: Mm | null
  /** Its fixed shelves from the bottom up. */
  readonly fixed: readonly ShelfPlace[]
}

/** What is left at least for a bay that takes what the others leave. Common practice, no source. */
export const LEAST_BAY: Mm = 30

/** The bays of a cabinet from the left, one where nothing parts it; none where it cannot be built, or stands in a corner. */
export function bayPlaces(project: Project, cabinet: Cabinet): BayPlace[] {
  const carcass = cabinet.corner ? null : carcassIn(project, cabinet)
  if (!carcass) return []
  const { bays } = interiorOf(cabinet, cellsOf(cabinet.front, carcass, SILENT), [], carcass, SILENT)
  return bays.map(({ across, height, fixed }, at) => ({
    width: settle(across.to - across.from),
    widest: widestOf(cabinet, at, carcass),
    fixed: placesAt(fixed, shelvesIn(cabinet, at), height, carcass),
  }))
}

/** The fixed shelves of a corner cabinet from the bottom up; none where it cannot be built. */
export function cornerShelfPlaces(project: Project, cabinet: Cabinet, corner: Corner): readonly ShelfPlace[] {
  const rules = rulesIn(project, cabinet)
  const own = rules && cornerCarcass(plainCabinet(cabinet, SILENT), corner, cornerRules(rules), SILENT)?.own
  if (!own) return []
  const height = { from: clearBottom(own), to: clearTop(own) }
  const levels = height.to > height.from ? fixedLevels(countsOf(cabinet.interior), height, own, SILENT) : []
  return placesAt(levels, cabinet.interior, height, own)
}

function placesAt(
  fixed: readonly Mm[],
  { fixedAt = [] }: ColumnShelves,
  height: Interval | null,
  carcass: Carcass,
): ShelfPlace[] {
  const bottom = clearBottom(carcass)
  const least = settle((height?.from ?? bottom) - bottom)
  const most = settle((height?.to ?? bottom) - carcass.thickness - bottom)
  return fixed.map((low, shelf) => {
    return { at: settle(low - bottom), ...limitsOf(shelf, fixed.length, fixedAt, { least, most }, carcass) }
  })
}

function shelvesIn({ front, interior }: Cabinet, at: number): ColumnShelves {
  const bay = front.kind === 'columns' ? front.columns[at] : baysOf(interior)[at]
  return bay?.shelves ?? interior
}

/** What the other bays leave to one: the fixed ones their widths, the others at least so much. */
function widestOf({ interior }: Cabinet, at: number, carcass: Carcass): Mm | null {
  const others = baysOf(interior).filter((_, index) => index !== at)
  const shared = others.filter(({ size }) => size.kind === 'share').length
  if (shared === 0) return null
  const fixed = others.reduce((sum, { size }) => sum + (size.kind === 'fixed' ? size.width : 0), 0)
  return settle(clearWidth(carcass) - others.length * carcass.thickness - fixed - shared * LEAST_BAY)
}

/** Between the nearest typed ones below and above, with room for those that are not. */
function limitsOf(
  shelf: number,
  count: number,
  fixedAt: readonly (Mm | null)[],
  { least, most }: { readonly least: Mm; readonly most: Mm },
  { thickness }: Carcass,
): { readonly least: Mm; readonly most: Mm } {
  const typed = Array.from({ length: count }, (_, at) => ({ at, height: fixedAt[at] ?? null }))
  const below = typed.filter(({ at, height }) => at < shelf && height !== null).at(-1)
  const above = typed.find(({ at, height }) => at > shelf && height !== null)
  return {
    least: settle((below?.height ?? least - thickness) + (shelf - (below?.at ?? -1)) * thickness),
    most: settle((above?.height ?? most + thickness) - ((above?.at ?? count) - shelf) * thickness),
  }
}
