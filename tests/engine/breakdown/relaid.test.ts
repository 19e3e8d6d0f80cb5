import { describe, expect, it } from 'vitest'
import type { CabinetId } from '../../../engine/basics/id'
import { randomFrom } from '../../../engine/basics/random'
import { relaid } from '../../../engine/breakdown/relaid'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { Project } from '../../../engine/project/document'
import { demonstrationKitchen } from '../../../engine/samples/kitchen'
import type { SheetAnswer } from '../../../engine/sheets/layout'
import { packSheets } from '../../../engine/sheets/pack'
import { sheetCount } from '../../../engine/sheets/tally'
import { verify } from '../../../engine/sheets/verify'
import { randomEdit } from '../../helpers/random-edits'

const kitchen = demonstrationKitchen()
const before = derive(kitchen)
const answer = packSheets({ ...before.sheetJob, effort: 'quick' })

const near = (project: Project) => {
  const { sheetJob, cutList } = derive(project)
  return relaid(answer, before.cutList, sheetJob, cutList.rows)
}
const narrower = (id: string, by: number) => {
  const { width } = kitchen.cabinets[id as CabinetId]!
  return applyEdit(kitchen, { kind: 'shapeCabinets', shapes: [{ id: id as CabinetId, width: width - by }] })
}
const whole = (sheets: SheetAnswer['sheets']): SheetAnswer => ({ sheets, unplaced: [], bounds: {}, proved: false })
/** On which sheet, by number, and how often each part lies. */
const places = ({ sheets }: Pick<SheetAnswer, 'sheets'>) =>
  sheets.map(({ placements, copies }) => `${copies} x ${placements.length}`)

describe('a layout drawn again', () => {
  it('is what it was for the design that it was made for', () => {
    expect(near(kitchen)).toEqual(answer.sheets)
  })

  it.each(['k2', 'k4', 'k6', 'k9'])(
    'is sound for a %s that is a little narrower, with every board on its sheet',
    (id) => {
      const project = narrower(id, 4)
      const sheets = near(project)
      const { sheetJob } = derive(project)
      expect(verify(sheetJob, whole(sheets))).toEqual([])
      const count = ({ sheets: all }: Pick<SheetAnswer, 'sheets'>) =>
        all.flatMap(({ copies, placements }) => new Array<number>(copies).fill(placements.length))
      expect(count({ sheets }).sort()).toEqual(count(answer).sort())
    },
  )

  it('is what the packer answers under the hand, while no layout needs fewer sheets', () => {
    const project = narrower('k4', 4)
    const sheets = near(project)
    const job = { ...derive(project).sheetJob, near: sheets, goals: [], effort: 'quick' } as const
    const stayed = packSheets(job)
    expect(verify(job, stayed)).toEqual([])
    if (sheetCount(stayed) === sheetCount(answer)) expect(places(stayed)).toEqual(places({ sheets }))
    const first = packSheets({ ...job, effort: 'glance' }, () => true)
    expect(places(first)).toEqual(places({ sheets }))
  })

  it('leaves out sheets that their boards have outgrown; the packer then lays out that material anew', () => {
    const project = applyEdit(kitchen, {
      kind: 'shapeCabinets',
      shapes: Object.values(kitchen.cabinets).map(({ id, depth }) => ({ id, depth: depth + 60 })),
    })
    const sheets = near(project)
    expect(sheets.length).toBeLessThan(answer.sheets.length)
    const job = { ...derive(project).sheetJob, near: sheets, goals: [], effort: 'glance' } as const
    expect(verify(job, packSheets(job))).toEqual([])
  })

  it('never leads to an answer that is not sound, whatever is done to the design', () => {
    const random = randomFrom(77)
    for (let walk = 0; walk < 40; walk++) {
      let project = kitchen
      for (let step = 0; step < 3; step++) project = applyEdit(project, randomEdit(project, random))
      const job = { ...derive(project).sheetJob, near: near(project), goals: [], effort: 'glance' } as const
      expect(verify(job, packSheets(job)), `walk ${walk}`).toEqual([])
    }
  })
})
