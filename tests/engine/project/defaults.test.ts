import { describe, expect, it } from 'vitest'
import { valuesOf } from '../../../engine/basics/id'
import { newProject } from '../../../engine/project/defaults'
import { danglingIn } from '../../../engine/project/references'
import { readProject, writeProject } from '../../../engine/project/schema'
import { inch, settle } from '../../../engine/units/length'

describe('a new project', () => {
  it.each(['mm', 'in'] as const)('in %s can be kept in a file and lacks nothing it names', (unit) => {
    const project = newProject(unit, 'Ferry Cottage')
    expect(danglingIn(project)).toBeNull()
    expect(readProject(writeProject(project))).toEqual({ ok: true, value: project })
    expect(project.name).toBe('Ferry Cottage')
    expect(valuesOf(project.cabinets)).toEqual([])
  })

  it('in mm has bases of 100 plinth and 768 side, for a worktop at 900 with 32 on top', () => {
    const { newCabinets, methods, method } = newProject('mm')
    expect(newCabinets.base.height).toBe(100 + 768)
    expect(newCabinets.base.height + 32).toBe(900)
    expect(methods[method]?.floor).toEqual({ kind: 'plinth', height: 100, setback: 60 })
  })

  it('in inches has bases of 34 1/2 over a kick of 4 1/4, so sides of 30 1/4', () => {
    const { newCabinets, methods, method } = newProject('in')
    const floor = methods[method]!.floor
    const kick = floor.kind === 'none' ? 0 : floor.height
    expect(settle(newCabinets.base.height - kick)).toBe(inch(30.25))
  })

  it.each(['mm', 'in'] as const)('in %s has talls that end where the uppers do, under the ceiling', (unit) => {
    const { newCabinets, walls } = newProject(unit)
    const top = settle(newCabinets.upper.bottom + newCabinets.upper.height)
    expect(newCabinets.tall.height).toBe(top)
    expect(top).toBeLessThan(valuesOf<{ height: number }>(walls)[0]!.height)
  })

  it('in inches counts with the measured thickness of ply, not its label', () => {
    const carcass = valuesOf(newProject('in').materials).find(({ id }) => id === 'carcass')!
    expect(carcass.nominal).toBe(inch(0.75))
    expect(carcass.thickness).toBe(inch(23 / 32))
  })

  it('has a sheet to buy for every material', () => {
    const { materials, stock } = newProject('mm')
    const bought = valuesOf(stock).map(({ material }) => material)
    expect(
      valuesOf(materials)
        .map(({ id }) => id)
        .filter((id) => !bought.includes(id)),
    ).toEqual([])
  })
})
