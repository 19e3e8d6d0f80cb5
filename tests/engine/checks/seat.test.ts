import { describe, expect, it } from 'vitest'
import { type MaterialId, valuesOf } from '../../../engine/basics/id'
import { derive } from '../../../engine/pipeline'
import { newProject } from '../../../engine/project/defaults'
import type { Cabinet, Material, Project } from '../../../engine/project/document'
import { newCabinetAt } from '../../../engine/runs/place'
import { figureOf, findingIn, remedied } from './findings'

const GIVES = /its lid of .* would give/

function bench(width: number, said: Partial<Cabinet> = {}): Project {
  const plain = newProject('mm')
  const made = { ...newCabinetAt(plain, 'benchBox', 0)!, width, ...said }
  return { ...plain, cabinets: { [made.id]: made } as Project['cabinets'] }
}

/** Boards are 18 thick, of 9000 N/mm2; the lid is 396 deep, the stretcher under its front 18 by 60 on edge. */
const STIFF = 9000 * ((396 * 18 ** 3) / 12 + (18 * 60 ** 3) / 12)
const SEATED = 1300
const span = (width: number) => width - 2 * 18

describe('the fixed top of a window seat', () => {
  const TOP_GIVES = /its top of .* would give/
  const seat = (width: number, said: Partial<Cabinet> = {}) =>
    bench(width, { overrides: { baseTop: { kind: 'full' } }, ...said })
  const inertia = (depth: number) => (depth * 18 ** 3) / 12

  it('gives too much where it is long, housed in its sides: half way between P L^3 / (48 E I) and P L^3 / (192 E I)', () => {
    const project = seat(1200)
    const finding = findingIn(project, TOP_GIVES)!
    const top = derive(project).cabinets[0]!.parts.find(({ role }) => role === 'top')!
    const stiff = 9000 * inertia(top.width)
    const [resting, clamped] = [48, 192].map((by) => (SEATED * span(1200) ** 3) / (by * stiff))
    expect(finding.weight).toBe('mind')
    expect(figureOf(finding.measure)).toBeCloseTo((resting! + clamped!) / 2, 1)
    expect(figureOf(finding.limit)).toBeCloseTo(span(1200) / 144, 1)
    expect(finding.message).toContain(
      'in its middle, borne by it alone and housed, so judged half way between resting and clamped;',
    )
    expect(finding.source).toMatch(/EN 12520 for domestic seating, from memory; housed ends/)
    const greatest = Math.sqrt((8 / 5) * ((48 * stiff) / (144 * SEATED)))
    expect(figureOf(/([\d.]+) mm is the greatest/.exec(finding.message)?.[1])).toBeCloseTo(greatest, 0)
    expect(findingIn(seat(greatest + 36 - 1), TOP_GIVES)).toBeNull()
    expect(findingIn(seat(greatest + 36 + 1), TOP_GIVES)).not.toBeNull()
  })

  it('rests on sides that it lies on, and between sides that it is butted to', () => {
    const over = seat(1000, { overrides: { baseTop: { kind: 'full' }, top: 'over' } })
    const butted = seat(1000, { overrides: { baseTop: { kind: 'full' }, cornerJoint: { kind: 'butt' } } })
    for (const project of [over, butted]) {
      const finding = findingIn(project, TOP_GIVES)!
      const top = derive(project).cabinets[0]!.parts.find(({ role }) => role === 'top')!
      const resting = (SEATED * span(1000) ** 3) / (48 * 9000 * inertia(top.width))
      expect(figureOf(finding.measure)).toBeCloseTo(resting, 1)
      expect(finding.message).toContain('in its middle, borne by it alone;')
    }
  })

  it('is borne by a partition, or else made of a thicker board, whichever is tried first', () => {
    const project = seat(1200)
    const finding = findingIn(project, TOP_GIVES)!
    expect(finding.remedy?.label).toBe('Put a partition into B1')
    expect(findingIn(remedied(project, finding), TOP_GIVES)).toBeNull()
    const plain = seat(2600, { interior: { fixedShelves: 0, adjustableShelves: 0, partition: { at: 0.5 } } })
    const [board] = valuesOf<Material>(plain.materials)
    const thick = { ...board!, id: 'm30' as MaterialId, name: '30 mm ply', nominal: 30, thickness: 30 }
    const parted: Project = { ...plain, materials: { ...plain.materials, [thick.id]: thick } }
    const long = findingIn(parted, TOP_GIVES)!
    expect(long.remedy?.label).toBe('Make the carcass of B1 of 30 mm ply')
    expect(findingIn(remedied(parted, long), TOP_GIVES)).toBeNull()
  })

  it('is a worktop, and nobody sits on it, where it is higher than 20 in', () => {
    expect(findingIn(seat(1200, { height: 508 }), TOP_GIVES)).not.toBeNull()
    expect(findingIn(seat(1200, { height: 509 }), TOP_GIVES)).toBeNull()
    expect(findingIn(seat(1200, { height: 400, bottom: 109 }), TOP_GIVES)).toBeNull()
  })
})

describe('the top of a bench through a corner', () => {
  const LEG_GIVES = /its top of .* either leg/
  const [DEEP, WIDE] = [450, 900]
  const inCorner = (kind: 'L' | 'diagonal', hand: 'left' | 'right', width: number, other: number): Project => {
    const corner = { kind, hand, other, otherDepth: DEEP } as const
    return bench(width, {
      corner,
      depth: DEEP,
      height: 432,
      front: { kind: 'open' },
      overrides: { back: { kind: 'none' } },
    })
  }
  const thick = (project: Project) => {
    const [board] = valuesOf<Material>(project.materials)
    const made = { ...board!, id: 'm30' as MaterialId, name: '30 mm ply', nominal: 30, thickness: 30 }
    return { ...project, materials: { ...project.materials, [made.id]: made } }
  }

  it.each(['left', 'right'] as const)(
    'of an L gives along its longer leg from the side to the corner post, as deep as the leg: P L^3 / (48 E I), corner at the %s',
    (hand) => {
      const finding = findingIn(inCorner('L', hand, WIDE, 800), LEG_GIVES)!
      // The post begins at the wall and takes 60 of the own leg, the side 18.
      const leg = WIDE - 60 - 18
      expect(finding.weight).toBe('mind')
      expect(figureOf(finding.measure)).toBeCloseTo((SEATED * leg ** 3) / (48 * 9000 * ((DEEP * 18 ** 3) / 12)), 1)
      expect(figureOf(finding.limit)).toBeCloseTo(leg / 144, 1)
      expect(finding.source).toContain('EN 12520')
    },
  )

  it('of an L whose other leg is the longer gives along that, past the 18 of the post', () => {
    const finding = findingIn(inCorner('L', 'left', WIDE, 1000), LEG_GIVES)!
    const leg = 1000 - 18 - 18
    expect(figureOf(finding.measure)).toBeCloseTo((SEATED * leg ** 3) / (48 * 9000 * ((DEEP * 18 ** 3) / 12)), 1)
  })

  it('of an L gives along the leg across its grain by the stiffness of its board there, or says what is assumed', () => {
    const project = inCorner('L', 'left', WIDE, 1000)
    expect(findingIn(project, LEG_GIVES)!.message).toContain('taken to be as stiff there as along it')
    const softer = Object.fromEntries(
      Object.entries(project.materials).map(([id, board]) => [id, { ...board, stiffnessAcross: 6000 }]),
    )
    const finding = findingIn({ ...project, materials: softer }, LEG_GIVES)!
    const leg = 1000 - 18 - 18
    expect(figureOf(finding.measure)).toBeCloseTo((SEATED * leg ** 3) / (48 * 6000 * ((DEEP * 18 ** 3) / 12)), 1)
    expect(finding.message).not.toContain('taken to be as stiff')
    // The leg along the own wall has the grain along it, and is judged as before.
    expect(findingIn({ ...inCorner('L', 'left', WIDE, 700), materials: softer }, LEG_GIVES)!.message).not.toContain(
      'grain',
    )
  })

  it('of a diagonal is as deep as it is in the middle of the leg', () => {
    const finding = findingIn(inCorner('diagonal', 'left', 1200, 1200), LEG_GIVES)!
    // The line goes 1200 - 450 along and as far out, so that it is as much deeper as it is away from the end.
    const leg = 1200 - 18 - 18
    const deep = DEEP + leg / 2 + 18
    expect(figureOf(finding.measure)).toBeCloseTo((SEATED * leg ** 3) / (48 * 9000 * ((deep * 18 ** 3) / 12)), 1)
  })

  it('is made of a thicker board where the project has one, and holds where both legs are short', () => {
    const project = thick(inCorner('L', 'left', WIDE, 800))
    const finding = findingIn(project, LEG_GIVES)!
    expect(finding.remedy?.label).toBe('Make the carcass of B1 of 30 mm ply')
    expect(findingIn(remedied(project, finding), LEG_GIVES)).toBeNull()
    expect(findingIn(inCorner('L', 'left', 700, 650), LEG_GIVES)).toBeNull()
  })
})

describe('the lid of a bench', () => {
  it('of the usual width bears who sits on it', () => {
    expect(findingIn(bench(900), GIVES)).toBeNull()
  })

  it('gives too much under a seated person where it is long: P L^3 / (48 E I), the lid with its front stretcher', () => {
    const finding = findingIn(bench(1300), GIVES)!
    const { lid, rail } = Object.fromEntries(
      derive(bench(1300)).cabinets[0]!.parts.map((part) => [part.role === 'frontStretcher' ? 'rail' : part.role, part]),
    )
    expect([lid!.width, lid!.thickness, rail!.width, rail!.thickness]).toEqual([396, 18, 60, 18])
    expect(finding.weight).toBe('mind')
    expect(figureOf(finding.measure)).toBeCloseTo((SEATED * span(1300) ** 3) / (48 * STIFF), 1)
    expect(figureOf(finding.limit)).toBeCloseTo(span(1300) / 144, 1)
    expect(finding.source).toMatch(/EN 12520 for domestic seating, from memory/)
    // 1300 / 9.80665 kg.
    expect(finding.message).toContain('132.6 kg')
  })

  it('holds up to the span that is told, and not past it', () => {
    const greatest = Math.sqrt(STIFF / (3 * SEATED))
    expect(figureOf(/([\d.]+) mm is the greatest/.exec(findingIn(bench(1300), GIVES)!.message)?.[1])).toBeCloseTo(
      greatest,
      0,
    )
    expect(findingIn(bench(greatest + 36 - 1), GIVES)).toBeNull()
    expect(findingIn(bench(greatest + 36 + 1), GIVES)).not.toBeNull()
  })

  it('is borne by a partition, which is the way out', () => {
    const project = bench(1300)
    const finding = findingIn(project, GIVES)!
    expect(finding.remedy?.label).toBe('Put a partition into B1')
    const after = remedied(project, finding)
    expect(valuesOf<Cabinet>(after.cabinets)[0]!.interior.partition).toEqual({ at: 0.5 })
    expect(findingIn(after, GIVES)).toBeNull()
  })

  it('is made of a thicker board where there is a partition already', () => {
    const plain = bench(2600, { interior: { fixedShelves: 0, adjustableShelves: 0, partition: { at: 0.5 } } })
    const [board] = valuesOf<Material>(plain.materials)
    const thick = { ...board!, id: 'm30' as MaterialId, name: '30 mm ply', nominal: 30, thickness: 30 }
    const project: Project = { ...plain, materials: { ...plain.materials, [thick.id]: thick } }
    const finding = findingIn(project, GIVES)!
    expect(finding.remedy?.label).toBe('Make the fronts and the lid of B1 of 30 mm ply')
    expect(findingIn(remedied(project, finding), GIVES)).toBeNull()
  })
})
