import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { randomFrom } from '../../../engine/basics/random'
import { begin, make, redo, redoLabel, undo, undoLabel } from '../../../engine/project/history'
import { randomEdit } from '../../helpers/random-edits'
import { aWall, cabinet, the } from '../../helpers/wall'

const b1 = cabinet('B1', { left: 100 })
const first = aWall(b1)
const widened = make(begin(first), { kind: 'shapeCabinets', shapes: [{ id: b1.id, width: 780 }] })

describe('the history of a project', () => {
  it('names the step that would be undone and the one that would be redone', () => {
    expect(undoLabel(begin(first))).toBeNull()
    expect(undoLabel(widened)).toBe('Widen B1')
    expect(redoLabel(widened)).toBeNull()
    expect(redoLabel(undo(widened))).toBe('Widen B1')
  })

  it('keeps the label that a gesture gives its step', () => {
    const pushed = make(begin(first), { kind: 'shapeCabinets', shapes: [{ id: b1.id, left: 200 }] }, 'Push B1')
    expect(undoLabel(pushed)).toBe('Push B1')
  })

  it('goes back to the very object and forth to the very object', () => {
    expect(undo(widened).present).toBe(first)
    expect(redo(undo(widened)).present).toBe(widened.present)
  })

  it('makes no step of an edit that changes nothing', () => {
    expect(make(widened, { kind: 'shapeCabinets', shapes: [{ id: b1.id, width: 780 }] })).toBe(widened)
  })

  it('stays where it is when there is nothing to undo or redo', () => {
    expect(undo(begin(first)).present).toBe(first)
    expect(redo(widened)).toBe(widened)
  })

  it('forgets what was undone once another step is made', () => {
    const other = make(undo(widened), { kind: 'shapeCabinets', shapes: [{ id: b1.id, left: 300 }] })
    expect(redoLabel(other)).toBeNull()
    expect(the(other.present, 'B1')).toMatchObject({ left: 300, width: 600 })
  })

  it('walks back to the first object and forth to the last, whatever was done', () => {
    fc.assert(
      fc.property(fc.integer(), fc.integer({ min: 1, max: 40 }), (seed, steps) => {
        const random = randomFrom(seed)
        let history = begin(first)
        for (let step = 0; step < steps; step++) history = make(history, randomEdit(history.present, random))
        const last = history.present
        while (undoLabel(history) !== null) history = undo(history)
        expect(history.present).toBe(first)
        while (redoLabel(history) !== null) history = redo(history)
        expect(history.present).toBe(last)
      }),
      { seed: 7, numRuns: 60 },
    )
  })
})
