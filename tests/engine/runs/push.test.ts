import { describe, expect, it } from 'vitest'
import { randomFrom } from '../../../engine/basics/random'
import { applyEdit } from '../../../engine/project/apply'
import type { Cabinet, Project } from '../../../engine/project/document'
import { fitOf } from '../../../engine/runs/fit'
import { pushNeighbours } from '../../../engine/runs/push'
import { aWall, cabinet, the, withWall } from '../../helpers/wall'

/** `B1 0-600 | B2 600-1200`: who stands where once room is made. */
function pushed(project: Project, proposed: Cabinet): string {
  const shapes = pushNeighbours(project, proposed)
  if (!shapes) return 'no room'
  const after = applyEdit(project, { kind: 'shapeCabinets', shapes: [proposed, ...shapes] })
  return Object.values<Cabinet>(after.cabinets)
    .sort((a, b) => a.left - b.left)
    .map(({ id, left, width }) => `${id.toUpperCase()} ${left}-${left + width}`)
    .join(' | ')
}

describe('making room for a cabinet', () => {
  const run = aWall(
    cabinet('B1', { left: 0 }),
    cabinet('B2', { left: 600, width: 500 }),
    cabinet('B3', { left: 1300, width: 400 }),
  )

  it('moves nothing when it fits where it is', () => {
    expect(pushNeighbours(run, { ...the(run, 'B2'), width: 700 })).toEqual([])
  })

  it('pushes the neighbour along', () => {
    expect(pushed(run, { ...the(run, 'B1'), width: 700 })).toBe('B1 0-700 | B2 700-1200 | B3 1300-1700')
  })

  it('has the neighbour push its own once they meet', () => {
    expect(pushed(run, { ...the(run, 'B1'), width: 900 })).toBe('B1 0-900 | B2 900-1400 | B3 1400-1800')
  })

  it('pushes to the left as well', () => {
    const roomy = aWall(cabinet('B1', { left: 200 }), cabinet('B2', { left: 800, width: 500 }), the(run, 'B3'))
    expect(pushed(roomy, { ...the(run, 'B3'), left: 1200, width: 500 })).toBe('B1 100-700 | B2 700-1200 | B3 1200-1700')
    expect(pushed(roomy, { ...the(run, 'B3'), left: 1000, width: 700 })).toBe('no room')
  })

  it('finds no room when the run would pass the end of the wall', () => {
    expect(pushed(run, { ...the(run, 'B1'), width: 3600 - 500 - 400 })).toBe('B1 0-2700 | B2 2700-3200 | B3 3200-3600')
    expect(pushed(run, { ...the(run, 'B1'), width: 3600 - 500 - 400 + 1 })).toBe('no room')
  })

  it('finds no room when a window would be covered', () => {
    const uppers = aWall(cabinet('U1', { left: 0 }), cabinet('U2', { left: 600 }))
    const window = { kind: 'window', left: 1250, bottom: 1000, width: 900, height: 1000 } as const
    const glazed = withWall(uppers, {}, window)
    expect(pushed(glazed, { ...the(glazed, 'U1'), width: 650 })).toBe('U1 0-650 | U2 650-1250')
    expect(pushed(glazed, { ...the(glazed, 'U1'), width: 651 })).toBe('no room')
  })

  it('changes places with the one it is moved past', () => {
    expect(
      pushed(aWall(cabinet('B1', { left: 700 }), cabinet('B2', { left: 1300 })), cabinet('B1', { left: 1350 })),
    ).toBe('B2 750-1350 | B1 1350-1950')
  })

  it('leaves uppers alone when bases are pushed, and pushes a tall that stands in both lanes', () => {
    const mixed = aWall(cabinet('B1', { left: 0 }), cabinet('T1', { left: 600 }), cabinet('U1', { left: 1500 }))
    expect(pushed(mixed, { ...the(mixed, 'B1'), width: 700 })).toBe('B1 0-700 | T1 700-1300 | U1 1500-2100')
  })

  it('has a pushed tall push the uppers that it meets', () => {
    const mixed = aWall(cabinet('B1', { left: 0 }), cabinet('T1', { left: 600 }), cabinet('U1', { left: 1500 }))
    expect(pushed(mixed, { ...the(mixed, 'B1'), width: 1000 })).toBe('B1 0-1000 | T1 1000-1600 | U1 1600-2200')
  })

  it('gives places that fit, or none, wherever a cabinet is wanted', () => {
    const random = randomFrom(11)
    const whole = (most: number) => Math.floor(random() * most)
    let found = 0
    for (let n = 0; n < 400; n++) {
      const proposed = { ...the(run, ['B1', 'B2', 'B3'][whole(3)]!), left: whole(3200), width: 150 + whole(900) }
      const shapes = pushNeighbours(run, proposed)
      if (!shapes) continue
      if (shapes.length > 0) found++
      const moved = shapes.map((shape) => ({ ...run.cabinets[shape.id]!, ...shape }) as Cabinet)
      expect(fitOf(run, [proposed, ...moved]).fits, JSON.stringify(proposed)).toBe(true)
    }
    expect(found).toBeGreaterThan(20)
  })
})
