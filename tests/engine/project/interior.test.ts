import { describe, expect, it } from 'vitest'
import { applyEdit } from '../../../engine/project/apply'
import type { Interior } from '../../../engine/project/document'
import { baysOf, withBayShelves, withBayWidth, withFixedAt, withPartitions } from '../../../engine/project/interior'
import { readProject, writeProject } from '../../../engine/project/schema'
import { aWall, cabinet, idOf, the } from '../../helpers/wall'

const EMPTY: Interior = { fixedShelves: 1, adjustableShelves: 2, partition: null }
const sizes = (interior: Interior) =>
  baysOf(interior).map(({ size }) => (size.kind === 'fixed' ? `${size.width} mm` : `${size.share} of what is left`))

describe('the bays of an inside', () => {
  it('are none without a partition, and two beside the one of an older project', () => {
    expect(baysOf(EMPTY)).toEqual([])
    expect(sizes({ ...EMPTY, partition: { at: 0.25 } })).toEqual(['0.25 of what is left', '0.75 of what is left'])
  })

  it('are one more than there are partitions, the new one as wide as the others are', () => {
    const two = withPartitions(EMPTY, 2)
    expect(sizes(two)).toEqual(Array.from({ length: 3 }, () => '1 of what is left'))
    expect(sizes(withPartitions({ ...EMPTY, partition: { at: 0.5 } }, 2))).toEqual(
      Array.from({ length: 3 }, () => '0.5 of what is left'),
    )
    expect(withPartitions(two, 0)).toEqual(EMPTY)
  })

  it('keep a width that is typed, and one of them always takes what is left', () => {
    const three = withBayWidth(withBayWidth(withPartitions(EMPTY, 2), 0, 300), 1, 400)
    expect(sizes(three)).toEqual(['300 mm', '400 mm', '1 of what is left'])
    expect(sizes(withPartitions(three, 1))).toEqual(['300 mm', '1 of what is left'])
  })

  it('have their own shelves until they are as the cabinet again', () => {
    const own = { fixedShelves: 0, adjustableShelves: 4 }
    const two = withBayShelves(withPartitions(EMPTY, 1), 1, own)
    expect(baysOf(two).map(({ shelves }) => shelves)).toEqual([null, own])
    expect(withBayShelves(two, 1, null)).toEqual(withPartitions(EMPTY, 1))
  })
})

describe('the height of a fixed shelf', () => {
  it('is kept for the shelf it was typed for, and is nothing when all are even again', () => {
    const three = { ...EMPTY, fixedShelves: 3 }
    const typed = withFixedAt(three, 1, 640)
    expect(typed.fixedAt).toEqual([null, 640, null])
    expect(withFixedAt(typed, 1, null)).toEqual(three)
  })
})

describe('a project with bays', () => {
  const own = { fixedShelves: 1, adjustableShelves: 0, fixedAt: [500.123] }
  const interior = withBayShelves(withBayWidth(withPartitions(EMPTY, 2), 0, 300.4567), 2, own)
  const put = applyEdit(aWall(cabinet('T1')), { kind: 'setInterior', ids: [idOf('T1')], interior })

  it('is the same after it was saved and opened, its lengths on the grid', () => {
    const bays = baysOf(the(put, 'T1').interior)
    expect(bays[0]!.size).toEqual({ kind: 'fixed', width: Math.round(300.4567 * 3200) / 3200 })
    const read = readProject(writeProject(put))
    expect(read.ok && read.value).toEqual(put)
  })

  it('is refused where a bay has more shelves than a file can have', () => {
    const text = writeProject(put).replace(/"fixedShelves":\s*1,/g, '"fixedShelves": 21,')
    const read = readProject(text)
    expect(read.ok).toBe(false)
    expect(!read.ok && read.message).toMatch(/fixedShelves is 21; it must be/)
  })
})
