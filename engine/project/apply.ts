import { unreachable } from '../basics/assert'
import { type ById, type CabinetId, entriesOf, type PartId, type StockId, valuesOf } from '../basics/id'
import { hasOpening, stillThere } from './asBuilt'
import type { Beside, Cabinet, Front, Material, Project } from './document'
import type { CabinetShape, Edit } from './edit'
import { freeNumber } from './mark'
import type { BuildMethod, MethodChoices } from './method'
import { isMethodFree, methodCopy } from './methods'
import { isInRange, isSavable, RANGES } from './ranges'
import { find, hasEverything, isThere, lostBeside, lostPin } from './references'
import { isSame, settled, settledField } from './settled'

/**
 * The project with an edit made. What the edit does not touch is the same object as before, and an edit that changes
 * nothing gives the very same project. So does one that no file could keep: of something that is not there, of a
 * material or method that does not exist, or of a number that is none.
 */
export function applyEdit(project: Project, edit: Edit): Project {
  switch (edit.kind) {
    case 'addCabinet':
      return addCabinet(project, edit.cabinet)
    case 'removeCabinets':
      return withRoom(project, { cabinets: without(project.cabinets, edit.ids) })
    case 'shapeCabinets':
      return edit.shapes.reduce(shape, project)
    case 'setFront':
      return edit.ids.reduce((before, id) => setFront(before, id, edit.front), project)
    case 'setInterior':
      return changeCabinets(project, edit.ids, { interior: edit.interior })
    case 'setCabinetMethod':
      if (edit.method !== null && !isThere(project.methods, edit.method)) return project
      return changeCabinets(project, edit.ids, { method: edit.method })
    case 'override':
      return edit.ids.reduce((before, id) => override(before, id, edit.choices), project)
    case 'letGrainRun':
      return changeCabinets(project, edit.ids, { isGrainRunning: edit.isRunning })
    case 'pin':
      if (edit.stock !== null && !isThere(project.stock, edit.stock)) return project
      return edit.parts.reduce((before, part) => pin(before, part, edit.stock), project)
    case 'setBeside':
      return canStandBeside(edit.beside, project) ? setBeside(project, edit) : project
    case 'setCutout':
      return changeCabinets(project, edit.ids, { cutout: edit.cutout })
    case 'measureOpening':
      return measureOpening(project, edit)
    case 'editBetween':
      if (edit.change.countertop && !isThere(project.materials, edit.change.countertop.material)) return project
      return changed(project, { between: changed(project.between, edit.change) })
    case 'editWall':
      return changeIn(project, 'walls', edit.id, edit.change)
    case 'putOpening': {
      const wall = find(project.walls, edit.wall)
      return wall ? changeIn(project, 'walls', wall.id, { openings: put(wall.openings, edit.opening) }) : project
    }
    case 'removeOpening': {
      const wall = find(project.walls, edit.wall)
      return wall ? changeIn(project, 'walls', wall.id, { openings: without(wall.openings, [edit.id]) }) : project
    }
    case 'editMethod':
      return changeIn(project, 'methods', edit.id, edit.change)
    case 'copyMethod': {
      const copy = methodCopy(project.methods, edit.id)
      return copy ? withRoom(project, { methods: put(project.methods, copy) }) : project
    }
    case 'removeMethod':
      if (!isMethodFree(project, edit.id)) return project
      return withRoom(project, { methods: without(project.methods, [edit.id]) })
    case 'useMethod':
      return isThere(project.methods, edit.id) ? changed(project, { method: edit.id }) : project
    case 'putMethod':
      return putMethod(project, edit.method, edit.materials)
    case 'editMaterial':
      return changeIn(project, 'materials', edit.id, edit.change)
    case 'putStock':
      if (!isThere(project.materials, edit.stock.material)) return project
      return withRoom(project, { stock: put(project.stock, edit.stock) })
    case 'removeStock':
      return withoutStock(project, edit.id)
    case 'keepSheet':
      return isThere(project.stock, edit.sheet.stock)
        ? withRoom(project, { kept: put(project.kept, edit.sheet) })
        : project
    case 'releaseSheet':
      return withRoom(project, { kept: without(project.kept, [edit.id]) })
    case 'editShop':
      return changed(project, { shop: changed(project.shop, edit.change) })
    case 'editHouse':
      return changed(project, { house: changed(project.house, edit.change) })
    case 'editNewCabinet': {
      const start = changed(project.newCabinets[edit.cabinet], edit.change)
      return changed(project, { newCabinets: changed(project.newCabinets, { [edit.cabinet]: start }) })
    }
    case 'setDisplay':
      return changed(project, { display: edit.display })
    case 'rename':
      return changed(project, { name: edit.name })
    case 'several':
      return edit.edits.reduce(applyEdit, project)
    default:
      return unreachable(edit)
  }
}

/** The thing with some fields changed; the same object when every field is what it was. Lengths settle, names are cleaned. */
function changed<Thing extends object>(thing: Thing, change: Partial<Thing>): Thing {
  const fields = Object.entries(change)
    .filter(([field, value]) => value !== undefined && isSavable(value, field))
    .map(([field, value]): [string, unknown] => [field, settledField(field, value)])
    .filter(([field, value]) => !isSame(thing[field as keyof Thing], value))
  return fields.length === 0 ? thing : { ...thing, ...Object.fromEntries(fields) }
}

/** The project with a map exchanged whose things are settled already. */
function withRoom(
  project: Project,
  room: Partial<Pick<Project, 'cabinets' | 'stock' | 'kept' | 'methods' | 'materials'>>,
): Project {
  const isSameRoom = Object.entries(room).every(([name, things]) => project[name as keyof Project] === things)
  return isSameRoom ? project : { ...project, ...room }
}

/** A thing put into its map, in place of the one of its id if there is one. */
function put<Id extends string, Thing extends { readonly id: Id }>(
  things: ById<Id, Thing>,
  thing: Thing,
): ById<Id, Thing> {
  if (!isSavable(thing)) return things
  return changed<ById<Id, Thing>>(things, { [thing.id]: thing } as Partial<ById<Id, Thing>>)
}

/** A method comes in whole, with its boards, or not at all. */
function putMethod(project: Project, method: BuildMethod, boards: readonly Material[]): Project {
  const materials = boards.reduce(put, project.materials)
  const areKept = boards.every(({ id }) => isThere(materials, id))
  if (!areKept || !isSavable(method) || !hasEverything(method, materials)) return project
  return withRoom(project, { materials, methods: put(project.methods, method) })
}

/** A cabinet is added once, to a wall that is there, and gets another number when its own is taken. */
function addCabinet(project: Project, cabinet: Cabinet): Project {
  const { method, wall, id, kind } = cabinet
  const hasMethod = method === null || isThere(project.methods, method)
  if (isThere(project.cabinets, id) || !isThere(project.walls, wall) || !hasMethod) return project
  if (!hasEverything(cabinet.overrides, project.materials) || !isSavable(cabinet)) return project
  if (lostPin(cabinet.pins, project.stock) !== undefined || lostBeside(cabinet, project.materials)) return project
  const isTaken = Object.values<Cabinet>(project.cabinets).some(
    (one) => one.kind === kind && one.number === cabinet.number,
  )
  const number = isTaken ? freeNumber(project, kind) : cabinet.number
  return { ...project, cabinets: { ...project.cabinets, [id]: { ...settled(cabinet), number } } }
}

/** A thing of the project with some fields changed, if it is there and all materials it then names are. */
function changeIn<Room extends 'walls' | 'methods' | 'materials' | 'cabinets'>(
  project: Project,
  room: Room,
  id: keyof Project[Room] & string,
  change: object,
): Project {
  const before = find<object>(project[room], id)
  if (!before || !hasEverything(change, project.materials)) return project
  const after = changed(before, change)
  return after === before ? project : { ...project, [room]: { ...project[room], [id]: after } }
}

function changeCabinets(project: Project, ids: readonly CabinetId[], change: Partial<Cabinet>): Project {
  return ids.reduce((before, id) => changeIn(before, 'cabinets', id, change), project)
}

/** What was measured goes with its opening. */
function setFront(project: Project, id: CabinetId, front: Front): Project {
  const cabinet = find(project.cabinets, id)
  if (!cabinet?.asBuilt) return changeIn(project, 'cabinets', id, { front })
  return changeIn(project, 'cabinets', id, { front, asBuilt: stillThere(cabinet.asBuilt, cabinet.front, front) })
}

function measureOpening(project: Project, { id, at, measured }: Extract<Edit, { kind: 'measureOpening' }>): Project {
  const cabinet = find(project.cabinets, id)
  if (!cabinet || !hasOpening(cabinet.front, at)) return project
  const { [at]: before, ...others } = cabinet.asBuilt ?? {}
  const isNothing = measured === null || (measured.width === null && measured.height === null)
  if (isNothing && !before) return project
  return changeIn(project, 'cabinets', id, { asBuilt: isNothing ? others : { ...others, [at]: measured } })
}

function shape(project: Project, { id, ...change }: CabinetShape): Project {
  return changeIn(project, 'cabinets', id, change)
}

/** What is undefined goes back to the method; the others are merged into what is already different. */
function override(project: Project, id: CabinetId, choices: Partial<MethodChoices>): Project {
  const cabinet = find(project.cabinets, id)
  if (!cabinet || !hasEverything(choices, project.materials)) return project
  const all = Object.entries({ ...cabinet.overrides, ...choices })
  const overrides = Object.fromEntries(all.filter(([, choice]) => choice !== undefined))
  return changeIn(project, 'cabinets', id, { overrides })
}

function canStandBeside(beside: Beside, { materials }: Project): boolean {
  if (beside.kind === 'filler') return isInRange(beside.width, RANGES.filler) && isInRange(beside.scribe, RANGES.scribe)
  return beside.kind === 'none' || isThere(materials, beside.material)
}

function setBeside(project: Project, { ids, side, beside }: Extract<Edit, { kind: 'setBeside' }>): Project {
  return ids.reduce((before, id) => {
    const cabinet = find(before.cabinets, id)
    return cabinet ? changeIn(before, 'cabinets', id, { beside: { ...cabinet.beside, [side]: beside } }) : before
  }, project)
}

/** A part is named after its cabinet and its place in it. */
function pin(project: Project, part: PartId, stock: StockId | null): Project {
  const [id, place] = part.split('/') as [CabinetId, string | undefined]
  const cabinet = find(project.cabinets, id)
  if (!cabinet || !place) return project
  const others = Object.entries(cabinet.pins).filter(([other]) => other !== place)
  const pins = Object.fromEntries(stock === null ? others : [...others, [place, stock]])
  return changeIn(project, 'cabinets', id, { pins })
}

/** With the sheets go the wishes for boards of them, and the layouts on them that were kept. */
function withoutStock(project: Project, id: StockId): Project {
  const kept = valuesOf(project.kept).filter(({ stock }) => stock === id)
  const pinned = entriesOf(project.cabinets).flatMap(([cabinet, { pins }]) =>
    Object.entries(pins).flatMap(([place, stock]) => (stock === id ? [`${cabinet}/${place}` as PartId] : [])),
  )
  const free = pinned.reduce((before, part) => pin(before, part, null), project)
  return withRoom(free, {
    kept: without(
      free.kept,
      kept.map((sheet) => sheet.id),
    ),
    stock: without(free.stock, [id]),
  })
}

function without<Id extends string, Thing>(things: ById<Id, Thing>, ids: readonly Id[]): ById<Id, Thing> {
  if (!ids.some((id) => Object.hasOwn(things, id))) return things
  const left = Object.entries(things).filter(([id]) => !ids.includes(id as Id))
  return Object.fromEntries(left) as ById<Id, Thing>
}
