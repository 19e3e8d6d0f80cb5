import type { Cabinet, Project } from '../project/document'
import { type Mm, settle } from '../units/length'
import { clearBottom } from './carcass'
import { carcassIn } from './frontPlaces'
import { interiorOf } from './interior'
import { cellsOf } from './openings'
import { SILENT } from './report'

/** A bay of a cabinet and its fixed shelves, as they are typed: in mm, heights over the upper face of the bottom. */
export interface BayPlace {
  readonly width: Mm
  /** From and to what a fixed shelf may be put; null where no shelf has room. */
  readonly shelves: { readonly least: Mm; readonly most: Mm } | null
  /** Where the undersides of its fixed shelves are, from the bottom up. */
  readonly fixed: readonly Mm[]
}

/** The bays of a cabinet from the left, one where nothing parts it; none where it cannot be built, or stands in a corner. */
export function bayPlaces(project: Project, cabinet: Cabinet): BayPlace[] {
  const carcass = cabinet.corner ? null : carcassIn(project, cabinet)
  if (!carcass) return []
  const bottom = clearBottom(carcass)
  const { bays } = interiorOf(cabinet, cellsOf(cabinet.front, carcass, SILENT), [], carcass, SILENT)
  return bays.map(({ across, height, fixed }) => ({
    width: settle(across.to - across.from),
    shelves: height && {
      least: settle(height.from - bottom),
      most: settle(height.to - carcass.thickness - bottom),
    },
    fixed: fixed.map((low) => settle(low - bottom)),
  }))
}
