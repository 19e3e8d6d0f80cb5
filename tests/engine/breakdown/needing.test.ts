import { expect, it } from 'vitest'
import { stepsNeeding } from '../../../engine/breakdown/needing'
import { type BreakdownInput, breakdownOf } from '../../../engine/breakdown/steps'
import { crosscut, OFFCUT, PLY, part, rip, SHOP, sheets, WASTE } from './sawyer'

const TWO_STRIPS = rip(crosscut(part('A'), WASTE), crosscut(rip(part('B'), WASTE), WASTE), OFFCUT)
const input: BreakdownInput = {
  ...sheets({ A: [768, 580], B: [1000, 320], C: [900, 400] }, [
    [1, TWO_STRIPS],
    [1, rip(crosscut(part('C'), WASTE), OFFCUT)],
  ]),
  shop: { ...SHOP, onePersonLift: 100 },
  marks: new Map(),
  materials: { m1: PLY } as unknown as BreakdownInput['materials'],
}

it('are all later steps of a sheet where its first edge is not straight, and none of another', () => {
  const { steps } = breakdownOf(input)
  const first = steps.find(({ kind, sheets: own }) => kind === 'trim' && own.includes(1))!
  const later = steps.filter(({ id, sheets: own }) => id !== first.id && own.includes(1))
  expect(later.length).toBeGreaterThan(3)
  expect(stepsNeeding(input, first.id)).toEqual(later.map(({ id }) => id))
})

it('are those of its own strip where a strip is not crosscut', () => {
  const { steps } = breakdownOf(input)
  const square = steps.find(({ kind, takes }) => kind === 'square' && takes.name === '1b')!
  const needing = stepsNeeding(input, square.id)
  const told = steps.filter(({ id }) => needing.includes(id)).map(({ takes }) => takes.name)
  expect(told.length).toBeGreaterThan(0)
  for (const name of told) expect(name).toContain('1b')
})

it('are none after the last cut', () => {
  expect(stepsNeeding(input, breakdownOf(input).steps.at(-1)!.id)).toEqual([])
})
