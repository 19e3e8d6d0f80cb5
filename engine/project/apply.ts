import { unreachable } from '../basics/assert'
import { type CabinetId, valuesOf, type WallId } from '../basics/id'
import { hasOpening, stillThere } from './asBuilt'
import { addMaterial, isMaterialFree, pin, pinToSheet, withoutMaterial, withoutStock } from './boards'
import type { Beside, Cabinet, Front, Material, Project } from './document'
import type { CabinetShape, Edit } from './edit'
import { freeNumber, markOf } from './mark'
import type { BuildMethod } from './method'
import { isMethodFree, methodCopy } from './methods'
import { mirroredWhenMoved } from './mirror'
import { type Overrides, overridden } from './overrides'
import { isInRange, isSavable, RANGES } from './ranges'
import { canHoldSpace, find, hasEverything, isThere, lostBeside, lostBetween, lostPin, lostTop } from './references'
import { changed, changeIn, put, without, withRoom } from './rooms'
import { putInSequence, withoutSequencesOf } from './sequences'
import { settled } from './settled'

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
      return withoutCabinets(project, edit.ids)
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
      return changeCabinets(project, edit.ids, {
        isGrainRunning: edit.way === 'running',
        isGrainAcross: edit.way === 'across',
      })
    case 'pin':
      if (edit.stock !== null && !isThere(project.stock, edit.stock)) return project
      return edit.parts.reduce((before, part) => pin(before, part, edit.stock), project)
    case 'pinSheet':
      return pinToSheet(project, edit.parts, edit.sheet)
    case 'putInSequence':
      return putInSequence(project, edit.parts, edit.sequence)
    case 'setBeside':
      return canStandBeside(edit.beside, project) ? setBeside(project, edit) : project
    case 'setCutout':
      return changeCabinets(project, edit.ids, { cutout: edit.cutout })
    case 'setTop':
      return lostTop(edit, project.materials) ? project : changeCabinets(project, edit.ids, { top: edit.top })
    case 'setSpace':
      return changeCabinets(
        project,
        edit.ids.filter((id) => find(project.cabinets, id)?.space),
        { space: edit.space },
      )
    case 'setCorner':
      return changeCabinets(
        project,
        edit.ids.filter((id) => !find(project.cabinets, id)?.space),
        { corner: edit.corner },
      )
    case 'measureOpening':
      return measureOpening(project, edit)
    case 'editBetween':
      if (lostBetween(edit.change, project.materials)) return project
      return changed(project, { between: changed(project.between, edit.change) })
    case 'editWall':
      return changeIn(project, 'walls', edit.id, edit.change)
    case 'addWall':
      return isThere(project.walls, edit.wall.id)
        ? project
        : withRoom(project, { walls: put(project.walls, edit.wall) })
    case 'removeWall':
      return withoutWall(project, edit.id)
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
    case 'addMaterial':
      return addMaterial(project, edit.material, edit.stock)
    case 'removeMaterial':
      return isMaterialFree(project, edit.id) ? withoutMaterial(project, edit.id) : project
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

/** A method comes in whole, with its boards, or not at all. */
function putMethod(project: Project, method: BuildMethod, boards: readonly Material[]): Project {
  const materials = boards.reduce(put, project.materials)
  const areKept = boards.every(({ id }) => isThere(materials, id))
  if (!areKept || !isSavable(method) || !hasEverything(method, materials)) return project
  return withRoom(project, { materials, methods: put(project.methods, method) })
}

/** A cabinet is added once, to a wall that is there, and gets another number when its own is taken. */
function addCabinet(project: Project, cabinet: Cabinet): Project {
  const { method, wall, id } = cabinet
  const hasMethod = method === null || isThere(project.methods, method)
  if (isThere(project.cabinets, id) || !isThere(project.walls, wall) || !hasMethod) return project
  if (!hasEverything(cabinet.overrides, project.materials) || !isSavable(cabinet)) return project
  if (!canHoldSpace(cabinet)) return project
  if (lostPin(cabinet.pins, project.stock) !== undefined || lostBeside(cabinet, project.materials)) return project
  if (lostTop(cabinet, project.materials)) return project
  const isTaken = Object.values<Cabinet>(project.cabinets).some((one) => markOf(one) === markOf(cabinet))
  const number = isTaken ? freeNumber(project, cabinet) : cabinet.number
  return { ...project, cabinets: { ...project.cabinets, [id]: { ...settled(cabinet), number } } }
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

/** What stands in a corner is mirrored when it is moved to the corner at the other end of its wall. */
function shape(project: Project, { id, ...change }: CabinetShape): Project {
  if (change.wall !== undefined && !isThere(project.walls, change.wall)) return project
  const shaped = changeIn(project, 'cabinets', id, change)
  const [before, after] = [find(project.cabinets, id), find(shaped.cabinets, id)]
  if (!before || !after || before === after) return shaped
  return changeIn(shaped, 'cabinets', id, mirroredWhenMoved(before, after, shaped))
}

/** What is undefined goes back to the method; the others are merged into what is already different. */
function override(project: Project, id: CabinetId, choices: Overrides): Project {
  const cabinet = find(project.cabinets, id)
  if (!cabinet || !hasEverything(choices, project.materials)) return project
  return changeIn(project, 'cabinets', id, { overrides: overridden(cabinet.overrides, choices) })
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

function withoutWall(project: Project, id: WallId): Project {
  const on = valuesOf<Cabinet>(project.cabinets).filter(({ wall }) => wall === id)
  if (Object.keys(project.walls).length < 2 || !isThere(project.walls, id)) return project
  const bare = withoutCabinets(
    project,
    on.map((cabinet) => cabinet.id),
  )
  return withRoom(bare, { walls: without(project.walls, [id]) })
}

function withoutCabinets(project: Project, ids: readonly CabinetId[]): Project {
  return withRoom(withoutSequencesOf(project, ids), { cabinets: without(project.cabinets, ids) })
}
