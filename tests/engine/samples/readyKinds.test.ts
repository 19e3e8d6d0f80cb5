import { isDeepStrictEqual } from 'node:util'
import { describe, expect, it } from 'vitest'
import { valuesOf } from '../../../engine/basics/id'
import type { Cabinet, Project } from '../../../engine/project/document'
import { startOf } from '../../../engine/project/ready'
import { type NewKind, READY, SPACES } from '../../../engine/project/readyKinds'
import { fortyCabinets } from '../../../engine/samples/workshop'

/** Whether a cabinet is what that ready kind would be at its width and in its corner, whatever else it was told to be built by. */
function isOf(name: NewKind, cabinet: Cabinet, project: Project): boolean {
  const isAtRight = cabinet.corner?.hand === 'right'
  const { overrides, ...start } = startOf(project, name, { width: cabinet.width, isAtRight })
  const isThatOf = (whole: object, part: object) =>
    Object.entries(part).every(([key, value]) => isDeepStrictEqual(whole[key as keyof typeof whole], value))
  return isThatOf(cabinet, start) && isThatOf(cabinet.overrides, overrides)
}

/** All that stands ready in the tray, in its order. */
const KINDS = [...READY, ...SPACES].map(([name]) => name)

describe('the forty cabinets', () => {
  it('have one of each kind that stands ready among them, spaces too, as it stands ready to be put on the wall', () => {
    const project = fortyCabinets()
    const cabinets = valuesOf<Cabinet>(project.cabinets)
    const counts = KINDS.map((name) => [name, cabinets.filter((one) => isOf(name, one, project)).length])
    expect(counts).toEqual(KINDS.map((name) => [name, 1]))
  })

  it('have no cabinet that could be two ready kinds', () => {
    const project = fortyCabinets()
    const cabinets = valuesOf<Cabinet>(project.cabinets)
    const found = KINDS.map((name) => cabinets.find((one) => isOf(name, one, project))?.id)
    expect(new Set(found).size).toBe(KINDS.length)
  })
})
