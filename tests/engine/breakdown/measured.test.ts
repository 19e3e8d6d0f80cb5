import { describe, expect, it } from 'vitest'
import type { CabinetId, PartId } from '../../../engine/basics/id'
import { measuredRows } from '../../../engine/breakdown/measured'
import { replanAfter } from '../../../engine/breakdown/mishap'
import { type BreakdownInput, breakdownOf } from '../../../engine/breakdown/steps'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { Edit } from '../../../engine/project/edit'
import { demonstrationKitchen } from '../../../engine/samples/kitchen'
import { packSheets } from '../../../engine/sheets/pack'
import { verify } from '../../../engine/sheets/verify'

const late = { fronts: true, drawerBoxes: true, fitted: false }
const KITCHEN = applyEdit(demonstrationKitchen(), { kind: 'editShop', change: { late } })

function atTheSaw(): BreakdownInput {
  const { project, cutList, sheetJob: job, partOf } = derive(KITCHEN)
  let looks = 0
  const answer = packSheets(job, () => ++looks > 2)
  const marks = new Map([...partOf].map(([id, { mark }]) => [id, mark]))
  return { job, answer, shop: project.shop, cutList: { rows: cutList.rows }, marks, materials: project.materials }
}

const input = atTheSaw()
const { steps } = breakdownOf(input)
const pause = steps.findIndex(({ kind }) => kind === 'pause')
const toThePause = { done: new Set(steps.slice(0, pause + 1).map(({ id }) => id)) }

/** The first cabinet whose whole opening is one door or pair. */
const { cabinet, openings, parts } = derive(KITCHEN).cabinets.find((one) => one.openings.length === 1)!
const { key, drawn } = openings[0]!
const edit: Edit = {
  kind: 'measureOpening',
  id: cabinet.id as CabinetId,
  at: key,
  measured: { width: drawn.width + 2, height: null },
}
const fronts = parts.filter(({ role }) => role === 'door').map(({ id }) => id)
const sizeIn = (rows: BreakdownInput['cutList']['rows'], part: PartId) => {
  const row = rows.find((one) => one.parts.includes(part))!
  return [row.length, row.width]
}

describe('openings that are measured while sheets are being cut', () => {
  const design = derive(applyEdit(KITCHEN, edit)).cutList.rows
  const rows = measuredRows(input, design)
  const plan = replanAfter(input, toThePause, { kind: 'openings', rows })
  if (!plan.ok) throw new Error(plan.message)

  it('give the parts that are made to them their new sizes, and leave all others as they were', () => {
    const [each] = fronts
    const [length, width] = sizeIn(input.cutList.rows, each!)
    expect(sizeIn(rows, each!)).toEqual([length, width! + 2 / fronts.length])
    const all = input.cutList.rows.flatMap((row) => row.parts)
    expect(rows.flatMap((row) => row.parts).sort()).toEqual([...all].sort())
    const others = all.filter((part) => !fronts.includes(part))
    expect(others.map((part) => sizeIn(rows, part))).toEqual(others.map((part) => sizeIn(input.cutList.rows, part)))
  })

  it('lose nothing that is cut, and every late part is laid out anew', () => {
    const first = input.cutList.rows.filter(({ isLate }) => !isLate).flatMap((row) => row.parts)
    expect([...plan.value.cut].sort()).toEqual([...first].sort())
    expect(plan.value.lost).toEqual([])
    const answer = packSheets(plan.value.job, () => true)
    expect(verify(plan.value.job, answer)).toEqual([])
    expect(plan.value.cutList.rows.every(({ isLate }) => isLate)).toBe(true)
  })

  it('tell each part that changes, by its mark, before the plan is taken', () => {
    expect(plan.value.resized.map(({ part }) => part).sort()).toEqual([...fronts].sort())
    expect(plan.value.told[0]).toMatch(/^\w+-DR\d* is cut .* and not .*\.$/)
  })

  it('have no pause before what is left, which is measured already', () => {
    const { job, cutList, atHand, firstSheet, cutAways, cutBefore, kinds } = plan.value
    const answer = packSheets(job, () => true)
    const again = breakdownOf({ ...input, job, answer, cutList, atHand, firstSheet, cutAways, cutBefore, kinds })
    expect(again.steps.some(({ kind }) => kind === 'pause')).toBe(false)
  })

  it('follow the design in nothing else', () => {
    const wider = applyEdit(KITCHEN, {
      kind: 'shapeCabinets',
      shapes: [{ id: cabinet.id as CabinetId, width: cabinet.width - 50 }],
    })
    expect(measuredRows(input, derive(wider).cutList.rows)).toEqual(input.cutList.rows)
  })
})
