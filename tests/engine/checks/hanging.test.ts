import { describe, expect, it } from 'vitest'
import type { MethodId } from '../../../engine/basics/id'
import { boxOf } from '../../../engine/cabinets/boardBox'
import { pullAtTop, studsBehind } from '../../../engine/checks/hanging'
import { derive } from '../../../engine/pipeline'
import { newProject } from '../../../engine/project/defaults'
import type { Front, Project } from '../../../engine/project/document'
import { aWall, cabinet } from '../../helpers/wall'
import { figureOf, findingIn, inHouse, remedied } from './findings'

const upper = (width: number, said: Parameters<typeof cabinet>[1] = {}) =>
  aWall(cabinet('U1', { left: 400, width, ...said }))
const SHELVES = { fixedShelves: 0, adjustableShelves: 3, partition: null }

describe('the studs behind an upper', () => {
  it('are counted by the width between its sides, wherever it hangs', () => {
    // Every place of the width over studs at 400 that is tried by hand.
    for (const width of [100, 399, 400, 799, 800, 1250]) {
      const counts = Array.from({ length: 400 }, (_, at) => {
        return Math.floor((at + 0.5 + width) / 400) - Math.ceil((at + 0.5) / 400) + 1
      })
      const { least, most } = studsBehind(width, 400)
      expect([Math.min(...counts), Math.max(...counts)]).toEqual([least, width % 400 === 0 ? least : most])
    }
  })

  it('are one at most where it is narrower than they are apart, which is said', () => {
    // Source: thehonestcarpenter.com, on hanging wall cabinets: two studs for each box, and studs 16 in on centre.
    const apart = 406.4
    expect(findingIn(upper(apart + 36 + 1), /one stud/)).toBeNull()
    const finding = findingIn(upper(apart + 36 - 1), /one stud/)
    expect(finding).toMatchObject({ weight: 'know', limit: '2 studs' })
    expect(findingIn(inHouse(upper(apart + 36 - 1), { studSpacing: 300 }), /one stud/)).toBeNull()
  })

  it('are none in masonry', () => {
    expect(findingIn(inHouse(upper(300), { studSpacing: null }), /stud/)).toBeNull()
  })
})

describe('an upper with all that it is to carry', () => {
  it('is within what wall cabinets are tested with in a kitchen, and past it full of books when it is wide and deep', () => {
    const wide = upper(1500, { depth: 450, interior: SHELVES })
    expect(findingIn(wide, /tested with/)).toBeNull()
    const finding = findingIn(inHouse(wide, { shelfLoad: 'books' }), /tested with/)!
    expect(finding.weight).toBe('mind')
    // Source: ANSI/KCMA A161.1-2012 by a trade paper: 600 lb where wall cabinets are over 24 in high, 500 lb before.
    expect(figureOf(finding.limit)).toBeCloseTo(600 * 0.45359237, 1)
    const limitAt = (height: number) => {
      const project = upper(1500, { depth: 450, interior: SHELVES, height })
      return figureOf(findingIn(inHouse(project, { shelfLoad: 'books' }), /tested with/)?.limit)
    }
    expect(limitAt(24 * 25.4)).toBeCloseTo(500 * 0.45359237, 1)
    expect(limitAt(24 * 25.4 + 1)).toBeCloseTo(600 * 0.45359237, 1)
    // Four levels of 200 lb at most, and its boards.
    expect(figureOf(finding.measure)).toBeGreaterThan(4 * 200 * 0.45359237)
  })

  // Source: statics, moments about the lower edge.
  it('pulls at its top as its weight does at half its depth', () => {
    expect(pullAtTop(120, 330, 660)).toBe((120 * 165) / 660)
    expect(pullAtTop(120, 330, 330)).toBe(2 * pullAtTop(120, 330, 660))
  })

  it('is said to pull more than two screws in a stud hold when it is low and heavy', () => {
    const low = upper(1200, {
      height: 300,
      depth: 550,
      interior: { ...SHELVES, adjustableShelves: 0, fixedShelves: 1 },
    })
    const finding = findingIn(inHouse(low, { shelfLoad: 'books' }), /pulls with/)!
    expect(finding.weight).toBe('mind')
    // 2850 x 0.45 x 0.45 x 0.19 lb for an inch of thread. Source: an engineering reference in the form of the US timber
    // code, F = 2850 G^2 D, with 109 lb/in worked out for G 0.45 and D 0.190.
    expect(figureOf(finding.limit)).toBeCloseTo(109.66 * 0.45359237, 1)
    // What breaks it is 15 700 G^2 D L: from memory of the Wood Handbook, chapter 8. So it is let hold less than a fifth.
    const breaks = 15_700 * 0.45 ** 2 * 0.19 * 0.45359237
    expect(breaks / figureOf(finding.limit)).toBeCloseTo(5.5, 1)
    expect(figureOf(finding.measure)).toBeGreaterThan(figureOf(finding.limit))
    expect(findingIn(upper(600), /pulls with/)).toBeNull()
  })
})

describe('what the screws of an upper go through', () => {
  const NONE = { where: 'inside', top: false, bottom: false, width: 90 } as const

  it('is a nailer at its top, a stout back, or missing, which stops', () => {
    expect(findingIn(upper(600), /nothing to hold it by/)).toBeNull()
    const thin = findingIn(upper(600, { overrides: { nailers: NONE } }), /nothing to hold it by/)!
    expect(thin.weight).toBe('stop')
    // 1/2 in, by AWS 2009 4.4.18.
    expect(figureOf(thin.limit)).toBeCloseTo(25.4 / 2, 1)
    const bare = findingIn(upper(600, { overrides: { nailers: NONE, back: { kind: 'none' } } }), /it has no back/)!
    expect(bare.weight).toBe('stop')
    const low = findingIn(upper(600, { overrides: { nailers: { ...NONE, bottom: true } } }), /nothing to hold it by/)
    expect(low?.weight).toBe('stop')
  })

  it('is put there in one step', () => {
    const project = upper(600, { overrides: { nailers: NONE } })
    const mended = remedied(project, findingIn(project, /nothing to hold it by/)!)
    expect(findingIn(mended, /nothing to hold it by/)).toBeNull()
  })

  it('is wide enough', () => {
    const narrow = (width: number) => upper(600, { overrides: { nailers: { ...NONE, top: true, width } } })
    // 2 1/2 in, by the same.
    expect(findingIn(narrow(25.4 * 2.5), /rail it hangs by/)).toBeNull()
    expect(findingIn(narrow(60), /rail it hangs by/)?.measure).toBe('60 mm')
  })
})

describe('the anchor strips of a thin back', () => {
  const TWO = { where: 'inside', top: true, bottom: true, width: 90 } as const
  const tall = (height: number, said: Parameters<typeof cabinet>[1] = {}) =>
    aWall(cabinet('T1', { left: 400, width: 600, height, ...said }))
  const rolesIn = (project: ReturnType<typeof upper>) =>
    derive(project)
      .cabinets[0]!.parts.map(({ role }) => role)
      .filter((role) => role.endsWith('Nailer'))

  // Source: AWS 2009, 4.4.18: at the top and the bottom of the wall side, and one between over 60 in.
  it('are two behind an upper, and the lower one is put there in one step', () => {
    const project = upper(600)
    const finding = findingIn(project, /anchor strip/)!
    expect(finding).toMatchObject({ weight: 'know', measure: '1 strip', limit: '2 strips' })
    const mended = remedied(project, finding)
    expect(rolesIn(mended)).toEqual(['bottomNailer', 'topNailer'])
    expect(findingIn(mended, /anchor strip/)).toBeNull()
  })

  it('are three in a tall from 60 in, the third half way between', () => {
    expect(findingIn(tall(60 * 25.4, { overrides: { nailers: TWO } }), /anchor strip/)).toBeNull()
    const high = tall(60 * 25.4 + 1, { overrides: { nailers: TWO } })
    const finding = findingIn(high, /anchor strip/)!
    expect(finding).toMatchObject({ weight: 'know', measure: '2 strips', limit: '3 strips' })
    const mended = remedied(high, finding)
    expect(findingIn(mended, /anchor strip/)).toBeNull()
    const built = derive(mended).cabinets[0]!
    const lower = (role: string) => boxOf(built.parts.find((part) => part.role === role)!).min.y
    expect(lower('middleNailer')).toBe((lower('bottomNailer') + lower('topNailer')) / 2)
  })

  it('are all put into a tall that has none, which is to be minded', () => {
    const bare = tall(2100, { overrides: { nailers: { ...TWO, top: false, bottom: false } } })
    const finding = findingIn(bare, /anchor strip/)!
    expect(finding).toMatchObject({ weight: 'mind', measure: '0 strips', limit: '3 strips' })
    expect(rolesIn(remedied(bare, finding))).toEqual(['bottomNailer', 'middleNailer', 'topNailer'])
  })

  it('are not asked for before a stout back, nor in a base', () => {
    const { carcassMaterial } = Object.values(upper(600).methods)[0]!
    expect(findingIn(upper(600, { overrides: { backMaterial: carcassMaterial } }), /anchor strip/)).toBeNull()
    expect(findingIn(aWall(cabinet('B1', { left: 400, width: 600 })), /anchor strip/)).toBeNull()
  })

  it('leave a niche in the middle of a tall to its appliance', () => {
    const three = { ...TWO, middle: true } as const
    const oven: Front = { kind: 'appliance', width: 500, height: 600, air: 0 }
    const row = (front: Front, height: number | null) => ({
      front,
      size: height === null ? ({ kind: 'share', share: 1 } as const) : ({ kind: 'fixed', height } as const),
    })
    const front: Front = {
      kind: 'rows',
      rows: [row({ kind: 'open' }, null), row(oven, 640), row({ kind: 'open' }, 760)],
    }
    const project = tall(2100, { overrides: { nailers: three }, front })
    const built = derive(project).cabinets[0]!
    const { min, max } = boxOf(built.parts.find(({ role }) => role === 'middleNailer')!)
    const boards = built.parts.filter(({ role }) => role === 'fixedShelf').map(boxOf)
    const [under, over] = boards.sort((a, b) => a.min.y - b.min.y)
    expect(over!.min.y - under!.max.y).toBeGreaterThan(600)
    expect(max.y <= under!.max.y || min.y >= over!.min.y).toBe(true)
  })

  it('go behind the back of a tall whose loose shelves could not be put before them', () => {
    for (const method of Object.keys(newProject('mm').methods) as MethodId[]) {
      const project = {
        ...tall(2100, { method, interior: { fixedShelves: 0, adjustableShelves: 4, partition: null } }),
      }
      const finding = findingIn(project, /anchor strip/)!
      expect(finding.remedy?.label).toBe('Put bottom and middle nailers into T1, behind the back')
      const mended = remedied(project, finding)
      expect(findingIn(mended, /anchor strip|behind a nailer/)).toBeNull()
      const depthOf = (one: Project) =>
        boxOf(derive(one).cabinets[0]!.parts.find(({ role }) => role === 'middleNailer')!).max.z
      expect(depthOf(mended)).toBeLessThan(40)
    }
  })
})
