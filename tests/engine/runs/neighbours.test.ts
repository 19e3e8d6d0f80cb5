import { describe, expect, it } from 'vitest'
import { doLanesMeet, lanesOf } from '../../../engine/runs/lane'
import { freeStretches, gapsBeside, runsOf } from '../../../engine/runs/neighbours'
import { firstWall } from '../../../engine/site/wall'
import { aWall, cabinet, the, withWall } from '../../helpers/wall'

describe('the lanes of a wall', () => {
  it('are the low one for bases, the high one for uppers and both for talls', () => {
    expect([lanesOf('base'), lanesOf('upper'), lanesOf('tall')]).toEqual([['low'], ['high'], ['low', 'high']])
  })

  it('meet where two cabinets cannot stand in one place', () => {
    expect(doLanesMeet('base', 'upper')).toBe(false)
    expect(doLanesMeet('base', 'tall')).toBe(true)
    expect(doLanesMeet('upper', 'tall')).toBe(true)
    expect(doLanesMeet('base', 'base')).toBe(true)
  })
})

describe('the gaps beside a cabinet', () => {
  const project = aWall(
    cabinet('T1', { left: 0 }),
    cabinet('B1', { left: 700 }),
    cabinet('B2', { left: 1400 }),
    cabinet('U1', { left: 1310 }),
  )

  it('reach to the next cabinet of its lane or to the wall end', () => {
    expect(gapsBeside(project, the(project, 'B1'))).toEqual({
      left: { gap: 700 - 600, to: 'T1' },
      right: { gap: 1400 - 1300, to: 'B2' },
    })
    expect(gapsBeside(project, the(project, 'U1'))).toEqual({
      left: { gap: 1310 - 600, to: 'T1' },
      right: { gap: 3600 - 1910, to: 'the wall end' },
    })
  })

  it('do not end at an upper that hangs above another', () => {
    const stacked = aWall(
      cabinet('U1', { left: 0, bottom: 1400, height: 300 }),
      cabinet('U2', { left: 700, bottom: 1700, height: 300 }),
    )
    expect(gapsBeside(stacked, the(stacked, 'U1')).right).toEqual({ gap: 3600 - 600, to: 'the wall end' })
  })

  it('are less than nothing where cabinets overlap', () => {
    expect(gapsBeside(project, { ...the(project, 'B1'), width: 735 }).right).toEqual({ gap: -35, to: 'B2' })
  })
})

describe('the runs of a wall', () => {
  it('are the cabinets that touch, lane by lane, a tall in both', () => {
    const project = aWall(
      cabinet('B2', { left: 600, width: 500 }),
      cabinet('B1', { left: 0 }),
      cabinet('T1', { left: 1100 }),
      cabinet('B3', { left: 1800 }),
      cabinet('U1', { left: 500 }),
    )
    const shown = runsOf(project, firstWall(project)!).map(
      ({ lane, cabinets }) => `${lane}: ${cabinets.map(({ id }) => id.toUpperCase()).join(' ')}`,
    )
    expect(shown).toEqual(['low: B1 B2 T1', 'low: B3', 'high: U1 T1'])
  })
})

describe('the free stretches of a wall', () => {
  const window = { kind: 'window', left: 1300, bottom: 1000, width: 1200, height: 1100 } as const
  const project = withWall(aWall(cabinet('T1', { left: 0 }), cabinet('B1', { left: 600, width: 500 })), {}, window)
  const stretches = (kind: 'base' | 'upper' | 'tall') =>
    freeStretches(project, firstWall(project)!, kind)
      .map(({ from, to }) => `${from}-${to}`)
      .join(' ')

  it('are told by kind: bases go under the window, uppers and talls beside it', () => {
    expect(stretches('base')).toBe('1100-3600')
    expect(stretches('upper')).toBe('600-1300 2500-3600')
    expect(stretches('tall')).toBe('1100-1300 2500-3600')
  })

  it('are none for what is higher than the wall', () => {
    const low = withWall(project, { height: 2000 })
    expect(freeStretches(low, firstWall(low)!, 'tall')).toEqual([])
  })
})
