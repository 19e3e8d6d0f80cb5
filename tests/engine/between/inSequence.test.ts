import { describe, expect, it } from 'vitest'
import type { CabinetId, PartId, SequenceId, StockId } from '../../../engine/basics/id'
import { oddsWords } from '../../../engine/breakdown/odds'
import type { BreakdownInput } from '../../../engine/breakdown/steps'
import { onOtherSheets } from '../../../engine/checks/askedSheet'
import { leftOut } from '../../../engine/checks/leftOut'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { Project } from '../../../engine/project/document'
import type { Edit } from '../../../engine/project/edit'
import { begin, make, undo } from '../../../engine/project/history'
import { readProject, writeProject } from '../../../engine/project/schema'
import { demonstrationKitchen } from '../../../engine/samples/kitchen'
import { placementsIn } from '../../../engine/sheets/layout'
import { packSheets } from '../../../engine/sheets/pack'
import { verify } from '../../../engine/sheets/verify'

const plain: Project = { ...demonstrationKitchen(), kept: {} }
const after = (project: Project, ...edits: readonly Edit[]) => edits.reduce(applyEdit, project)
const head = (along: 'length' | 'width', id = 'g1') => ({ id: id as SequenceId, along })
const part = (mark: string): PartId => [...derive(plain).partOf.values()].find((one) => one.mark === mark)!.id
const SIDES = ['B1-LS', 'B1-RS', 'B2-LS'].map(part)
const [B1, B2] = [SIDES[0]!, SIDES[2]!].map((side) => side.split('/')[0] as CabinetId)
const put = (parts: readonly PartId[], sequence: ReturnType<typeof head> | null): Edit => ({
  kind: 'putInSequence',
  parts,
  sequence,
})
const marked = after(plain, put(SIDES, head('length')))

/** Every bank by the marks of its boards in their order. */
function banksIn(project: Project): string[] {
  const { cabinets, runs } = derive(project)
  const banked = [...cabinets, ...runs].flatMap(({ parts }) => parts.filter(({ bank }) => bank))
  const names = [...new Set(banked.map(({ bank }) => bank!.id))]
  return names.map((id) => {
    const own = banked.filter(({ bank }) => bank!.id === id).sort((a, b) => a.bank!.place - b.bank!.place)
    return `${own[0]!.bank!.along}: ${own.map(({ mark }) => mark).join(' ')}`
  })
}

function told(project: Project): string[] {
  return derive(project)
    .problems.map(({ message }) => message)
    .filter((message) => /sequence/.test(message))
}

describe('boards that are marked to be cut in sequence', () => {
  it('lie one behind the other on one sheet, a kerf apart, in the marked order', () => {
    expect(banksIn(marked)).toEqual(['length: B1-LS B1-RS B2-LS'])
    const { sheetJob: job, cutList } = derive(marked)
    const answer = packSheets(job)
    expect(verify(job, answer)).toEqual([])
    const keys = cutList.rows.filter(({ bank }) => bank).map(({ key }) => String(key))
    const sheet = answer.sheets.find(({ placements }) => placements.some(({ part }) => part === keys[0]))!
    const lying = placementsIn(sheet.root).filter(({ part }) => keys.includes(part))
    expect(lying.map(({ part }) => part)).toEqual(keys)
    expect(new Set(lying.map(({ y }) => y)).size).toBe(1)
    for (const [at, one] of lying.slice(1).entries()) {
      expect(one.x - (lying[at]!.x + lying[at]!.length)).toBeCloseTo(job.kerf)
    }
  })

  it('are joined by others at the end, and may lie edge to edge too', () => {
    const more = after(marked, put([part('B3-LS')], head('length')))
    expect(more.sequences!['g1' as SequenceId]!.boards).toEqual([...SIDES, part('B3-LS')])
    expect(banksIn(after(plain, put(SIDES.slice(0, 2), head('width'))))).toEqual(['width: B1-LS B1-RS'])
  })

  it('turn from end to end to edge to edge when they are marked anew', () => {
    const pair = after(plain, put(SIDES.slice(0, 2), head('length')))
    expect(derive(pair).sheetJob.parts.filter(({ bank }) => bank?.along === 'length')).toHaveLength(2)
    const other = after(pair, put(SIDES.slice(0, 2), head('width', 'g2')))
    expect(derive(other).sheetJob.parts.filter(({ bank }) => bank?.along === 'width')).toHaveLength(2)
  })

  it('are cut by themselves when the mark is taken back, and one alone is no sequence', () => {
    const two = after(marked, put(SIDES.slice(0, 1), null))
    expect(banksIn(two)).toEqual(['length: B1-RS B2-LS'])
    const none = after(two, put(SIDES.slice(1, 2), null))
    expect(none.sequences).toBeUndefined()
    expect(derive(none).sheetJob).toBe(derive(plain).sheetJob)
    expect(banksIn(after(plain, put(SIDES.slice(0, 1), head('length'))))).toEqual([])
    expect(after(plain, put(SIDES, null))).toBe(plain)
  })

  it('go on in another run where a sheet has no room for more, which is told', () => {
    const many = derive(plain).cutList.rows.find(({ parts }) => parts.includes(SIDES[0]!))!.parts
    const project = after(plain, put(many, head('width')))
    expect(banksIn(project)).toHaveLength(many.length / 2)
    expect(told(project)).toEqual([
      expect.stringMatching(/^B1-LS: the 10 boards .* edge to edge, .* over 2 of them at most\.$/),
    ])
    expect(packSheets(derive(project).sheetJob).unplaced).toEqual([])
  })

  it('reach as far as the sheet that is chosen for one of them', () => {
    const sheet = Object.values(plain.stock).find(({ material }) => material === 'carcass')!
    const short = { ...sheet, id: 's90' as StockId, length: 1700 }
    const wished: Edit = { kind: 'pin', parts: [SIDES[0]!], stock: short.id }
    expect(banksIn(after(marked, { kind: 'putStock', stock: short }, wished))).toEqual(['length: B1-LS B1-RS'])
  })

  it('are told of where sheets of different kinds, or of different numbers, are chosen for them', () => {
    const sheet = Object.values(plain.stock).find(({ material }) => material === 'carcass')!
    const large = { ...sheet, id: 's90' as StockId, length: 3050 }
    const [first, , last] = SIDES as [PartId, PartId, PartId]
    const wishing = after(
      marked,
      { kind: 'putStock', stock: large },
      { kind: 'pin', parts: [first], stock: sheet.id },
      { kind: 'pin', parts: [last], stock: large.id },
    )
    const stray = derive(wishing).problems.filter(({ message }) => /same run of grain/.test(message))
    expect(stray.map(({ limit, measure }) => [limit, measure])).toEqual([
      ['the sheet of 18 mm birch ply (2440 mm x 1220 mm)', 'the sheet of 18 mm birch ply (3050 mm x 1220 mm)'],
    ])
    expect(told(applyEdit(wishing, stray[0]!.remedy!.edit))).toEqual([])
    const numbered = after(
      marked,
      { kind: 'pinSheet', parts: [first], sheet: 3 },
      { kind: 'pinSheet', parts: [last], sheet: 1 },
    )
    const { sheetJob: job, cutList } = derive(numbered)
    const { sheets } = packSheets({ ...job, effort: 'glance' })
    expect(onOtherSheets({ project: numbered, rows: cutList.rows, job }, sheets).map(({ message }) => message)).toEqual(
      [expect.stringMatching(/sheet 3 .*, and on sheet 1, since their run of grain must come from sheet 1, which/)],
    )
  })

  it('are told of where one is of another size, and lie without it', () => {
    const project = after(marked, put([part('B3-BT')], head('length')))
    const deeper = after(project, {
      kind: 'shapeCabinets',
      shapes: [{ ...project.cabinets[B2!]!, depth: 620 }],
    })
    expect(banksIn(deeper)).toEqual(['length: B1-LS B1-RS B3-BT'])
    const [finding] = derive(deeper).problems.filter(({ message }) => message.startsWith('B2-LS: marked'))
    expect(finding!.message).toContain('it is 619 mm wide, and B1-LS 579 mm')
    const mended = applyEdit(deeper, finding!.remedy!.edit)
    expect(told(mended)).toEqual([])
    expect(banksIn(mended)).toEqual(['length: B1-LS B1-RS B3-BT'])
  })

  it('are judged by the most of them: one that is made larger is told, and not the others', () => {
    const shapes = [{ ...plain.cabinets[B1!]!, depth: 620 }]
    const more = ['B3-LS', 'B3-RS'].map(part)
    const deeper = after(marked, put(more, head('length')), { kind: 'shapeCabinets', shapes })
    expect(banksIn(deeper)).toEqual(['length: B2-LS B3-LS B3-RS'])
    expect(told(deeper).map((message) => message.slice(0, 14))).toEqual(['B1-LS: marked ', 'B1-RS: marked '])
  })

  it('are told, with a way out, where two directions of cuts cannot part them, also where one sheet is chosen', () => {
    const two = after(
      plain,
      put(SIDES.slice(0, 2), head('width')),
      { kind: 'editShop', change: { stages: 2 } },
      { kind: 'pinSheet', parts: SIDES.slice(0, 1), sheet: 1 },
    )
    const left = (project: Project) => {
      const { sheetJob: job, cutList } = derive(project)
      return leftOut({ project, rows: cutList.rows, job }, packSheets({ ...job, effort: 'glance' }))
    }
    const [finding] = left(two)
    expect(finding!.message).toMatch(/cannot be cut apart as one piece in two directions\.$/)
    expect(finding!.remedy!.label).toBe('Cut these boards by themselves')
    expect(left(applyEdit(two, finding!.remedy!.edit))).toEqual([])
  })

  it('lie as they come where their board has no grain', () => {
    const bare = after(marked, {
      kind: 'editMaterial',
      id: derive(plain).partOf.get(SIDES[0]!)!.material,
      change: { hasGrain: false },
    })
    expect([banksIn(bare), told(bare)]).toEqual([[], []])
  })

  it('are told where a plan that is being cut knows nothing of it', () => {
    const before = derive(plain)
    const input = { cutList: { rows: before.cutList.rows } } as unknown as BreakdownInput
    const words = (project: Project) =>
      oddsWords(input, { rows: derive(project).cutList.rows, materials: project.materials })
    expect(words(plain)).toEqual([])
    expect(words(marked)).toEqual(['The grain of 3 parts runs on otherwise in the design than in what is being cut.'])
  })

  it('leave fronts to the grain that runs on over their cabinet', () => {
    const doors = ['U1-DR1', 'U1-DR2'].map(part)
    const ran = after(plain, put(doors, head('width')), {
      kind: 'letGrainRun',
      ids: [doors[0]!.split('/')[0] as CabinetId],
      way: 'running',
    })
    expect(banksIn(after(plain, put(doors, head('width'))))).toEqual(['width: U1-DR1 U1-DR2'])
    expect(doors.map((door) => derive(ran).partOf.get(door)!.bank!.id)).toEqual(['U1 fronts', 'U1 fronts'])
    expect(told(ran)).toContain('U1-DR1: marked to be cut in sequence, and its grain runs on with U1 fronts already.')
  })

  it('are of boards over several cabinets too', () => {
    const long = after(plain, { kind: 'editBetween', change: { kick: 'inLengths' } })
    const kicks = derive(long).runs.flatMap(({ parts }) => parts)
    const pair = kicks.filter(({ cutWidth }) => cutWidth === kicks[0]!.cutWidth).slice(0, 2)
    const project = after(
      long,
      put(
        pair.map(({ id }) => id),
        head('length'),
      ),
    )
    expect(pair).toHaveLength(2)
    expect(banksIn(project).concat(told(project))).toEqual([expect.stringContaining(`${pair[0]!.mark}`)])
    expect(readProject(writeProject(project))).toMatchObject({ ok: true, value: project })
  })
})

describe('the marks of a sequence', () => {
  it('go with their cabinet, so that one of the same name has none, and come back with it', () => {
    const gone: Edit = { kind: 'removeCabinets', ids: [B1!] }
    const history = make(begin(marked), gone)
    expect(history.present.sequences).toBeUndefined()
    const more = after(marked, put([part('B3-LS')], head('length')), gone)
    expect(more.sequences!['g1' as SequenceId]!.boards).toEqual([SIDES[2], part('B3-LS')])
    expect(undo(history).present).toBe(marked)
  })

  it('are saved and read, and a board in two of them is refused', () => {
    const file = writeProject(marked)
    expect(readProject(file)).toMatchObject({ ok: true, value: marked })
    const twice = JSON.parse(file) as { sequences: Record<string, unknown> }
    twice.sequences.g2 = { id: 'g2', along: 'width', boards: [SIDES[0]] }
    expect(JSON.stringify(readProject(JSON.stringify(twice)))).toContain(
      `sequences.g2.boards names ${SIDES[0]}, which is in a sequence already`,
    )
    const wrong = JSON.parse(file) as { sequences: { g1: { boards: string[] } } }
    wrong.sequences.g1.boards = ['side']
    expect(JSON.stringify(readProject(JSON.stringify(wrong)))).toContain('sequences.g1.boards.0')
  })

  it('are not made of boards of no cabinet', () => {
    expect(after(plain, put(['k99/left-side', 'nonsense', 'k1/__proto__'] as PartId[], head('width')))).toBe(plain)
  })
})
