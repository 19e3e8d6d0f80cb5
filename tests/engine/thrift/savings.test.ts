import { describe, expect, it } from 'vitest'
import type { KeptId, SequenceId, StockId } from '../../../engine/basics/id'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import { newProject } from '../../../engine/project/defaults'
import type { Project } from '../../../engine/project/document'
import type { BuildMethod } from '../../../engine/project/method'
import { newCabinetAt } from '../../../engine/runs/place'
import { demonstrationKitchen } from '../../../engine/samples/kitchen'
import { packSheets } from '../../../engine/sheets/pack'
import { sheetCount } from '../../../engine/sheets/tally'
import { dimensionsOf, editFor, type Freedom } from '../../../engine/thrift/freedom'
import { savingsOf, type Thrift } from '../../../engine/thrift/savings'
import { inch } from '../../../engine/units/length'

function thriftOf(project: Project, freedoms: readonly Freedom[]): Thrift {
  for (const search = savingsOf(project, freedoms); ; ) {
    const { done, value } = search.next()
    if (done) return value
  }
}

/** Bases beside one another along a long wall, as deep as this. */
function bases(count: number, depth: number): Project {
  let project = newProject('mm')
  const wall = Object.values(project.walls)[0]!
  project = applyEdit(project, { kind: 'editWall', id: wall.id, change: { length: 12_000 } })
  for (let at = 0; at < count; at++) {
    const cabinet = newCabinetAt(project, 'base', at * 600, 600)!
    project = applyEdit(project, { kind: 'addCabinet', cabinet: { ...cabinet, depth } })
  }
  return project
}

function free(project: Project, name: RegExp, most: number): Freedom[] {
  return dimensionsOf(project)
    .filter((dimension) => name.test(dimension.name))
    .map((dimension) => ({ dimension, most }))
}

describe('dimensions that may be left open', () => {
  it('are those of cabinets that are alike, and never the height of a base', () => {
    const names = dimensionsOf(demonstrationKitchen()).map(({ name }) => name)
    expect(names).toContain('depth of the bases')
    expect(names).toContain('height of the uppers')
    expect(names.filter((name) => /height of the bases|width of the (bases|uppers|talls)/.test(name))).toEqual([])
  })
})

describe('a rule of a build method', () => {
  const kitchen = demonstrationKitchen()
  const method = kitchen.methods[kitchen.method]!
  const after = (words: RegExp, change: number) => {
    const [dimension] = dimensionsOf(kitchen).filter(({ name }) => words.test(name))
    return applyEdit(kitchen, editFor(kitchen, dimension!, change)).methods[kitchen.method]!
  }

  it.each([
    [/width of the stretchers/, ({ baseTop }: BuildMethod) => baseTop.kind !== 'full' && baseTop.width, -3],
    [/height of the kick/, ({ floor }: BuildMethod) => floor.kind !== 'none' && floor.height, 3],
    [/setback of the shelves/, ({ shelves }: BuildMethod) => shelves.setback, 3],
  ])('%s is changed the way that makes boards smaller, and nothing else is', (words, measure, by) => {
    const changed = after(words, 3)
    expect(Number(measure(changed)) - Number(measure(method))).toBe(by)
    const same = (one: BuildMethod) => ({ ...one, shelves: null, baseTop: null, nailers: null, floor: null })
    expect(same(changed)).toEqual(same(method))
  })

  it('of the nailers is offered where there are some', () => {
    const id = kitchen.method
    const nailers = { ...method.nailers, top: true }
    const nailed = applyEdit(kitchen, { kind: 'editMethod', id, change: { nailers } })
    const [dimension] = dimensionsOf(nailed).filter(({ name }) => /width of the nailers/.test(name))
    const { width } = applyEdit(nailed, editFor(nailed, dimension!, 4)).methods[id]!.nailers
    expect(width).toBe(nailers.width - 4)
  })
})

describe('thrift', () => {
  // Two boards across a sheet of 1220 less twice its trim: one strip of 600 and the kerf after it is all there is room for.
  const deep = bases(6, 602)

  it('finds the depth at which two strips go side by side on a sheet', () => {
    const { taken, savings } = thriftOf(deep, free(deep, /depth of the bases/, 12))
    expect(savings).toHaveLength(1)
    const [saving] = savings
    expect(saving!.sheetsSaved).toBeGreaterThan(0)
    expect(saving!.sheets).toBe(taken.sheets - saving!.sheetsSaved)
    const { to } = saving!.changes[0]!
    expect(to).toBeLessThan(602)
    expect(to).toBeGreaterThanOrEqual(590)
    expect(saving!.added).toEqual({ parts: 0, hardware: 0 })
  })

  it('says how many kept sheets would no longer do', () => {
    const [first] = packSheets(derive(deep).sheetJob).sheets
    const { stock, copies, root } = first!
    const sheet = { id: 'q1' as KeptId, order: 0, stock: stock as StockId, copies, root }
    const kept = applyEdit(deep, { kind: 'keepSheet', sheet })
    expect(derive(kept).heldSheets).toEqual(['q1'])
    const released = (project: Project) =>
      thriftOf(project, free(project, /depth of the bases/, 12)).savings.map((saving) => saving.released)
    expect(released(kept)).toEqual([copies])
    expect(released(deep)).toEqual([0])
  })

  it('says over how many boards the grain would no longer run on', () => {
    const tall = { ...newCabinetAt(deep, 'tall', 4000, 600)!, depth: 602, height: 1500 }
    const project = applyEdit(deep, { kind: 'addCabinet', cabinet: tall })
    const sides = [...derive(project).partOf.values()].filter(({ role }) => role === 'leftSide')
    const parts = [sides[0]!, sides.find(({ owner }) => owner === tall.id)!].map(({ id }) => id)
    const sequence = { id: 'g1' as SequenceId, along: 'length' } as const
    const marked = applyEdit(project, { kind: 'putInSequence', parts, sequence })
    expect(derive(marked).cutList.rows.filter(({ bank }) => bank)).toHaveLength(2)
    const [saving] = thriftOf(marked, free(marked, /depth of the bases/, 12)).savings
    expect(saving!.outOfRuns).toBe(2)
  })

  it('says what it adds where a door on a higher kick becomes wider than it is high, and so two', () => {
    let project = newProject('in')
    project = applyEdit(project, { kind: 'addCabinet', cabinet: newCabinetAt(project, 'base', 0, inch(24))! })
    const tall = { ...newCabinetAt(project, 'tall', inch(72), inch(24))!, height: inch(96) }
    project = applyEdit(project, { kind: 'addCabinet', cabinet: tall })
    const [saving] = thriftOf(project, free(project, /height of the kick/, inch(1))).savings
    const changed = derive(applyEdit(project, saving!.edit))
    const { parts, hardware } = saving!.added
    expect([parts, hardware]).toEqual([1, 4])
    expect(parts).toBe(changed.partOf.size - derive(project).partOf.size)
  })

  it('promises only what the changed design keeps', () => {
    const { savings } = thriftOf(deep, free(deep, /depth of the bases/, 12))
    for (const { edit, sheets } of savings) {
      const answer = packSheets({ ...derive(applyEdit(deep, edit)).sheetJob, effort: 'quick', goals: [] })
      expect(sheetCount(answer)).toBe(sheets)
    }
  })

  it('finds it, too, in a design that has something to stop for already', () => {
    const [first] = Object.values(deep.cabinets)
    const wrong = applyEdit(deep, { kind: 'shapeCabinets', shapes: [{ id: first!.id, left: first!.left + 100 }] })
    expect(derive(wrong).problems.some(({ weight }) => weight === 'stop')).toBe(true)
    expect(thriftOf(wrong, free(wrong, /depth of the bases/, 12)).savings).toHaveLength(1)
  })

  it('counts no offcut from the rack as a sheet', () => {
    const few = bases(1, 560)
    const like = Object.values(few.stock).find(({ material }) => material === 'carcass')!
    const offcut = { ...like, id: 's9' as StockId, length: 1300, width: 610, price: 0, quantity: 1, isOffcut: true }
    const racked = applyEdit(few, { kind: 'putStock', stock: offcut })
    const answer = packSheets({ ...derive(racked).sheetJob, effort: 'quick', goals: [] })
    expect(thriftOf(racked, []).taken).toEqual({ sheets: sheetCount(answer) - 1, offcuts: 1 })
  })

  it('says that nothing is saved where a little less makes no difference', () => {
    const few = bases(1, 560)
    expect(thriftOf(few, free(few, /depth of the bases/, 3)).savings).toEqual([])
  })

  it('changes nothing by itself, and gives the same list for the same design', () => {
    const kitchen = demonstrationKitchen()
    const before = JSON.stringify(kitchen)
    const freedoms = free(kitchen, /setback/, 4)
    expect(thriftOf(kitchen, freedoms)).toEqual(thriftOf(kitchen, freedoms))
    expect(JSON.stringify(kitchen)).toBe(before)
  })
})
