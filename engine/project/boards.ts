import { entriesOf, isRunId, type MaterialId, type OwnerId, type PartId, type StockId, valuesOf } from '../basics/id'
import type { Material, Project, Stock } from './document'
import { isInRange, isSavable, RANGES } from './ranges'
import { find, isThere, lostFrom } from './references'
import { changed, changeIn, put, without, withRoom } from './rooms'

export function pin(project: Project, part: PartId, stock: StockId | null): Project {
  return withWish(project, part, 'pins', stock)
}

/** A number that no sheet can have is no wish. */
export function pinToSheet(project: Project, parts: readonly PartId[], sheet: number | null): Project {
  if (sheet !== null && !isInRange(sheet, RANGES.sheet)) return project
  return parts.reduce((before, part) => withWish(before, part, 'sheets', sheet), project)
}

/**
 * Where a board is to come from, or with null from anywhere. A part is named after its cabinet and its place in it; the
 * boards of runs stand in no cabinet.
 */
function withWish(project: Project, part: PartId, field: 'pins' | 'sheets', wish: StockId | number | null): Project {
  const [id, place] = part.split('/') as [OwnerId, string | undefined]
  const owner = isRunId(id) ? project.between : find(project.cabinets, id)
  // Where none was wished, taking back adds nothing.
  if (!place || !owner || (wish === null && owner[field] === undefined)) return project
  const name = isRunId(id) ? part : place
  const others = Object.entries(owner[field] ?? {}).filter(([other]) => other !== name)
  const change = { [field]: Object.fromEntries(wish === null ? others : [...others, [name, wish]]) }
  return isRunId(id)
    ? changed(project, { between: changed(project.between, change) })
    : changeIn(project, 'cabinets', id, change)
}

/** A board that was not there, with a sheet of it. */
export function addMaterial(project: Project, material: Material, stock: Stock): Project {
  if (isThere(project.materials, material.id) || isThere(project.stock, stock.id)) return project
  if (stock.material !== material.id || !isSavable(material) || !isSavable(stock)) return project
  return withRoom(project, { materials: put(project.materials, material), stock: put(project.stock, stock) })
}

/** Whether nothing that is designed is made of a board. */
export function isMaterialFree(project: Project, id: MaterialId): boolean {
  return isThere(project.materials, id) && lostFrom(withoutMaterial(project, id)) === null
}

/** Without a board and its sheets, whatever is made of it. */
export function withoutMaterial(project: Project, id: MaterialId): Project {
  const sheets = valuesOf<Stock>(project.stock).filter(({ material }) => material === id)
  const rest = sheets.reduce((before, sheet) => withoutStock(before, sheet.id), project)
  return withRoom(rest, { materials: without(rest.materials, [id]) })
}

/** With the sheets go the wishes for boards of them, and the layouts on them that were kept. */
export function withoutStock(project: Project, id: StockId): Project {
  const kept = valuesOf(project.kept).filter(({ stock }) => stock === id)
  const pinned = entriesOf(project.cabinets).flatMap(([cabinet, { pins }]) =>
    Object.entries(pins).flatMap(([place, stock]) => (stock === id ? [`${cabinet}/${place}` as PartId] : [])),
  )
  const overRuns = Object.keys(project.between.pins).filter((part) => project.between.pins[part] === id) as PartId[]
  const free = [...pinned, ...overRuns].reduce((before, part) => pin(before, part, null), project)
  return withRoom(free, {
    kept: without(
      free.kept,
      kept.map((sheet) => sheet.id),
    ),
    stock: without(free.stock, [id]),
  })
}
