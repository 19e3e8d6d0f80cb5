import { unreachable } from '../basics/assert'
import type { CabinetId } from '../basics/id'
import { listed } from '../basics/listed'
import type { Beside, Between, Project, Stock } from './document'
import type { CabinetShape, Edit } from './edit'
import { markOf } from './mark'
import { find } from './references'

/** What an edit does to a project, as the name of an undo step: `Widen B3`. */
export function labelOf(project: Project, edit: Edit): string {
  switch (edit.kind) {
    case 'addCabinet':
      return `Add ${markOf(edit.cabinet)}`
    case 'removeCabinets':
      return `Delete ${marksOf(project, edit.ids)}`
    case 'shapeCabinets':
      return `${shapeVerb(project, edit.shapes[0])} ${marksOf(project, shapedIds(edit.shapes))}`
    case 'setFront':
      return `Change front of ${marksOf(project, edit.ids)}`
    case 'setInterior':
      return `Change inside of ${marksOf(project, edit.ids)}`
    case 'setCabinetMethod':
      return `Change build method of ${marksOf(project, edit.ids)}`
    case 'override':
      return `Change build of ${marksOf(project, edit.ids)}`
    case 'letGrainRun':
      return `${GRAIN_VERBS[edit.way]} ${marksOf(project, edit.ids)}`
    case 'pin':
      return edit.stock === null ? 'Take boards from any sheet' : 'Choose the sheet of boards'
    case 'pinSheet':
      return edit.sheet === null ? 'Take boards from any sheet' : 'Choose one sheet for boards'
    case 'putInSequence':
      return edit.sequence === null ? 'Cut boards by themselves' : 'Cut boards in sequence'
    case 'setBeside':
      return `${besideVerb(edit.beside)} at the ${edit.side} of ${marksOf(project, edit.ids)}`
    case 'setCutout':
      return `${edit.cutout ? `Cut out for a ${edit.cutout.of}` : 'Close the cut-out'} over ${marksOf(project, edit.ids)}`
    case 'setTop':
      return `Change the countertop over ${marksOf(project, edit.ids)}`
    case 'setSpace':
      return `Change the appliance of ${marksOf(project, edit.ids)}`
    case 'setCorner':
      return `Change the corner of ${marksOf(project, edit.ids)}`
    case 'measureOpening':
      return `${edit.measured ? 'Measure an opening' : 'Forget what was measured'} of ${marksOf(project, [edit.id])}`
    case 'editBetween':
      return `Change ${betweenWords(edit.change)}`
    case 'editWall':
      return `Change ${project.walls[edit.id]?.name ?? 'wall'}`
    case 'addWall':
      return `Add ${edit.wall.name}`
    case 'removeWall':
      return `Delete ${project.walls[edit.id]?.name ?? 'wall'} with all on it`
    case 'putOpening':
      return `${project.walls[edit.wall]?.openings[edit.opening.id] ? 'Change' : 'Add'} ${edit.opening.kind}`
    case 'removeOpening':
      return `Delete ${project.walls[edit.wall]?.openings[edit.id]?.kind ?? 'opening'}`
    case 'editMethod':
      return `Change ${project.methods[edit.id]?.name ?? 'build method'}`
    case 'copyMethod':
      return `Copy ${find(project.methods, edit.id)?.name ?? 'build method'}`
    case 'removeMethod':
      return `Remove ${find(project.methods, edit.id)?.name ?? 'build method'}`
    case 'useMethod':
      return `Build by ${find(project.methods, edit.id)?.name ?? 'another method'}`
    case 'putMethod':
      return `${find(project.methods, edit.method.id) ? 'Change' : 'Bring in'} ${edit.method.name}`
    case 'editMaterial':
      return `Change ${'thickness' in edit.change ? 'thickness of ' : ''}${project.materials[edit.id]?.name ?? 'material'}`
    case 'addMaterial':
      return `Add ${edit.material.name}`
    case 'removeMaterial':
      return `Delete ${find(project.materials, edit.id)?.name ?? 'board'}`
    case 'putStock':
      return stockLabel(find(project.stock, edit.stock.id), edit.stock)
    case 'removeStock':
      return 'Remove sheets'
    case 'keepSheet':
      return edit.sheet.copies > 1 ? 'Keep sheets' : 'Keep a sheet'
    case 'releaseSheet':
      return 'Let a kept sheet go'
    case 'editShop':
      return 'Change shop'
    case 'editHouse':
      return 'Change house'
    case 'editNewCabinet':
      return `Change new ${edit.cabinet}`
    case 'setDisplay':
      return `Show ${edit.display.unit === 'mm' ? 'millimetres' : 'inches'}`
    case 'rename':
      return 'Rename project'
    case 'several':
      return severalLabel(project, edit.edits)
    default:
      return unreachable(edit)
  }
}

/** Named by the first of them; what is done to the tops over several bases, by all of these. */
/** The cabinets that get a front; what goes out behind it is told with it. */
function frontedBy(edits: readonly Edit[]): readonly CabinetId[] {
  return edits.flatMap((one) =>
    one.kind === 'setFront' ? one.ids : one.kind === 'several' ? frontedBy(one.edits) : [],
  )
}

function severalLabel(project: Project, edits: readonly Edit[]): string {
  const over = edits.flatMap((one) => (one.kind === 'setTop' ? one.ids : []))
  if (over.length === edits.length && over.length > 0) return `Change the countertop over ${marksOf(project, over)}`
  const fronted = frontedBy(edits)
  if (fronted.length > 0) return `Change front of ${marksOf(project, fronted)}`
  return edits[0] ? labelOf(project, edits[0]) : 'Nothing'
}

function stockLabel(before: Stock | undefined, { isOffcut, isExcluded }: Stock): string {
  const what = isOffcut ? 'offcuts' : 'sheets'
  if (!before) return `Add ${what}`
  if (before.isExcluded === isExcluded) return `Change ${what}`
  return isExcluded ? `Set ${what} aside` : `Take ${what} back into use`
}

const GRAIN_VERBS = {
  none: 'Cut apart the fronts of',
  running: 'Let the grain run on over the fronts of',
  across: 'Let the grain run across',
} as const

function besideVerb(beside: Beside): string {
  return beside.kind === 'none' ? 'Nothing' : `Put a ${beside.kind}`
}

/** The one that was taken hold of comes first; the ones it pushes are not in its name. */
function shapedIds(shapes: readonly CabinetShape[]): CabinetId[] {
  const first = shapes[0]
  if (!first) return []
  const isMove = first.width === undefined && first.height === undefined && first.depth === undefined
  return isMove ? shapes.map(({ id }) => id) : [first.id]
}

function shapeVerb(project: Project, shape: CabinetShape | undefined): string {
  const before = shape && project.cabinets[shape.id]
  if (!before) return 'Move'
  const grows = (field: 'width' | 'height' | 'depth') => (shape[field] ?? before[field]) - before[field]
  if (grows('width') !== 0) return grows('width') > 0 ? 'Widen' : 'Narrow'
  if (grows('height') !== 0) return grows('height') > 0 ? 'Heighten' : 'Lower'
  if (grows('depth') !== 0) return grows('depth') > 0 ? 'Deepen' : 'Make shallower'
  if (shape.bottom !== undefined && shape.bottom !== before.bottom)
    return shape.bottom > before.bottom ? 'Raise' : 'Lower'
  return 'Move'
}

function marksOf(project: Project, ids: readonly CabinetId[]): string {
  const marks = ids.flatMap((id) => {
    const cabinet = find(project.cabinets, id)
    return cabinet ? [markOf(cabinet)] : []
  })
  if (marks.length > 4) return `${marks.length} cabinets`
  if (marks.length === 0) return 'nothing'
  return listed(marks)
}

const BETWEEN_WORDS: Readonly<Record<keyof Between, string>> = {
  kick: 'kick boards',
  countertop: 'countertop',
  lightRail: 'light rail',
  crown: 'crown',
  valance: 'valance',
  pins: 'the sheets of boards',
  sheets: 'the sheets of boards',
}

function betweenWords(change: Partial<Between>): string {
  const rooms = Object.keys(change) as (keyof Between)[]
  return rooms.map((room) => BETWEEN_WORDS[room]).join(' and ')
}
