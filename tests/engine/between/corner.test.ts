import { describe, expect, it } from 'vitest'
import type { MaterialId } from '../../../engine/basics/id'
import { boxOf } from '../../../engine/cabinets/boardBox'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { Cabinet, Front, Project } from '../../../engine/project/document'
import { aCorner, aRoom, cabinet, OTHER_WALL, withBoards } from '../../helpers/wall'

const CARCASS = 'carcass' as MaterialId
const TOP = { material: CARCASS, overhang: 20, ends: 15, splash: 0, banding: 0 }
const DOOR: Front = { kind: 'door', hinge: 'left' }
/** The thickness of carcass and fronts of a new metric project. */
const T = 18
const FRONT = 18

function tops(project: Project, change: Partial<typeof TOP> = {}) {
  const countertop = { ...TOP, ...change }
  const covered = applyEdit(withBoards(project, CARCASS, 5000), { kind: 'editBetween', change: { countertop } })
  return derive(covered).runs.filter(({ kind }) => kind === 'countertop')
}
/** Each board with where it begins and ends along its wall, and from it. */
function lying(project: Project, change: Partial<typeof TOP> = {}) {
  return tops(project, change).flatMap(({ place, parts }) =>
    parts.map((part) => {
      const { min, max } = boxOf(part)
      return `${part.mark} ${place.left + min.x} to ${place.left + max.x}, ${min.z} to ${max.z}`
    }),
  )
}

describe('the countertops of a closed room', () => {
  it('go round it: each runs into the corner at its right end and stops at the one before at its left', () => {
    const at = (mark: string, wall: string, width: number) =>
      cabinet(mark, { wall: wall as Cabinet['wall'], left: 600, width, depth: 580 })
    const room = aRoom(...[at('B1', 'w1', 2400), at('B2', 'w2', 1600), at('B3', 'w3', 2400), at('B4', 'w4', 1600)])
    const edge = 580 + 20
    // No cabinet stands in any corner: the top of the wall before goes on to the wall there.
    const [long, short] = [3600, 2800]
    expect(lying(room)).toEqual([
      `BT1-CT1 ${edge} to ${long}, 0 to ${edge}`,
      `BT2-CT1 ${edge} to ${short}, 0 to ${edge}`,
      `BT3-CT1 ${edge} to ${long}, 0 to ${edge}`,
      `BT4-CT1 ${edge} to ${short}, 0 to ${edge}`,
    ])
  })
})

describe('the countertops of two walls that meet', () => {
  const b1 = cabinet('B1', { left: 3000, width: 600, depth: 560, front: DOOR })
  const b2 = cabinet('B2', { wall: OTHER_WALL, left: 560 + FRONT, width: 700, depth: 540 })

  it('are butted: one runs into the corner, the other stops at its front edge', () => {
    const edge = 560 + FRONT + 20
    expect(lying(aCorner(b1, b2))).toEqual([
      `BT1-CT1 ${3000 - 15} to 3600, 0 to ${edge}`,
      `BT2-CT1 ${edge} to ${560 + FRONT + 700 + 15}, 0 to ${540 + 20}`,
    ])
  })

  it('run into the corner at the wall whose cabinets do', () => {
    const away = { ...b1, left: 3600 - 600 - 550 }
    const corner = { ...b2, left: 0 }
    expect(lying(aCorner(away, corner))).toEqual([
      `BT1-CT1 ${2450 - 15} to ${3600 - (540 + 20)}, 0 to ${560 + FRONT + 20}`,
      `BT2-CT1 0 to ${700 + 15}, 0 to ${540 + 20}`,
    ])
  })

  it('lie over both legs of a corner cabinet as two boards', () => {
    const corner = { kind: 'L', hand: 'right', other: 950, otherDepth: 570 } as const
    const l = cabinet('B1', { left: 2700, width: 900, depth: 560, corner, front: DOOR })
    const next = cabinet('B2', { wall: OTHER_WALL, left: 950, width: 700, depth: 540, front: DOOR })
    const edge = 560 + FRONT + 20
    expect(lying(aCorner(l, next))).toEqual([
      `BT1-CT1 ${2700 - 15} to 3600, 0 to ${edge}`,
      `BT2-CT1 ${edge} to ${950 + 700 + 15}, 0 to ${570 + FRONT + 20}`,
    ])
  })

  it('lie over the other leg alone, called after its cabinet', () => {
    const corner = { kind: 'L', hand: 'left', other: 950, otherDepth: 570 } as const
    const l = cabinet('B1', { wall: OTHER_WALL, left: 0, width: 900, depth: 560, corner, front: DOOR })
    const edge = 570 + FRONT + 20
    expect(lying(aCorner(l))).toEqual([
      `BR1-CT1 ${3600 - 950 - 15} to 3600, 0 to ${edge}`,
      `BT1-CT1 ${edge} to ${900 + 15}, 0 to ${560 + FRONT + 20}`,
    ])
  })

  it('have splashes that meet in the corner, one of them over the other top', () => {
    expect(lying(aCorner(b1, b2), { splash: 90 }).filter((words) => words.includes('-SP'))).toEqual([
      `BT1-SP1 ${3000 - 15} to 3600, 0 to ${T}`,
      `BT2-SP1 ${T} to ${560 + FRONT + 700 + 15}, 0 to ${T}`,
    ])
  })

  describe('where neither run reaches the corner', () => {
    // 540 and 578 from the corner: each less than the top of the other wall is deep, 540 + 20 and 560 + 18 + 20.
    const far = { ...b1, left: 3600 - 600 - 540 }
    const beside = { ...b2, left: 560 + FRONT }

    it('go on to the wall over the empty square all the same, and the other is butted', () => {
      const edge = 560 + FRONT + 20
      expect(lying(aCorner(far, beside), { splash: 90 })).toEqual([
        `BT1-CT1 ${2460 - 15} to 3600, 0 to ${edge}`,
        `BT1-SP1 ${2460 - 15} to 3600, 0 to ${T}`,
        `BT2-CT1 ${edge} to ${560 + FRONT + 700 + 15}, 0 to ${540 + 20}`,
        `BT2-SP1 ${T} to ${560 + FRONT + 700 + 15}, 0 to ${T}`,
      ])
    })

    it('want something to lie on there, and have no band at the wall', () => {
      const project = aCorner(far, beside)
      const countertop = { ...TOP, banding: 1 }
      const covered = applyEdit(withBoards(project, CARCASS, 5000), { kind: 'editBetween', change: { countertop } })
      const { runs, problems } = derive(covered)
      expect(problems.map(({ message }) => message)).toContain(
        'B1: its countertop goes on 540 mm to the wall over an empty corner; more than 150 mm wants ledgers on both walls, or a frame, to lie on.',
      )
      const top = runs.find(({ mark }) => mark === 'BT1')!.parts[0]!
      expect(top.banding).toMatchObject({ start: 1, end: 0 })
    })

    it('stop before a higher cabinet that stands in that square', () => {
      const tall = cabinet('T1', { wall: OTHER_WALL, left: 0, width: 300, depth: 400 })
      const [first] = lying(aCorner(far, beside, tall))
      expect(first).toBe(`BT1-CT1 ${2460 - 15} to ${3600 - 400}, 0 to ${560 + FRONT + 20}`)
    })
  })

  it('do not know of one another at other levels, or where the walls do not meet', () => {
    const low = { ...b2, height: b2.height - 200 }
    // The lower one ends at the fronts of the higher cabinet.
    expect(lying(aCorner(b1, low))[1]).toBe(`BT2-CT1 ${560 + FRONT} to ${560 + FRONT + 700 + 15}, 0 to ${540 + 20}`)
    const project = aCorner(b1, b2)
    const apart = applyEdit(project, { kind: 'editWall', id: OTHER_WALL, change: { meets: false } })
    expect(lying(apart)[1]).toBe(`BT2-CT1 ${560 + FRONT - 15} to ${560 + FRONT + 700 + 15}, 0 to ${540 + 20}`)
  })
})

describe('the crowns of two walls that meet', () => {
  it('are butted too: the second begins at the face of the first', () => {
    const u1 = cabinet('U1', { left: 3000, width: 600, depth: 330, front: DOOR })
    const u2 = cabinet('U2', { wall: OTHER_WALL, left: 330 + FRONT, width: 700, depth: 330, front: DOOR })
    const crown = { material: CARCASS, height: 60, forward: 30 }
    const crowned = applyEdit(withBoards(aCorner(u1, u2), CARCASS, 5000), { kind: 'editBetween', change: { crown } })
    const places = derive(crowned).runs.map(({ mark, place }) => [mark, place.left, place.left + place.width])
    expect(places).toEqual([
      ['UC1', 3000, 3600],
      ['UC2', 330 + 30, 330 + FRONT + 700],
    ])
  })
})

describe('the long kicks of two walls that meet', () => {
  /** The usual plinth of a new project is 100 high and 60 behind the front edges. */
  const SETBACK = 60
  const b1 = cabinet('B1', { left: 3000, width: 600, depth: 560, front: DOOR })
  const b2 = cabinet('B2', { wall: OTHER_WALL, left: 560 + FRONT, width: 700, depth: 540 })
  const [face1, face2] = [560 - SETBACK, 540 - SETBACK]

  function kicks(...cabinets: readonly Cabinet[]) {
    const long = applyEdit(withBoards(aCorner(...cabinets), CARCASS, 5000), {
      kind: 'editBetween',
      change: { kick: 'inLengths' },
    })
    return derive(long)
      .runs.filter(({ kind }) => kind === 'kick')
      .flatMap(({ place, parts }) =>
        parts.map((part) => {
          const { min, max } = boxOf(part)
          return `${part.mark} ${place.left + min.x} to ${place.left + max.x}, face at ${max.z}`
        }),
      )
  }

  it('are butted: one runs through to the wall, the other on to its face', () => {
    expect(kicks(b1, b2)).toEqual([
      `BK1-KL1 3000 to 3600, face at ${face1}`,
      `BK2-KL1 ${face1} to ${560 + FRONT + 700}, face at ${face2}`,
    ])
  })

  it('are butted the other way round where the cabinets of the other wall stand in the corner', () => {
    const away = { ...b1, left: 3600 - 600 - 540 }
    expect(kicks(away, { ...b2, left: 0 })).toEqual([
      `BK1-KL1 ${away.left} to ${3600 - face2}, face at ${face1}`,
      `BK2-KL1 0 to 700, face at ${face2}`,
    ])
  })

  it('run on under the fillers of a corner that no cabinet stands in, the one of the wall before to the rear of the other', () => {
    const filler = { kind: 'filler', width: 40, scribe: 0 } as const
    const none = { kind: 'none' } as const
    const first = { ...b1, left: 3600 - 600 - 540 - 40, beside: { left: none, right: filler } }
    const second = { ...b2, left: 560 + 40, beside: { left: filler, right: none } }
    expect(kicks(first, second)).toEqual([
      `BK1-KL1 ${first.left} to ${3600 - (face2 - T)}, face at ${face1}`,
      `BK2-KL1 ${face1} to ${560 + 40 + 700}, face at ${face2}`,
    ])
  })

  it('end where their cabinets do when there is more open between them', () => {
    const apart = { ...b2, left: 560 + FRONT + 20 }
    expect(kicks(b1, apart)[1]).toBe(`BK2-KL1 ${apart.left} to ${apart.left + 700}, face at ${face2}`)
  })

  it('end at a panel that stands on the floor', () => {
    const panel = { kind: 'panel', material: CARCASS, foot: 'floor' } as const
    const ended = { ...b2, left: 560 + FRONT + T, beside: { left: panel, right: { kind: 'none' } } } as const
    expect(kicks(b1, ended)[1]).toBe(`BK2-KL1 ${ended.left} to ${ended.left + 700}, face at ${face2}`)
  })
})
