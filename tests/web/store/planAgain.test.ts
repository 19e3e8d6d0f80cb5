import 'fake-indexeddb/auto'
import { beforeEach, describe, expect, it } from 'vitest'
import {
  applyEdit,
  breakdownOf,
  demonstrationKitchen,
  derive,
  type MaterialId,
  type Mishap,
  type PartId,
} from '../../../engine/index'
import { packSheets } from '../../../engine/sheets/pack'
import { canTakeBack, doneOf, oddsOf, partsCut, spokenIn, startCutting, tick } from '../../../web/store/cutting'
import { areOffcutsKept, keepOffcuts, offcutsOf } from '../../../web/store/offcuts'
import { proposeAgain, takeBack, takePlan } from '../../../web/store/planAgain'
import type { Cutting, MaterialEdit } from '../../../web/store/state'
import { useStore } from '../../../web/store/store'
import type { Hand } from '../../../web/workers/packer'

/** A worker that answers at once, after a glance. */
function hire(): Hand {
  const hand: Hand = {
    postMessage: ({ number, job }) => {
      let looks = 0
      const answer = packSheets(job, () => ++looks > 5)
      queueMicrotask(() => hand.onmessage?.({ data: { kind: 'answer', number, answer, isSettled: true } }))
    },
    terminate: () => {},
    onmessage: null,
    onerror: null,
  }
  return hand
}

const { actions } = useStore.getState()
const DEMO = demonstrationKitchen()
const LAYOUT = (() => {
  const job = derive(DEMO).sheetJob
  let looks = 0
  return packSheets(job, () => ++looks > 5)
})()
const CARCASS = 'carcass' as MaterialId
const thick = (thickness: number): MaterialEdit => ({ kind: 'editMaterial', id: CARCASS, change: { thickness } })

function cuttingNow(): Cutting {
  const { cutting } = useStore.getState()
  if (!cutting) throw new Error('nothing is being cut')
  return cutting
}

function measured(thickness: number): Mishap {
  const { rows } = derive(applyEdit(useStore.getState().history.present, thick(thickness))).cutList
  return { kind: 'thickness', material: CARCASS, rows }
}

async function proposed(mishap: Mishap, edit?: MaterialEdit) {
  const answer = await proposeAgain(cuttingNow(), mishap, hire, edit)
  if (!answer.ok) throw new Error(answer.message)
  return answer.value
}

async function enter(mishap: Mishap, edit?: MaterialEdit) {
  expect(takePlan(await proposed(mishap, edit))).toBe(true)
}

function cutSteps(share: number) {
  const { steps } = breakdownOf(cuttingNow().input)
  for (const { id } of steps.slice(0, Math.round(share * steps.length))) tick(id, true)
}

/** What is cut, in the plan as it was begun and made again since. */
function cutCount(): number {
  return partsCut(cuttingNow()).length
}

beforeEach(() => {
  actions.open(DEMO)
  const { derived } = useStore.getState()
  useStore.setState({ layout: { job: derived.sheetJob, answer: LAYOUT, isSettled: true } })
  startCutting()
  cutSteps(0.5)
})

describe('an entry of a mishap', () => {
  it('tells how many parts it writes off before anything is changed', async () => {
    const { cutting, history } = useStore.getState()
    const { summary, words } = await proposed(measured(17.6), thick(17.6))
    const lost = words.find((line) => line.startsWith('Of what is cut, these no longer fit: '))!
    const names = lost.replace(/^.*fit: |\.$/g, '').split(/, | and /)
    expect(names.length).toBeGreaterThan(1)
    expect(summary).toContain(`${names.length} parts that are cut are written off and cut again; `)
    expect(useStore.getState().cutting).toBe(cutting)
    expect(useStore.getState().history).toBe(history)
  })

  it('is taken back whole while nothing is cut since: plan, ticks and design', async () => {
    const before = cuttingNow()
    const { present } = useStore.getState().history
    await enter(measured(17.6), thick(17.6))
    expect(useStore.getState().history.present.materials[CARCASS]!.thickness).toBe(17.6)
    takeBack()
    expect(cuttingNow()).toEqual(before)
    expect(useStore.getState().history.present).toBe(present)
  })

  it('is taken back with the design though that has been changed elsewhere since', async () => {
    await enter(measured(17.6), thick(17.6))
    actions.commit({ kind: 'rename', name: 'Kitchen of the mill' })
    takeBack()
    const { present } = useStore.getState().history
    expect([present.name, present.materials[CARCASS]!.thickness]).toEqual(['Kitchen of the mill', 18])
  })

  it('cannot be taken back once something is cut by the new plan, and can when that is unticked', async () => {
    const steps = doneOf(cuttingNow()).steps
    await enter({ kind: 'spoiled', parts: [partsCut(cuttingNow())[0]!.part] })
    const [first] = breakdownOf(cuttingNow().input).steps
    tick(first!.id, true)
    takeBack()
    expect([canTakeBack(cuttingNow()), doneOf(cuttingNow()).steps]).toEqual([false, steps + 1])
    tick(first!.id, false)
    takeBack()
    expect([cuttingNow().stepsBefore, doneOf(cuttingNow()).steps]).toEqual([undefined, steps])
  })

  it('is not taken where the cutting has gone on meanwhile', async () => {
    const plan = await proposed({ kind: 'spoiled', parts: [partsCut(cuttingNow())[0]!.part] })
    const open = breakdownOf(cuttingNow().input).steps.find(({ id }) => !cuttingNow().done.includes(id))!
    tick(open.id, true)
    const now = cuttingNow()
    expect(takePlan(plan)).toBe(false)
    expect(cuttingNow()).toBe(now)
  })
})

describe('parts that no longer fit', () => {
  it('count as cut again when they fit again, though more was cut since', async () => {
    const before = cutCount()
    await enter(measured(17.6), thick(17.6))
    const less = cutCount()
    expect(less).toBeLessThan(before)
    tick(breakdownOf(cuttingNow().input).steps[0]!.id, true)
    const back = await proposed(measured(18), thick(18))
    expect(back.summary).toContain(`${before - less} parts cut before fit again`)
    expect(takePlan(back)).toBe(true)
    expect(cutCount()).toBe(before)
  })

  it('are named from the last one on', () => {
    const { input, done } = cuttingNow()
    const cut = breakdownOf(input).steps.filter(({ id }) => done.includes(id))
    const last = cut.findLast(({ leaves }) => leaves.some(({ kind }) => kind === 'part'))!
    expect(last.write).toContain(partsCut(cuttingNow())[0]!.mark)
  })

  it('stay lost when they were spoiled', async () => {
    const { part } = partsCut(cuttingNow())[0]!
    await enter({ kind: 'spoiled', parts: [part] })
    await enter({ kind: 'spoiled', parts: [] })
    expect(partsCut(cuttingNow()).map((one) => one.part as PartId)).not.toContain(part)
  })
})

describe('a design that parts from what is being cut', () => {
  it('is told with both thicknesses when an undo takes the measured one back', async () => {
    await enter(measured(17.6), thick(17.6))
    const odds = () => oddsOf(cuttingNow(), useStore.getState().derived)
    expect(odds()).toEqual([])
    actions.undo()
    expect(odds()[0]).toBe(
      '18 mm birch ply is 18 mm thick in the design, and what is being cut is planned for 17.6 mm.',
    )
    expect(odds()[1]).toMatch(/^\d+ parts are cut to another size than the design has now\.$/)
    actions.redo()
    expect(odds()).toEqual([])
  })
})

describe('what is being cut', () => {
  it('speaks the unit of the project as it is now in every step', () => {
    const inches = spokenIn(cuttingNow().input, { unit: 'in', step: 16 })
    const texts = breakdownOf(inches).steps.flatMap(({ text, cautions }) => [text, ...cautions])
    expect(texts.filter((text) => / mm\b/.test(text))).toEqual([])
    expect(texts.some((text) => /\d in\b/.test(text))).toBe(true)
  })
})

describe('when all is cut', () => {
  it('what is left over and large enough is kept as offcuts on hand, as one step that can be undone', () => {
    for (const { id } of breakdownOf(cuttingNow().input).steps) tick(id, true)
    const { present } = useStore.getState().history
    const left = offcutsOf(cuttingNow(), present)
    const { length, width } = present.shop.offcutLeast
    expect(left.length).toBeGreaterThan(0)
    expect(left.filter((one) => one.length < length || one.width < width)).toEqual([])
    keepOffcuts()
    const now = useStore.getState().history.present
    const fresh = Object.values(now.stock).filter(({ id }) => !(id in present.stock))
    expect(fresh.map((one) => [one.length, one.width, one.quantity, one.isOffcut, one.isExcluded])).toEqual(
      left.map((one) => [one.length, one.width, one.quantity, true, true]),
    )
    // Kept once, and offered again when they are let go.
    keepOffcuts()
    expect([useStore.getState().history.present, areOffcutsKept(cuttingNow(), now)]).toEqual([now, true])
    actions.undo()
    expect(useStore.getState().history.present).toBe(present)
    expect(areOffcutsKept(cuttingNow(), present)).toBe(false)
  })

  it('what was left over has no more area than the sheets less their parts', () => {
    for (const { id } of breakdownOf(cuttingNow().input).steps) tick(id, true)
    const { input } = cuttingNow()
    const area = ({ length, width }: { readonly length: number; readonly width: number }) => length * width
    const whole = input.answer.sheets.reduce((sum, { copies, root }) => sum + copies * area(root), 0)
    const parts = input.cutList.rows.reduce((sum, row) => sum + row.quantity * area(row), 0)
    const kept = offcutsOf(cuttingNow(), DEMO).reduce((sum, one) => sum + one.quantity * area(one), 0)
    expect(kept).toBeLessThan(whole - parts)
  })
})
