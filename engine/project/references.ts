import { type ById, entriesOf, type MaterialId } from '../basics/id'
import type { Between, Cabinet, Project } from './document'
import { markOf } from './mark'
import type { MethodChoices } from './method'

/** Whether something is filed under an id. Names that every object has, such as `constructor`, are not. */
export function isThere(things: object, id: PropertyKey): boolean {
  return Object.hasOwn(things, id)
}

/** What is filed under an id, if anything is. */
export function find<Thing>(things: ById<string, Thing>, id: string): Thing | undefined {
  return isThere(things, id) ? things[id] : undefined
}

/** Whether every material that some rules name is there. */
export function hasEverything(rules: object, materials: Project['materials']): boolean {
  return missingMaterial(rules, materials) === null
}

/** What refers to something that is not in the document, or is filed under another name than its own. */
export function danglingIn(project: Project): string | null {
  if (Object.keys(project.walls).length === 0) return 'walls is empty; a project has one wall at least.'
  return (
    misfiled(project) ??
    lostFrom(project) ??
    misplacedSpace(project) ??
    numberedTwice(project) ??
    sequencedTwice(project)
  )
}

function misfiled(project: Project): string | null {
  const { walls, cabinets, methods, materials, stock, kept, sequences = {} } = project
  const rooms: [string, Record<string, { readonly id: string }>][] = [
    ...Object.entries({ walls, cabinets, methods, materials, stock, kept, sequences }),
    ...entriesOf(walls).map(([id, wall]): [string, Project['walls'][keyof Project['walls']]['openings']] => {
      return [`walls.${id}.openings`, wall.openings]
    }),
  ]
  for (const [room, things] of rooms) {
    const wrong = Object.entries(things).find(([key, { id }]) => id !== key)
    if (wrong) return `${room}.${wrong[0]}.id is ${wrong[1].id}; it must be ${wrong[0]}.`
  }
  return null
}

/** The first thing that is named and not there, with the path to its name. */
export function lostFrom({
  walls,
  cabinets,
  methods,
  materials,
  stock,
  kept,
  method,
  between,
}: Project): string | null {
  if (!isThere(methods, method)) return `method is ${method}, which is not among methods.`
  for (const [id, cabinet] of entriesOf(cabinets)) {
    const path = `cabinets.${id}`
    if (!isThere(walls, cabinet.wall)) return `${path}.wall is ${cabinet.wall}, which is not among walls.`
    if (cabinet.method !== null && !isThere(methods, cabinet.method)) {
      return `${path}.method is ${cabinet.method}, which is not among methods.`
    }
    const missing = missingMaterial(cabinet.overrides, materials)
    if (missing) return `${path}.overrides.${missing}`
    const pin = lostPin(cabinet.pins, stock)
    if (pin) return `${path}.pins.${pin} is ${cabinet.pins[pin]}, which is not among stock.`
    const end = lostBeside(cabinet, materials)
    if (end) return `${path}.beside.${end}`
    const over = lostTop(cabinet, materials)
    if (over) return `${path}.top.${over}`
  }
  const over = lostBetween(between, materials)
  if (over) return `between.${over}`
  const pin = lostPin(between.pins, stock)
  if (pin) return `between.pins.${pin} is ${between.pins[pin]}, which is not among stock.`
  for (const [id, rules] of entriesOf(methods)) {
    const missing = missingMaterial(rules, materials)
    if (missing) return `methods.${id}.${missing}`
  }
  for (const [id, { material }] of entriesOf(stock)) {
    if (!isThere(materials, material)) return `stock.${id}.material is ${material}, which is not among materials.`
  }
  for (const [id, sheet] of entriesOf(kept)) {
    if (!isThere(stock, sheet.stock)) return `kept.${id}.stock is ${sheet.stock}, which is not among stock.`
  }
  return null
}

/** The first countertop or trim of a board that is not there. */
export function lostBetween(between: Partial<Between>, materials: Project['materials']): string | null {
  for (const room of ['countertop', 'lightRail', 'crown', 'valance'] as const) {
    const board = between[room]?.material
    if (board !== undefined && !isThere(materials, board))
      return `${room}.material is ${board}, which is not among materials.`
  }
  return null
}

/** The first board that is wished from sheets that are not there. */
export function lostPin(pins: Cabinet['pins'], stock: Project['stock']): string | undefined {
  return Object.keys(pins).find((place) => !isThere(stock, pins[place]!))
}

/** The first finished end of a board that is not there. */
export function lostBeside({ beside }: Cabinet, materials: Project['materials']): string | null {
  for (const side of ['left', 'right'] as const) {
    const one = beside[side]
    if ('material' in one && !isThere(materials, one.material)) {
      return `${side}.material is ${one.material}, which is not among materials.`
    }
  }
  return null
}

/** The board of the countertop over a base alone, where it is not there. */
export function lostTop({ top }: Pick<Cabinet, 'top'>, materials: Project['materials']): string | null {
  const board = top?.own?.material
  if (board === undefined || isThere(materials, board)) return null
  return `own.material is ${board}, which is not among materials.`
}

/** A board lies in one sequence, once. */
function sequencedTwice({ sequences = {} }: Project): string | null {
  const boards = new Set<string>()
  for (const [id, { boards: own }] of entriesOf(sequences)) {
    for (const board of own) {
      if (boards.has(board)) return `sequences.${id}.boards names ${board}, which is in a sequence already.`
      boards.add(board)
    }
  }
  return null
}

/** Two cabinets of one mark would be two boxes on one label. */
function numberedTwice({ cabinets }: Project): string | null {
  const marks = new Set<string>()
  for (const [id, cabinet] of entriesOf(cabinets)) {
    const { kind, number, space } = cabinet
    const what = space ? 'space for an appliance' : `${kind} cabinet`
    if (marks.has(markOf(cabinet))) return `cabinets.${id}.number is ${number}, which another ${what} has.`
    marks.add(markOf(cabinet))
  }
  return null
}

/** The first space for an appliance that stands nowhere: it is a base or a tall, along its own wall alone. */
function misplacedSpace({ cabinets }: Project): string | null {
  for (const [id, cabinet] of entriesOf(cabinets)) {
    if (canHoldSpace(cabinet)) continue
    const { kind, corner } = cabinet
    if (kind === 'upper') return `cabinets.${id}.space is of an upper; an appliance has its space on the floor.`
    if (corner) return `cabinets.${id}.space is of a corner cabinet; an appliance has its space along one wall.`
  }
  return null
}

/** Whether a cabinet has no space for an appliance, or one that can be. */
export function canHoldSpace({ kind, corner, space }: Pick<Cabinet, 'kind' | 'corner' | 'space'>): boolean {
  return space === undefined || (kind !== 'upper' && corner === null)
}

/** The first material that some rules name and that is not there. */
export function missingMaterial(rules: object, materials: Project['materials']): string | null {
  const lost = materialsIn(rules).find(([, material]) => !isThere(materials, material))
  return lost ? `${lost[0]} is ${lost[1]}, which is not among materials.` : null
}

/** The materials that some rules name, each with what it is for. */
export function materialsIn(rules: object): [keyof MethodChoices, MaterialId][] {
  const named = Object.entries(rules).filter(([field, value]) => field.endsWith('Material') && value !== undefined)
  return named as [keyof MethodChoices, MaterialId][]
}
