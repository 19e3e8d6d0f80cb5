import { describe, expect, it } from 'vitest'
import type { CabinetId, MaterialId, MethodId, OpeningId, StockId, WallId } from '../../../engine/basics/id'
import { randomFrom } from '../../../engine/basics/random'
import { applyEdit } from '../../../engine/project/apply'
import type { Edit } from '../../../engine/project/edit'
import { readProject, writeProject } from '../../../engine/project/schema'
import { randomEdit } from '../../helpers/random-edits'
import { aWall, cabinet, idOf, the } from '../../helpers/wall'

const b1 = cabinet('B1', { left: 0 })
const b2 = cabinet('B2', { left: 600 })
const project = aWall(b1, b2)

describe('an edit', () => {
  it('leaves everything that it does not touch the same object', () => {
    const after = applyEdit(project, { kind: 'shapeCabinets', shapes: [{ id: b2.id, left: 700 }] })
    expect(the(after, 'B2').left).toBe(700)
    expect(the(after, 'B1')).toBe(b1)
    expect(after.walls).toBe(project.walls)
    expect(project.cabinets[b2.id]).toBe(b2)
  })

  it('settles the lengths it is given, deep inside a front too', () => {
    const wide = applyEdit(project, { kind: 'shapeCabinets', shapes: [{ id: b1.id, width: 0.1 + 600.2 }] })
    expect(the(wide, 'B1').width).toBe(600.3)
    const rows = [{ size: { kind: 'fixed', height: 0.1 + 140.2 }, front: { kind: 'drawer' } }] as const
    const drawers = applyEdit(project, { kind: 'setFront', ids: [b1.id], front: { kind: 'rows', rows } })
    expect(the(drawers, 'B1').front).toMatchObject({ rows: [{ size: { height: 140.3 } }] })
  })

  it('does not settle what is no length', () => {
    const third = applyEdit(project, {
      kind: 'editShop',
      change: { minutes: { perSetting: 1 / 3, perCut: 1, perSheet: 1 } },
    })
    expect(third.shop.minutes.perSetting).toBe(1 / 3)
  })

  it('takes tools away from a shop and gives them back, and refuses half a tooth', () => {
    const bare = applyEdit(project, { kind: 'editShop', change: { narrowRips: null, canJoinRails: false } })
    expect(bare.shop).toMatchObject({ narrowRips: null, canJoinRails: false })
    const again = { least: 25, greatest: 200 }
    expect(applyEdit(bare, { kind: 'editShop', change: { narrowRips: again } }).shop.narrowRips).toEqual(again)
    const half = { rip: { teeth: 17.5 }, crosscut: { teeth: 48 } }
    expect(applyEdit(project, { kind: 'editShop', change: { blades: half } })).toBe(project)
  })

  it('leaves a field alone that is given as undefined', () => {
    const after = applyEdit(project, { kind: 'shapeCabinets', shapes: [{ id: b1.id, left: undefined, width: 450 }] })
    expect(the(after, 'B1')).toMatchObject({ left: 0, width: 450 })
  })

  it('puts a choice back to the method when it is given as undefined', () => {
    const own = applyEdit(project, { kind: 'override', ids: [b1.id], choices: { bottom: 'under', top: 'over' } })
    expect(the(own, 'B1').overrides).toEqual({ bottom: 'under', top: 'over' })
    const back = applyEdit(own, { kind: 'override', ids: [b1.id], choices: { bottom: undefined } })
    expect(the(back, 'B1').overrides).toEqual({ top: 'over' })
  })

  it('gives an added cabinet another number when its own is taken', () => {
    const after = applyEdit(project, { kind: 'addCabinet', cabinet: { ...b1, id: idOf('copy') } })
    expect(after.cabinets[idOf('copy')]?.number).toBe(3)
  })

  it('keeps names in the form that a file keeps them', () => {
    const named = applyEdit(project, { kind: 'rename', name: `A \u202Eturned\u0007 cafe\u0301 ${'x'.repeat(100)}` })
    expect(named.name).toBe(`A turned café ${'x'.repeat(80 - 'A turned café '.length)}`)
  })
})

describe('an edit that changes nothing', () => {
  const gone = 'gone' as CabinetId
  const stock = project.stock['s1' as StockId]!
  const nothings: Record<string, Edit> = {
    'moves a cabinet to where it is': { kind: 'shapeCabinets', shapes: [{ id: b2.id, left: 600 }] },
    'moves it by less than the grid of lengths': { kind: 'shapeCabinets', shapes: [{ id: b2.id, left: 600.0001 }] },
    'shapes a cabinet that is not there': { kind: 'shapeCabinets', shapes: [{ id: gone, left: 5 }] },
    'shapes what every object has': { kind: 'shapeCabinets', shapes: [{ id: 'constructor' as CabinetId, left: 5 }] },
    'gives a width that is no number': { kind: 'shapeCabinets', shapes: [{ id: b1.id, width: Number.NaN }] },
    'gives a width below nothing': { kind: 'shapeCabinets', shapes: [{ id: b1.id, width: -20 }] },
    'removes a cabinet that is not there': { kind: 'removeCabinets', ids: [gone] },
    'adds a cabinet that is there': { kind: 'addCabinet', cabinet: b1 },
    'adds a cabinet to no wall': { kind: 'addCabinet', cabinet: { ...b1, id: gone, wall: 'gone' as WallId } },
    'sets the same front again': { kind: 'setFront', ids: [b1.id], front: { ...b1.front } },
    'sets the same inside again': { kind: 'setInterior', ids: [b1.id], interior: { ...b1.interior } },
    'sets a method that is not there': { kind: 'setCabinetMethod', ids: [b1.id], method: 'gone' as MethodId },
    'overrides nothing': { kind: 'override', ids: [b1.id], choices: { bottom: undefined } },
    'overrides with a material that is not there': {
      kind: 'override',
      ids: [b1.id],
      choices: { backMaterial: 'gone' as MaterialId },
    },
    'changes a wall that is not there': { kind: 'editWall', id: 'gone' as WallId, change: { length: 1000 } },
    'removes an opening that is not there': { kind: 'removeOpening', wall: 'w1' as WallId, id: 'o9' as OpeningId },
    'puts the same sheets again': { kind: 'putStock', stock: { ...stock } },
    'removes sheets that are not there': { kind: 'removeStock', id: 's99' as StockId },
    'gives the kerf it has': { kind: 'editShop', change: { kerf: project.shop.kerf } },
    'gives the new base the width it has': { kind: 'editNewCabinet', cabinet: 'base', change: { width: 600 } },
    'shows what is shown': { kind: 'setDisplay', display: { ...project.display } },
    'renames to the same': { kind: 'rename', name: project.name },
    'is made of none': { kind: 'several', edits: [] },
  }
  it.each(Object.entries(nothings))('%s: the project stays the same object', (_, edit) => {
    expect(applyEdit(project, edit)).toBe(project)
  })
})

describe('any edit', () => {
  it('leaves a project that a file can keep, and keeps it as it is', () => {
    for (let seed = 1; seed <= 25; seed++) {
      const random = randomFrom(seed)
      let edited = project
      for (let step = 0; step < 30; step++) edited = applyEdit(edited, randomEdit(edited, random))
      expect(readProject(writeProject(edited)), `seed ${seed}`).toEqual({ ok: true, value: edited })
    }
  })

  it('never changes the project it is made to', () => {
    const random = randomFrom(4)
    let edited = project
    for (let step = 0; step < 200; step++) {
      const before = writeProject(edited)
      const after = applyEdit(edited, randomEdit(edited, random))
      expect(writeProject(edited)).toBe(before)
      edited = after
    }
  })

  it('gives the same object whenever it gives the same file', () => {
    const random = randomFrom(5)
    let edited = project
    for (let step = 0; step < 200; step++) {
      const after = applyEdit(edited, randomEdit(edited, random))
      expect(after === edited).toBe(writeProject(after) === writeProject(edited))
      edited = after
    }
  })
})
