import { describe, expect, it } from 'vitest'
import { snapEdge, snapMove } from '../../../engine/runs/snap'
import { inch } from '../../../engine/units/length'
import { aWall, cabinet, idOf, the, withWall } from '../../helpers/wall'

const window = { kind: 'window', left: 1300, bottom: 1000, width: 1200, height: 1100 } as const
const project = withWall(
  aWall(
    cabinet('B1', { left: 100, width: 500 }),
    cabinet('B2', { left: 1000, width: 450 }),
    cabinet('U1', { left: 90 }),
  ),
  {},
  window,
)
const b2 = the(project, 'B2')
const u1 = the(project, 'U1')

describe('a cabinet that is moved', () => {
  it('comes to rest against its neighbour when it is within reach', () => {
    const { left, bottom, guides } = snapMove(project, b2, { left: 608, bottom: 3 }, 10)
    expect({ left, bottom }).toEqual({ left: 600, bottom: 0 })
    expect(guides).toContainEqual({ axis: 'x', at: 600, to: 'the right side of B1' })
  })

  it('stays where it is wanted when nothing is within reach', () => {
    expect(snapMove(project, b2, { left: 780, bottom: 0 }, 10).left).toBe(780)
    expect(snapMove(project, b2, { left: 780.37, bottom: 0 }, 10).left).toBe(780)
    const inches = { ...project, display: { unit: 'in', step: 16 } as const }
    expect(snapMove(inches, b2, { left: 780, bottom: 0 }, 10).left).toBe(inch(30 + 11 / 16))
  })

  it('takes the nearest of two lines, whichever of its edges is on it', () => {
    // Its left edge is 8 from B1's right side, its right edge 4 from the window.
    const narrow = { ...b2, width: 696 }
    expect(snapMove(project, narrow, { left: 608, bottom: 0 }, 10)).toMatchObject({
      left: 1300 - 696,
      guides: [{ axis: 'x', at: 1300, to: 'the left side of the window' }],
    })
  })

  it('shows every line that holds where it comes to rest', () => {
    const exact = { ...b2, width: 700 }
    const { guides } = snapMove(project, exact, { left: 603, bottom: 0 }, 10)
    expect(guides.filter(({ axis }) => axis === 'x').map(({ to }) => to)).toEqual([
      'the right side of B1',
      'the left side of the window',
    ])
  })

  it('snaps to the ends of the wall', () => {
    expect(snapMove(project, b2, { left: 3600 - 450 + 7, bottom: 0 }, 10)).toMatchObject({ left: 3150 })
    expect(snapMove(project, the(project, 'B1'), { left: -7, bottom: 0 }, 10)).toMatchObject({ left: 0 })
  })

  it('lines up with the other lane', () => {
    const { left, guides } = snapMove(project, u1, { left: 1006, bottom: 1432 }, 10)
    expect(left).toBe(1000)
    expect(guides[0]).toEqual({ axis: 'x', at: 1000, to: 'the left side of B2' })
  })

  it('snaps up and down only when it hangs', () => {
    expect(snapMove(project, u1, { left: 700, bottom: 1437 }, 10).bottom).toBe(1432)
    expect(snapMove(project, u1, { left: 700, bottom: 2400 - 720 - 4 }, 10).bottom).toBe(2400 - 720)
    expect(snapMove(project, b2, { left: 700, bottom: 500 }, 10).bottom).toBe(0)
  })

  it('takes no notice of cabinets that it is told to ignore', () => {
    expect(snapMove(project, b2, { left: 608, bottom: 0 }, 10, [idOf('B1')]).left).toBe(608)
  })

  it('is drawn to no line by a reach of nothing, only to the next place that a tape shows', () => {
    expect(snapMove(project, b2, { left: 607, bottom: 0 }, 0)).toMatchObject({ left: 607, guides: [] })
    expect(snapMove(project, b2, { left: 607.4, bottom: 0 }, 0)).toMatchObject({ left: 607, guides: [] })
  })
})

describe('an edge that is stretched', () => {
  it('comes to rest at widths of the grid', () => {
    const { at, guides } = snapEdge(project, b2, 'right', 1000 + 743, 10)
    expect(at).toBe(1000 + 750)
    expect(guides).toEqual([{ axis: 'x', at: 1750, to: 'the grid' }])
  })

  it('measures the grid from the edge that stays', () => {
    expect(snapEdge(project, b2, 'left', 1450 - 603, 10).at).toBe(1450 - 600)
  })

  it('comes to rest at the width of a neighbour', () => {
    const odd = withWall(aWall(cabinet('B1', { left: 0, width: 523 }), b2), {})
    expect(snapEdge(odd, b2, 'right', 1000 + 525, 10)).toEqual({
      at: 1000 + 523,
      guides: [{ axis: 'x', at: 1523, to: 'the width of B1' }],
    })
  })

  it('comes to rest against its neighbour', () => {
    expect(snapEdge(project, b2, 'left', 604, 10)).toMatchObject({
      at: 600,
      guides: [{ axis: 'x', at: 600, to: 'the right side of B1' }],
    })
  })

  it('reaches the ceiling', () => {
    expect(snapEdge(project, u1, 'top', 2396, 10)).toMatchObject({ at: 2400 })
  })
})
