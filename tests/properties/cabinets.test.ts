import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Board } from '../../engine/cabinets/board'
import { buildCabinet } from '../../engine/cabinets/buildCabinet'
import { ANY_KIND, type Made, READY_KINDS, SEED } from '../helpers/anyMade'

/** All their boards, one of each kind by turns. */
function* everyBoard(): Generator<Board> {
  const kinds = ANY_KIND.map(([, any, numRuns]) => fc.sample(any, { numRuns, seed: SEED }))
  for (let at = 0; kinds.some((made) => at < made.length); at++) {
    for (const { cabinet, rules } of kinds.flatMap((made) => made[at] ?? [])) yield* buildCabinet(cabinet, rules).boards
  }
}

describe('cabinets of every kind, built by every choice of a method', () => {
  it('are 5000 in all', () => {
    expect(ANY_KIND.reduce((sum, [, , numRuns]) => sum + numRuns, 0)).toBe(5000)
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
    const missing = new Set(ROLES)
    for (const { role } of everyBoard()) {
      missing.delete(role)
      if (missing.size === 0) break
    }
    expect([...missing]).toEqual([])
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
