import { describe, expect, it } from 'vitest'
import { derive } from '../../engine/pipeline'
import { applyEdit } from '../../engine/project/apply'
import type { Front, Interior } from '../../engine/project/document'
import { bankOf } from '../../engine/project/frontTree'
import { frontEdit } from '../../web/stages/frontEdit'
import { frontOf } from '../../web/stages/fronts'
import { aWall, cabinet, the } from '../helpers/wall'

const LOOSE: Interior = { fixedShelves: 0, adjustableShelves: 1, partition: null }
const EMPTY: Interior = { fixedShelves: 0, adjustableShelves: 0, partition: null }

/** A base of 600 with doors and a loose shelf after its front is chosen, and what then keeps it from being built. */
function chosen(front: Front, interior = LOOSE) {
  const project = aWall(cabinet('B1', { left: 600, width: 600, front: { kind: 'pair' }, interior }))
  const after = applyEdit(project, frontEdit(the(project, 'B1'), front))
  const stops = derive(after).problems.filter(({ weight }) => weight === 'stop')
  return { interior: the(after, 'B1').interior, stops: stops.map(({ message }) => message) }
}

describe('a front that fills the whole cabinet', () => {
  it.each([
    ['bank', frontOf('bank')],
    ['one drawer', frontOf('drawer')],
    ['pull-out', frontOf('pullOut')],
  ])('takes the shelves out in the same step: a %s', (_, front) => {
    expect(chosen(front)).toEqual({ interior: EMPTY, stops: [] })
  })
  it('leaves the window for pipes, and takes a partition out too', () => {
    const pipes = { width: 200, height: 200, bottom: 300 }
    expect(chosen(bankOf(3), { ...LOOSE, partition: { at: 0.5 }, pipes }).interior).toEqual({ ...EMPTY, pipes })
    expect(chosen(frontOf('appliance')).interior).toEqual(EMPTY)
  })
  it('does so column by column', () => {
    const own = { fixedShelves: 2, adjustableShelves: 0 }
    const column = (front: Front) => ({ size: { kind: 'share', share: 1 }, front, shelves: own }) as const
    const columns: Front = { kind: 'columns', columns: [column({ kind: 'drawer' }), column({ kind: 'open' })] }
    const project = aWall(cabinet('B1', { left: 600, width: 900 }))
    const after = the(applyEdit(project, frontEdit(the(project, 'B1'), columns)), 'B1').front
    expect(after.kind === 'columns' && after.columns.map(({ shelves }) => shelves)).toEqual([null, own])
  })
})

describe('a front with room behind it', () => {
  it('leaves the shelves where they are', () => {
    expect(chosen(frontOf('overDoor')).interior).toBe(LOOSE)
  })
})
