import { valuesOf } from '../basics/id'
import type { Cabinet, CabinetKind, Project } from './document'

const LETTER: Readonly<Record<CabinetKind, string>> = { base: 'B', upper: 'U', tall: 'T' }

/** `B3`: the short name of a cabinet, kept when it is moved. */
export function markOf({ kind, number }: Pick<Cabinet, 'kind' | 'number'>): string {
  return `${LETTER[kind]}${number}`
}

/** The least number that no cabinet of the kind has. */
export function freeNumber(project: Project, kind: CabinetKind): number {
  const taken = new Set(
    valuesOf<Cabinet>(project.cabinets)
      .filter((cabinet) => cabinet.kind === kind)
      .map(({ number }) => number),
  )
  let number = 1
  while (taken.has(number)) number++
  return number
}
