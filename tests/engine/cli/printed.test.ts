import { describe, expect, it } from 'vitest'
import { printedCabinet } from '../../../engine/cli/printed'
import { derive } from '../../../engine/pipeline'
import { NOTHING_LATE } from '../../../engine/project/late'
import { aWall, cabinet } from '../../helpers/wall'

describe('a cabinet of a plan', () => {
  const corner = { kind: 'diagonal', hand: 'left', other: 900, otherDepth: 580 } as const
  const front = { kind: 'door', hinge: 'left' } as const
  const [built] = derive(aWall(cabinet('B1', { width: 900, depth: 580, corner, front }))).cabinets
  const { parts } = printedCabinet(built!, NOTHING_LATE)

  it('tells the turn of a slanted door, with which both its ends lie where they belong', () => {
    const door = parts.find(({ role }) => role === 'door')!
    // Both legs are alike, so the door stands half way between them.
    expect(door.turn).toBeCloseTo(45, 9)
    expect([door.axes.length, door.axes.width]).toEqual(['+y', '+x'])
    // From its corner along its width, turned by 45 degrees towards the wall.
    const by = door.width * Math.SQRT1_2
    const far = { x: door.origin.x + by, z: door.origin.z - by }
    // What is so far along one wall at one end is as far along the other wall at the other.
    expect(far.x).toBeCloseTo(door.origin.z, 2)
    expect(far.z).toBeCloseTo(door.origin.x, 2)
  })

  it('tells no turn of what stands square', () => {
    expect(new Set(parts.filter(({ role }) => role === 'leftSide').map(({ turn }) => turn))).toEqual(new Set([0]))
  })
})
