import { type ById, entriesOf, type MaterialId, type MethodId } from '../basics/id'
import { bad, good, type Result } from '../basics/result'
import type { Material, Project } from './document'
import { withFixings } from './fixingMigration'
import { withNoFrames } from './frames'
import { withMachining } from './machining'
import type { BuildMethod } from './method'
import { fieldsIn, issuesIn, shown } from './reading'
import { find, materialsIn, missingMaterial } from './references'
import { METHOD_KIND, METHOD_VERSION, savedMethod } from './saved'
import { fileText } from './writing'

/** A build method by itself, with every board that it names, so that another shop can tell which of its own is meant. */
export interface MethodFile {
  readonly kind: typeof METHOD_KIND
  readonly version: typeof METHOD_VERSION
  readonly method: BuildMethod
  readonly materials: ById<MaterialId, Material>
}

/** A method has some two thousand characters; much more than that is something else. */
const MOST_CHARACTERS = 200_000

/** A method of the project as the text of a file; nothing when it is not there. */
export function writeMethod({ methods, materials }: Project, id: MethodId): string | null {
  const method = find(methods, id)
  if (!method) return null
  const named = materialsIn(method).map(([, material]) => [material, materials[material]])
  return fileText({ kind: METHOD_KIND, version: METHOD_VERSION, method, materials: Object.fromEntries(named) })
}

/** Reads the file of a build method. A message names what is wrong by its path in the file, its value and the limit. */
export function readMethod(text: string): Result<MethodFile> {
  const saved = fieldsIn(text, 'build method', MOST_CHARACTERS)
  if (!saved.ok) return saved
  const { kind, version } = saved.value
  if (kind === undefined && saved.value.cabinets !== undefined) {
    return bad('The file is a project, not a build method. Open it with Open file.')
  }
  if (kind !== METHOD_KIND) return bad(`The file is not a Casewright build method: kind is ${shown(kind)}.`)
  if (typeof version === 'number' && version > METHOD_VERSION) {
    return bad(
      `The file is of version ${version}; this Casewright reads build methods up to version ${METHOD_VERSION}. Nothing was changed.`,
    )
  }
  const fields = isOlder(version) ? ofThisVersion(saved.value, version) : saved.value
  const outcome = savedMethod.safeParse(fields)
  if (!outcome.success) return bad(issuesIn(outcome.error.issues, fields, 'build method'))
  const file = outcome.data as unknown as MethodFile
  const wrong = danglingIn(file)
  return wrong ? bad(`The file cannot be read as a build method. ${wrong}`) : good(file)
}

/** From version n (at n - 1) to version n + 1: hinges and slides are bored; then there may be face frames and fixings. */
const METHOD_MIGRATIONS = [withMachining, (method: Record<string, unknown>) => withFixings(withNoFrames(method))]

function isOlder(version: unknown): version is number {
  return typeof version === 'number' && Number.isInteger(version) && version >= 1
}

function ofThisVersion(saved: Record<string, unknown>, version: number): Record<string, unknown> {
  const { method } = saved
  const isMethod = typeof method === 'object' && method !== null && !Array.isArray(method)
  const brought = METHOD_MIGRATIONS.slice(version - 1).reduce<unknown>(
    (before, step) => (isMethod ? step(before as Record<string, unknown>) : before),
    method,
  )
  return { ...saved, version: METHOD_VERSION, method: brought }
}

function danglingIn({ method, materials }: MethodFile): string | null {
  const misfiled = entriesOf(materials).find(([key, { id }]) => id !== key)
  if (misfiled) return `materials.${misfiled[0]}.id is ${misfiled[1].id}; it must be ${misfiled[0]}.`
  const missing = missingMaterial(method, materials)
  return missing && `method.${missing}`
}
