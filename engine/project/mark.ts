import { valuesOf } from '../basics/id'
import type { Cabinet, CabinetKind, Project } from './document'

const LETTER: Readonly<Record<CabinetKind, string>> = { base: 'B', upper: 'U', tall: 'T' }

/** Of a space for an appliance, whether it is low or tall. */
const SPACE_LETTER = 'S'

type Named = Pick<Cabinet, 'kind' | 'space'>

/** What its mark begins with: cabinets of one letter are numbered together. */
export function letterOf({ kind, space }: Named): string {
  return space ? SPACE_LETTER : LETTER[kind]
}

/** `B3`: the short name of a cabinet, or `S1` of a space for an appliance, kept when it is moved. */
export function markOf(cabinet: Named & Pick<Cabinet, 'number'>): string {
  return `${letterOf(cabinet)}${cabinet.number}`
}

/** The least number that no cabinet of its letter has. */
export function freeNumber(project: Project, one: Named): number {
  const taken = new Set(
    valuesOf<Cabinet>(project.cabinets)
      .filter((cabinet) => letterOf(cabinet) === letterOf(one))
      .map(({ number }) => number),
  )
  let number = 1
  while (taken.has(number)) number++
  return number
}

/** Three or more marks in a row as one stretch, in the order of the marks: `B1 to B5` and `U2`. */
export function stretchesOf(marks: readonly string[]): string[] {
  const stretches: string[][] = []
  for (const mark of marks) {
    const open = stretches.at(-1)
    if (open && follows(open.at(-1)!, mark)) open.push(mark)
    else stretches.push([mark])
  }
  return stretches.flatMap((stretch) => (stretch.length > 2 ? [`${stretch[0]} to ${stretch.at(-1)}`] : stretch))
}

function follows(a: string, b: string): boolean {
  const [, kind, number] = /^(\D*)(\d+)$/.exec(a) ?? []
  return kind !== undefined && b === `${kind}${Number(number) + 1}`
}
