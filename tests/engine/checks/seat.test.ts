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
