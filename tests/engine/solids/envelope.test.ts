import { describe, expect, it } from 'vitest'
import { valuesOf } from '../../../engine/basics/id'
import type { Board } from '../../../engine/cabinets/board'
import { type Rules, withOverrides } from '../../../engine/cabinets/build'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { newProject } from '../../../engine/project/defaults'
import type { Cabinet } from '../../../engine/project/document'
import type { BuildMethod } from '../../../engine/project/method'
import { READY } from '../../../engine/project/readyKinds'
import { newCabinetAt } from '../../../engine/runs/place'
import { aCabinet, rulesWith } from '../../helpers/cabinets'
import { outside } from '../../helpers/envelope'

interface Made {
  readonly cabinet: Cabinet
  readonly rules: Rules
}

/** What stands out of any of them. */
function told(makes: readonly Made[]): string[] {
  return makes.flatMap(({ cabinet, rules }, at) =>
    buildCabinet(cabinet, rules).boards.flatMap((board) => {
      return outside(board, cabinet, rules).map((text) => `${at}: ${text}`)
    }),
  )
}

describe('no board stands out of the width, the height and the depth of its cabinet but where the method puts it there', () => {
  it.each(['mm', 'in'] as const)('in a ready kind by any method of a new project in %s', (unit) => {
    const project = newProject(unit)
    const makes = READY.flatMap(([name]) =>
      valuesOf<BuildMethod>(project.methods).map((method): Made => {
        const cabinet = newCabinetAt(project, name, 0)!
        return { cabinet, rules: { method: withOverrides(method, cabinet), materials: project.materials } }
      }),
    )
    expect(makes.length).toBeGreaterThanOrEqual(READY.length)
    expect(told(makes)).toEqual([])
  })
})

describe('a board that is out of its room', () => {
  const moved = (board: Board, x: number, y: number, z: number): Board => {
    const { origin } = board.placement
    return {
      ...board,
      placement: { ...board.placement, origin: { x: origin.x + x, y: origin.y + y, z: origin.z + z } },
    }
  }

  it('is told, be it so little and whichever way it is out', () => {
    const cabinet = aCabinet('base', { front: { kind: 'door', hinge: 'left' } })
    const rules = rulesWith({ back: { kind: 'applied', margin: 0 } })
    const all = buildCabinet(cabinet, rules).boards
    const out = (role: Board['role'], x: number, y: number, z: number) =>
      outside(moved(all.find((one) => one.role === role)!, x, y, z), cabinet, rules).length
    expect(out('leftSide', -0.1, 0, 0)).toBe(1)
    expect(out('rightSide', 0.1, 0, 0)).toBe(1)
    expect(out('top', 0, 0.1, 0)).toBe(1)
    expect(out('back', 0, 0, -0.1)).toBe(1)
    expect(out('door', 0, 0, 0.1)).toBe(1)
    expect(out('bottom', 0, 0, 0.1)).toBe(1)
  })

  it.each(['L', 'diagonal'] as const)(
    'is told in the inside of an %s, in a corner at the left and at the right',
    (kind) => {
      for (const hand of ['left', 'right'] as const) {
        const corner = { kind, hand, other: 900, otherDepth: 580 }
        const cabinet = aCabinet('base', { width: 900, corner, front: { kind: 'door', hinge: 'left' } })
        const rules = rulesWith()
        const all = buildCabinet(cabinet, rules).boards
        const doors = all.filter(({ role }) => role === 'door')
        expect(doors.length).toBeGreaterThan(0)
        expect(doors.flatMap((door) => outside(door, cabinet, rules))).toEqual([])
        const into = hand === 'left' ? 1 : -1
        for (const door of doors) expect(outside(moved(door, into, 0, 1), cabinet, rules).length).toBeGreaterThan(0)
      }
    },
  )
})
