import type { Finding } from '../../../engine/checks/finding'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { House, Project } from '../../../engine/project/document'
import type { BuildMethod } from '../../../engine/project/method'

/** The only finding whose words match, or nothing. */
export function findingIn(project: Project, words: RegExp): Finding | null {
  const found = derive(project).problems.filter(({ message }) => words.test(message))
  if (found.length > 1) throw new Error(found.map(({ message }) => message).join('\n'))
  return found[0] ?? null
}

export function inHouse(project: Project, change: Partial<House>): Project {
  return applyEdit(project, { kind: 'editHouse', change })
}

/** All cabinets built differently in some choice. */
export function built(project: Project, change: Partial<BuildMethod>): Project {
  return applyEdit(project, { kind: 'editMethod', id: project.method, change })
}

/** The project with a finding's way out taken, as one edit. */
export function remedied(project: Project, { remedy, message }: Finding): Project {
  if (!remedy) throw new Error(`no remedy for: ${message}`)
  return applyEdit(project, remedy.edit)
}

/** The figure at the beginning of a measure: `9.4 mm`. */
export function figureOf(words: string | undefined): number {
  return Number.parseFloat(words ?? '')
}
