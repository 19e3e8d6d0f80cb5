import { describe, expect, it } from 'vitest'
import { frontPlaces, linedUpWith } from '../../../engine/cabinets/frontPlaces'
import { derive } from '../../../engine/pipeline'
import { newProject } from '../../../engine/project/defaults'
import type { Cabinet, Front, FrontRow } from '../../../engine/project/document'
import { bankOf, dividedInto, frontAt, stepOf, withFrontAt, withSizeAt } from '../../../engine/project/frontTree'
import { readProject, writeProject } from '../../../engine/project/schema'
import { aCabinet } from '../../helpers/cabinets'
import { aWall, cabinet } from '../../helpers/wall'

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

/** Of a base of the tests, from the floor. */
const HEIGHT = aCabinet('base').height

describe('the drawers of a graduated bank', () => {
  const heightsOf = (cabinet: Cabinet) => frontPlaces(project, cabinet).map(({ rect }) => rect.height)

  it('are each a step taller going down, and stay so when the cabinet is made lower or higher', () => {
    // Kick 100, 3 kept free above; three gaps of 3 and steps of 50, 100 and 150 in all.
    const bank = (height: number) => heightsOf(base(1, bankOf(4, 50), { height })).slice(1)
    const first = (868 - 100 - 3 - 3 * 3 - (50 + 100 + 150)) / 4
    expect(bank(868)).toEqual([first, first + 50, first + 100, first + 150])
    expect(bank(768)).toEqual([89, 139, 189, 239])
    expect(bank(500)).toEqual([22, 72, 122, 172])
  })
  it('are told by their step while they grow evenly', () => {
    expect(stepOf([89, 139, 189, 239])).toBe(50)
    expect(stepOf([253, 253, 253])).toBe(0)
    expect(stepOf([140, 309.5, 309.5])).toBeNull()
    expect(stepOf([300, 249.5])).toBeNull()
  })
  it('stop the work where the steps leave nothing for the topmost', () => {
    const said = derive(aWall(cabinet('B1', { height: 400, front: bankOf(4, 50) }))).problems
    expect(said.map(({ message }) => message)).toContain(
      `B1: its steps with the gaps take ${300 + 3 * 3} mm of a front that is ${400 - 103} mm high; nothing is left for the topmost row.`,
    )
    // (297 - 309) / 4 is less than nothing.
    expect(said.map(({ message }) => message)).toContain('B1: the drawer front would be 0 mm high; it is left out.')
  })
  it('are kept in a file, in which a row without a step is no taller than its share', () => {
    const project = aWall(cabinet('B1', { front: bankOf(3, 40) }))
    expect(readProject(writeProject(project))).toEqual({ ok: true, value: project })
    expect(bankOf(3)).toEqual(rows(null, null, null))
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
  it('takes over the line of the topmost row alone where the numbers of rows differ', () => {
    const [sink, bank] = [rows(160, null), rows(140, null, null)]
    expect(linedUpWith(project, base(1, sink), base(2, bank))).toEqual({ ok: true, value: rows(140, null) })
    expect(linedUpWith(project, base(1, bank), base(2, sink))).toEqual({ ok: true, value: rows(160, null, null) })
    // The others keep their sizes, and one of them takes what is left.
    const fixed = rows(null, 200, 300)
    expect(linedUpWith(project, base(1, fixed), base(2, sink))).toEqual({ ok: true, value: rows(160, 200, null) })
  })
  it('is refused where nothing would be left for another row', () => {
    // With two gaps of 3, 200 and 600 are more than what the front has above its kick of 100.
    const lined = linedUpWith(project, base(1, rows(100, 600, null)), base(2, rows(200, null), { depth: 300 }))
    expect(lined).toEqual({
      ok: false,
      message: `The topmost row of B2 is 200 mm high; in B1, whose front is ${HEIGHT - 103} mm high, nothing would be left for another row.`,
    })
  })
  it('goes from below where they begin at one height and end at two', () => {
    // Above the kick of 100 and with 3 free at the top, less two gaps of 3; the neighbour shares what its first row leaves.
    const low = (HEIGHT - 103 - 2 * 3 - 140) / 2
    const neighbour = base(2, rows(140, null, null))
    const higher = linedUpWith(project, base(1, rows(200, null, null), { height: HEIGHT + 300 }), neighbour)
    expect(higher).toEqual({ ok: true, value: rows(null, low, low) })
    const places = (cabinet: Cabinet) => frontPlaces(project, cabinet).map(({ rect }) => rect)
    const [lined, beside] = [base(1, rows(null, low, low), { height: HEIGHT + 300 }), neighbour].map(places)
    expect(lined!.slice(2).map(({ bottom, height }) => [bottom, height])).toEqual(
      beside!.slice(2).map(({ bottom, height }) => [bottom, height]),
    )
    expect(lined![1]!.height).toBe(140 + 300)
  })
  it('is refused where their tops differ and nothing would be left over the rows from below, or they are not as many', () => {
    const lower = linedUpWith(project, base(1, rows(null, null), { height: HEIGHT - 140 }), base(2, rows(140, null)))
    expect(!lower.ok && lower.message).toContain('The fronts of B1 end at ')
    const lined = linedUpWith(project, base(1, rows(null, null, null)), base(2, rows(140, null), { height: 900 }))
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
