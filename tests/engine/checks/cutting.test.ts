import { describe, expect, it } from 'vitest'
import { brokenHoles } from '../../../engine/checks/boring'
import { applyEdit } from '../../../engine/project/apply'
import type { Project, Shop } from '../../../engine/project/document'
import { USUAL_FRAME } from '../../../engine/project/frames'
import { aWall, cabinet } from '../../helpers/wall'
import { built, findingIn } from './findings'

const inShop = (project: Project, change: Partial<Shop>) => applyEdit(project, { kind: 'editShop', change })
const plain = aWall(cabinet('B1', { left: 400 }))

describe('a narrow board', () => {
  it('is to be minded where it is narrower than 40', () => {
    expect(findingIn(plain, /neither rail nor hand/)).toBeNull()
    const thin = built(plain, { baseTop: { kind: 'stretchersFlat', width: 39 } })
    expect(findingIn(thin, /neither rail nor hand/)).toMatchObject({ weight: 'mind', limit: '40 mm' })
  })

  it('may be a member of a frame down to 25, since that is ripped from a long board', () => {
    const framed = (stile: number) => built(plain, { faceFrame: { ...USUAL_FRAME, stile } })
    expect(findingIn(framed(25), /neither rail nor hand/)).toBeNull()
    expect(findingIn(framed(24), /neither rail nor hand/)).toMatchObject({ weight: 'mind', limit: '25 mm' })
  })

  it('is good to know of where the guides do not reach it and have no attachment', () => {
    expect(findingIn(plain, /the guides reach/)).toBeNull()
    const finding = findingIn(inShop(plain, { narrowRips: null }), /the guides reach/)
    // The stretcher of 75, less its banding of 1 where it has one.
    expect(finding).toMatchObject({ weight: 'know', measure: '74 mm', limit: '190 mm' })
    expect(findingIn(inShop(plain, { narrowRips: { least: 75, greatest: 230 } }), /the guides reach/)).not.toBeNull()
    expect(findingIn(inShop(plain, { narrowRips: { least: 74, greatest: 230 } }), /the guides reach/)).toBeNull()
  })
})

describe('holes that are set too deep', () => {
  it('are told with what is bored instead: all but 1 of the side', () => {
    const shelved = aWall(
      cabinet('B1', { left: 400, interior: { fixedShelves: 0, adjustableShelves: 1, partition: null } }),
    )
    const { shelves } = shelved.methods[shelved.method]!
    const pins = (pinDepth: number) => findingIn(built(shelved, { shelves: { ...shelves, pinDepth } }), /pin holes of/)
    expect(pins(30)).toMatchObject({ weight: 'mind', measure: '30 mm', limit: `${18 - 1} mm` })
    expect(pins(17)).toBeNull()
  })
  it('are told of slides too', () => {
    const drawn = aWall(cabinet('B1', { left: 400, front: { kind: 'drawer' } }))
    const { slides } = drawn.methods[drawn.method]!
    const holes = (holeDepth: number) => findingIn(built(drawn, { slides: { ...slides, holeDepth } }), /screw holes of/)
    expect(holes(40)).toMatchObject({ weight: 'mind', measure: '40 mm', limit: `${18 - 1} mm` })
    expect(holes(17)).toBeNull()
  })
})

describe('pin holes', () => {
  const dado = { kind: 'dado', face: 'inside', x: 300, y: 0, length: 18, width: 500, depth: 6 } as const
  const row = { kind: 'holeRow', purpose: 'shelfPin', face: 'inside', y: 37, step: 32, diameter: 5, depth: 11 } as const

  it('break into a dado that they reach by half their width', () => {
    // 268, 300 and 332: only the middle one is in the dado from 300 to 318.
    expect(brokenHoles({ ...row, x: 268, count: 3 }, dado)).toEqual([300])
    expect(brokenHoles({ ...row, x: 297.5, count: 1 }, dado)).toEqual([])
    expect(brokenHoles({ ...row, x: 320.4, count: 1 }, dado)).toEqual([320.4])
    expect(brokenHoles({ ...row, x: 300, count: 1, face: 'outside' }, dado)).toEqual([])
    expect(brokenHoles({ ...row, x: 300, count: 1, y: 502.5 }, dado)).toEqual([])
  })

  const shelved = aWall(
    cabinet('U1', { left: 400, interior: { fixedShelves: 1, adjustableShelves: 2, partition: null } }),
  )
  const firstHole = (project: Project, hole: number) => {
    const { shelves } = project.methods[project.method]!
    return applyEdit(project, {
      kind: 'editMethod',
      id: project.method,
      change: { shelves: { ...shelves, firstHole: hole } },
    })
  }

  it('are all whole with the usual first hole, and broken where the first hole lies at the very shelf', () => {
    expect(findingIn(shelved, /would break into/)).toBeNull()
    expect(findingIn(firstHole(shelved, 1), /would break into/)?.weight).toBe('mind')
  })

  it('lead no shelf of full depth up to the height of a nailer, which is said where they go so far', () => {
    expect(findingIn(shelved, /behind a nailer/)).toBeNull()
    expect(findingIn(firstHole(shelved, 40), /behind a nailer/)?.weight).toBe('know')
  })
})
