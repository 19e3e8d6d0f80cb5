import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { once } from '../../engine/basics/remember'
import type { Board } from '../../engine/cabinets/board'
import { buildCabinet } from '../../engine/cabinets/buildCabinet'
import { interferences } from '../../engine/solids/interference'
import { unseatedJoints } from '../../engine/solids/seating'
import { ANY_KIND, type Made, READY_KINDS, SEED } from '../helpers/anyMade'
import { outside } from '../helpers/envelope'

/** The most play that any groove of theirs is made with, but for solid panels, which have as much as they are wide. */
const PLAY = 2

/** Every two boards in one place, every joint that stays partly empty, and all that stands out of the cabinet's room. */
function wrongIn({ cabinet, rules }: Made, boards: readonly Board[]): string[] {
  const { method } = rules
  const hasSolid = method.panelWood.kind === 'solid' && method.frontBuild.kind === 'fivePart'
  const sheet = { ...rules, method: { ...method, panelWood: { kind: 'sheet' } as const } }
  const seated = hasSolid ? buildCabinet(cabinet, sheet).boards : boards
  return [
    ...interferences(boards).map(({ a, b, volume }) => `${a.role} ${a.number} in ${b.role} ${b.number}: ${volume} mm3`),
    ...unseatedJoints(seated, PLAY).map(({ board, recess, empty }) => {
      return `${recess.kind} in ${board.role} ${board.number} has ${empty} mm3 empty`
    }),
    ...boards.flatMap((board) => outside(board, cabinet, rules)),
  ]
}

/** Of each kind the first in five as they are built. */
const aFifth = once(() =>
  ANY_KIND.map(([, any, numRuns]) => {
    const made = fc.sample(any, { numRuns: numRuns / 5, seed: SEED })
    return made.map(({ cabinet, rules }) => buildCabinet(cabinet, rules))
  }),
)

describe('cabinets of every kind, built by every choice of a method', () => {
  it.each(ANY_KIND)(
    '%s have no two boards in one place, no joint unseated and no board out of their room but by their method',
    (_, any, numRuns) => {
      fc.assert(
        fc.property(any, (made) => {
          const { boards } = buildCabinet(made.cabinet, made.rules)
          expect(wrongIn(made, boards)).toEqual([])
        }),
        { numRuns, seed: SEED },
      )
    },
    300_000,
  )

  it('are 5000 in all, most of them with nothing in them that cannot be built', () => {
    expect(ANY_KIND.reduce((sum, [, , numRuns]) => sum + numRuns, 0)).toBe(5000)
    for (const builds of aFifth()) {
      const sound = builds.filter(({ boards, problems }) => {
        return boards.length > 4 && problems.every(({ weight }) => weight !== 'stop')
      })
      expect(sound.length).toBeGreaterThan(builds.length / 2)
    }
  })

  it('are of every kind that there is, with every choice that a method has', () => {
    const all = ANY_KIND.flatMap(([, any, numRuns]) => fc.sample(any, { numRuns, seed: SEED }))
    expect(new Set(all.map(({ what }) => what))).toEqual(
      new Set([...READY_KINDS, 'L base', 'L upper', 'diagonal base', 'diagonal upper']),
    )
    expect(chosenIn(all)).toEqual({
      cornerJoint: 'butt dado rabbet',
      dadoFront: 'covered stopped through',
      bottom: 'between under',
      top: 'between over',
      baseTop: 'frontRail full lid stretchersFlat stretchersOnEdge',
      back: 'applied groove none rabbet',
      floor: 'legs none notched plinth',
      fixedShelf: 'dado pinned',
      frontMount: 'fullOverlay halfOverlay inset',
      frameJoint: 'none pocketScrews tenon',
      frameFronts: 'inset none overlay',
      frameFixing: 'glue pocketScrews',
      frontBuild: 'fivePart slab',
      panelWood: 'sheet solid',
      slide: 'side undermount',
      fixing: 'biscuits dowels looseTenons none pocketScrews screws',
      doorPull: 'bar knob none',
      drawerPull: 'bar knob none',
      frontScrews: 'none screws',
      banding: '0 1 2',
      kick: 'inLengths perCabinet',
    })
  })

  it('have every board that a cabinet can have', () => {
    const roles = new Set(aFifth().flatMap((builds) => builds.flatMap(({ boards }) => boards.map(({ role }) => role))))
    expect(ROLES.filter((role) => !roles.has(role))).toEqual([])
  })
})

const ROLES: readonly Board['role'][] = [
  ...(['leftSide', 'rightSide', 'bottom', 'top', 'lid', 'lidStrip', 'frontStretcher', 'backStretcher'] as const),
  ...([
    'back',
    'topNailer',
    'bottomNailer',
    'middleNailer',
    'fixedShelf',
    'adjustableShelf',
    'partition',
    'divider',
  ] as const),
  ...(['kickBoard', 'plinthFront', 'plinthBack', 'plinthEnd', 'filler', 'fillerReturn', 'leftEnd'] as const),
  ...(['rightEnd', 'stile', 'topRail', 'bottomRail', 'midRail', 'mullion', 'doorStile', 'doorRail'] as const),
  ...(['doorPanel', 'drawerStile', 'drawerRail', 'drawerPanel', 'door', 'flap', 'falseFront', 'blindPanel'] as const),
  ...(['cornerFiller', 'cornerPost', 'drawerFront', 'drawerSide', 'drawerBoxFront', 'drawerBoxBack'] as const),
  ...(['drawerBottom', 'insertEnd', 'insertDivider'] as const),
]

/** Which kinds of each choice there are among them, in the order of letters. */
function chosenIn(all: readonly Made[]): Record<string, string> {
  const seen = new Map<string, Set<string>>()
  for (const { rules } of all) {
    const { faceFrame, banding, ...method } = rules.method
    const choices = {
      ...method,
      frameJoint: faceFrame?.joint ?? 'none',
      frameFronts: faceFrame?.fronts ?? 'none',
      banding: banding.fronts,
      kick: rules.kick,
    }
    for (const [choice, value] of Object.entries(choices)) {
      const kind = typeof value === 'object' && 'kind' in value ? value.kind : value
      if (typeof kind === 'object' || /Material$|^id$|^name$/.test(choice)) continue
      seen.set(choice, (seen.get(choice) ?? new Set()).add(`${kind}`))
    }
  }
  return Object.fromEntries([...seen].map(([choice, kinds]) => [choice, [...kinds].sort().join(' ')]))
}

describe('a cabinet that is wrong', () => {
  it('is told as the plainest of its kind, with nothing said of it but what is to blame', () => {
    const [, anyStraight] = ANY_KIND[0]
    const property = fc.property(anyStraight, ({ rules }) => rules.method.back.kind !== 'groove')
    const { counterexample } = fc.check(property, { numRuns: 200, seed: SEED })
    expect(fc.stringify(counterexample)).toBe(
      '[base 380 x 560 x 450, open; back {"kind":"groove","inset":12,"depth":7,"clearance":2}]',
    )
  })
})
