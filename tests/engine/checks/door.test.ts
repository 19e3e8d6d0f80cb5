import { describe, expect, it } from 'vitest'
import { applyEdit } from '../../../engine/project/apply'
import { USUAL_CHART } from '../../../engine/project/hingeChart'
import type { HingeChart } from '../../../engine/project/hingeRules'
import { begin, make, undo } from '../../../engine/project/history'
import { aWall, cabinet, the } from '../../helpers/wall'
import { figureOf, findingIn, remedied } from './findings'

const DOOR = { kind: 'door', hinge: 'left' } as const
/** Standing free of wall and ceiling, so that nothing is said of what is beside it. */
const withDoor = (mark: string, width: number, height: number) =>
  aWall(cabinet(mark, { left: 500, width, height, front: DOOR }))

/** Kick 100, 3 kept free above the door, 1.5 on each side; 18 mm at 685 kg per cubic metre. */
const kgOf = (width: number, height: number) => ((width - 3) * (height - 100 - 3) * 18 * 685) / 1e9

describe('the hinges of a door', () => {
  it('are as many as its weight asks for, which is said where its height asks for fewer', () => {
    // 15 lb are 6.8 kg: reached by a door of 800 high, which by its height has two.
    expect(kgOf(600, 868)).toBeLessThan(15 * 0.4536)
    expect(findingIn(withDoor('B1', 600, 868), /takes \d hinges/)).toBeNull()
    expect(kgOf(700, 1100)).toBeGreaterThan(15 * 0.4536)
    const finding = findingIn(withDoor('B1', 700, 1100), /takes \d hinges/)
    expect(finding).toMatchObject({ weight: 'know', limit: '3 hinges' })
    expect(figureOf(finding?.measure)).toBeCloseTo(kgOf(700, 1100), 1)
  })

  it('cannot carry a door that is off the chart', () => {
    expect(kgOf(1100, 2380)).toBeGreaterThan(60 * 0.4536 - 1)
    const finding = findingIn(withDoor('T1', 1200, 2390), /no number of hinges/)
    expect(finding?.weight).toBe('stop')
    expect(figureOf(finding?.measure)).toBeCloseTo(kgOf(1200, 2390), 1)
    expect(finding?.source).toBe("a hinge maker's chart of hinges by door height and weight")
  })

  it('are judged by the chart of the method where it has one', () => {
    const hungBy = (
      weights: readonly [number, number, number, number],
      mark: string,
      width: number,
      height: number,
    ) => {
      const project = withDoor(mark, width, height)
      const { id, hinge } = project.methods[project.method]!
      const chart = USUAL_CHART.map((row, at) => ({ ...row, weight: weights[at] })) as unknown as HingeChart
      return applyEdit(project, { kind: 'editMethod', id, change: { hinge: { ...hinge, chart } } })
    }
    // 868 high it weighs 5.6 kg: fine by the usual chart, and by one of weaker hinges it takes four.
    const own = 'the chart of hinges of the build method'
    const four = findingIn(hungBy([3, 5, 7, 9], 'B1', 600, 868), /takes 4 hinges; by its height 2 would do/)
    expect(four).toMatchObject({ weight: 'know', limit: '4 hinges', source: own })
    const none = findingIn(hungBy([1, 2, 3, 4], 'B1', 600, 868), /no number of hinges/)
    expect(none).toMatchObject({ weight: 'stop', limit: '5 hinges', source: own })
    // What is off the usual chart by its weight hangs on stronger ones.
    expect(findingIn(hungBy([30, 40, 50, 60], 'T1', 1200, 2390), /no number of hinges|takes \d hinges/)).toBeNull()
  })

  it('do not fit one above another on a door lower than twice their distance from an end', () => {
    // 200 less the kick and 3 above is 97; twice 76.2 is 152.4.
    const finding = findingIn(withDoor('B1', 600, 200), /hinges of/)!
    expect(finding.message).toContain('the hinges of a door do not fit one above another: it is 97 mm high')
    expect(finding.measure).toBe('0 mm')
  })

  it('are farther apart than the door is wide, or a pair is offered', () => {
    // Source: a hinge maker's chart: the hinges are farther apart than the door is wide. A forum thread on hinges: 3 in from
    // the ends. The door is 400 - 103 high, so the hinges are 144.6 apart.
    const spread = 400 - 103 - 2 * 76.2
    expect(findingIn(withDoor('B1', spread + 3 - 1, 400), /hinges of/)).toBeNull()
    const project = withDoor('B1', spread + 3 + 10, 400)
    const finding = findingIn(project, /hinges of/)!
    expect(finding.weight).toBe('mind')
    expect(figureOf(finding.measure)).toBeCloseTo(spread, 1)
    const after = remedied(project, finding)
    expect(the(after, 'B1').front).toEqual({ kind: 'pair' })
    expect(findingIn(after, /hinges of/)).toBeNull()
    const made = make(begin(project), finding.remedy!.edit, finding.remedy!.label)
    expect(undo(made).present).toBe(project)
  })
})

describe('doors too wide for how far apart their hinges are', () => {
  it('of a pair are not told to be one, but how much narrower their cabinet would have to be', () => {
    const sink = {
      kind: 'rows',
      rows: [
        { size: { kind: 'fixed', height: 160 }, front: { kind: 'falseFront' } },
        { size: { kind: 'share', share: 1 }, front: { kind: 'pair' } },
      ],
    } as const
    const withWidth = (width: number) => aWall(cabinet('B1', { left: 500, width, height: 800, front: sink }))
    const finding = findingIn(withWidth(900), /hinges of 2 doors/)!
    // 1.5 at each side and 3 between; kick 100, 3 above the false front and 3 under it.
    const [wide, spread] = [(900 - 3 - 3) / 2, 800 - 103 - 160 - 3 - 2 * 76.2]
    const narrower = 2 * (wide - spread)
    expect(finding.message).not.toMatch(/A pair, or|flap/)
    expect(finding.message).toContain(`narrower by more than ${Math.round(narrower * 10) / 10} mm`)
    expect(finding.remedy).toBeUndefined()
    expect(findingIn(withWidth(900 - narrower - 1), /hinges of/)).toBeNull()
    expect(findingIn(withWidth(900 - narrower + 1), /hinges of/)).not.toBeNull()
  })

  it('of a pair far too low are not told to be a sliver of their width', () => {
    // 380 less the kick and 3 leaves hinges 380 - 103 - 2 x 76.2 = 124.6 apart: no door is so narrow.
    const low = aWall(cabinet('B1', { left: 500, width: 1600, height: 380, front: { kind: 'pair' } }))
    const { message } = findingIn(low, /hinges of 2 doors/)!
    expect(message).toContain('They are a pair already, and too low for their width: a flap, or drawers, hang better.')
    expect(message).not.toContain('narrower')
  })

  it('are told of one door as of one, and of several as of several', () => {
    expect(findingIn(withDoor('B1', 600, 300), /hinges of/)!.message).toMatch(
      /the hinges of a door would be 44\.6 mm apart, .* they must be farther apart than it is wide, 597 mm\./,
    )
    const pair = aWall(cabinet('B1', { left: 500, width: 1200, height: 600, front: { kind: 'pair' } }))
    expect(findingIn(pair, /hinges of/)!.message).toMatch(
      /the hinges of 2 doors .* farther apart than a door is wide, /,
    )
  })

  it('are told to be a pair only where that is enough', () => {
    // 300 less 103 leaves hinges 44.6 apart; a pair of a box of 600 has doors of 297.
    const finding = findingIn(withDoor('B1', 600, 300), /hinges of/)!
    expect(finding.message).toContain('A flap hangs better.')
    expect(finding.message).not.toContain('A pair')
    expect(finding.remedy?.label).toBe('Hang a flap on B1')
    const after = remedied(withDoor('B1', 600, 300), finding)
    expect(the(after, 'B1').front).toEqual({ kind: 'door', hinge: 'top' })
    expect(findingIn(after, /hinges of/)).toBeNull()
  })

  it('are lifted where they are a pair too low for its width, as long as the flap is wider than it is high', () => {
    const pair = aWall(cabinet('B1', { left: 500, width: 1200, height: 380, front: { kind: 'pair' } }))
    expect(findingIn(pair, /hinges of 2 doors/)!.remedy?.label).toBe('Hang a flap on B1')
    // 348 less 3 for the gaps leaves hinges along the top 345 - 2 x 76.2 = 192.6 apart, and the door is 200 high.
    const square = findingIn(withDoor('B1', 348, 303), /hinges of/)!
    expect(square.message).toContain('A flap hangs better.')
    expect(square.remedy).toBeUndefined()
    const corner = { kind: 'diagonal', hand: 'left', other: 900, otherDepth: 580 } as const
    const slanting = aWall(
      cabinet('B1', { left: 0, width: 900, height: 300, corner, front: { kind: 'door', hinge: 'left' } }),
    )
    const low = findingIn(slanting, /hinges of/)!
    expect(low.message).toContain('A flap hangs better.')
    expect(low.remedy).toBeUndefined()
  })
})

describe('a tall narrow door', () => {
  it('is said to bow when it is over 1600 high and four times as high as wide', () => {
    expect(findingIn(withDoor('T1', 300, 1700), /bows/)).toBeNull()
    expect(findingIn(withDoor('T1', 300, 1710), /bows/)?.weight).toBe('know')
    expect(findingIn(withDoor('T1', 450, 1710), /bows/)).toBeNull()
  })
})
