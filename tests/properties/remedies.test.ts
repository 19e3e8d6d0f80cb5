import { describe, expect, it } from 'vitest'
import type { MethodId } from '../../engine/basics/id'
import type { Problem } from '../../engine/basics/problem'
import { derive } from '../../engine/pipeline'
import { applyEdit } from '../../engine/project/apply'
import { newProject } from '../../engine/project/defaults'
import type { Project } from '../../engine/project/document'
import { type NewKind, READY } from '../../engine/project/readyKinds'
import { newCabinetAt } from '../../engine/runs/place'
import { demonstrationKitchen } from '../../engine/samples/kitchen'
import { firstWall } from '../../engine/site/wall'
import { findingIn } from '../engine/checks/findings'
import { aWall, cabinet } from '../helpers/wall'

const GRAVITY = { know: 0, mind: 1, stop: 2 } as const

/** The words of a finding, whatever its figures are. */
function wordsOf({ message }: Problem): string {
  return message.replace(/[\d./ ]+/g, ' ')
}

/** What is said of a cabinet after a way out was taken that was not said so gravely before, and weighs as much as what it cures. */
function brought(project: Project): string[] {
  const before = derive(project).problems
  return before.flatMap((finding) => {
    const { remedy, about, weight } = finding
    if (!remedy || about.kind !== 'cabinet') return []
    const known = (one: Problem) =>
      before.some((other) => wordsOf(other) === wordsOf(one) && GRAVITY[other.weight] >= GRAVITY[one.weight])
    return derive(applyEdit(project, remedy.edit))
      .problems.filter((one) => one.about.kind === 'cabinet' && one.about.cabinet === about.cabinet)
      .filter((one) => GRAVITY[one.weight] >= GRAVITY[weight] && !known(one))
      .map(({ message }) => `${remedy.label}, and then: ${message}`)
  })
}

function offered(project: Project): number {
  return derive(project).problems.filter(({ remedy }) => remedy).length
}

/** One cabinet at an end of the wall of a new project, for books. */
function atEnd(what: NewKind, method: MethodId, wider: number, end: 'left' | 'right'): Project {
  const plain = newProject('mm')
  const project = { ...plain, method, house: { ...plain.house, shelfLoad: 'books' as const } }
  const made = newCabinetAt(project, what, 0)!
  const width = made.corner ? made.width : made.width * wider
  const left = end === 'left' ? 0 : firstWall(project)!.length - width
  return { ...project, cabinets: { [made.id]: { ...made, width, left } } as Project['cabinets'] }
}

describe('a way out', () => {
  const kinds: readonly NewKind[] = ['base', 'upper', 'tall', ...READY.map(([name]) => name)]
  const methods = Object.keys(newProject('mm').methods) as MethodId[]

  it.each(methods)(
    'brings nothing about its cabinet that weighs as much, of every kind at both ends by method %s',
    (method) => {
      const all = kinds.flatMap((what) =>
        [1, 1.6].flatMap((wider) => (['left', 'right'] as const).map((end) => atEnd(what, method, wider, end))),
      )
      expect(all.reduce((sum, project) => sum + offered(project), 0)).toBeGreaterThan(20)
      expect(all.flatMap(brought)).toEqual([])
    },
  )

  it('brings nothing of the kind in the demonstration kitchen', () => {
    expect(brought(demonstrationKitchen())).toEqual([])
  })

  it('is not offered where it would bring as much: a pair where one of its doors would open against the wall', () => {
    const door = { kind: 'door', hinge: 'right' } as const
    const wide = (left: number) => aWall(cabinet('U1', { left, width: 720, height: 720, front: door }))
    const hinges = /from the top one to the bottom one/
    expect(findingIn(wide(1000), hinges)?.remedy?.label).toBe('Hang a pair on U1')
    expect(findingIn(wide(0), hinges)?.remedy).toBeUndefined()
  })
})
