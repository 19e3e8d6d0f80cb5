import { describe, expect, it } from 'vitest'
import type { Cabinet } from '../../../engine/project/document'
import { fitOf } from '../../../engine/runs/fit'
import { aWall, cabinet, withWall } from '../../helpers/wall'

const b3 = cabinet('B3', { left: 2000, width: 600 })
const b4 = cabinet('B4', { left: 2800, width: 780 })
const project = aWall(b3, b4)

function words(proposed: Cabinet | readonly Cabinet[], on = project): string {
  const fit = fitOf(on, proposed)
  return fit.fits ? fit.says : fit.why
}

describe('a cabinet that fits', () => {
  it('is told with its new width and the room that is left', () => {
    expect(words({ ...b4, left: 2800, width: 800 })).toBe('B4 to 800: fits, 200 left to B3')
    expect(words({ ...b4, width: 790 })).toBe('B4 to 790: fits, 200 left to B3 and 10 to the wall end')
    expect(words({ ...b3, width: 780 })).toBe('B3 to 780: fits, 2000 left to the wall end and 20 to B4')
  })

  it('is told where it would stand when it is moved or new', () => {
    expect(words({ ...b3, left: 2200 })).toBe('B3 at 2200: fits, 2200 left to the wall end')
    expect(words(cabinet('B5', { left: 0 }))).toBe('B5 at 0: fits, 1400 left to B3')
  })

  it('is told that it fills its place', () => {
    expect(words(cabinet('B5', { left: 0, width: 2000 }))).toBe('B5 at 0: fits exactly between the wall end and B3')
  })

  it('may touch its neighbour, though 0.1 + 0.2 is more than 0.3', () => {
    const left = cabinet('B1', { left: 0.1, width: 600.2 })
    const right = cabinet('B2', { left: 600.3, width: 600 })
    expect(0.1 + 600.2 > 600.3).toBe(true)
    expect(fitOf(aWall(left), right).fits).toBe(true)
  })

  it('may hang above a base', () => {
    expect(fitOf(project, cabinet('U1', { left: 2000 })).fits).toBe(true)
  })

  it('may stand where another of the proposed has just made room', () => {
    expect(
      words([
        { ...b3, left: 2200 },
        { ...b4, left: 0 },
      ]),
    ).toBe('B3 at 2200: fits, 1420 left to B4 and 800 to the wall end')
  })

  it('is told in inches when inches are shown', () => {
    const inches = { ...project, display: { unit: 'in', step: 16 } } as const
    // 800 and 2 in more.
    expect(words({ ...b3, width: 800 + 2 * 25.4 }, inches)).toBe('B3 would overlap B4 by 2 in')
    expect(words({ ...b3, width: 762 }, inches)).toBe('B3 to 30: fits, 78 3/4 left to the wall end and 1 1/2 to B4')
  })
})

describe('a cabinet that does not fit', () => {
  it.each<[string, Cabinet]>([
    ['B3 would overlap B4 by 35 mm', { ...b3, width: 800 + 35 }],
    ['B3 would stand 20 mm past the right end of the wall (3600 mm)', { ...b3, left: 3600 - 600 + 20 }],
    ['B3 would stand 5 mm past the left end of the wall', { ...b3, left: -5 }],
    ['B3 is 3700 mm wide; the wall is 3600 mm long', { ...b3, width: 3700 }],
    ['T1 would reach 100 mm above the ceiling (2400 mm)', cabinet('T1', { left: 0, height: 2500 })],
    ['U1 would reach 10 mm into the floor', cabinet('U1', { left: 0, bottom: -10 })],
    ['U1 would overlap B3 by 68 mm', cabinet('U1', { left: 2000, bottom: 868 - 68 })],
    ['T1 would overlap B3 by 600 mm', cabinet('T1', { left: 2000 })],
    ['B3 has a size or place that is not a number', { ...b3, left: Number.NaN }],
    ['B3 would be 0 mm x 868 mm', { ...b3, width: 0 }],
  ])('is told why: %s', (why, proposed) => {
    expect(words(proposed)).toBe(why)
  })

  it('is named when it is the second of the proposed', () => {
    expect(
      words([
        { ...b3, left: 1500 },
        { ...b4, left: 2000 },
      ]),
    ).toBe('B4 would overlap B3 by 100 mm')
  })
})

describe('the openings of the wall', () => {
  const window = { kind: 'window', left: 1000, bottom: 1000, width: 1200, height: 1000 } as const
  const door = { kind: 'door', left: 0, bottom: 0, width: 800, height: 2000 } as const
  const open = withWall(aWall(), {}, window, door)

  it.each<[string, Cabinet]>([
    ['U1 at 2200: fits, 2200 left to the wall end and 800 to the wall end', cabinet('U1', { left: 2200 })],
    ['U1 would cover the window by 50 mm', cabinet('U1', { left: 2150 })],
    ['T1 would cover the window by 900 mm', cabinet('T1', { left: 1300 })],
    ['B1 at 1300: fits, 1300 left to the wall end and 1700 to the wall end', cabinet('B1', { left: 1300 })],
    ['B1 would cover the window by 20 mm', cabinet('B1', { left: 1300, height: 1020 })],
    ['B1 would cover the door by 100 mm', cabinet('B1', { left: 700 })],
  ])('are kept clear: %s', (told, proposed) => {
    expect(words(proposed, open)).toBe(told)
  })
})
