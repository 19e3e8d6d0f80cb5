import fc from 'fast-check'
import type { Rules } from '../../engine/cabinets/build'
import { USUAL_DADO_FRONTS } from '../../engine/project/dadoFront'
import {
  biscuits,
  USUAL_DOOR_PULLS,
  USUAL_DRAWER_PULLS,
  USUAL_FIXINGS,
  USUAL_FRONT_SCREWS,
} from '../../engine/project/fixing'
import { USUAL_FIVE_PART, USUAL_FRAME } from '../../engine/project/frames'
import type { BuildMethod, FaceFrame, JointDepth, MethodChoices } from '../../engine/project/method'
import type { Mm } from '../../engine/units/length'
import { PLAIN, rulesWith } from './cabinets'

/** What comes first is what a counterexample shrinks to. */
export const oneOf = <Value>(...values: readonly Value[]): fc.Arbitrary<Value> => fc.constantFrom(...values)

/** One of several, the first of which is what a counterexample shrinks to wherever it can. */
export function anyOf<Value>(
  ...ways: readonly (readonly [weight: number, way: fc.Arbitrary<Value>])[]
): fc.Arbitrary<Value> {
  return fc.oneof({ withCrossShrink: true }, ...ways.map(([weight, arbitrary]) => ({ weight, arbitrary })))
}

/** Whole millimetres, and parts of one. */
export function mm(least: Mm, most: Mm): fc.Arbitrary<Mm> {
  return fc
    .tuple(fc.integer({ min: least, max: most }), oneOf(0, 0, 0.125, 0.5, 0.875))
    .map(([whole, part]) => Math.min(most, whole + part))
}

/** The choices that are no board: a choice that is forgotten here does not compile. */
type Choices = Required<Omit<MethodChoices, `${string}Material`>>

const depth: fc.Arbitrary<JointDepth> = oneOf<JointDepth>(
  { rule: 'depth', depth: 6 },
  { rule: 'depth', depth: 9 },
  { rule: 'residual', residual: 10 },
)

const plainFrame: fc.Arbitrary<FaceFrame> = fc.record({
  stile: oneOf(USUAL_FRAME.stile, 44.45, 50),
  topRail: oneOf(38, 60),
  bottomRail: oneOf(38, 25),
  mullion: oneOf(38, 50),
  pastLeft: oneOf(0, 6.35),
  pastRight: oneOf(0, 12.7),
  proud: oneOf(0, 3),
  joint: oneOf<FaceFrame['joint']>({ kind: 'pocketScrews' }, { kind: 'tenon', length: 15 }),
  fronts: oneOf<FaceFrame['fronts']>({ kind: 'inset' }, { kind: 'overlay', by: 12.7 }, { kind: 'overlay', by: 8 }),
})

/** Some with a top rail of their own for uppers. */
const faceFrame: fc.Arbitrary<FaceFrame> = anyOf<FaceFrame>(
  [2, plainFrame],
  [1, plainFrame.map((frame) => ({ ...frame, upperTopRail: 63.5 }))],
)

const fivePart = fc.record({
  ...{ kind: fc.constant('fivePart' as const), groove: oneOf(10, 8), play: oneOf(USUAL_FIVE_PART.play, 1) },
  stile: oneOf(USUAL_FIVE_PART.stile, 64),
  rail: oneOf(USUAL_FIVE_PART.rail, 70),
  areDrawersToo: fc.boolean(),
  midRailFrom: oneOf(1200, 0, 600),
})

const { none, screws, dowels, looseTenons, pocketScrews } = USUAL_FIXINGS

export const BASE_TOPS: readonly MethodChoices['baseTop'][] = [
  { kind: 'full' },
  { kind: 'stretchersFlat', width: 75 },
  { kind: 'stretchersOnEdge', width: 90 },
  { kind: 'frontRail', width: 100 },
  { kind: 'lid', width: 70 },
]

const choices: fc.Arbitrary<Choices> = fc.record<Choices>({
  cornerJoint: anyOf<MethodChoices['cornerJoint']>(
    [1, fc.constant({ kind: 'butt' })],
    [1, fc.record({ kind: fc.constant('rabbet' as const), depth })],
    [1, fc.record({ kind: fc.constant('dado' as const), depth })],
  ),
  bottom: oneOf('between', 'under'),
  top: oneOf('between', 'over'),
  baseTop: oneOf(...BASE_TOPS),
  back: oneOf<MethodChoices['back']>(
    { kind: 'none' },
    { kind: 'applied', margin: 0 },
    { kind: 'applied', margin: 2 },
    { kind: 'rabbet', depth: 9 },
    { kind: 'groove', inset: 12, depth: 7, clearance: 2 },
    { kind: 'groove', inset: 20, depth: 5, clearance: 0 },
  ),
  floor: oneOf<MethodChoices['floor']>(
    { kind: 'none' },
    { kind: 'notched', height: 100, setback: 75 },
    { kind: 'plinth', height: 90, setback: 60 },
    { kind: 'legs', height: 110, setback: 50 },
  ),
  nailers: fc
    .record({
      where: oneOf<'inside' | 'behind'>('inside', 'behind'),
      top: fc.boolean(),
      bottom: fc.boolean(),
      width: oneOf(80, 60, 110),
    })
    // Of what is drawn already, so that the same seeds draw the same cabinets.
    .map((nailers) => ({
      ...nailers,
      ...(nailers.bottom && { middle: true }),
      ...(nailers.where === 'behind' && nailers.width !== 110 && { areLetIn: true }),
    })),
  dadoFront: oneOf<Choices['dadoFront']>(
    USUAL_DADO_FRONTS.through,
    USUAL_DADO_FRONTS.covered,
    USUAL_DADO_FRONTS.stopped,
    { kind: 'stopped', behind: 21.5 },
  ),
  fixedShelf: oneOf('dado', 'pinned'),
  frontMount: oneOf('fullOverlay', 'halfOverlay', 'inset'),
  faceFrame: anyOf<FaceFrame | null>([2, fc.constant(null)], [1, faceFrame]),
  frameFixing: oneOf<Choices['frameFixing']>({ kind: 'glue' }, { kind: 'pocketScrews', fromEdge: 50, spacing: 200 }),
  frontBuild: anyOf<MethodChoices['frontBuild']>([2, fc.constant({ kind: 'slab' })], [1, fivePart]),
  panelWood: oneOf<MethodChoices['panelWood']>({ kind: 'sheet' }, { kind: 'solid', across: 0.00369, moisture: 4 }),
  slide: oneOf<MethodChoices['slide']>(
    { kind: 'side', clearance: 12.7 },
    { kind: 'undermount', insideDeduction: 41.3 },
    { kind: 'undermount', insideDeduction: 41.3, longerBy: 22.225 },
  ),
  fixing: oneOf<MethodChoices['fixing']>(
    none,
    screws,
    dowels,
    looseTenons,
    pocketScrews,
    biscuits('0'),
    biscuits('20'),
  ),
  doorPull: oneOf<Choices['doorPull']>(USUAL_DOOR_PULLS.none, USUAL_DOOR_PULLS.knob, USUAL_DOOR_PULLS.bar),
  drawerPull: oneOf<Choices['drawerPull']>(USUAL_DRAWER_PULLS.none, USUAL_DRAWER_PULLS.knob, USUAL_DRAWER_PULLS.bar),
  frontScrews: oneOf<Choices['frontScrews']>(USUAL_FRONT_SCREWS.none, USUAL_FRONT_SCREWS.screws),
})

const thicknesses = fc.record({
  carcass: oneOf(18, 16, 18.25625, 19),
  back: oneOf(6, 4, 12.5),
  front: oneOf(19, 18, 22),
  drawer: oneOf(12, 15),
  drawerBottom: oneOf(5, 6),
  frame: oneOf(20, 19),
  panel: oneOf(7, 6),
})

type Measures = Pick<BuildMethod, 'shelves' | 'fronts' | 'banding' | 'drawers'>

const measures: fc.Arbitrary<Measures> = fc
  .record({
    setback: oneOf(0, 10),
    firstHole: oneOf(PLAIN.shelves.firstHole, 64),
    balance: oneOf<BuildMethod['shelves']['balance']>(
      undefined,
      { rows: 'asLeft', arePlatesOn: false },
      { rows: 'multiple', arePlatesOn: true },
    ),
    gap: oneOf(3, 2),
    topReveal: oneOf(3, 0),
    bottomReveal: oneOf(0, 2),
    carcass: oneOf(0, 1),
    fronts: oneOf(0, 1, 2),
    isInFinishedSize: fc.boolean(),
    topClearance: oneOf(14, 20),
    grooveUp: oneOf(10, 13),
  })
  .map(
    ({ setback, firstHole, balance, gap, topReveal, bottomReveal, carcass, fronts, isInFinishedSize, ...drawers }) => ({
      shelves: { ...PLAIN.shelves, setback, firstHole, ...(balance ? { balance } : {}) },
      fronts: { gap, endReveal: 1.5, topReveal, bottomReveal },
      banding: { carcass, fronts, isInFinishedSize },
      drawers: { ...PLAIN.drawers, ...drawers },
    }),
  )

/** Boards of any thickness, by any method: each of its choices, its joints, its hardware and its measures. */
export const anyRules: fc.Arbitrary<Rules> = fc
  .record({ choices, measures, thicknesses, kick: oneOf<Rules['kick'] & string>('perCabinet', 'inLengths') })
  .map((any) => ({ ...rulesWith({ ...any.choices, ...any.measures }, any.thicknesses), kick: any.kick }))
