import { describe, expect, it } from 'vitest'
import { assemblyOfRun } from '../../../engine/assembly/assemblyOfRun'
import type { MaterialId } from '../../../engine/basics/id'
import { sawnOutOf } from '../../../engine/breakdown/sawnOut'
import { rowName } from '../../../engine/cutlist/row'
import { partDrawing } from '../../../engine/drawings/part'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import { volumeOf } from '../../../engine/solids/volume'
import { aWall, cabinet } from '../../helpers/wall'

const T = 18
const HALF = Math.tan(Math.PI / 8)
const DISPLAY = { unit: 'mm', step: 0.1 } as const
const one = { width: 600, bottom: 1400, height: 700, depth: 320 }
const corner = { kind: 'diagonal', hand: 'right', other: 600, otherDepth: 320 } as const

/** A light rail flush with the fronts, under an upper and the diagonal corner beside it. */
function railed() {
  const project = aWall(cabinet('U1', { ...one, left: 2400 }), cabinet('U2', { ...one, left: 3000, corner }))
  const lightRail = { material: 'carcass' as MaterialId, height: 50, forward: 0 }
  const derived = derive(applyEdit(project, { kind: 'editBetween', change: { lightRail } }))
  const part = (mark: string) => derived.runs.flatMap(({ parts }) => parts).find((any) => any.mark === mark)!
  return { derived, part }
}

describe('a trim with mitred ends', () => {
  const { derived, part } = railed()
  const before = part('UL1-LR1')
  const slanting = part('ULC2-LR1')

  it('is cut to its long points, on a row that says so', () => {
    const names = derived.cutList.rows.map((row) => rowName(row))
    expect(names).toContain('light rail, mitred, to its long points')
    expect(names).toContain('light rail return, mitred, to its long points')
    // The return at the free end of the straight run is square.
    expect(names).toContain('light rail return')
    // Less the band of 1 at its free end.
    expect(before.cutLength).toBeCloseTo(600 + T * HALF - 1, 2)
  })

  it('has the wood that a wedge at each end leaves: half as much as its short face is behind the long one', () => {
    const wedge = (T * HALF * T * 50) / 2
    expect(volumeOf(before)).toBeCloseTo(before.length * T * 50 - wedge, 0)
    expect(volumeOf(slanting)).toBeCloseTo(slanting.length * T * 50 - 2 * wedge, 0)
  })

  it('is drawn with its short points, measured from its datum end, and says on which face they are', () => {
    const texts = (which: typeof before) =>
      partDrawing({ part: which, display: DISPLAY }).marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []))
    // 18 x tan 22.5 = 7.456; its length runs from its right end, which meets the slanting one.
    expect(texts(before)).toEqual(
      expect.arrayContaining([
        'outside face · measured from the lower edge and the right end',
        '7.5',
        '607.5',
        '1 × right end mitred 22.5°, its short point on the outside face, 7.5 mm before its long point',
      ]),
    )
    const long = 280 * Math.SQRT2 + T * HALF
    expect(texts(slanting)).toEqual(
      expect.arrayContaining([
        'inside face · measured from the lower edge and the right end',
        String(Math.round((long - T * HALF) * 10) / 10),
        '1 × right end mitred 22.5°, its short point on the inside face, 7.5 mm before its long point',
        '1 × left end mitred 22.5°, its short point on the outside face, 7.5 mm before its long point',
      ]),
    )
  })

  it('is mitred with the blade tilted to half the angle, once it is cut', () => {
    const mitres = sawnOutOf([...derived.partOf.values()], derived.project.shop, DISPLAY).filter(
      ({ what }) => what === 'mitre',
    )
    expect(mitres).toHaveLength(1)
    expect(mitres[0]!.tilt).toBeCloseTo(22.5, 2)
    expect(mitres[0]!.text).toBe(
      'Mitre the ends of UL1-LR1, ULC2-LR1, ULC2-LT1 that are drawn so, with the blade tilted 22.5°: one face stays as long as the board was cut, to its long point, and the other gets 7.5 mm shorter, to its short point; the drawing of the part shows which. Try the two that meet on scraps.',
    )
  })

  it('is mitred after it is banded, and put up with its returns, of which those of a straight run are square', () => {
    const run = derived.runs.find(({ mark }) => mark === 'ULC2')!
    const steps = assemblyOfRun(run, derived.project).map(({ text, marks }) => `${text} ${marks.join(' ')}`)
    expect(steps.at(-2)).toBe(
      'Mitre the ends that are drawn so, with the blade tilted as it is said beside the cuts: until then they are as long as their long points. ULC2-LR1 ULC2-LT1',
    )
    expect(steps.at(-1)).toBe(
      'When the cabinets hang, screw the light rail on from above, through their bottoms, its returns glued to it at their mitres first, mitres glued and closed at the face. ULC2-LR1 ULC2-LT1',
    )
    const straight = assemblyOfRun(derived.runs.find(({ mark }) => mark === 'UL1')!, derived.project)
    expect(straight.at(-1)!.text).toContain('its returns glued to it behind its ends first, mitres glued')
  })
})
