import { describe, expect, it } from 'vitest'
import type { MaterialId } from '../../../engine/basics/id'
import { boxOf } from '../../../engine/cabinets/boardBox'
import type { Part } from '../../../engine/parts/part'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { Between, Cabinet, Project, TrimKind } from '../../../engine/project/document'
import { labelOf } from '../../../engine/project/label'
import { aWall, cabinet, withWall } from '../../helpers/wall'

const CARCASS = 'carcass' as MaterialId
const T = 18
const WINDOW = { kind: 'window', left: 1500, bottom: 1100, width: 600, height: 900 } as const

function trimmed(project: Project, change: Partial<Between>): Project {
  return applyEdit(project, { kind: 'editBetween', change })
}
const runsOf = (project: Project, kind: TrimKind) => derive(project).runs.filter((run) => run.kind === kind)
const said = ({ mark, length, width, thickness }: Part) => `${mark} ${length} x ${width} x ${thickness}`
const boards = (project: Project, kind: TrimKind) => runsOf(project, kind).flatMap(({ parts }) => parts.map(said))
const told = (project: Project, kind: TrimKind) =>
  runsOf(project, kind).flatMap(({ problems }) => problems.map(({ message }) => message))

/** Uppers 320 deep and 700 high, 1400 above the floor. */
const upper = (mark: string, left: number, width: number, more: Partial<Cabinet> = {}) =>
  cabinet(mark, { left, width, bottom: 1400, height: 700, depth: 320, ...more })
const RAIL = { material: CARCASS, height: 40, forward: 0 }
const CROWN = { material: CARCASS, height: 80, forward: 20 }

describe('a light rail', () => {
  const project = trimmed(aWall(upper('U1', 300, 600), upper('U2', 900, 500)), { lightRail: RAIL })

  it('goes under all of a run, with a return at each free end', () => {
    // The returns lie behind the rail: 320 deep less its 18.
    expect(boards(project, 'lightRail')).toEqual([
      `UL1-LR1 ${600 + 500} x 40 x ${T}`,
      `UL1-LT1 ${320 - T} x 40 x ${T}`,
      `UL1-LT2 ${320 - T} x 40 x ${T}`,
    ])
    const [run] = runsOf(project, 'lightRail')
    expect(run!.place).toMatchObject({ left: 300, bottom: 1400 - 40 })
    expect(run!.parts.map(boxOf)).toEqual([
      { min: { x: 0, y: 0, z: 320 - T }, max: { x: 1100, y: 40, z: 320 } },
      { min: { x: 0, y: 0, z: 0 }, max: { x: T, y: 40, z: 320 - T } },
      { min: { x: 1100 - T, y: 0, z: 0 }, max: { x: 1100, y: 40, z: 320 - T } },
    ])
  })
  it('is shorter at its returns as it is set back', () => {
    const back = trimmed(project, { lightRail: { ...RAIL, forward: -25 } })
    expect(boards(back, 'lightRail')[1]).toBe(`UL1-LT1 ${320 - 25 - T} x 40 x ${T}`)
  })
  it('has no return at the end of the wall, nor beside a tall', () => {
    const tall = cabinet('T1', { left: 900, width: 600, depth: 580, height: 2200 })
    const tight = trimmed(aWall(upper('U1', 0, 900), tall), { lightRail: RAIL })
    expect(boards(tight, 'lightRail')).toEqual([`UL1-LR1 900 x 40 x ${T}`])
  })
  it('is parted where the uppers step in depth or height, and goes back to the face beside it', () => {
    const stepped = trimmed(aWall(upper('U1', 300, 600), upper('U2', 900, 500, { depth: 400 })), { lightRail: RAIL })
    expect(boards(stepped, 'lightRail')).toEqual([
      `UL1-LR1 600 x 40 x ${T}`,
      `UL1-LT1 ${320 - T} x 40 x ${T}`,
      `UL2-LR1 500 x 40 x ${T}`,
      // From behind its own rail to the face of the shallower one.
      `UL2-LT1 ${400 - T - 320} x 40 x ${T}`,
      `UL2-LT2 ${400 - T} x 40 x ${T}`,
    ])
  })
  it('is not made where its board would stand in the wall', () => {
    const gone = trimmed(project, { lightRail: { ...RAIL, forward: -310 } })
    expect(boards(gone, 'lightRail')).toEqual([])
    expect(told(gone, 'lightRail')).toEqual([
      'The light rail UL1: its face would be 10 mm from the wall; its board is 18 mm thick.',
    ])
  })
})

describe('a crown', () => {
  it('stands on uppers and talls, before their carcass, parted where the depth steps', () => {
    const tall = cabinet('T1', { left: 900, width: 600, depth: 580, height: 2100 })
    const project = trimmed(aWall(upper('U1', 300, 600), tall), { crown: CROWN })
    expect(boards(project, 'crown')).toEqual([
      `UC1-CR1 600 x 80 x ${T}`,
      `UC1-CE1 ${320 + 20 - T} x 80 x ${T}`,
      `TC1-CR1 600 x 80 x ${T}`,
      // From behind its own face at 600 back to the face of the uppers' crown at 340.
      `TC1-CE1 ${580 + 20 - T - 340} x 80 x ${T}`,
      `TC1-CE2 ${580 + 20 - T} x 80 x ${T}`,
    ])
    expect(runsOf(project, 'crown')[0]!.place).toMatchObject({ left: 300, bottom: 2100 })
  })
  it('is told where it does not go under the ceiling', () => {
    const low = withWall(trimmed(aWall(upper('U1', 300, 600)), { crown: CROWN }), { height: 2150 })
    expect(told(low, 'crown')).toEqual([
      'The crown UC1: its upper edge would be at 2180 mm; the ceiling of Wall is at 2150 mm.',
    ])
  })
  it('is spliced at the edge of a carcass where its sheets end', () => {
    // Sheets are 2440 long, less 10 trim at each end.
    const long = trimmed(aWall(upper('U1', 0, 1200), upper('U2', 1200, 1200), upper('U3', 2400, 1200)), {
      crown: CROWN,
    })
    expect(boards(long, 'crown').slice(0, 2)).toEqual([`UC1-CR1 2400 x 80 x ${T}`, `UC1-CR2 1200 x 80 x ${T}`])
  })
})

describe('a valance', () => {
  const VALANCE = { material: CARCASS, height: 100, forward: 0 }
  const pair = [upper('U1', 900, 600), upper('U2', 2100, 500, { depth: 300, height: 720 })] as const
  const project = withWall(trimmed(aWall(...pair), { valance: VALANCE }), {}, WINDOW)

  it('goes from one upper to the next over a window, at the front of the shallower and the lower top', () => {
    expect(boards(project, 'valance')).toEqual([`UV1-VA1 ${2100 - 900 - 600} x 100 x ${T}`])
    const [run] = runsOf(project, 'valance')
    expect(run!.place).toMatchObject({ left: 1500, bottom: 2100 - 100 })
    expect(boxOf(run!.parts[0]!)).toEqual({ min: { x: 0, y: 0, z: 300 - T }, max: { x: 600, y: 100, z: 300 } })
  })
  it('is made over no gap without a window, and not beside a tall', () => {
    expect(boards(withWall(project, {}), 'valance')).toEqual([])
    const tall = cabinet('T1', { left: 2100, width: 600 })
    expect(boards(withWall(trimmed(aWall(pair[0], tall), { valance: VALANCE }), {}, WINDOW), 'valance')).toEqual([])
  })
  it('is told where no sheet is long enough for it', () => {
    const far = aWall(upper('U1', 0, 400), upper('U2', 3000, 500))
    const long = withWall(trimmed(far, { valance: VALANCE }), { length: 3600 }, WINDOW)
    expect(told(long, 'valance')).toEqual([
      'The valance UV1: it goes over 2600 mm in one length; its sheets give 2420 mm. As drawn it has a splice.',
    ])
  })
})

describe('the seen edges of trims', () => {
  /** New metric projects band fronts with 1, which is in the finished size. */
  const BAND = 1
  const cuts = (project: Project, kind: TrimKind) =>
    runsOf(project, kind).flatMap(({ parts }) =>
      parts.map(({ mark, cutLength, cutWidth }) => `${mark} ${cutLength} x ${cutWidth}`),
    )

  it('of a light rail are the lower ones and its free ends', () => {
    const free = trimmed(aWall(upper('U1', 300, 600)), { lightRail: RAIL })
    expect(runsOf(free, 'lightRail')[0]!.parts[0]!.banding).toEqual({ low: 1, high: 0, start: 1, end: 1 })
    expect(cuts(free, 'lightRail')).toEqual([
      `UL1-LR1 ${600 - 2 * BAND} x ${40 - BAND}`,
      `UL1-LT1 ${320 - T} x ${40 - BAND}`,
      `UL1-LT2 ${320 - T} x ${40 - BAND}`,
    ])
    // At the left end of the wall nothing is seen; the right end is where its length starts.
    const atWall = trimmed(aWall(upper('U1', 0, 600)), { lightRail: RAIL })
    expect(runsOf(atWall, 'lightRail')[0]!.parts[0]!.banding).toEqual({ low: 1, high: 0, start: 1, end: 0 })
  })
  it('of a crown are its free ends, and the lower one where it stands before the carcass', () => {
    const crowned = (forward: number) => trimmed(aWall(upper('U1', 300, 600)), { crown: { ...CROWN, forward } })
    expect(cuts(crowned(20), 'crown')[0]).toBe(`UC1-CR1 ${600 - 2 * BAND} x ${80 - BAND}`)
    expect(cuts(crowned(0), 'crown')[0]).toBe(`UC1-CR1 ${600 - 2 * BAND} x 80`)
    expect(cuts(crowned(20), 'crown')[1]).toBe(`UC1-CE1 ${320 + 20 - T} x 80`)
  })
  it('of a valance is the lower one, and a splice is bare', () => {
    const far = aWall(upper('U1', 0, 400), upper('U2', 3000, 500))
    const valance = { material: CARCASS, height: 100, forward: 0 }
    const long = withWall(trimmed(far, { valance }), { length: 3600 }, WINDOW)
    const bands = runsOf(long, 'valance').flatMap(({ parts }) => parts.map(({ banding }) => banding))
    expect(bands).toEqual([
      { low: 1, high: 0, start: 0, end: 0 },
      { low: 1, high: 0, start: 0, end: 0 },
    ])
  })
  it('are bare where fronts are, and follow the build method', () => {
    const project = trimmed(aWall(upper('U1', 300, 600)), { lightRail: RAIL })
    derive(project)
    const banding = { carcass: 1, fronts: 0, isInFinishedSize: true }
    const bare = applyEdit(project, { kind: 'editMethod', id: project.method, change: { banding } })
    expect(cuts(bare, 'lightRail')[0]).toBe('UL1-LR1 600 x 40')
  })
})

it('is one undo step by its name', () => {
  expect(labelOf(aWall(), { kind: 'editBetween', change: { lightRail: RAIL } })).toBe('Change light rail')
})
