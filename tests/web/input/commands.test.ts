import { describe, expect, it } from 'vitest'
import type { WallId } from '../../../engine/basics/id'
import { applyEdit, freshWall, placesFor } from '../../../engine/index'
import {
  addedFirst,
  duplicated,
  movedToWall,
  nudged,
  nudgeOf,
  placesToMove,
  removed,
} from '../../../web/input/commands'
import { pageCommand, wallCommand } from '../../../web/input/keys'
import { fitView, onWall, zoomAt } from '../../../web/input/view'
import { aWall, base, idOf, upper } from './wall'

const NO_KEYS = { hasShift: false, hasCtrl: false, hasAlt: false }

describe('a nudge', () => {
  it('is 1 mm, or 1/16 in where inches are shown, and ten times that with Shift', () => {
    const wall = aWall()
    expect(nudgeOf(wall, false)).toBe(1)
    expect(nudgeOf(wall, true)).toBe(10)
    const inInches = applyEdit(wall, { kind: 'setDisplay', display: { unit: 'in', step: 32 } })
    expect(nudgeOf(inInches, false)).toBe(25.4 / 16)
  })

  it('that does not fit says why', () => {
    const wall = aWall(base('B1'), base('B2', { left: 600 }))
    expect(nudged(wall, [idOf('B1')], 1, 0).words).toEqual({ fits: false, text: 'B1 would overlap B2 by 1 mm' })
  })

  it('does not lift what stands on the floor', () => {
    const words = { fits: false, text: 'B1 stands on the floor and moves along the wall only' }
    expect(nudged(aWall(base('B1')), [idOf('B1')], 0, 1).words).toEqual(words)
    expect(nudged(aWall(upper('U1')), [idOf('U1')], 0, 1).words?.fits).toBe(true)
  })
})

describe('a copy', () => {
  it('goes to the right of what it copies, with a mark of its own', () => {
    const wall = aWall(base('B1', { width: 450, depth: 500 }))
    const deed = duplicated(wall, [idOf('B1')])
    expect(deed).toMatchObject({ kind: 'make', label: 'Duplicate B1', said: 'Copied B1 to B2' })
    const [id] = deed.kind === 'make' ? deed.select : []
    const after = applyEdit(wall, deed.kind === 'make' ? deed.edit : { kind: 'several', edits: [] })
    expect(after.cabinets[id!]).toMatchObject({ left: 450, width: 450, depth: 500, number: 2 })
  })

  it('is refused where there is no place for it', () => {
    const wall = aWall(base('B1', { width: 2000 }))
    expect(duplicated(wall, [idOf('B1')])).toEqual({
      kind: 'refuse',
      why: 'There is no free place 2000 mm wide for a copy of B1',
    })
  })
})

describe('other commands', () => {
  it('put a new cabinet in the first free place', () => {
    expect(addedFirst(aWall(base('B1')), 'base', null)).toMatchObject({ kind: 'make', label: 'Add B2' })
    expect(addedFirst(aWall(base('B1', { width: 3600 })), 'base', null)).toEqual({
      kind: 'refuse',
      why: 'There is no free place on the wall for another base',
    })
  })

  it('put a space for an appliance there, with a mark of its own, and copy it as one', () => {
    const two = aWall(base('B1'), base('B2', { left: 600 }))
    const added = addedFirst(two, 'dishwasherSpace', null)
    if (added.kind !== 'make') throw new Error(added.why)
    expect(added.label).toBe('Add S1')
    const wall = applyEdit(two, added.edit)
    expect(duplicated(wall, added.select)).toMatchObject({ label: 'Duplicate S1', said: 'Copied S1 to S2' })
    expect(addedFirst(aWall(base('B1', { width: 3600 })), 'rangeSpace', null)).toEqual({
      kind: 'refuse',
      why: 'There is no free place on the wall for another space for a range',
    })
  })

  it('delete several as one step', () => {
    const wall = aWall(base('B1'), base('B2', { left: 600 }))
    expect(removed(wall, [idOf('B1'), idOf('B2')])).toMatchObject({ label: 'Delete B1 and B2', select: [] })
  })

  it('offer the places that a cabinet could be moved to, and not the one it has', () => {
    const wall = aWall(base('B1'), base('B2', { left: 1500 }))
    const lefts = placesToMove(wall, idOf('B1')).map(({ left }) => left)
    // Free are 0 to 1500 and 2100 to 3600, with both ends of each as places: 0 is its own.
    expect(lefts).toEqual([1500 - 600, 2100, 3600 - 600])
  })
})

describe('keys', () => {
  it('undo and redo anywhere', () => {
    expect(pageCommand({ key: 'z', ...NO_KEYS, hasCtrl: true })).toEqual({ kind: 'undo' })
    expect(pageCommand({ key: 'Z', ...NO_KEYS, hasCtrl: true, hasShift: true })).toEqual({ kind: 'redo' })
    expect(pageCommand({ key: 'z', ...NO_KEYS })).toBeNull()
  })

  it('nudge with arrows, ten times as far with Shift', () => {
    expect(wallCommand({ key: 'ArrowLeft', ...NO_KEYS }, aWall())).toEqual({ kind: 'nudge', dx: -1, dy: 0 })
    expect(wallCommand({ key: 'ArrowUp', ...NO_KEYS, hasShift: true }, aWall())).toEqual({
      kind: 'nudge',
      dx: 0,
      dy: 10,
    })
  })

  it('add with B, U and T', () => {
    expect(['b', 'u', 't'].map((key) => wallCommand({ key, ...NO_KEYS }, aWall()))).toEqual([
      { kind: 'add', cabinet: 'base' },
      { kind: 'add', cabinet: 'upper' },
      { kind: 'add', cabinet: 'tall' },
    ])
  })
})

describe('the view', () => {
  const view = fitView(
    { left: 0, bottom: 0, width: 3600, height: 2400 },
    { width: 900, height: 800 },
    {
      left: 100,
      right: 80,
      top: 60,
      bottom: 80,
    },
  )

  it('fits the wall between its margins', () => {
    expect(view.zoom).toBe((900 - 100 - 80) / 3600)
    expect(onWall(view, 100, 0).x).toBeCloseTo(0, 9)
    expect(onWall(view, 900 - 80, 0).x).toBeCloseTo(3600, 9)
  })

  it('keeps what is under the pointer there while zooming', () => {
    const before = onWall(view, 333, 222)
    const after = onWall(zoomAt(view, 333, 222, 1.7), 333, 222)
    expect(after.x).toBeCloseTo(before.x, 9)
    expect(after.y).toBeCloseTo(before.y, 9)
  })
})

describe('with two walls', () => {
  const first = aWall(base('B1', { width: 3000 }))
  const fresh = freshWall(first)
  const two = applyEdit(first, { kind: 'addWall', wall: fresh })

  it('the second is as long and as high as the first, with nothing in it', () => {
    const [one] = Object.values(first.walls)
    expect(two.walls[fresh.id]).toEqual({
      ...one,
      id: 'w2',
      name: 'Wall 2',
      order: one!.order + 1,
      meets: false,
      openings: {},
    })
  })
  it('a new cabinet goes on the wall in sight', () => {
    const added = addedFirst(two, 'base', fresh.id)
    expect(added).toMatchObject({ edit: { kind: 'addCabinet', cabinet: { wall: 'w2', left: 0 } } })
    expect(placesFor(two, 'base', 600, fresh.id).map(({ left }) => left)).toEqual([0, 3600 - 600])
  })
  it('a copy stays on the wall of its original, and a cabinet can be moved to the other', () => {
    const moved = movedToWall(two, two.cabinets[idOf('B1')]!, fresh.id)
    if (moved.kind !== 'make') throw new Error(moved.why)
    expect(moved.label).toBe('Move B1 to Wall 2')
    const after = applyEdit(two, moved.edit)
    expect(after.cabinets[idOf('B1')]).toMatchObject({ wall: 'w2', left: 0 })
    const copy = duplicated(after, [idOf('B1')])
    expect(copy).toEqual({ kind: 'refuse', why: 'There is no free place 3000 mm wide for a copy of B1' })
    expect(movedToWall(after, two.cabinets[idOf('B1')]!, 'w9' as WallId)).toMatchObject({ kind: 'refuse' })
  })
  it('a wall goes with all on it, in one step, and the last wall stays', () => {
    const full = applyEdit(two, { kind: 'shapeCabinets', shapes: [{ id: idOf('B1'), wall: fresh.id, left: 0 }] })
    const gone = applyEdit(full, { kind: 'removeWall', id: fresh.id })
    expect([Object.keys(gone.walls), Object.keys(gone.cabinets)]).toEqual([['w1'], []])
    expect(applyEdit(gone, { kind: 'removeWall', id: 'w1' as WallId })).toBe(gone)
    expect(applyEdit(two, { kind: 'shapeCabinets', shapes: [{ id: idOf('B1'), wall: 'w9' as WallId }] })).toBe(two)
  })
})
