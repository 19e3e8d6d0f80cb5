import { describe, expect, it } from 'vitest'
import { floorAfter } from '../../../engine/breakdown/floor'
import { type BreakdownInput, breakdownOf } from '../../../engine/breakdown/steps'
import { type Cutting, crosscut, part, rip, SHOP, type Sizes, sheets, showStep, WASTE } from './sawyer'

const SIZES: Sizes = { A: [768, 580], B: [1000, 320], F: [716, 320], W: [2420, 617] }

function inputOf(late: readonly string[], ...layouts: readonly (readonly [number, Cutting])[]): BreakdownInput {
  const given = sheets(SIZES, layouts)
  const rows = given.cutList.rows.map((row) => ({ ...row, isLate: late.includes(row.key) }))
  return { ...given, cutList: { rows }, shop: SHOP, marks: new Map(), materials: {} }
}

const shown = (input: BreakdownInput) => breakdownOf(input).steps.map(showStep)

describe('parts that are cut late', () => {
  const MIXED = rip(crosscut(part('A'), WASTE), crosscut(part('B'), part('F'), WASTE), WASTE)

  it('stay whole with what lies beside them until the carcasses stand', () => {
    const { steps } = breakdownOf(inputOf(['F'], [1, MIXED]))
    const at = steps.findIndex(({ kind }) => kind === 'pause')
    // The strip of 320 is 2440 - 10 to the square end; less B and its kerf: 2430 - 1000 - 3 = 1427, and F is cut off it.
    expect(steps.slice(at + 1).map(showStep)).toEqual([
      'crosscut 716: 1 of 1427 x 320 | 1 part 716 x 320 | 1 waste 708 x 320',
    ])
    expect(steps.slice(0, at).some(({ leaves }) => leaves.some(({ length }) => length === 716))).toBe(false)
    expect(steps.map(({ isLate }) => isLate)).toEqual(steps.map((_, index) => index >= at))
  })

  it('leave a strip and a sheet whole where nothing else is on it', () => {
    const { steps } = breakdownOf(
      inputOf(
        ['F'],
        [1, rip(crosscut(part('A'), WASTE), crosscut(part('F'), WASTE), WASTE)],
        [1, rip(crosscut(part('F'), WASTE), WASTE)],
      ),
    )
    const at = steps.findIndex(({ kind }) => kind === 'pause')
    expect(steps.slice(0, at).flatMap((step) => step.sheets)).not.toContain(2)
    expect(steps.slice(0, at).map(({ setting }) => setting)).not.toContain(320)
    expect(
      steps
        .slice(at + 1)
        .filter(({ kind }) => kind === 'rip')
        .map(({ sheets: on }) => on),
    ).toEqual([[1], [2]])
  })

  it('are in the very order of all others where nothing is late', () => {
    expect(shown(inputOf([], [2, MIXED]))).toEqual(shown(inputOf(['X'], [2, MIXED])))
    expect(breakdownOf(inputOf([], [1, MIXED])).steps.some(({ kind }) => kind === 'pause')).toBe(false)
  })

  it('have no pause before them where everything is late', () => {
    expect(breakdownOf(inputOf(['A', 'B', 'F'], [1, MIXED])).steps.some(({ kind }) => kind === 'pause')).toBe(false)
  })

  it('are told where one comes free with the last cut before the pause', () => {
    // 1200 - 580 - 3 = 617: the second strip needs no cut of its own once the first is off, but its ends are still rough.
    const full = rip(crosscut(part('A'), WASTE), part('W'))
    const early = breakdownOf(inputOf(['W'], [1, full])).steps.filter(({ isLate }) => !isLate)
    expect(early.flatMap(({ leaves }) => leaves.filter(({ kind, width }) => kind === 'part' && width === 617))).toEqual(
      [],
    )
    const exact = { id: 's1', material: 'm1', length: 1771, width: 320, trim: { length: 0, width: 0 } }
    const given = sheets({ B: [1000, 320], G: [768, 320] }, [[1, crosscut(part('B'), part('G'))]], 3, exact)
    const rows = given.cutList.rows.map((row) => ({ ...row, isLate: row.key === 'G' }))
    const { steps } = breakdownOf({ ...given, cutList: { rows }, shop: SHOP, marks: new Map(), materials: {} })
    expect(steps.map(showStep)).toEqual(['crosscut 1000: 1 of 1771 x 320 | 1 part 1000 x 320 | 1 part 768 x 320'])
    expect(steps[0]!.cautions.join(' ')).toContain('meant to be cut late')
  })

  it('count what is set before the pause and after it: nothing stands as it was', () => {
    const twice = [2, rip(crosscut(part('F'), part('B'), WASTE), WASTE)] as const
    const before = breakdownOf(inputOf([], twice))
    const after = breakdownOf(inputOf(['F'], twice))
    // One rip and two stops in all; the stop for F is set after the pause as it was before.
    expect([before.settings, after.settings]).toEqual([3, 3])
    const rips = breakdownOf(inputOf(['F'], [1, rip(crosscut(part('F'), WASTE), crosscut(part('B'), WASTE), WASTE)]))
    // The guides at 320 and the stop at 1000; then again the guides at 320, and the stop at 716.
    expect(rips.settings).toBe(4)
  })

  it('lie on the floor as pieces when all before the pause is done, and the pause itself cuts nothing', () => {
    const input = inputOf(['F'], [1, MIXED])
    const { steps } = breakdownOf(input)
    const at = steps.findIndex(({ kind }) => kind === 'pause')
    const floor = (count: number) => floorAfter(input, { done: new Set(steps.slice(0, count).map(({ id }) => id)) })
    expect(floor(at)).toEqual(floor(at + 1))
    const there = floor(at)
    expect(there.ok && there.value.flatMap(({ part: id }) => id ?? []).sort()).toEqual(['A-1', 'B-1'])
  })
})
