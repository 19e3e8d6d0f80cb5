import { describe, expect, it } from 'vitest'
import { valuesOf } from '../../../engine/basics/id'
import { derive } from '../../../engine/pipeline'
import { newProject } from '../../../engine/project/defaults'
import type { Cabinet, Project } from '../../../engine/project/document'
import { begin, make, undo, undoLabel } from '../../../engine/project/history'
import { newCabinetAt } from '../../../engine/runs/place'
import { findingIn, remedied } from './findings'

const NO_HOLES = /adjustable shelves find pin holes/
const PLAIN = { fixedShelves: 0, partition: null } as const

/** An upper of 18 mm boards whose holes begin 96 from them: so low that few find any. */
function upper(height: number, said: Partial<Cabinet>): Project {
  const plain = newProject('mm')
  const front = { kind: 'open' } as const
  const made: Cabinet = { ...newCabinetAt(plain, 'upper', 0)!, height, front, overrides: { shelves: HOLES }, ...said }
  return { ...plain, cabinets: { [made.id]: made } as Project['cabinets'] }
}

const HOLES = { firstHole: 96, pitch: 32 }

const only = (project: Project) => valuesOf<Cabinet>(project.cabinets)[0]!
const loose = (project: Project) =>
  derive(project).cabinets[0]!.parts.filter(({ role }) => role === 'adjustableShelf').length

describe('loose shelves that find no pin holes', () => {
  it('are made as many as find some, in one step that is undone at once', () => {
    const project = upper(240, { interior: { ...PLAIN, adjustableShelves: 2 } })
    const finding = findingIn(project, NO_HOLES)!
    expect([finding.weight, finding.remedy?.label]).toEqual(['stop', 'Put 1 loose shelf into U1 instead of 2'])
    const after = remedied(project, finding)
    expect(only(after).interior.adjustableShelves).toBe(1)
    expect(loose(after)).toBe(1)
    expect(findingIn(after, NO_HOLES)).toBeNull()

    const done = make(begin(project), finding.remedy!.edit, finding.remedy!.label)
    expect(undoLabel(done)).toBe('Put 1 loose shelf into U1 instead of 2')
    expect(undo(done).present).toBe(project)
  })

  it('get holes that begin nearer to the boards where not one finds any', () => {
    // 220 less two boards of 18 leave 184, less than 96 from either: with 64 there is room for a row.
    const project = upper(220, { interior: { ...PLAIN, adjustableShelves: 1 } })
    const finding = findingIn(project, NO_HOLES)!
    expect(finding.remedy?.label).toBe('Begin the pin holes of U1 64 mm from the boards below and above')
    const after = remedied(project, finding)
    expect(only(after).overrides.shelves).toEqual({ ...HOLES, firstHole: 64 })
    expect(loose(after)).toBe(1)
    expect(findingIn(after, NO_HOLES)).toBeNull()
  })

  it('are fixed where no holes can begin nearer', () => {
    const project = upper(130, {
      interior: { ...PLAIN, adjustableShelves: 1 },
      overrides: { shelves: { firstHole: 60, pitch: 60 } },
    })
    const finding = findingIn(project, NO_HOLES)!
    expect(finding.remedy?.label).toBe('Fix the shelves of U1')
    const after = remedied(project, finding)
    expect([only(after).interior.fixedShelves, only(after).interior.adjustableShelves]).toEqual([1, 0])
    expect(findingIn(after, NO_HOLES)).toBeNull()
  })

  it('are as few as find holes where more are asked for than fit one on another', () => {
    // 240 less two boards leave 204, where 204 / (2 x 18) = 5.7 shelves are the most.
    const project = upper(240, { interior: { ...PLAIN, adjustableShelves: 6 } })
    const finding = findingIn(project, /6 shelves do not fit in 204 mm of height/)!
    expect(finding.remedy?.label).toBe('Put 1 loose shelf into U1 instead of 6')
    expect(loose(remedied(project, finding))).toBe(1)
  })

  it('are made fewer in the bay that has too many, and the other bay keeps its own', () => {
    const share = { kind: 'share', share: 1 } as const
    const bays = [
      { size: share, shelves: { fixedShelves: 0, adjustableShelves: 1 } },
      { size: share, shelves: { fixedShelves: 0, adjustableShelves: 3 } },
    ]
    const project = upper(240, { width: 900, interior: { ...PLAIN, adjustableShelves: 0, bays } })
    const finding = findingIn(project, NO_HOLES)!
    expect(finding.remedy?.label).toBe('Put 1 loose shelf into bay 2 of U1 instead of 3')
    const after = remedied(project, finding)
    expect(only(after).interior.bays!.map(({ shelves }) => shelves?.adjustableShelves)).toEqual([1, 1])
    expect(loose(after)).toBe(2)
  })

  it('are made fewer in the column of the front that has too many', () => {
    const share = { kind: 'share', share: 1 } as const
    const column = (adjustableShelves: number) => ({
      ...{ size: share, front: { kind: 'open' } as const },
      shelves: { fixedShelves: 0, adjustableShelves },
    })
    const front = { kind: 'columns', columns: [column(2), column(1)] } as const
    const project = upper(240, { width: 900, front, interior: { ...PLAIN, adjustableShelves: 0 } })
    const finding = findingIn(project, NO_HOLES)!
    expect(finding.remedy?.label).toBe('Put 1 loose shelf into column 1 of U1 instead of 2')
    expect(loose(remedied(project, finding))).toBe(2)
  })
})
