import { describe, expect, it } from 'vitest'
import type { MaterialId } from '../../../engine/basics/id'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { Cabinet, Countertop, Project } from '../../../engine/project/document'
import { ownTopEdit } from '../../../engine/project/topOver'
import { aCorner, aWall, cabinet, idOf, OTHER_WALL, type Said, space, the, withWall } from '../../helpers/wall'
import { findingIn, remedied } from './findings'

const PARTED = /and part the (countertop|seat board):/
const TOP: Countertop = { material: 'carcass' as MaterialId, overhang: 20, ends: 15, splash: 0, banding: 0 }

function topped(...cabinets: readonly Cabinet[]): Project {
  return applyEdit(aWall(...cabinets), { kind: 'editBetween', change: { countertop: TOP } })
}
const tops = (project: Project) =>
  derive(project).runs.flatMap(({ kind, cabinets }) => (kind === 'countertop' ? [cabinets.join(' ')] : []))
const two = (gap: number, first: Said = {}, second: Said = {}) =>
  topped(
    cabinet('B1', { left: 500, width: 600, ...first }),
    cabinet('B2', { left: 500 + 600 + gap, width: 700, ...second }),
  )

describe('a narrow gap between two bases', () => {
  it('is told with what it parts, and the second is moved up to the first in one step', () => {
    const project = two(20)
    expect(tops(project)).toEqual(['b1', 'b2'])
    expect(findingIn(project, PARTED)).toMatchObject({
      weight: 'mind',
      about: { kind: 'cabinet', cabinet: idOf('B1') },
      measure: '20 mm',
      limit: '0 mm',
      message:
        'B1: 20 mm lie free between it and B2, and part the countertop: BT1 ends at the one and BT2 begins at the other. With the gap closed they are one.',
      remedy: { label: 'Move B2 to the left, to what BT1 lies on' },
    })
    const closed = remedied(project, findingIn(project, PARTED)!)
    expect(the(closed, 'B2').left).toBe(500 + 600)
    expect(tops(closed)).toEqual(['b1 b2'])
    expect(findingIn(closed, PARTED)).toBeNull()
  })
  it('moves all that is under the top, and the other one where this stands fast', () => {
    const third = cabinet('B3', { left: 500 + 600 + 20 + 700, width: 400 })
    const three = topped(...Object.values(two(20).cabinets), third)
    const closed = remedied(three, findingIn(three, PARTED)!)
    expect([the(closed, 'B2').left, the(closed, 'B3').left]).toEqual([1100, 1100 + 700])
    expect(tops(closed)).toEqual(['b1 b2 b3'])
    const fast = withWall(three, { length: 500 + 600 + 20 + 700 + 400 })
    expect(findingIn(fast, PARTED)!.remedy!.label).toBe('Move B1 to the right, to what BT2 lies on')
    expect(the(remedied(fast, findingIn(fast, PARTED)!), 'B1').left).toBe(520)
  })
  it('between two that stand fast is closed by a wider one, or by a filler that can still be cut', () => {
    const fast = (gap: number) =>
      withWall(topped(cabinet('B1', { left: 0, width: 600 }), cabinet('B2', { left: 600 + gap, width: 700 })), {
        length: 600 + gap + 700,
      })
    const narrow = findingIn(fast(20), PARTED)!
    expect(narrow.remedy!.label).toBe('Widen B1 to 620 mm')
    expect(tops(remedied(fast(20), narrow))).toEqual(['b1 b2'])
    const wide = findingIn(fast(60), PARTED)!
    expect(wide.remedy!.label).toBe('Put a filler at the right of B1')
    const filled = remedied(fast(60), wide)
    expect(the(filled, 'B1').beside.right).toMatchObject({ kind: 'filler', width: 60 })
    expect(tops(filled)).toEqual(['b1 b2'])
  })
  it('is none where nothing is parted: no gap, a wide one, other levels, other tops, or something between', () => {
    expect(findingIn(two(0), PARTED)).toBeNull()
    expect(findingIn(two(100), PARTED)).not.toBeNull()
    expect(findingIn(two(101), PARTED)).toBeNull()
    expect(findingIn(two(20, {}, { height: 800 }), PARTED)).toBeNull()
    const other = two(20)
    expect(findingIn(applyEdit(other, ownTopEdit([the(other, 'B2')], { overhang: 40 })), PARTED)).toBeNull()
    expect(findingIn(applyEdit(other, { kind: 'editBetween', change: { countertop: null } }), PARTED)).toBeNull()
    const tall = topped(...Object.values(two(60).cabinets), cabinet('T1', { left: 1105, width: 50 }))
    expect(findingIn(tall, PARTED)).toBeNull()
  })
  it('beside a dishwasher is told too, and one in a seat board by its name', () => {
    const washer = topped(cabinet('B1', { left: 500, width: 600 }), space('S1', 'dishwasher', { left: 1120 }))
    expect(findingIn(washer, PARTED)!.message).toMatch(/^B1: 20 mm lie free between it and S1/)
    const low = { height: 432, depth: 450, top: { isOver: true } }
    expect(findingIn(two(15, low, low), PARTED)!.message).toContain('part the seat board: BS1 ends')
  })
})

describe('a narrow gap before a countertop that runs into the corner', () => {
  const CORNER = /before the front edge of BT\d round the corner/
  /** How far what is at the first wall ends from the front edge, at 580 + 20, of what runs into its right end. */
  const corner = (gap: number, first: Said = {}, second: Said = {}, ...more: readonly Cabinet[]): Project => {
    const project = aCorner(
      cabinet('B1', { left: 3600 - 600 - gap - 700, width: 700, ...first }),
      cabinet('B2', { wall: OTHER_WALL, left: 0, width: 800, depth: 580, ...second }),
      ...more,
    )
    return applyEdit(project, { kind: 'editBetween', change: { countertop: TOP } })
  }
  /** Where the top of the first wall ends. */
  const end = (project: Project) => {
    const { place } = derive(project).runs.find(({ mark }) => mark === 'BT1')!
    return place.left + place.width
  }

  it('is told where tops do not stand out so far, and filled in one step', () => {
    const project = corner(25)
    expect(end(project)).toBe(3600 - 600 - 25 + 15)
    expect(findingIn(project, CORNER)).toMatchObject({
      ...{ weight: 'mind', about: { kind: 'cabinet', cabinet: idOf('B1') }, measure: '25 mm', limit: '15 mm' },
      message:
        'B1: it ends 25 mm before the front edge of BT2 round the corner, and its countertop BT1 stands out only 15 mm past it: the two are parted there. Nearer than that, or with the gap closed, they meet.',
      remedy: { label: 'Put a filler at the right of B1' },
    })
    const closed = remedied(project, findingIn(project, CORNER)!)
    // As wide as to the front of B2.
    expect(the(closed, 'B1').beside.right).toMatchObject({ kind: 'filler', width: 25 + 20 })
    expect(end(closed)).toBe(3600 - 600)
    expect(findingIn(closed, CORNER)).toBeNull()
  })

  it('too narrow for a filler is closed by moving up, and by a wider one where this stands fast', () => {
    const project = corner(18)
    expect(findingIn(project, CORNER)!.remedy!.label).toBe('Move B1 to the right, to the front edge of BT2')
    const moved = remedied(project, findingIn(project, CORNER)!)
    expect(the(moved, 'B1').left).toBe(3600 - 600 - 700)
    expect(end(moved)).toBe(3600 - 600)
    const fast = corner(18, { left: 0, width: 3600 - 600 - 18 })
    expect(findingIn(fast, CORNER)!.remedy!.label).toBe('Widen B1 to 3000 mm')
    expect(end(remedied(fast, findingIn(fast, CORNER)!))).toBe(3600 - 600)
  })

  it('is told at the other wall too, where that ends before the corner', () => {
    const project = corner(-600, {}, { left: 600 + 30 })
    const finding = findingIn(project, CORNER)!
    expect(finding.message).toMatch(/^B2: it ends 30 mm before the front edge of BT1 round the corner/)
    expect(findingIn(remedied(project, finding), CORNER)).toBeNull()
  })

  it('is none where they meet, where it is wide, at other levels, in an empty corner, or with something between', () => {
    expect(findingIn(corner(14.9), CORNER)).toBeNull()
    expect(findingIn(corner(15), CORNER)).not.toBeNull()
    expect(findingIn(corner(100), CORNER)).not.toBeNull()
    expect(findingIn(corner(100.1), CORNER)).toBeNull()
    expect(findingIn(corner(25, { height: 800 }), CORNER)).toBeNull()
    expect(findingIn(corner(25, {}, { left: 600 + 25 }), CORNER)).toBeNull()
    const tall = cabinet('T1', { left: 3600 - 600 - 70, width: 50 })
    expect(findingIn(corner(80, {}, {}, tall), CORNER)).toBeNull()
  })
})
