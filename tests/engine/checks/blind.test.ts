import { describe, expect, it } from 'vitest'
import type { Front } from '../../../engine/project/document'
import { aWall, cabinet } from '../../helpers/wall'
import { findingIn } from './findings'

const blind = { kind: 'blind', neighbour: 580, filler: 50, pull: 35 } as const
const corner = (width: number): Front => ({
  kind: 'rows',
  rows: [
    {
      size: { kind: 'share', share: 1 },
      front: {
        kind: 'columns',
        columns: [
          { size: { kind: 'fixed', width }, front: blind, shelves: null },
          { size: { kind: 'share', share: 1 }, front: { kind: 'door', hinge: 'right' }, shelves: null },
        ],
      },
    },
  ],
})
const withBlind = (width: number) => aWall(cabinet('B1', { left: 500, width: 1100, front: corner(width) }))

describe('the blind part of a corner', () => {
  it('is told when it is narrower than the other run, its doors and its pulls', () => {
    // The doors are 18 thick.
    const least = 580 + 18 + 35
    expect(findingIn(withBlind(least), /blind part/)).toBeNull()
    expect(findingIn(withBlind(least - 1), /blind part/)).toMatchObject({
      weight: 'mind',
      measure: `${least - 1} mm`,
      limit: `${least} mm`,
    })
  })
})
