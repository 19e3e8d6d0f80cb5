import { freeId, type MaterialId, valuesOf } from '../basics/id'
import { formatWithUnit } from '../units/format'
import type { Mm } from '../units/length'
import type { Material, Project } from './document'
import type { Edit } from './edit'
import type { MethodChoices } from './method'
import type { MethodFile } from './methodFile'
import { freeMethodId, ownName } from './methods'
import { materialsIn } from './references'

/** What bringing a method into a project does, and what has to be said of its boards. */
export interface BroughtIn {
  readonly edit: Extract<Edit, { readonly kind: 'putMethod' }>
  /** A sentence for every board that is not simply the one of its name and thickness. */
  readonly told: readonly string[]
}

/** What is called 18 mm measures between 17.3 and 18.3: boards nearer than this can stand for each other. */
const NEAR: Mm = 1

/**
 * A method from a file, for this project: under a free id, and built of the boards that are here. A board is the one of
 * its name, or else the one that measures nearest; one that nothing here comes near to is brought along, so that nothing
 * of the method is lost.
 */
export function broughtIn(project: Project, { method, materials }: MethodFile): BroughtIn {
  const here = new Map<MaterialId, Material>()
  const fresh: Material[] = []
  const told: string[] = []
  for (const [use, id] of materialsIn(method)) {
    if (here.has(id)) continue
    const there = materials[id]!
    const match = boardFor(project, there, use)
    const board = match ?? { ...there, id: freeBoardId(project, fresh) }
    if (!match) fresh.push(board)
    here.set(id, board)
    told.push(...wordsFor(project, there, match))
  }
  const boards = materialsIn(method).map(([use, id]) => [use, here.get(id)!.id])
  const own = { id: freeMethodId(project.methods), name: ownName(method.name, project.methods) }
  return {
    edit: { kind: 'putMethod', method: { ...method, ...Object.fromEntries(boards), ...own }, materials: fresh },
    told,
  }
}

/** Of equally near boards, the one that this project uses for the same. */
function boardFor(project: Project, { name, thickness }: Material, use: keyof MethodChoices): Material | undefined {
  const usual = project.methods[project.method]![use]
  const away = (board: Material) => Math.abs(board.thickness - thickness)
  const byNearness = valuesOf<Material>(project.materials).sort(
    (a, b) => away(a) - away(b) || Number(b.id === usual) - Number(a.id === usual) || (a.id < b.id ? -1 : 1),
  )
  const nearest = byNearness[0]
  return (
    byNearness.find((board) => isSameName(board.name, name)) ?? (nearest && away(nearest) <= NEAR ? nearest : undefined)
  )
}

function isSameName(a: string, b: string): boolean {
  return a.trim().toLowerCase() === b.trim().toLowerCase()
}

function freeBoardId({ materials }: Project, fresh: readonly Material[]): MaterialId {
  const taken = [...valuesOf<Material>(materials), ...fresh].map((board) => [board.id, board])
  return freeId<MaterialId>('board', Object.fromEntries(taken))
}

/** A difference that is too small to be shown is none. */
function wordsFor({ display }: Project, there: Material, here: Material | undefined): string[] {
  const was = formatWithUnit(there.thickness, display)
  if (!here) return [`${there.name} (${was}) is new here and has no sheets yet.`]
  const is = formatWithUnit(here.thickness, display)
  if (isSameName(there.name, here.name)) return is === was ? [] : [`${here.name} measures ${is} here, not ${was}.`]
  return [
    is === was
      ? `${there.name} is ${here.name} here: it measures ${is} too.`
      : `${there.name} (${was}) is ${here.name} here (${is}), by its thickness.`,
  ]
}
