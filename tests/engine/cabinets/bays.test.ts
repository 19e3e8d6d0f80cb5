import { describe, expect, it } from 'vitest'
import { bayPlaces, cornerShelfPlaces } from '../../../engine/cabinets/bayPlaces'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { derive } from '../../../engine/pipeline'
import type { Cabinet, Front, Interior, InteriorBay } from '../../../engine/project/document'
import { aCabinet, boardIn, PLAIN, rulesWith, sizeOf } from '../../helpers/cabinets'
import { aWall, cabinet, the } from '../../helpers/wall'

/** A tall of 1236 by 2100, so 1236 - 2 x 18 = 1200 clear between its sides. */
const WIDTH = 1236
const EMPTY: Interior = { fixedShelves: 0, adjustableShelves: 0, partition: null }
const share = (shelves: InteriorBay['shelves'] = null): InteriorBay => ({ size: { kind: 'share', share: 1 }, shelves })
const wide = (width: number, shelves: InteriorBay['shelves'] = null): InteriorBay => ({
  size: { kind: 'fixed', width },
  shelves,
})
const with_ = (interior: Partial<Interior>, front: Front = { kind: 'open' }): Cabinet =>
  aCabinet('tall', { width: WIDTH, front, interior: { ...EMPTY, ...interior } })
const built = (one: Cabinet, changes = {}) => buildCabinet(one, rulesWith(changes))
const leftOf = (one: Cabinet, number: number) => boardIn(built(one).boards, 'partition', number).placement.origin.x
const messages = (one: Cabinet) => built(one).problems.map(({ message }) => message)
const DADO_6 = { cornerJoint: { kind: 'dado', depth: { rule: 'depth', depth: 6 } } } as const

describe('partitions', () => {
  it('leave equal bays where nothing is typed', () => {
    const three = with_({ bays: [share(), share(), share()] })
    const bay = (1200 - 2 * 18) / 3
    expect([leftOf(three, 1), leftOf(three, 2)]).toEqual([18 + bay, 18 + bay + 18 + bay])
    expect(built(three).problems).toEqual([])
  })

  it('stand where bays of a typed width end, and the others share what is left', () => {
    const three = with_({ bays: [wide(300), share(), wide(450)] })
    expect([leftOf(three, 1), leftOf(three, 2)]).toEqual([18 + 300, WIDTH - 18 - 450 - 18])
  })

  it('are a board each, from the bottom to the top, in dados of both where the corners are', () => {
    const { boards } = built(with_({ bays: [share(), share(), share()] }), DADO_6)
    const partitions = boards.filter(({ role }) => role === 'partition')
    expect(partitions.map(sizeOf)).toEqual(Array.from({ length: 2 }, () => `${2100 - 2 * 18 + 2 * 6} x ${580}`))
    const dados = boardIn(boards, 'bottom').operations.filter(({ kind }) => kind === 'dado')
    expect(dados).toHaveLength(2)
  })

  it('are left out where the typed bays take more than there is, with the sum', () => {
    const full = with_({ bays: [wide(700), share(), wide(500)] })
    expect(messages(full)).toEqual([
      `T1: its fixed bays with the partitions take ${700 + 500 + 2 * 18} mm of a carcass that is 1200 mm wide inside; nothing is left for the other bays.`,
      'T1: a bay would be 0 mm wide between its partitions; they are left out.',
    ])
    expect(built(full).boards.some(({ role }) => role === 'partition')).toBe(false)
  })

  it('stand under drawers on a board that closes them off', () => {
    const front: Front = {
      kind: 'rows',
      rows: [
        { size: { kind: 'fixed', height: 400 }, front: { kind: 'drawer' } },
        { size: { kind: 'share', share: 1 }, front: { kind: 'open' } },
      ],
    }
    const { boards, problems } = built(with_({ bays: [share(), share(), share()] }, front))
    expect(problems).toEqual([])
    const line = boardIn(boards, 'fixedShelf')
    const { length } = boardIn(boards, 'partition', 2)
    expect(length).toBe(line.placement.origin.y - 18)
  })

  it('stand in no niche, and not beside columns', () => {
    const bays = [share(), share(), share()]
    const niche: Front = { kind: 'appliance', width: 560, height: 600, air: 0 }
    expect(messages(with_({ bays }, niche))).toContain(
      'T1: partitions would stand in the niche for an appliance; they are left out.',
    )
    const columns: Front = {
      kind: 'columns',
      columns: [
        { size: { kind: 'share', share: 1 }, front: { kind: 'door', hinge: 'left' }, shelves: null },
        { size: { kind: 'share', share: 1 }, front: { kind: 'door', hinge: 'right' }, shelves: null },
      ],
    }
    expect(messages(with_({ bays }, columns))).toContain(
      'T1: its columns are parted already, so the partitions are left out.',
    )
  })
})

describe('a bay', () => {
  const bays = [
    wide(300, { fixedShelves: 0, adjustableShelves: 3 }),
    share({ fixedShelves: 2, adjustableShelves: 0 }),
    share(),
  ]
  const own = with_({ bays, fixedShelves: 1 })
  const each = (1200 - 300 - 2 * 18) / 2

  it('has its own number of shelves, or as many as the cabinet says', () => {
    const { boards, problems } = built(own)
    expect(problems).toEqual([])
    const loose = boards.filter(({ role }) => role === 'adjustableShelf')
    expect(loose.map(({ length }) => length)).toEqual([300 - 3, 300 - 3, 300 - 3])
    const fixed = boards.filter(({ role }) => role === 'fixedShelf')
    // A third of the side takes its end, and a quarter of a partition, which may be housed from both faces.
    const between = each + 18 / 4 + 18 / 4
    const atSide = each + 18 / 4 + 18 / 3
    expect(fixed.map(({ length }) => length).sort((a, b) => a - b)).toEqual([between, between, atSide])
  })

  it('has pin rows in its own uprights only, and dados where its own shelves are', () => {
    const { boards } = built(own)
    const holesOn = (role: 'leftSide' | 'partition' | 'rightSide', number = 1) =>
      boardIn(boards, role, number).operations.flatMap((one) =>
        one.kind === 'holeRow' && one.purpose === 'shelfPin' ? [one.face] : [],
      )
    expect(new Set(holesOn('leftSide'))).toEqual(new Set(['inside']))
    // The inside of a partition looks right, and the bay with pins is at its left.
    expect(new Set(holesOn('partition', 1))).toEqual(new Set(['outside']))
    expect(holesOn('partition', 2)).toEqual([])
    expect(holesOn('rightSide')).toEqual([])
    const dadosOn = (number: number) =>
      boardIn(boards, 'partition', number).operations.flatMap((one) => (one.kind === 'dado' ? [one.face] : []))
    expect(dadosOn(1)).toEqual(['inside', 'inside'])
    expect(dadosOn(2).sort()).toEqual(['inside', 'outside', 'outside'])
  })

  it('has roll-outs clear of a door that hangs on its own side, and of none that hangs elsewhere', () => {
    const boxes = { fixedShelves: 0, adjustableShelves: 0, rollOuts: { count: 1, height: 100 } }
    const { boards } = built(with_({ bays: [share(boxes), share(boxes), share()] }, { kind: 'pair' }))
    const bay = (1200 - 2 * 18) / 3
    const widths = [1, 2].map((number) => boardIn(boards, 'drawerBoxFront', number).length)
    const box = (clear: number) => clear - 2 * 12.7 - 2 * 12
    expect(widths[0]).toBeCloseTo(box(bay - 19 - 5), 3)
    expect(widths[1]).toBeCloseTo(box(bay), 3)
  })

  it('tells its width and where its shelves are, as they are typed', () => {
    const project = aWall(
      cabinet('T1', { width: WIDTH, interior: { ...EMPTY, bays: [wide(300), share({ ...EMPTY, fixedShelves: 1 })] } }),
    )
    const places = bayPlaces(project, the(project, 'T1'))
    expect(places.map(({ width }) => width)).toEqual([300, 1200 - 300 - 18])
    // The first can be typed until 30 are left to the other, which takes what it leaves and cannot be typed.
    expect(places.map(({ widest }) => widest)).toEqual([1200 - 18 - 30, null])
    const [shelf] = places[1]!.fixed
    // In the middle: as much under the shelf as over it.
    expect(shelf).toEqual({ at: shelf!.most / 2, least: 0, most: shelf!.most })
  })
})

describe('what can be typed of a fixed shelf', () => {
  it('is from the typed one under it to the typed one over it, with room for those between', () => {
    const interior = { ...EMPTY, fixedShelves: 4, fixedAt: [300, null, null, 1200] }
    const project = aWall(cabinet('T1', { interior }))
    const [place] = bayPlaces(project, the(project, 'T1'))
    const limits = place!.fixed.map(({ least, most }) => [least, most])
    const most = place!.fixed[3]!.most
    expect(limits).toEqual([
      [0, 1200 - 3 * 18],
      [300 + 18, 1200 - 2 * 18],
      [300 + 2 * 18, 1200 - 18],
      [300 + 3 * 18, most],
    ])
  })
})

describe('the fixed shelves of a corner cabinet', () => {
  const corner = { kind: 'L', hand: 'left', other: 900, otherDepth: 580 } as const
  const placesOf = (fixedAt: Interior['fixedAt']) => {
    const interior = { ...EMPTY, fixedShelves: 2, ...(fixedAt && { fixedAt }) }
    const project = aWall(cabinet('B1', { width: 900, height: 720, corner, interior }))
    const one = the(project, 'B1')
    const levels = derive(project)
      .cabinets[0]!.parts.filter(({ role }) => role === 'fixedShelf' || role === 'bottom')
      .map(({ placement, thickness }) => placement.origin.y + (placement.thickness === '+y' ? 0 : -thickness))
    const [bottom, ...shelves] = levels.sort((a, b) => a - b)
    return { places: cornerShelfPlaces(project, one, corner), built: shelves.map((low) => low - bottom! - 18) }
  }

  it('are where they are built, evenly or as they are typed', () => {
    for (const fixedAt of [undefined, [150, null], [null, 333]] as const) {
      const { places, built: low } = placesOf(fixedAt)
      expect(places.map(({ at }) => at)).toEqual(low)
    }
    expect(placesOf([150, null]).places[0]!.at).toBe(150)
  })

  it('can be typed from the bottom to the top, with room for one another', () => {
    const { places } = placesOf([150, null])
    expect(places.map(({ least }) => least)).toEqual([0, 150 + 18])
    const most = places[1]!.most
    expect(places[0]!.most).toBe(most - 18)
    // Evenly, two shelves of 18 leave three equal rooms.
    expect(placesOf(undefined).places[0]!.at).toBeCloseTo((most + 18 - 2 * 18) / 3, 3)
  })
})

describe('fixed shelves', () => {
  const at = (fixedAt: Interior['fixedAt'], fixedShelves = 3) => with_({ fixedShelves, ...(fixedAt && { fixedAt }) })
  const under = (one: Cabinet) =>
    built(one)
      .boards.filter(({ role }) => role === 'fixedShelf')
      .map(({ placement }) => placement.origin.y - 18)
  /** Over the bottom. */
  const CLEAR = 2100 - 2 * 18

  it('stand at the heights that are typed, over the bottom', () => {
    expect(under(at([300, 900, 1500]))).toEqual([300, 900, 1500])
  })

  it('part evenly what those of a typed height leave', () => {
    const over = (CLEAR - 900 - 18 - 18) / 2
    expect(under(at([null, 900, null]))).toEqual([(900 - 18) / 2, 900, 900 + 18 + over])
    // The topmost at 1500: two of 18 part the 1500 under it.
    const room = (1500 - 2 * 18) / 3
    expect(under(at([null, null, 1500]))).toEqual([room, room + 18 + room, 1500])
  })

  it('are spread evenly where one would run into another or into the top, with the limit', () => {
    const even = under(at(undefined))
    expect(under(at([500, 510, null]))).toEqual(even)
    expect(messages(at([500, 510, null]))).toEqual([
      `T1: fixed shelf 2 would be 510 mm over the bottom; ${500 + 18} mm is the least, so its fixed shelves are spread evenly.`,
    ])
    expect(messages(at([null, null, 2060]))).toEqual([
      `T1: fixed shelf 3 would be 2060 mm over the bottom; ${CLEAR - 18} mm is the most, so its fixed shelves are spread evenly.`,
    ])
    // Two more want their thickness over the first.
    expect(messages(at([2040, null, null]))).toEqual([
      `T1: fixed shelf 1 would be 2040 mm over the bottom; ${CLEAR - 3 * 18} mm is the most, so its fixed shelves are spread evenly.`,
    ])
  })

  it('leave the roomiest height to those on pins', () => {
    const { boards } = built(with_({ fixedShelves: 1, adjustableShelves: 1, fixedAt: [1400] }))
    expect(boardIn(boards, 'adjustableShelf').placement.origin.y).toBeLessThan(18 + 1400)
  })

  it('go through a corner at their heights too', () => {
    const corner = { kind: 'L', hand: 'left', other: 900, otherDepth: 580 } as const
    const l = aCabinet('base', { width: 900, corner, interior: { ...EMPTY, fixedShelves: 1, fixedAt: [200] } })
    const { boards } = buildCabinet(l, rulesWith({ ...PLAIN, floor: { kind: 'none' } }))
    expect(boardIn(boards, 'fixedShelf').placement.origin.y).toBe(18 + 200)
  })
})
