import { describe, expect, it } from 'vitest'
import type { CabinetId, MaterialId } from '../../../engine/basics/id'
import { boxOf } from '../../../engine/cabinets/boardBox'
import type { Part } from '../../../engine/parts/part'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import { type Between, type Cabinet, type Cutout, NOTHING_BESIDE, type Project } from '../../../engine/project/document'
import { labelOf } from '../../../engine/project/label'
import { aWall, cabinet, withWall } from '../../helpers/wall'

const CARCASS = 'carcass' as MaterialId
const TOP = { material: CARCASS, overhang: 20, ends: 15, splash: 0, banding: 0 }
const LONG: Partial<Between> = { kick: 'inLengths' }

function withBetween(project: Project, change: Partial<Between>): Project {
  return applyEdit(project, { kind: 'editBetween', change })
}
const runsOf = (project: Project, kind: string) => derive(project).runs.filter((run) => run.kind === kind)
const said = ({ mark, length, width, thickness }: Part) => `${mark} ${length} x ${width} x ${thickness}`
const boards = (project: Project, kind: string) => runsOf(project, kind).flatMap(({ parts }) => parts.map(said))

/** The usual base is 868 high and 580 deep; its carcass and front are 18 thick, its plinth 100 high. */
const bases = (...widths: readonly number[]): Cabinet[] => {
  let left = 200
  return widths.map((width, at) => {
    const one = cabinet(`B${at + 1}`, { left, width })
    left += width
    return one
  })
}
const method = (project: Project) => project.methods[project.method]!
const floorOf = (project: Project) => {
  const { floor } = method(project)
  if (floor.kind === 'none') throw new Error('the usual method has a floor')
  return floor
}
const T = (project: Project) => project.materials[CARCASS]!.thickness

describe('kick boards in lengths', () => {
  const project = withBetween(aWall(...bases(600, 900, 500)), LONG)
  const { height, setback } = floorOf(project)

  it('go before all of a run, with their face at the setback', () => {
    expect(boards(project, 'kick')).toEqual([`BK1-KL1 ${600 + 900 + 500} x ${height} x ${T(project)}`])
    const { place, parts } = runsOf(project, 'kick')[0]!
    expect(place).toMatchObject({ left: 200, bottom: 0 })
    const face = 580 - setback
    expect(boxOf(parts[0]!)).toEqual({
      min: { x: 0, y: 0, z: face - T(project) },
      max: { x: 2000, y: height, z: face },
    })
  })
  it('take the place of the boards in notched cabinets, whose notch is deeper by them', () => {
    const floor = { kind: 'notched', height: 90, setback: 70 } as const
    const notched = applyEdit(project, { kind: 'editMethod', id: project.method, change: { floor } })
    const [b1] = derive(notched).cabinets
    expect(b1!.parts.some(({ role }) => role === 'kickBoard')).toBe(false)
    const side = b1!.parts.find(({ role }) => role === 'leftSide')!
    expect(side.operations[0]).toMatchObject({ kind: 'notch', length: 90, width: 70 + T(project) })
  })
  it('stand before the plinths, which are shallower by them', () => {
    const plinthEnd = (one: Project) => derive(one).cabinets[0]!.parts.find(({ role }) => role === 'plinthEnd')!.length
    expect(plinthEnd(project)).toBe(580 - setback - T(project) - 2 * T(project))
    expect(plinthEnd(withBetween(project, { kick: 'perCabinet' }))).toBe(580 - setback - 2 * T(project))
  })
  it('are spliced at the edge of a carcass where their sheets end', () => {
    const long = withBetween(aWall(...bases(900, 900, 900, 600)), LONG)
    // Sheets are 2440 long, less 10 trim at each end.
    expect(boards(long, 'kick').map((one) => one.split(' x ')[0])).toEqual(['BK1-KL1 1800', 'BK1-KL2 1500'])
  })
  it('run under fillers and before panels with the kick cut out, and stop at panels on the floor', () => {
    const [b1, b2] = bases(600, 500)
    const panel = (foot: 'floor' | 'notched') => ({ kind: 'panel', material: CARCASS, foot }) as const
    const ended = (foot: 'floor' | 'notched') =>
      boards(
        withBetween(
          aWall(
            { ...b1!, beside: { ...NOTHING_BESIDE, left: { kind: 'filler', width: 40, scribe: 5 } } },
            { ...b2!, beside: { ...NOTHING_BESIDE, right: panel(foot) } },
          ),
          LONG,
        ),
        'kick',
      )[0]
    expect(ended('floor')).toContain(`${40 + 600 + 500} x`)
    expect(ended('notched')).toContain(`${40 + 600 + 500 + T(project)} x`)
  })
  it('are parted where cabinets do not touch, and go on before talls', () => {
    const [b1, b2] = bases(600, 500)
    const tall = cabinet('T1', { left: 1300, width: 600, depth: 580 })
    expect(boards(withBetween(aWall(b1!, { ...b2!, left: 810 }), LONG), 'kick')).toHaveLength(2)
    expect(boards(withBetween(aWall(b1!, b2!, tall), LONG), 'kick')[0]).toContain(`${600 + 500 + 600} x`)
  })
})

describe('a countertop', () => {
  const plain = aWall(...bases(600, 900, 500))
  const project = withBetween(plain, { countertop: TOP })

  it('lies on the run and stands out past its ends and before its fronts', () => {
    const doors = applyEdit(project, {
      kind: 'setFront',
      ids: ['b2' as CabinetId],
      front: { kind: 'pair' },
    })
    const front = doors.materials[method(doors).frontMaterial]!.thickness
    expect(boards(project, 'countertop')).toEqual([`BT1-CT1 ${15 + 2000 + 15} x ${580 + 20} x ${T(project)}`])
    expect(boards(doors, 'countertop')).toEqual([`BT1-CT1 ${15 + 2000 + 15} x ${580 + front + 20} x ${T(project)}`])
    expect(runsOf(project, 'countertop')[0]!.place).toMatchObject({ left: 200 - 15, bottom: 868 })
  })
  it('stands out no further than there is room, and shares a gap with the next', () => {
    const tight = (left: number) => aWall(cabinet('B1', { left: 5, width: 600 }), cabinet('B2', { left, width: 500 }))
    const at = (left: number) => boards(withBetween(tight(left), { countertop: TOP }), 'countertop')
    expect(at(625)[0]).toContain(`${5 + 600 + 20 / 2} x`)
    expect(at(625)[1]).toContain(`${20 / 2 + 500 + 15} x`)
    const tall = aWall(cabinet('B1', { left: 300, width: 600 }), cabinet('T1', { left: 900, width: 600 }))
    expect(boards(withBetween(tall, { countertop: TOP }), 'countertop')[0]).toContain(`${15 + 600 + 0} x`)
  })
  it('is banded in front and at its free ends, and cut back by the bands where its size includes them', () => {
    const banded = withBetween(project, { countertop: { ...TOP, banding: 2 } })
    const [top] = runsOf(banded, 'countertop')[0]!.parts
    expect(top!.banding).toEqual({ low: 0, high: 2, start: 2, end: 2 })
    const { isInFinishedSize } = method(banded).banding
    const band = isInFinishedSize ? 2 : 0
    expect([top!.cutLength, top!.cutWidth]).toEqual([15 + 2000 + 15 - 2 * band, 580 + 20 - band])
    const flush = withBetween(project, { countertop: { ...TOP, ends: 0, banding: 2 } })
    expect(runsOf(flush, 'countertop')[0]!.parts[0]!.banding).toEqual({ low: 0, high: 2, start: 2, end: 2 })
    const wall = withBetween(aWall(cabinet('B1', { left: 0, width: 600 })), { countertop: { ...TOP, banding: 2 } })
    expect(runsOf(wall, 'countertop')[0]!.parts[0]!.banding).toEqual({ low: 0, high: 2, start: 0, end: 2 })
  })
  it('has a splash as long as itself, on it at the wall', () => {
    const splashed = withBetween(plain, { countertop: { ...TOP, splash: 80 } })
    expect(boards(splashed, 'countertop')[1]).toBe(`BT1-SP1 ${15 + 2000 + 15} x 80 x ${T(project)}`)
    const splash = runsOf(splashed, 'countertop')[0]!.parts[1]!
    expect(boxOf(splash)).toMatchObject({ min: { y: T(project), z: 0 }, max: { y: T(project) + 80, z: T(project) } })
    const banded = withBetween(plain, { countertop: { ...TOP, splash: 80, banding: 2 } })
    const { banding, cutLength, cutWidth } = runsOf(banded, 'countertop')[0]!.parts[1]!
    expect(banding).toEqual({ low: 0, high: 2, start: 2, end: 2 })
    expect([cutLength, cutWidth]).toEqual([15 + 2000 + 15 - 2 - 2, 80 - 2])
  })

  const sink: Cutout = { of: 'sink', width: 500, depth: 400, fromFront: 60 }
  const withSink = (cutout: Cutout, on = project) =>
    applyEdit(on, { kind: 'setCutout', ids: ['b2' as CabinetId], cutout })

  it('has its cut-outs in the middle of their cabinets', () => {
    const [top] = runsOf(withSink(sink), 'countertop')[0]!.parts
    // Its width runs from the wall to the front edge at 600.
    const x = 15 + 600 + 900 / 2 - 500 / 2
    expect(top!.operations).toEqual([{ kind: 'notch', x, y: 600 - 60 - 400, length: 500, width: 400 }])
  })
  it('leaves out a cut-out that does not lie in it, and says so', () => {
    const deep = withSink({ ...sink, depth: 560 })
    expect(runsOf(deep, 'countertop')[0]!.parts[0]!.operations).toEqual([])
    expect(derive(deep).problems.map(({ message }) => message)).toContain(
      'B2: its cut-out of 500 mm x 560 mm, 60 mm from the front, does not lie within a countertop 2030 mm long and 600 mm deep; it is left out.',
    )
    expect(derive(withSink({ ...sink, width: 880 })).problems.map(({ message }) => message)).toContain(
      `B2: its cut-out is 880 mm wide; between its sides there is ${900 - 2 * T(project)} mm.`,
    )
  })
  it('has its seams at carcass edges, and beside a cut-out before within it', () => {
    const long = withBetween(withWall(aWall(...bases(1000, 1300, 900)), { length: 5000 }), { countertop: TOP })
    expect(boards(long, 'countertop').map((one) => one.split(' x ')[0])).toEqual([
      `BT1-CT1 ${15 + 1000 + 1300}`,
      `BT1-CT2 ${900 + 15}`,
    ])
    const one = withBetween(withWall(aWall(...bases(300, 2900)), { length: 5000 }), { countertop: TOP })
    const wide = withSink({ ...sink, width: 1400 }, one)
    // The cut-out would lie from 1065 to 2465; the board ends at 2420, so the seam goes to 315, the edge before it.
    expect(boards(wide, 'countertop').map((each) => each.split(' x ')[0])[0]).toBe(`BT1-CT1 ${15 + 300}`)
  })
})

describe('boards over several cabinets', () => {
  const project = withBetween(aWall(...bases(600, 900, 500)), { ...LONG, countertop: { ...TOP, splash: 80 } })

  it('are in the cut list, named and marked, and gone when they are not wanted', () => {
    const { cutList, partOf } = derive(project)
    const rows = cutList.rows.filter(({ cabinets }) => cabinets.some((mark) => mark.startsWith('BT')))
    expect(rows.map(({ name }) => name)).toEqual(['countertop', 'splash'])
    expect([...partOf.values()].filter(({ owner }) => /^[A-Z]/.test(owner))).toHaveLength(3)
    expect(derive(withBetween(project, { kick: 'perCabinet', countertop: null })).runs).toEqual([])
  })
  it('stay the same boards while their run only moves', () => {
    const far = cabinet('B9', { left: 3000, width: 400 })
    const before = derive(applyEdit(project, { kind: 'addCabinet', cabinet: far }))
    const shapes = (['b1', 'b2', 'b3'] as CabinetId[]).map((id) => ({
      id,
      left: before.project.cabinets[id]!.left - 50,
    }))
    const after = derive(applyEdit(before.project, { kind: 'shapeCabinets', shapes }))
    expect(after.runs.map(({ parts }, at) => parts === before.runs[at]!.parts)).toEqual(before.runs.map(() => true))
    expect(after.cutList).toBe(before.cutList)
  })
  it('are made anew only where a cabinet of theirs changes', () => {
    const far = cabinet('B9', { left: 3000, width: 400 })
    const before = derive(applyEdit(project, { kind: 'addCabinet', cabinet: far }))
    const after = derive(
      applyEdit(before.project, { kind: 'shapeCabinets', shapes: [{ id: 'b9' as CabinetId, width: 450 }] }),
    )
    const same = after.runs.map(({ mark, parts }, at) => `${mark} ${parts === before.runs[at]!.parts}`)
    expect(same).toEqual(['BK1 true', 'BK9 false', 'BT1 true', 'BT9 false'])
  })
  it('are the very same runs where nothing of them changes', () => {
    const apart = withBetween(aWall(cabinet('B1', { width: 600 }), cabinet('B9', { left: 2500, width: 600 })), LONG)
    const wider = applyEdit(apart, { kind: 'shapeCabinets', shapes: [{ id: 'b1' as CabinetId, width: 650 }] })
    const [before, after] = [derive(apart).runs, derive(wider).runs]
    expect([after[0] === before[0], after[1] === before[1]]).toEqual([false, true])
  })
  it('are undone by name', () => {
    expect(labelOf(project, { kind: 'editBetween', change: LONG })).toBe('Change kick boards')
    expect(labelOf(project, { kind: 'editBetween', change: { countertop: null } })).toBe('Change countertop')
    const lost = { ...TOP, material: 'nowhere' as MaterialId }
    expect(withBetween(project, { countertop: lost })).toBe(project)
  })
})
