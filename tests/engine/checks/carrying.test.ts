import { describe, expect, it } from 'vitest'
import { doesPass } from '../../../engine/checks/carrying'
import { aWall, cabinet, withWall } from '../../helpers/wall'
import { built, findingIn, inHouse } from './findings'

describe('a box on its way through a doorway', () => {
  it('goes with its longest edge first, upright or on its side', () => {
    expect(doesPass([2052, 600, 580], { width: 580, height: 600 })).toBe(true)
    expect(doesPass([2052, 600, 580], { width: 600, height: 580 })).toBe(true)
    expect(doesPass([2052, 600, 580], { width: 579, height: 2000 })).toBe(false)
    expect(doesPass([700, 1100, 900], { width: 760, height: 890 })).toBe(false)
  })

  const wide = aWall(cabinet('B1', { left: 300, width: 1200, height: 868, depth: 580 }))

  it('is said not to pass where two of its edges are too long, without its plinth', () => {
    // On its plinth of 100 it would be 868; the box alone is 768 x 580 x 1200.
    expect(findingIn(inHouse(wide, { doorway: { width: 580, height: 768 } }), /doorway/)).toBeNull()
    const finding = findingIn(inHouse(wide, { doorway: { width: 580, height: 767 } }), /doorway/)
    expect(finding).toMatchObject({ weight: 'mind', measure: '580 mm x 768 mm', limit: '580 mm x 767 mm' })
  })

  it('is higher where its sides run to the floor', () => {
    const notched = built(wide, { floor: { kind: 'notched', height: 100, setback: 75 } })
    expect(findingIn(inHouse(notched, { doorway: { width: 580, height: 800 } }), /doorway/)).not.toBeNull()
  })

  it('is of no concern where no doorway was measured', () => {
    expect(findingIn(wide, /doorway/)).toBeNull()
  })
})

describe('a corner on its way through a doorway', () => {
  const leg = { kind: 'diagonal', hand: 'left', other: 900, otherDepth: 580 } as const
  const base = (kind: 'L' | 'diagonal', depth = 580) =>
    aWall(
      cabinet('B1', {
        width: 900,
        height: 868,
        depth,
        corner: { ...leg, kind, otherDepth: depth },
        front: { kind: 'door', hinge: 'left' },
      }),
    )

  it('is as wide as both its legs together, not as deep as one of them', () => {
    const door = { width: 650, height: 2000 }
    const finding = findingIn(inHouse(base('diagonal'), { doorway: door }), /doorway/)
    expect(finding).toMatchObject({ weight: 'mind', measure: '768 mm x 900 mm', limit: '650 mm x 2000 mm' })
    expect(findingIn(inHouse(base('L'), { doorway: door }), /doorway/)?.measure).toBe('768 mm x 900 mm')
    expect(findingIn(inHouse(base('diagonal'), { doorway: { width: 768, height: 2000 } }), /doorway/)).toBeNull()
  })

  it('is carried square to its slanting front where it is less so', () => {
    // From the corner to the line between the ends of legs of 300: (900 + 300) / √2 = 848.5, less than 900.
    const slim = base('diagonal', 300)
    expect(findingIn(inHouse(slim, { doorway: { width: 760, height: 849 } }), /doorway/)?.measure).toMatch(
      /^768 mm x 848.5/,
    )
    expect(findingIn(inHouse(slim, { doorway: { width: 768, height: 849 } }), /doorway/)).toBeNull()
    expect(findingIn(inHouse(slim, { doorway: { width: 768, height: 848 } }), /doorway/)).not.toBeNull()
  })

  it('may be turned through leg by leg where it is an L', () => {
    // From its inside corner to the corner of the room: 400 √2 = 565.7, through a doorway of 570 by 2000.
    const doorway = { width: 570, height: 2000 }
    expect(findingIn(inHouse(base('L', 400), { doorway }), /leg by leg it takes 565.7 mm/)?.weight).toBe('know')
    expect(findingIn(inHouse(base('L', 400), { doorway: { ...doorway, width: 565 } }), /doorway/)?.weight).toBe('mind')
    expect(findingIn(inHouse(base('diagonal', 400), { doorway }), /doorway/)?.weight).toBe('mind')
  })

  it('is raised over the least width of its plan where it is tall', () => {
    const tall = aWall(
      cabinet('T1', { width: 900, height: 2252, depth: 580, corner: leg, front: { kind: 'door', hinge: 'left' } }),
    )
    const ceiling = Math.hypot(2252 - 100, 900)
    expect(findingIn(withWall(tall, { height: ceiling + 0.1 }), /diagonal is/)).toBeNull()
    expect(findingIn(withWall(tall, { height: ceiling - 0.1 }), /diagonal is/)).not.toBeNull()
  })
})

describe('a tall that is raised on its lower edge', () => {
  it('is as high as its diagonal, which the ceiling must clear', () => {
    // 2252 less its plinth of 100: the diagonal of 2152 x 580 is 2228.8.
    const tall = aWall(cabinet('T1', { left: 300, width: 600, depth: 580, height: 2252 }))
    const ceiling = Math.hypot(2252 - 100, 580)
    expect(findingIn(withWall(tall, { height: 2300 }), /diagonal/)).toBeNull()
    expect(findingIn(withWall(tall, { height: ceiling + 0.1 }), /diagonal/)).toBeNull()
    const finding = findingIn(withWall(tall, { height: ceiling - 0.1 }), /diagonal/)
    expect(finding?.weight).toBe('mind')
  })

  it('is raised over its width where that is less than its depth', () => {
    const narrow = aWall(cabinet('T1', { left: 300, width: 300, depth: 580, height: 2252 }))
    expect(findingIn(withWall(narrow, { height: 2300 - 120 }), /diagonal/)).toBeNull()
  })
})
