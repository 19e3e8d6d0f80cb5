import { describe, expect, it } from 'vitest'
import { valuesOf } from '../../../engine/basics/id'
import { derive } from '../../../engine/pipeline'
import { USUAL_DADO_FRONTS } from '../../../engine/project/dadoFront'
import type { Cabinet, Front, Project } from '../../../engine/project/document'
import { childrenOf } from '../../../engine/project/frontTree'
import { markOf } from '../../../engine/project/mark'
import type { MethodChoices } from '../../../engine/project/method'
import { readProject, writeProject } from '../../../engine/project/schema'
import { APPLIANCES } from '../../../engine/project/space'
import { fitOf } from '../../../engine/runs/fit'
import { placesFor } from '../../../engine/runs/place'
import { demonstrationKitchen } from '../../../engine/samples/kitchen'
import { fortyCabinets } from '../../../engine/samples/workshop'

function cabinetsOf(project: Project): Cabinet[] {
  return valuesOf<Cabinet>(project.cabinets)
}

function marksOf(project: Project): string {
  return cabinetsOf(project).map(markOf).sort().join(' ')
}

describe.each([
  ['the demonstration kitchen', demonstrationKitchen],
  ['the forty cabinets', fortyCabinets],
])('%s', (_, sample) => {
  it('fits its wall, cabinet by cabinet', () => {
    const project = sample()
    const wrong = cabinetsOf(project).flatMap((cabinet) => {
      const fit = fitOf(project, cabinet)
      return fit.fits ? [] : [fit.why]
    })
    expect(wrong).toEqual([])
  })

  it('is the same file every time, and can be read back', () => {
    expect(writeProject(sample())).toBe(writeProject(sample()))
    expect(readProject(writeProject(sample()))).toEqual({ ok: true, value: sample() })
  })
})

describe('the demonstration kitchen', () => {
  it('has a tall, five bases and four uppers', () => {
    expect(marksOf(demonstrationKitchen())).toBe('B1 B2 B3 B4 B5 T1 U1 U2 U3 U4')
  })

  it('leaves a place at the right end of the wall for one more base', () => {
    const project = demonstrationKitchen()
    // 3600 less the tall of 600 and bases of 500, 300, 800, 450 and 300.
    expect(placesFor(project, 'base', 600).map(({ left, width }) => [left, left + width])).toContainEqual([2950, 3550])
  })
})

describe('the forty cabinets', () => {
  it('are four talls, nineteen bases and seventeen uppers, and the spaces beside them are no cabinets', () => {
    const kinds = cabinetsOf(fortyCabinets()).map(({ kind, space }) => (space ? 'space' : kind))
    const count = (kind: string) => kinds.filter((one) => one === kind).length
    expect([count('tall'), count('base'), count('upper')]).toEqual([4, 19, 17])
    expect(count('space')).toBe(kinds.length - 40)
  })

  it('leave a space for every appliance, and end dados at the front in every way', () => {
    const all = cabinetsOf(fortyCabinets())
    const appliances = new Set(all.flatMap(({ space }) => space?.of ?? []))
    expect([...appliances].sort()).toEqual(APPLIANCES.map(([of]) => of).sort())
    const ends = new Set(all.flatMap(({ overrides }) => overrides.dadoFront?.kind ?? []))
    expect([...ends].sort()).toEqual(Object.keys(USUAL_DADO_FRONTS).sort())
  })

  it('can all be built', () => {
    const stops = derive(fortyCabinets()).problems.filter(({ weight }) => weight === 'stop')
    expect(stops.map(({ message }) => message)).toEqual([])
  })

  it('show every kind of front', () => {
    const kindsIn = (front: Front): string[] => [
      front.kind,
      ...childrenOf(front).flatMap((child) => kindsIn(child.front)),
    ]
    const kinds = new Set(cabinetsOf(fortyCabinets()).flatMap(({ front }) => kindsIn(front)))
    expect([...kinds].sort().join(' ')).toBe('appliance blind columns door drawer falseFront open pair pullOut rows')
  })

  it('use every option of how carcasses are built, how fronts sit on them and what drawers run on', () => {
    const used = (choice: keyof MethodChoices) => {
      const options = cabinetsOf(fortyCabinets()).flatMap(({ overrides }) => overrides[choice] ?? [])
      const words = options.map((one) => {
        if (typeof one !== 'object' || one === null) return String(one)
        return 'kind' in one ? one.kind : 'where' in one ? one.where : one.fronts.kind
      })
      return [...new Set(words)].sort().join(' ')
    }
    expect(used('cornerJoint')).toBe('butt dado rabbet')
    expect(used('bottom')).toBe('between under')
    expect(used('top')).toBe('between over')
    expect(used('baseTop')).toBe('frontRail full lid stretchersFlat stretchersOnEdge')
    expect(used('back')).toBe('applied groove none rabbet')
    expect(used('floor')).toBe('legs none notched plinth')
    expect(used('nailers')).toBe('behind inside')
    expect(used('fixedShelf')).toBe('dado pinned')
    expect(used('frontMount')).toBe('fullOverlay halfOverlay inset')
    expect(used('slide')).toBe('side undermount')
    expect(used('faceFrame')).toBe('inset overlay')
    expect(used('frontBuild')).toBe('fivePart')
  })

  it('have an L and a diagonal corner below and above, roll-outs, tray dividers, a lid and what goes over several', () => {
    const all = cabinetsOf(fortyCabinets())
    const corners = all.flatMap(({ kind, corner }) => (corner ? [`${kind} ${corner.kind} ${corner.hand}`] : []))
    expect(corners.sort()).toEqual(['base L left', 'base diagonal right', 'upper L left', 'upper diagonal right'])
    const roles = new Set([...derive(fortyCabinets()).partOf.values()].map(({ role }) => role))
    const inside = ['divider', 'lid', 'drawerBottom', 'cornerPost', 'midRail', 'doorPanel']
    const over = ['countertop', 'splash', 'longKick', 'lightRail', 'crown', 'valance']
    for (const role of [...inside, ...over]) expect([...roles]).toContain(role)
    expect(all.filter(({ interior }) => interior.rollOuts).length).toBe(1)
  })
})
