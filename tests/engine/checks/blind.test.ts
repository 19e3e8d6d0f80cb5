import { describe, expect, it } from 'vitest'
import { applyEdit } from '../../../engine/project/apply'
import type { Front } from '../../../engine/project/document'
import { newCabinetAt } from '../../../engine/runs/place'
import { aWall, cabinet } from '../../helpers/wall'
import { findingIn, remedied } from './findings'

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

describe('a ready blind corner', () => {
  const SAGS = /would sag/
  const STUCK = /cannot be put in/
  const ready = (kind: 'blindBase' | 'blindUpper') => {
    const wall = aWall()
    return applyEdit(wall, { kind: 'addCabinet', cabinet: newCabinetAt(wall, kind, 0)! })
  }

  it('is told of loose shelves that are long for the eye and for its opening, with one way out of both', () => {
    const base = ready('blindBase')
    for (const about of [SAGS, STUCK]) {
      const finding = findingIn(base, about)!
      expect(finding).toMatchObject({ weight: 'know' })
      expect(finding.remedy?.label).toBe('Fix the shelves of B1')
      const after = remedied(base, finding)
      expect(findingIn(after, SAGS)).toBeNull()
      expect(findingIn(after, STUCK)).toBeNull()
    }
  })

  it('that hangs is told of the way in alone, with its way out', () => {
    const upper = ready('blindUpper')
    expect(findingIn(upper, SAGS)).toBeNull()
    expect(findingIn(remedied(upper, findingIn(upper, STUCK)!), STUCK)).toBeNull()
  })
})
