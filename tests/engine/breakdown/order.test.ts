import { describe, expect, it } from 'vitest'
import { type BreakdownInput, breakdownOf } from '../../../engine/breakdown/steps'
import type { Shop } from '../../../engine/project/document'
import { type Cutting, crosscut, OFFCUT, part, rip, SHOP, type Sizes, sheets, WASTE } from './sawyer'

const SIZES: Sizes = { A: [768, 580], B: [1000, 320], C: [900, 400], D: [2420, 320] }
const strip = (id: string) => crosscut(part(id), WASTE)
const AB = rip(strip('A'), strip('B'), OFFCUT)

function planIn(shop: Partial<Shop>, ...layouts: readonly (readonly [number, Cutting])[]) {
  const input: BreakdownInput = {
    ...sheets(SIZES, layouts),
    shop: { ...SHOP, ...shop },
    marks: new Map(),
    materials: {},
  }
  return breakdownOf(input)
}

function rips({ steps }: ReturnType<typeof planIn>) {
  return steps.filter(({ kind }) => kind === 'rip').map(({ setting, sheets: on }) => `${setting} on ${on.join(' ')}`)
}

describe('the order of cutting', () => {
  const TEDIOUS = { minutes: { perSetting: 1, perCut: 1, perSheet: 60 } }

  it('is the one that the maker chose, and the quicker one is still proposed', () => {
    const chosen = planIn({ ...TEDIOUS, cutOrder: 'setting by setting' }, [3, AB])
    expect([chosen.order, chosen.proposed]).toEqual(['setting by setting', 'sheet by sheet'])
    expect(rips(chosen)).toEqual(['580 on 1 2 3', '320 on 1 2 3'])
    expect(chosen.minutes).toBe(chosen.compared['setting by setting'].minutes)
    expect(chosen.minutesOtherwise).toBe(chosen.compared['sheet by sheet'].minutes)
    expect(chosen.minutesOtherwise).toBeLessThan(chosen.minutes)
  })

  it('takes the sheet next that needs a setting which stands', () => {
    const CC = rip(strip('C'), strip('C'), OFFCUT)
    const plan = planIn({ cutOrder: 'sheet by sheet' }, [1, AB], [1, CC], [1, rip(strip('A'), strip('A'), OFFCUT)])
    expect(rips(plan)).toEqual(['320 on 1', '580 on 1', '580 on 3', '400 on 2'])
  })

  it('ends a round of settings with the one that the next round begins with', () => {
    const RERIP = rip(crosscut(part('A'), rip(part('B'), WASTE), WASTE), crosscut(part('C'), WASTE), OFFCUT)
    const plan = planIn({ cutOrder: 'setting by setting' }, [1, AB], [1, RERIP])
    // 320 stays on the guides while the crosscut blade is in.
    expect(rips(plan).map((words) => words.split(' ')[0])).toEqual(['580', '400', '320'])
    expect(plan.steps.at(-1)).toMatchObject({ kind: 'rerip', setting: 320 })
    expect(plan.steps.at(-1)!.text).toMatch(/^Leave both guides at 320 mm/)
  })

  it('begins with the blade that is changed less often where sheets begin differently', () => {
    const ACROSS = crosscut(rip(part('A'), WASTE), rip(part('C'), WASTE), OFFCUT)
    const THREE = rip(crosscut(part('A'), rip(part('B'), WASTE), WASTE), OFFCUT)
    const plan = planIn({}, [1, ACROSS], [1, THREE])
    // Rip, crosscut, rip serves both; the crosscut blade first would need a fourth turn.
    expect(plan.bladeChanges).toBe(2)
    expect(plan.steps[0]!.blade).toBe('rip')
  })

  it('rips sheets and pieces at one setting together', () => {
    // Crosscut first, the second sheet leaves a piece of 1000 to be ripped at 320, as the first sheet is.
    const across = crosscut(rip(part('B'), part('B'), WASTE), OFFCUT)
    const plan = planIn(
      { cutOrder: 'setting by setting', stages: 2 },
      [1, across],
      [1, rip(part('D'), part('D'), OFFCUT)],
    )
    const guided = plan.steps.filter(({ tool }) => tool === 'guides')
    expect(guided.map(({ setting, sheets: on }) => `${setting} on ${on}`)).toEqual(['320 on 2', '320 on 1'])
    expect(guided.at(-1)!.text).toMatch(/^Leave both guides/)
  })

  it('says the teeth of the blade that is in', () => {
    const { steps } = planIn({ blades: { rip: { teeth: 14 }, crosscut: { teeth: 52 } } }, [1, AB])
    expect(new Set(steps.map(({ blade, teeth }) => `${blade} ${teeth}`))).toEqual(new Set(['rip 14', 'crosscut 52']))
  })
})
