import { describe, expect, it } from 'vitest'
import type { CabinetId, StockId } from '../../../engine/basics/id'
import { type DerivedCabinet, derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { Front, Project } from '../../../engine/project/document'
import type { Edit } from '../../../engine/project/edit'
import { readProject, writeProject } from '../../../engine/project/schema'
import { demonstrationKitchen, numbered, place } from '../../../engine/samples/kitchen'
import { checkJob, packSheets } from '../../../engine/sheets/pack'
import { verify } from '../../../engine/sheets/verify'

const plain = demonstrationKitchen()
const DOOR: Front = { kind: 'door', hinge: 'left' }
const PAIR: Front = { kind: 'pair' }
const DRAWERS: Front = {
  kind: 'rows',
  rows: [1, 1].map((share) => ({ size: { kind: 'share', share }, front: { kind: 'drawer' } })),
}
const ids = (project: Project) => Object.keys(project.cabinets) as CabinetId[]
const after = (project: Project, ...edits: readonly Edit[]) => edits.reduce(applyEdit, project)
const across = (project: Project, which = ids(project)) =>
  after(project, { kind: 'letGrainRun', ids: which, way: 'across' })

/** Bases side by side from the left end of the wall, with their widths and fronts; a gap of 50 where a width is null. */
function bases(...wanted: readonly ([width: number, front: Front] | null)[]): Project {
  let left = 0
  const cabinets = wanted.flatMap((one, at) => {
    const [width, front] = one ?? [50, null]
    left += width
    return front ? [place(plain, 'base', at + 1, left - width, width, front)] : []
  })
  return { ...plain, cabinets: numbered(cabinets), kept: {} }
}

/** Every bank: its boards in their order as the owner's mark and what they are, and the way that they follow. */
function banksIn(project: Project): string[] {
  const banked = derive(project).cabinets.flatMap(({ parts }) => parts.filter(({ bank }) => bank))
  const names = [...new Set(banked.map(({ bank }) => bank!.id))]
  return names.map((id) => {
    const boards = banked.filter(({ bank }) => bank!.id === id).sort((a, b) => a.bank!.place - b.bank!.place)
    return `${id}, ${boards[0]!.bank!.along}: ${boards.map(({ mark }) => mark).join(' ')}`
  })
}

/** Where the low corner of a board's face is along the wall. */
function leftOf({ cabinet, parts }: DerivedCabinet, mark: string): number {
  return cabinet.left + parts.find((part) => part.mark === mark)!.placement.origin.x
}

describe('the grain of fronts that runs on across cabinets', () => {
  it('goes from door to door from left to right, edge to edge', () => {
    const project = across(bases([400, DOOR], [500, DOOR]))
    expect(banksIn(project)).toEqual(['B1 to B2 fronts, width: B1-DR B2-DR'])
  })

  it('goes from drawer front to drawer front the way that their own lengths run, row by row', () => {
    const project = across(bases([500, DRAWERS], [600, DRAWERS]))
    expect(banksIn(project)).toEqual([
      'B1 to B2 fronts, length: B2-DF1 B1-DF1',
      'B1 to B2 fronts 2, length: B2-DF2 B1-DF2',
    ])
    const [one, two] = derive(project).cabinets
    // Both lengths begin at the right end of their front, so that of B2 comes first.
    expect(leftOf(two!, 'B2-DF1')).toBeGreaterThan(leftOf(one!, 'B1-DF1'))
    expect(one!.parts.find(({ mark }) => mark === 'B1-DF1')!.placement.length).toBe('-x')
  })

  it('stops where cabinets do not touch, where one does not wish it, and where heights are different', () => {
    expect(banksIn(across(bases([400, DOOR], null, [500, DOOR])))).toEqual([])
    const three = bases([400, DOOR], [500, DOOR], [300, DOOR])
    expect(banksIn(across(three, [ids(three)[0]!, ids(three)[2]!]))).toEqual([])
    expect(banksIn(across(bases([400, DOOR], [500, DRAWERS])))).toEqual([])
  })

  it('begins anew where one sheet does not reach', () => {
    const project = across(bases([500, DOOR], [500, DOOR], [500, DOOR], [500, DOOR]))
    expect(banksIn(project)).toEqual(['B1 to B2 fronts, width: B1-DR B2-DR', 'B3 to B4 fronts, width: B3-DR B4-DR'])
    expect(packSheets({ ...derive(project).sheetJob, effort: 'glance' }).unplaced).toEqual([])
  })

  it('goes over the doors of a pair as well', () => {
    const project = across(bases([600, PAIR], [300, DOOR]))
    expect(banksIn(project)).toEqual(['B1 to B2 fronts, width: B1-DR1 B1-DR2 B2-DR'])
  })

  it('is cut so in the demonstration: every bank from one sheet, in its order', () => {
    const kitchen = across(plain)
    const { sheetJob } = derive(kitchen)
    const answer = packSheets({ ...sheetJob, effort: 'glance' })
    expect(banksIn(kitchen).length).toBeGreaterThan(3)
    expect(checkJob(sheetJob).ok).toBe(true)
    expect(answer.unplaced).toEqual([])
    expect(verify(sheetJob, answer)).toEqual([])
  })

  it('stands in the file, and goes where the fronts are cut apart again', () => {
    const kitchen = across(plain)
    const opened = readProject(writeProject(kitchen))
    expect(opened.ok && banksIn(opened.value)).toEqual(banksIn(kitchen))
    expect(banksIn(after(kitchen, { kind: 'letGrainRun', ids: ids(plain), way: 'none' }))).toEqual([])
  })

  it('leaves what was worked out for a cabinet as it is while another is changed that it does not reach', () => {
    const kitchen = across(plain, ['k2', 'k3'] as CabinetId[])
    const before = derive(kitchen).cabinetOf
    const now = derive(after(kitchen, { kind: 'letGrainRun', ids: ['k8' as CabinetId], way: 'running' })).cabinetOf
    for (const id of ['k1', 'k2', 'k3'] as CabinetId[]) expect(now[id]).toBe(before[id])
  })

  it('takes no account of sheets that are not to be used', () => {
    const project = across(bases([500, DOOR], [500, DOOR]))
    const front = derive(project).sheetJob.parts.find(({ bank }) => bank)!.material
    const sheet = Object.values(project.stock).find(({ material }) => material === front)!
    const small = { ...sheet, id: 's90' as StockId, width: 900, isExcluded: false }
    const excluded = { ...project.stock, [sheet.id]: { ...sheet, isExcluded: true }, [small.id]: small }
    expect(banksIn({ ...project, stock: excluded })).toEqual([])
  })

  it('keeps the doors of a pair together where the next sheet begins', () => {
    const project = across(bases([600, PAIR], [700, PAIR], [500, DOOR]))
    expect(banksIn(project)).toEqual(['B1 fronts, width: B1-DR1 B1-DR2', 'B2 to B3 fronts, width: B2-DR1 B2-DR2 B3-DR'])
  })

  it('reckons with sheets that can be bought, in both their sizes, and with the one that is chosen', () => {
    const project = across(bases([500, DOOR], [500, DOOR], [500, DOOR]))
    const { material } = derive(project).sheetJob.parts.find(({ bank }) => bank)!
    const sheet = Object.values(project.stock).find((one) => one.material === material)!
    const having = (change: object): Project => {
      const other = { ...sheet, id: 's90' as StockId, ...change }
      return { ...project, stock: { ...project.stock, [other.id]: other } }
    }
    const two = ['B1 to B2 fronts, width: B1-DR B2-DR']
    expect(banksIn(project)).toEqual(two)
    // Wide enough for three, but too short for a door, or only one on hand.
    expect(banksIn(having({ length: 700, width: 2440 }))).toEqual(two)
    expect(banksIn(having({ length: 3050, width: 1525, quantity: 1 }))).toEqual(two)
    const large = having({ length: 3050, width: 1525 })
    expect(banksIn(large)).toEqual(['B1 to B3 fronts, width: B1-DR B2-DR B3-DR'])
    const [first] = derive(large).cabinets[0]!.parts.filter(({ bank }) => bank)
    expect(banksIn(after(large, { kind: 'pin', parts: [first!.id], stock: sheet.id }))).toEqual(two)
    const narrow = having({ width: 610 })
    expect(banksIn(after(narrow, { kind: 'pin', parts: [first!.id], stock: 's90' as StockId }))).toEqual([
      'B2 to B3 fronts, width: B2-DR B3-DR',
    ])
  })
})
