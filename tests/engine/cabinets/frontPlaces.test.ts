import { describe, expect, it } from 'vitest'
import { frontPlaces, linedUpWith } from '../../../engine/cabinets/frontPlaces'
import { newProject } from '../../../engine/project/defaults'
import type { Cabinet, Front, FrontRow } from '../../../engine/project/document'
import {
  bankAt,
  dividedInto,
  frontAt,
  graduatedHeights,
  withFrontAt,
  withSizeAt,
} from '../../../engine/project/frontTree'
import { aCabinet } from '../../helpers/cabinets'

const DRAWER = { kind: 'drawer' } as const
const project = newProject('mm')
const rows = (...heights: readonly (number | null)[]): Front => ({
  kind: 'rows',
  rows: heights.map((height): FrontRow => {
    return { front: DRAWER, size: height === null ? { kind: 'share', share: 1 } : { kind: 'fixed', height } }
  }),
})
const base = (number: number, front: Front, changes: Partial<Cabinet> = {}) =>
  aCabinet('base', { number, front, ...changes })

describe('the drawers of a graduated bank', () => {
  it('are each a step taller going down, and fill the front with their gaps', () => {
    const first = (717 - 2 * 3 - (0 + 1 + 2) * 40) / 3
    expect(graduatedHeights(3, 717, 3, 40)).toEqual([first, first + 40, first + 2 * 40])
  })
  it('keep their heights, but for the lowest, when the cabinet is heightened', () => {
    expect(bankAt([157, 197, 237])).toEqual(rows(157, 197, null))
  })
})

describe('a divided front', () => {
  it('is changed at a path, and the rest is the same object', () => {
    const front = dividedInto('columns', [DRAWER, rows(150, null)])
    const after = withFrontAt(front, [1, 1], { kind: 'pair' })
    expect(frontAt(after, [1, 1])).toEqual({ kind: 'pair' })
    expect(frontAt(after, [0])).toBe(frontAt(front, [0]))
  })
  it('has a size fixed, or given back to a share', () => {
    const front = dividedInto('columns', [DRAWER, rows(150, null)])
    expect(withSizeAt(front, [1, 0], null)).toEqual(dividedInto('columns', [DRAWER, rows(null, null)]))
    expect(withSizeAt(front, [1, 0], 180)).toEqual(dividedInto('columns', [DRAWER, rows(180, null)]))
  })
  it('has its places from the whole to the smallest', () => {
    const places = frontPlaces(project, base(1, dividedInto('columns', [DRAWER, rows(150, null)])))
    expect(places.map(({ path }) => path.join('.'))).toEqual(['', '0', '1', '1.0', '1.1'])
    expect(places[3]!.rect.height).toBe(150)
  })
})

describe('lining fronts up with a neighbour', () => {
  it('takes over its heights, and the lowest takes what is left', () => {
    const lined = linedUpWith(project, base(1, rows(null, null)), base(2, rows(140, null)))
    expect(lined).toEqual({ ok: true, value: rows(140, null) })
  })
  it('is refused where the numbers of rows differ', () => {
    const lined = linedUpWith(project, base(1, rows(null, null)), base(2, rows(140, null, null)))
    expect(lined).toEqual({ ok: false, message: 'B1 has 2 rows; B2 has 3.' })
  })
  it('is refused where their tops differ', () => {
    const lined = linedUpWith(project, base(1, rows(null, null)), base(2, rows(140, null), { height: 900 }))
    expect(lined.ok).toBe(false)
    expect(!lined.ok && lined.message).toContain('The fronts of B1 end at ')
  })
  it('is refused where there are no rows', () => {
    expect(linedUpWith(project, base(1, DRAWER), base(2, rows(140, null)))).toEqual({
      ok: false,
      message: 'B1 has no rows to line up.',
    })
  })
})
