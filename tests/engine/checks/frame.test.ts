import { describe, expect, it } from 'vitest'
import { derive } from '../../../engine/pipeline'
import type { Cabinet, Front } from '../../../engine/project/document'
import { USUAL_FIVE_PART } from '../../../engine/project/frames'
import type { MethodChoices } from '../../../engine/project/method'
import { FRAME } from '../../helpers/frames'
import { aWall, cabinet } from '../../helpers/wall'
import { built, findingIn } from './findings'

const DOOR: Front = { kind: 'door', hinge: 'left' }

function with_(changes: Partial<MethodChoices>, own: Partial<Cabinet> = {}) {
  return built(aWall(cabinet('B1', { width: 600, height: 868, front: DOOR, ...own })), changes)
}

describe('a five-part door', () => {
  it('is told that its cup reaches the groove of a narrow stile, and not that of a wider one', () => {
    const stile = (width: number) => with_({ frontBuild: { ...USUAL_FIVE_PART, stile: width, groove: 10 } })
    // A cup of 35 begins 5 from the edge and has 3 of wood behind it: 43, and the groove of 10 behind that.
    expect(findingIn(stile(52), /cups of 1 door reach 40 mm .* groove begins at 42 mm/)).not.toBeNull()
    expect(findingIn(stile(53), /cups of/)).toBeNull()
  })

  it('is told that a wide panel of solid wood has more play than its groove is deep', () => {
    const frontBuild = { ...USUAL_FIVE_PART, groove: 6 }
    const panelWood = { kind: 'solid', across: 0.00369, moisture: 4 } as const
    expect(findingIn(with_({ frontBuild, panelWood }), /of play in grooves that are 6 mm deep/)).not.toBeNull()
    expect(findingIn(with_({ frontBuild }), /of play in grooves/)).toBeNull()
  })

  it('weighs what its parts weigh, and is hung by as many hinges', () => {
    const [slab, five] = [with_({}), with_({ frontBuild: USUAL_FIVE_PART })].map(
      (project) => derive(project).cabinets[0]!,
    )
    const hinges = (one: typeof slab) => one!.hardware.find(({ name }) => name.endsWith('hinge'))!.quantity
    expect(hinges(five)).toBeLessThanOrEqual(hinges(slab))
    const cups = five!.parts.flatMap(({ operations }) =>
      operations.filter((one) => one.kind === 'holeRow' && one.purpose === 'hingeCup'),
    )
    expect(cups.length).toBe(hinges(five))
  })
})

describe('a face frame', () => {
  it('is told of slides that are packed out to its opening', () => {
    const packed = with_({ faceFrame: FRAME }, { front: { kind: 'drawer' } })
    // The stile of 40 stands 6 past at the left: 40 - 6 - 18 = 16; at the right 40 - 8 - 18 = 14.
    expect(findingIn(packed, /a packing of up to 16 mm is needed beside 2 slides/)?.weight).toBe('know')
    const flush = with_(
      { faceFrame: { ...FRAME, stile: 18, pastLeft: 0, pastRight: 0 } },
      { front: { kind: 'drawer' } },
    )
    expect(findingIn(flush, /a packing of/)).toBeNull()
  })

  it('is told of a loose shelf that no opening lets in, tilted or not', () => {
    const interior = { fixedShelves: 0, adjustableShelves: 1, partition: null }
    const narrow = { ...FRAME, stile: 90 }
    const low = with_({ faceFrame: narrow }, { kind: 'base', height: 420, front: DOOR, interior })
    expect(findingIn(low, /cannot be put in, not even tilted/)?.weight).toBe('mind')
    const high = with_({ faceFrame: FRAME }, { front: DOOR, interior })
    expect(findingIn(high, /cannot be put in/)).toBeNull()
  })

  it('is told that its bottom rail stands above the floor where no kick is under it', () => {
    const floor = { kind: 'none' } as const
    // A rail of 36 over a floor of 18.
    expect(findingIn(with_({ faceFrame: FRAME, floor }), /stands 18 mm above the floor/)).not.toBeNull()
    expect(findingIn(with_({ faceFrame: FRAME }), /above the floor of the carcass/)).toBeNull()
  })

  it('has hinges of its own', () => {
    const names = derive(with_({ faceFrame: FRAME })).cabinets[0]!.hardware.map(({ name }) => name)
    expect(names).toContain('face frame inset hinge, screwed to the frame')
    expect(names.filter((name) => /plate/.test(name))).toEqual([])
  })
})

describe('two cabinets with face frames', () => {
  it('that touch meet frame to frame, with a gap between their carcasses', () => {
    const wall = aWall(cabinet('B1', { left: 0, width: 600 }), cabinet('B2', { left: 600, width: 500 }))
    const project = built(wall, { faceFrame: FRAME })
    const [left, right] = derive(project).cabinets.map(({ parts }) => parts)
    const place = (parts: typeof left, role: string) => parts!.find((part) => part.role === role)!.placement.origin.x
    // The right side of the one looks left, so that it begins at its outside.
    expect(place(right, 'leftSide') + 600 - place(left, 'rightSide')).toBe(8 + 6)
    expect(derive(project).problems.filter(({ weight }) => weight === 'stop')).toEqual([])
  })
})
