import { describe, expect, it } from 'vitest'
import type { CabinetId, KeptId, MaterialId, PartId, StockId } from '../../../engine/basics/id'
import { toCabinet } from '../../../engine/geometry/placement'
import { unit } from '../../../engine/geometry/vector'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { KeptSheet, Project } from '../../../engine/project/document'
import type { Edit } from '../../../engine/project/edit'
import { readProject, writeProject } from '../../../engine/project/schema'
import { demonstrationKitchen } from '../../../engine/samples/kitchen'
import { lockedIn } from '../../../engine/sheets/held'
import { checkJob, packSheets } from '../../../engine/sheets/pack'
import { verify } from '../../../engine/sheets/verify'

const kitchen = demonstrationKitchen()
const packed = (project: Project) => packSheets({ ...derive(project).sheetJob, effort: 'glance' })
const after = (project: Project, ...edits: readonly Edit[]) => edits.reduce(applyEdit, project)

function keeping(project: Project, at: number, id = 'q1'): KeptSheet {
  const { stock, copies, root } = packed(project).sheets[at]!
  return { id: id as KeptId, order: 0, stock: stock as StockId, copies, root }
}

describe('a sheet that is kept', () => {
  const sheet = keeping(kitchen, 3)
  const kept = after(kitchen, { kind: 'keepSheet', sheet })

  it('is in every layout, as it is, and the others are laid out without its boards', () => {
    const { sheetJob, heldSheets, problems } = derive(kept)
    const answer = packed(kept)
    expect(heldSheets).toEqual(['q1'])
    expect(answer.sheets.filter(({ root }) => JSON.stringify(root) === JSON.stringify(sheet.root))).toHaveLength(1)
    expect(verify(sheetJob, answer)).toEqual([])
    expect(problems.filter(({ about }) => about.kind === 'kept')).toEqual([])
  })

  it('keeps its number, and the others stay as they were', () => {
    const quick = (project: Project) => packSheets({ ...derive(project).sheetJob, effort: 'quick' })
    const before = quick(kitchen)
    for (const [at, { stock, copies, root }] of before.sheets.entries()) {
      const order = before.sheets.slice(0, at).reduce((sum, other) => sum + other.copies, 0)
      const one: KeptSheet = { id: 'q1' as KeptId, order, stock: stock as StockId, copies, root }
      // As it comes from a file, whose fields may be written in another order.
      const opened = readProject(writeProject(after(kitchen, { kind: 'keepSheet', sheet: one })))
      if (!opened.ok) throw new Error(opened.message)
      const { sheetJob } = derive(opened.value)
      const answer = quick(opened.value)
      expect(answer.sheets).toEqual(before.sheets)
      expect(verify(sheetJob, answer)).toEqual([])
      expect(lockedIn(sheetJob, answer)).toEqual([at])
    }
  })

  it('keeps its number when the others are laid out anew', () => {
    const fourth = after(kitchen, { kind: 'keepSheet', sheet: { ...sheet, order: 3 } })
    // Of a cabinet that has no board on the sheet.
    const other = Object.values(fourth.cabinets)
      .filter(({ kind }) => kind === 'upper')
      .map(({ id, width }) => after(fourth, { kind: 'shapeCabinets', shapes: [{ id, width: width - 10 }] }))
      .find((project) => derive(project).heldSheets.length > 0)!
    const answer = packed(other)
    const [at] = lockedIn(derive(other).sheetJob, answer) as [number]
    expect(answer.sheets[at]!.root).toEqual(sheet.root)
    const before = answer.sheets.slice(0, at)
    // No sheet is split: where two alike would reach past the third, it comes after both.
    const count = before.reduce((sum, { copies }) => sum + copies, 0)
    expect(count).toBeGreaterThanOrEqual(3)
    expect(count - (before.at(-1)?.copies ?? 0)).toBeLessThan(3)
    expect(verify(derive(other).sheetJob, answer)).toEqual([])
  })

  it('is still kept when the file is opened again, and undone by letting it go', () => {
    expect(readProject(writeProject(kept))).toEqual({ ok: true, value: kept })
    const free = after(kept, { kind: 'releaseSheet', id: sheet.id })
    expect(derive(free).sheetJob).toBe(derive(kitchen).sheetJob)
  })

  it('is not held while the design asks for other boards, which is said, and held again when it does not', () => {
    const deeper = after(kept, {
      kind: 'shapeCabinets',
      shapes: Object.values(kept.cabinets).map(({ id, depth }) => ({ id, depth: depth + 7 })),
    })
    const { heldSheets, problems, sheetJob } = derive(deeper)
    expect(heldSheets).toEqual([])
    expect(sheetJob.locked).toBeUndefined()
    const [finding] = problems.filter(({ about }) => about.kind === 'kept')
    expect(finding?.message).toMatch(/^A kept sheet of .* is not held: the design no longer asks for a board of /)
    expect(packed(deeper).unplaced).toEqual([])
  })

  it('is not held with another kerf, and the finding says that the shop has changed', () => {
    const { problems, heldSheets } = derive(after(kept, { kind: 'editShop', change: { kerf: 3.9 } }))
    expect(heldSheets).toEqual([])
    expect(problems.map(({ message }) => message).join()).toContain('kerf or directions of the shop are others now')
  })

  it('calls what is left over an offcut by what is kept today', () => {
    const least = { length: 1, width: 1 }
    const { sheetJob, heldSheets } = derive(after(kept, { kind: 'editShop', change: { offcutLeast: least } }))
    expect(heldSheets).toEqual(['q1'])
    expect(JSON.stringify(sheetJob.locked)).not.toContain('"waste"')
  })

  it('goes with its stock, and is not kept on stock that is not there', () => {
    expect(after(kept, { kind: 'removeStock', id: sheet.stock }).kept).toEqual({})
    expect(after(kitchen, { kind: 'keepSheet', sheet: { ...sheet, stock: 's99' as StockId } })).toBe(kitchen)
  })

  it('is held once: a second of the same boards is not', () => {
    const twice = after(kept, { kind: 'keepSheet', sheet: { ...sheet, id: 'q2' as KeptId, order: 1, copies: 50 } })
    expect(derive(twice).heldSheets).toEqual(['q1'])
    const outgrown = derive(twice).problems.map(({ about }) => about)
    expect(outgrown.filter(({ kind }) => kind === 'kept')).toEqual([{ kind: 'kept', sheet: 'q2' }])
  })

  it.each([
    ['copies', 0, 'kept.q1.copies is 0; it must be a whole number between 1 and 10000'],
    ['stock', 's99', 'kept.q1.stock is s99, which is not among stock'],
    ['root', { kind: 'part' }, 'kept.q1.root.part is missing; it must be the key of a row'],
  ])('is refused in a file whose %s is %j', (field, value, words) => {
    const broken = { ...kept, kept: { q1: { ...sheet, [field]: value } } }
    const read = readProject(JSON.stringify(broken))
    expect(read.ok ? 'read' : read.message).toContain(words)
  })
})

describe('boards that must come from one kind of sheet', () => {
  const offcut = { id: 's9' as StockId, material: 'carcass' as MaterialId, length: 1300, width: 900 }
  const stock = { ...offcut, price: 0, quantity: 1, isOffcut: true, isExcluded: false }
  const side = 'k2/left-side' as PartId
  const pinned = after(kitchen, { kind: 'putStock', stock }, { kind: 'pin', parts: [side], stock: offcut.id })

  it('have a row of their own, and lie on that sheet', () => {
    const { rowOf, cutList, sheetJob } = derive(pinned)
    const row = cutList.rows.find(({ key }) => key === rowOf.get(side))!
    expect(row).toMatchObject({ parts: [side], quantity: 1, from: 's9' })
    const answer = packed(pinned)
    expect(verify(sheetJob, answer)).toEqual([])
    expect(answer.unplaced).toEqual([])
    const on = answer.sheets.filter(({ placements }) => placements.some(({ part }) => part === row.key))
    expect(on.map((sheet) => sheet.stock)).toEqual(['s9'])
  })

  it('come from any sheet again when the wish is taken back, or their sheet is removed', () => {
    const back = after(pinned, { kind: 'pin', parts: [side], stock: null })
    const gone = after(pinned, { kind: 'removeStock', id: offcut.id })
    for (const free of [back, gone]) {
      expect(free.cabinets['k2' as CabinetId]!.pins).toEqual({})
      expect(readProject(writeProject(free)).ok).toBe(true)
    }
  })

  it('come from any sheet while the one that is wished for is of another material', () => {
    const other = after(pinned, { kind: 'putStock', stock: { ...stock, material: 'back' as MaterialId } })
    expect(checkJob(derive(other).sheetJob).ok).toBe(true)
    expect(packed(other).unplaced).toEqual([])
  })

  it('may be a board over a run of cabinets', () => {
    const long = after(kitchen, { kind: 'editBetween', change: { kick: 'inLengths' } })
    const kick = derive(long).runs[0]!.parts.at(-1)!.id
    const wished = after(long, { kind: 'putStock', stock }, { kind: 'pin', parts: [kick], stock: offcut.id })
    const { rowOf, cutList, partOf } = derive(wished)
    expect(partOf.get(kick)!.from).toBe('s9')
    expect(cutList.rows.find(({ key }) => key === rowOf.get(kick))).toMatchObject({ parts: [kick], from: 's9' })
    const read = readProject(writeProject(wished))
    expect(read.ok && read.value.between.pins).toEqual({ [kick]: 's9' })
    expect(after(wished, { kind: 'removeStock', id: offcut.id }).between.pins).toEqual({})
    expect(after(wished, { kind: 'pin', parts: [kick], stock: null }).between.pins).toEqual({})
  })

  it('are refused in a file that does not have the sheet', () => {
    const broken = { ...pinned, stock: kitchen.stock }
    const read = readProject(JSON.stringify(broken))
    expect(read.ok ? 'read' : read.message).toContain('cabinets.k2.pins.left-side is s9, which is not among stock')
  })
})

describe('fronts whose grain runs on', () => {
  const ids = Object.keys(kitchen.cabinets) as CabinetId[]
  const running = after(kitchen, { kind: 'letGrainRun', ids, way: 'running' })
  const { cabinets, sheetJob } = derive(running)
  const banked = cabinets.flatMap(({ parts }) => parts.filter(({ bank }) => bank))
  const banks = [...new Set(banked.map(({ bank }) => bank!.id))].map((id) =>
    banked.filter(({ bank }) => bank!.id === id).sort((a, b) => a.bank!.place - b.bank!.place),
  )

  it('lie on the cabinet in the order in which they are cut: each begins a gap behind the one before it', () => {
    const gap = kitchen.methods[kitchen.method]!.fronts.gap
    expect(banks.length).toBeGreaterThan(5)
    for (const boards of banks) {
      for (const [at, board] of boards.slice(1).entries()) {
        const before = boards[at]!
        const { along } = board.bank!
        const way = unit(before.placement[along])
        const [from, to] = [before, board].map(({ placement }) => toCabinet(placement, 0, 0, 0))
        const step = (to!.x - from!.x) * way.x + (to!.y - from!.y) * way.y + (to!.z - from!.z) * way.z
        expect(step).toBeCloseTo(before[along] + gap, 6)
        expect(board.placement).toMatchObject({ length: before.placement.length, width: before.placement.width })
      }
    }
  })

  it('are cut side by side from one sheet, in their order', () => {
    expect(checkJob(sheetJob).ok).toBe(true)
    expect(sheetJob.parts.filter(({ bank }) => bank)).toHaveLength(banks.flat().length)
    const answer = packed(running)
    expect(answer.unplaced).toEqual([])
    expect(verify(sheetJob, answer)).toEqual([])
  })

  it('turn a drawer front over a door upright, so that the grain of the door goes on over it', () => {
    const along = banks.map((boards) => boards.map(({ role, bank }) => `${role} ${bank!.along}`).join(', '))
    expect(along).toContain('door length, drawerFront length')
    expect(along).toContain('drawerFront width, drawerFront width, drawerFront width')
    expect(along).toContain('door width, door width')
  })

  it('are cut by themselves where their material has no grain', () => {
    const plain = after(running, { kind: 'editMaterial', id: 'front' as MaterialId, change: { hasGrain: false } })
    expect(derive(plain).sheetJob.parts.some(({ bank }) => bank)).toBe(false)
  })

  it('come from one sheet that is wished for one of them', () => {
    const [first] = banks[0]!
    const stock = sheetJob.stock.find(({ material }) => material === first!.material)!.id as StockId
    const { sheetJob: job } = derive(after(running, { kind: 'pin', parts: [first!.id], stock }))
    expect(checkJob(job).ok).toBe(true)
    expect(job.parts.filter(({ from }) => from === stock)).toHaveLength(banks[0]!.length)
  })
})

describe('what is looked for besides few sheets', () => {
  it.each([
    [true, true, undefined],
    [true, false, ['leftover']],
    [false, true, ['settings']],
    [false, false, []],
  ])('large offcut %s, few settings %s: the job asks for %j', (isOffcutLarge, areSettingsFew, goals) => {
    const shop = after(kitchen, { kind: 'editShop', change: { goals: { isOffcutLarge, areSettingsFew } } })
    expect(derive(shop).sheetJob.goals).toEqual(goals)
  })

  it('is what sheets cost, unless the maker wants as few as can be whatever they cost', () => {
    const goals = { isCountFirst: true, isOffcutLarge: true, areSettingsFew: true }
    const shop = after(kitchen, { kind: 'editShop', change: { goals } })
    const opened = readProject(writeProject(shop))
    expect(derive(kitchen).sheetJob).not.toHaveProperty('isCountFirst')
    expect(opened.ok && derive(opened.value).sheetJob.isCountFirst).toBe(true)
  })

  it('is few settings first where the maker wants that, in the file and when it is opened again', () => {
    const goals = { isOffcutLarge: true, areSettingsFew: true, areSettingsFirst: true }
    const shop = after(kitchen, { kind: 'editShop', change: { goals } })
    const opened = readProject(writeProject(shop))
    expect(opened.ok && derive(opened.value).sheetJob.goals).toEqual(['settings', 'leftover'])
  })
})
