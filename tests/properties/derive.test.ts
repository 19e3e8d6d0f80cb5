import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { CabinetId } from '../../engine/basics/id'
import { randomFrom } from '../../engine/basics/random'
import { type Derived, derive } from '../../engine/pipeline'
import { begin, type History, make, undo, undoLabel } from '../../engine/project/history'
import { readProject, writeProject } from '../../engine/project/schema'
import { demonstrationKitchen } from '../../engine/samples/kitchen'
import { fortyCabinets } from '../../engine/samples/workshop'
import { randomEdit } from '../helpers/random-edits'
import { aWall, cabinet, withWall } from '../helpers/wall'

const EDITS = 200
const WALKS = { numRuns: 6, seed: 1868 }

/** A walk of random edits through the history; what follows is worked out at every step, as the page does. */
function walkFrom(history: History, seed: number): { readonly history: History; readonly carried: Derived } {
  const random = randomFrom(seed)
  let now = history
  let carried = derive(now.present)
  for (let step = 0; step < EDITS; step++) {
    now = make(now, randomEdit(now.present, random))
    carried = derive(now.present)
  }
  return { history: now, carried }
}

describe('what follows from a project', () => {
  it('is, after 200 edits, what follows from the same project from nothing', () => {
    fc.assert(
      fc.property(fc.integer(), (seed) => {
        const { history, carried } = walkFrom(begin(demonstrationKitchen()), seed)
        const fromNothing = derive(structuredClone(history.present))
        expect(fromNothing.cabinets.some((one) => carried.cabinets.includes(one))).toBe(false)
        expect(carried).toEqual(fromNothing)
      }),
      WALKS,
    )
  })

  it('is worked out anew for the one cabinet of sixty that was moved, and kept for the others', () => {
    const marks = Array.from({ length: 60 }, (_, at) => `B${at + 1}`)
    const boxes = marks.map((mark, at) => cabinet(mark, { left: 700 * at, width: 400 + at }))
    const history = begin(withWall(aWall(...boxes), { length: 60_000 }))
    const before = derive(history.present)
    const moved = make(history, { kind: 'shapeCabinets', shapes: [{ id: 'b37' as CabinetId, left: 25_211 }] })
    const after = derive(moved.present)
    const rebuilt = after.cabinets.filter((one, at) => one !== before.cabinets[at])
    expect(rebuilt.map(({ mark }) => mark)).toEqual(['B37'])
    expect(after.cabinets.filter((one, at) => one === before.cabinets[at])).toHaveLength(59)
    expect(after.sheetJob).toBe(before.sheetJob)
  })

  it('is, after every step is undone, what followed from the very first document', () => {
    fc.assert(
      fc.property(fc.integer(), (seed) => {
        const first = demonstrationKitchen()
        const begun = structuredClone(derive(first))
        let { history } = walkFrom(begin(first), seed)
        expect(history.past.length).toBeGreaterThan(EDITS / 2)
        while (undoLabel(history) !== null) history = undo(history)
        expect(history.present).toBe(first)
        expect(derive(history.present)).toEqual(begun)
      }),
      WALKS,
    )
  })
})

describe('a project that was saved and opened again', () => {
  it.each([
    ['the demonstration', demonstrationKitchen()],
    ['forty cabinets', fortyCabinets()],
  ])('has the same cut list, marks and sheet job: %s', (_, project) => {
    const opened = readProject(writeProject(project))
    if (!opened.ok) throw new Error(opened.message)
    const [before, after] = [derive(project), derive(opened.value)]
    expect(after.cutList).toEqual(before.cutList)
    expect(JSON.stringify(after.sheetJob)).toBe(JSON.stringify(before.sheetJob))
  })
})
