import { describe, expect, it } from 'vitest'
import type { MaterialId } from '../../../engine/basics/id'
import { boltDepth, boltsAcross } from '../../../engine/between/seam'
import { centresOf, type HoleRow, type Recess } from '../../../engine/cabinets/operation'
import { toCabinet } from '../../../engine/geometry/placement'
import { boltsOfRun } from '../../../engine/hardware/seamBolts'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import { USUAL_SEAM_BOLTS } from '../../../engine/project/between'
import type { Cutout, Project } from '../../../engine/project/document'
import { aCorner, aWall, cabinet, OTHER_WALL, type Said } from '../../helpers/wall'

const CARCASS = 'carcass' as MaterialId
const TOP = { material: CARCASS, overhang: 20, ends: 15, splash: 0, banding: 0, seamBolts: USUAL_SEAM_BOLTS }

function topped(project: Project, countertop = TOP): Project {
  return applyEdit(project, { kind: 'editBetween', change: { countertop } })
}

const tops = (project: Project) => derive(project).runs.filter(({ kind }) => kind === 'countertop')

/** Every bore by its board, along its wall and from it. */
function bores(project: Project): string[] {
  return tops(project).flatMap(({ place, parts }) =>
    parts.flatMap((part) =>
      part.operations
        .filter((one): one is HoleRow => one.kind === 'holeRow' && one.purpose === 'seamBolt')
        .flatMap((row) =>
          centresOf(row).map(({ x, y }) => {
            const at = toCabinet(part.placement, x, y, 0)
            return `${part.mark} ${place.left + at.x}, ${at.z}`
          }),
        ),
    ),
  )
}

/** Three bases from 200, 600 + 900 + 1400, with a top from 185 to 3115 that is 580 + 20 deep. */
const three = (cutout: Cutout | null = null) =>
  aWall(
    cabinet('B1', { left: 200, width: 600 }),
    cabinet('B2', { left: 800, width: 900, cutout }),
    cabinet('B3', { left: 1700, width: 1400 }),
  )

describe('the bolts of a seam', () => {
  it('are as many as the depth of the top asks for', () => {
    // 600 - 2 x 80 = 440 in steps of 250 at most; 640 - 160 = 480; 700 - 160 = 540 asks for three steps.
    expect(boltsAcross(600, USUAL_SEAM_BOLTS)).toEqual([80, 80 + 220, 80 + 440])
    expect(boltsAcross(400, USUAL_SEAM_BOLTS)).toEqual([80, 320])
    expect(boltsAcross(700, USUAL_SEAM_BOLTS)).toEqual([80, 80 + 180, 80 + 360, 80 + 540])
  })

  it('are let in as deep as is said, with six over them in a thin top', () => {
    expect([boltDepth(38, USUAL_SEAM_BOLTS), boltDepth(18, USUAL_SEAM_BOLTS)]).toEqual([20, 18 - 6])
  })

  it('are routed for in the undersides of both boards of a splice, on one line across it', () => {
    // Sheets of 2440 give boards of 2420 at most, to 2605: the seam is at the edge of B2 and B3, at 1700 along the wall.
    const project = topped(three())
    const lines = [80, 300, 520]
    expect(bores(project)).toEqual([
      ...lines.map((z) => `BT1-CT1 ${1700 - 45}, ${z}`),
      ...lines.map((z) => `BT1-CT2 ${1700 + 45}, ${z}`),
    ])
    const [first] = tops(project)[0]!.parts
    const slots = first!.operations.filter((one): one is Recess => one.kind === 'groove')
    // From the end of the board to where the corners of the slot are in the bore: 45 - sqrt(15^2 - 5^2).
    const reach = 45 - Math.sqrt(15 ** 2 - 5 ** 2)
    for (const slot of slots) {
      expect([slot.face, slot.width, slot.depth]).toEqual(['inside', 10, 12])
      expect(slot.length).toBeCloseTo(reach, 2)
      expect(slot.x + slot.length).toBeCloseTo(first!.length, 2)
    }
    expect(slots.length).toBe(3)
  })

  it('are routed for in the front edge of a top that another stops at, on the lines of that one', () => {
    const b1 = cabinet('B1', { left: 3000, width: 600, depth: 580 })
    const b2 = cabinet('B2', { wall: OTHER_WALL, left: 580, width: 700, depth: 540 })
    const project = topped(aCorner(b1, b2))
    // BT2 is 560 deep and stops at 600, the front edge of BT1: 400 in two steps of 200.
    const lines = [80, 280, 480]
    expect(bores(project).filter((one) => one.startsWith('BT2'))).toEqual(lines.map((z) => `BT2-CT1 ${600 + 45}, ${z}`))
    // So far from the wall of BT2 they are from the corner at 3600.
    expect(bores(project).filter((one) => one.startsWith('BT1'))).toEqual(
      [...lines].reverse().map((z) => `BT1-CT1 ${3600 - z}, ${600 - 45}`),
    )
  })

  describe('in a corner of two tops that do not lie alike', () => {
    const OAK = 'oak' as MaterialId
    const b1 = cabinet('B1', { left: 3000, width: 600, depth: 580 })
    const b2 = (said: Said) => cabinet('B2', { wall: OTHER_WALL, left: 580, width: 700, depth: 540, ...said })
    const inCorner = (said: Said): Project => {
      const project = topped(aCorner(b1, b2(said)))
      const oak = { ...project.materials[CARCASS]!, id: OAK, name: 'Oak', nominal: 40, thickness: 40 }
      return { ...project, materials: { ...project.materials, [OAK]: oak } }
    }
    const told = (project: Project) => derive(project).problems.filter(({ message }) => /gets no bolts/.test(message))

    it('are left out for the thickness, which is told with both', () => {
      const project = inCorner({ top: { own: { material: OAK } } })
      expect(bores(project)).toEqual([])
      expect(told(project)).toMatchObject([
        {
          ...{ weight: 'know', about: { kind: 'cabinet', cabinet: 'b2' }, measure: '40 mm', limit: '18 mm' },
          message: expect.stringMatching(
            /^B2: its countertop, of 40 mm, stops in the corner at the front edge of BT1, of 18 mm,/,
          ),
        },
      ])
    })

    it('are left out for the height, which is told in the words of it', () => {
      const plain = cabinet('B9')
      const project = inCorner({ height: plain.height + 10 })
      expect(bores(project)).toEqual([])
      expect(told(project)).toMatchObject([{ measure: `${plain.height + 10} mm`, limit: `${plain.height} mm` }])
      expect(told(project)[0]!.message).toContain(`${plain.height} mm over the floor`)
    })

    it('are missed by nobody where both lie alike, or no bolts are wanted', () => {
      expect(told(inCorner({}))).toEqual([])
      const { seamBolts: _, ...plain } = TOP
      const own = inCorner({ top: { own: { material: OAK } } })
      expect(told(applyEdit(own, { kind: 'editBetween', change: { countertop: plain } }))).toEqual([])
    })
  })

  it('are bought once for both of its boards', () => {
    const bought = (project: Project) =>
      tops(project).map((run) => boltsOfRun(run, project).map(({ quantity }) => quantity))
    expect(bought(topped(three()))).toEqual([[3]])
    const b1 = cabinet('B1', { left: 3000, width: 600, depth: 580 })
    const b2 = cabinet('B2', { wall: OTHER_WALL, left: 580, width: 700, depth: 540 })
    expect(bought(topped(aCorner(b1, b2)))).toEqual([[], [3]])
    expect(boltsOfRun(tops(topped(three()))[0]!, topped(three()))).toEqual([
      { name: 'countertop bolt', quantity: 3, length: 100 },
    ])
  })

  it('make no work where a cut-out lies, and that is told', () => {
    // With 50 beside it kept whole the seam goes no nearer; bores of 45 + 15 reach into a cut-out 55 from the seam.
    const cutout: Cutout = { of: 'hob', width: 790, depth: 300, fromFront: 150 }
    const project = topped(three(cutout))
    expect(bores(project)).toEqual([
      ...[80, 520].map((z) => `BT1-CT1 ${1700 - 45}, ${z}`),
      ...[80, 520].map((z) => `BT1-CT2 ${1700 + 45}, ${z}`),
    ])
    expect(derive(project).problems.map(({ message }) => message)).toContain(
      'B1: 1 bolt of the seams of its countertop find no place: a cut-out or another seam is in the way.',
    )
  })

  it('are none where nothing is said of them', () => {
    const { seamBolts: _, ...plain } = TOP
    const project = applyEdit(three(), {
      kind: 'editBetween',
      change: { countertop: plain },
    })
    expect(bores(project)).toEqual([])
    expect(tops(project).flatMap((run) => boltsOfRun(run, project))).toEqual([])
  })
})
