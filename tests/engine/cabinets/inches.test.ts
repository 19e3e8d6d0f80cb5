import { describe, expect, it } from 'vitest'
import type { Part } from '../../../engine/parts/part'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import { newProject } from '../../../engine/project/defaults'
import type { Front, Project } from '../../../engine/project/document'
import { USUAL_FIVE_PART, USUAL_FRAME } from '../../../engine/project/frames'
import type { MethodChoices } from '../../../engine/project/method'
import { newCabinetAt } from '../../../engine/runs/place'
import { inch } from '../../../engine/units/length'

const FRONTS: readonly Front[] = [{ kind: 'door', hinge: 'left' }, { kind: 'door', hinge: 'right' }, { kind: 'pair' }]
const WAYS: readonly Partial<MethodChoices>[] = [
  {},
  { frontMount: 'inset' },
  { frontBuild: USUAL_FIVE_PART },
  { faceFrame: USUAL_FRAME },
  { faceFrame: { ...USUAL_FRAME, fronts: { kind: 'overlay', by: inch(0.5) } }, frontBuild: USUAL_FIVE_PART },
]

function withOne(project: Project, front: Front, width: number, overrides: Partial<MethodChoices>): readonly Part[] {
  const cabinet = { ...newCabinetAt(project, 'base', 0)!, width, front, overrides }
  const [built] = derive(applyEdit(project, { kind: 'addCabinet', cabinet })).cabinets
  return built!.parts
}

const cups = (parts: readonly Part[]) =>
  parts.flatMap(({ operations }) => operations.filter((one) => one.kind === 'holeRow' && one.purpose === 'hingeCup'))

// Widths in sixteenths settle on a grid that sums of floats miss: the hinges must be found all the same.
describe.each(['in', 'mm'] as const)('doors drawn in %s', (unit) => {
  const project = newProject(unit)
  const step = unit === 'in' ? inch(1 / 16) : 1.3

  it('have their hinges, whatever their width and however they are made', () => {
    const without: string[] = []
    for (const [way, choices] of WAYS.entries()) {
      for (const front of FRONTS) {
        for (let turn = 0; turn < 40; turn++) {
          const width = 460 + turn * step * 3
          const found = cups(withOne(project, front, width, choices)).length
          if (found < (front.kind === 'pair' ? 4 : 2)) without.push(`way ${way} ${front.kind} ${width}: ${found}`)
        }
      }
    }
    expect(without).toEqual([])
  })
})

it('drawer slides are sold in steps of 2 in where inches are shown, and of 50 mm elsewhere', () => {
  const steps = (['in', 'mm'] as const).map((unit) => {
    const { methods, method } = newProject(unit)
    return methods[method]!.drawers.lengthStep
  })
  expect(steps).toEqual([inch(2), 50])
})
