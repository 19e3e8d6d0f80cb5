import { describe, expect, it } from 'vitest'
import { applyEdit } from '../../../engine/project/apply'
import type { Project } from '../../../engine/project/document'
import { newCabinetAt } from '../../../engine/runs/place'
import { aWall, cabinet } from '../../helpers/wall'
import { findingIn, remedied } from './findings'

const UNCUT = /open at its top for a sink/

/** Between two bases of 1000, so that there is room to work on either side of it. */
function withNew(what: 'sinkBase' | 'base' | 'drawerBase'): Project {
  const beside = aWall(cabinet('B1', { left: 0, width: 1000 }), cabinet('B2', { left: 1800, width: 1000 }))
  return applyEdit(beside, { kind: 'addCabinet', cabinet: newCabinetAt(beside, what, 1000, 800)! })
}

function topped(project: Project): Project {
  const { carcassMaterial: material } = project.methods[project.method]!
  const countertop = { material, overhang: 20, ends: 15, splash: 0, banding: 0 }
  return applyEdit(project, { kind: 'editBetween', change: { countertop } })
}

describe('a sink base', () => {
  it('is told that no sink is let into the top over it, and gets one in one step', () => {
    const project = topped(withNew('sinkBase'))
    const finding = findingIn(project, UNCUT)!
    expect(finding).toMatchObject({ weight: 'know', measure: 'no cut-out' })
    expect(finding.message).toContain('Let a sink in at its card, under Beside it')
    expect(finding.remedy?.label).toBe('Let a sink into the top over B3')
    const after = remedied(project, finding)
    expect(findingIn(after, UNCUT)).toBeNull()
    expect(Object.values(after.cabinets).find(({ number }) => number === 3)!.cutout).toEqual({
      of: 'sink',
      width: 480,
      depth: 400,
      fromFront: 70,
    })
    expect(findingIn(after, /finds no place|crosses|no countertop/)).toBeNull()
  })

  it('is told nothing of a sink before a countertop is chosen, and no other base is', () => {
    expect(findingIn(withNew('sinkBase'), UNCUT)).toBeNull()
    for (const what of ['base', 'drawerBase'] as const) expect(findingIn(topped(withNew(what)), UNCUT)).toBeNull()
  })
})
