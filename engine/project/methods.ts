import { type ById, freeId, type MethodId, valuesOf } from '../basics/id'
import type { Cabinet, Project } from './document'
import type { BuildMethod } from './method'
import { LONGEST_NAME, shortName } from './name'
import { find } from './references'

/** The id that the next method of a project gets. */
export function freeMethodId(methods: Project['methods']): MethodId {
  return freeId<MethodId>('m', methods)
}

/** The cabinets that name a method as theirs. Those that are built as the project is name none. */
export function namersOf(project: Project, id: MethodId): Cabinet[] {
  return valuesOf<Cabinet>(project.cabinets).filter(({ method }) => method === id)
}

/** Whether nothing would be left without a method if this one went. */
export function isMethodFree(project: Project, id: MethodId): boolean {
  return project.method !== id && namersOf(project, id).length === 0
}

/** A method under a free id and a name of its own: `Shop standard, copy`. */
export function methodCopy(methods: Project['methods'], id: MethodId): BuildMethod | undefined {
  const method = find(methods, id)
  return method && { ...method, id: freeMethodId(methods), name: ownName(method.name, methods) }
}

/**
 * A name that no method has: the name itself, or with `, copy` behind it, or `, copy 2`. A copy of a copy is the next
 * copy of the first. Where a name is too long, its end makes room.
 */
export function ownName(name: string, methods: ById<MethodId, BuildMethod>): string {
  const taken = new Set(valuesOf<BuildMethod>(methods).map((method) => method.name))
  if (!taken.has(name)) return name
  const first = name.replace(/, copy( \d+)?$/, '')
  for (let number = 1; ; number++) {
    const end = number === 1 ? ', copy' : `, copy ${number}`
    const copy = shortName(first.slice(0, LONGEST_NAME - end.length) + end)
    if (!taken.has(copy)) return copy
  }
}
