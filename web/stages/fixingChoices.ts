import {
  type BiscuitSize,
  biscuits,
  type DadoFront,
  type DoorPull,
  type DrawerPull,
  type Fixing,
  type FrameFixing,
  type FrontScrews,
  type Mm,
  USUAL_DADO_FRONTS,
  USUAL_DOOR_PULLS,
  USUAL_DRAWER_PULLS,
  USUAL_FIXINGS,
  USUAL_FRAME_FIXINGS,
  USUAL_FRONT_SCREWS,
} from '../../engine/index'
import type { ChoiceOf, Measure } from './choiceOf'

/** The measures of a value that has them, each by the name of its field. */
function measuresOf<Value extends object>(
  value: Value,
  labels: readonly (readonly [string, string])[],
): readonly Measure<Value>[] {
  return labels
    .filter(([field]) => Object.hasOwn(value, field))
    .map(([field, label]) => ({
      label,
      value: (value as Readonly<Record<string, Mm>>)[field]!,
      put: (length) => ({ ...value, [field]: length }),
    }))
}

/** What the size of each is called. */
const SIZES: Readonly<Record<Fixing['kind'], readonly (readonly [string, string])[]>> = {
  none: [],
  screws: [
    ['diameter', 'Screw'],
    ['length', 'Screw length'],
  ],
  dowels: [
    ['diameter', 'Dowel'],
    ['length', 'Dowel length'],
  ],
  looseTenons: [
    ['diameter', 'Tenon, thick'],
    ['across', 'Tenon, across'],
    ['length', 'Tenon length'],
  ],
  biscuits: [
    ['diameter', 'Slot, wide'],
    ['across', 'Slot, long'],
    ['length', 'Biscuit, across'],
  ],
  pocketScrews: [],
}

export const fixing: ChoiceOf<Fixing> = {
  label: 'Corner fixing',
  ways: [
    ['none', 'none'],
    ['screws', 'screws through the side'],
    ['dowels', 'dowels'],
    ['looseTenons', 'loose tenons'],
    ['biscuits 0', 'biscuits #0'],
    ['biscuits 10', 'biscuits #10'],
    ['biscuits 20', 'biscuits #20'],
    ['pocketScrews', 'pocket screws'],
  ],
  wayOf: (value) => (value.kind === 'biscuits' ? `biscuits ${value.size}` : value.kind),
  make(way) {
    const [kind, size] = way.split(' ')
    return kind === 'biscuits' ? biscuits(size as BiscuitSize) : USUAL_FIXINGS[kind as Fixing['kind']]
  },
  measures: (value) =>
    measuresOf(value, [
      ...SIZES[value.kind],
      ['head', 'Head'],
      ['pilot', 'Hole for its point'],
      ['inFace', 'Depth in the face'],
      ['inEnd', 'Depth in the end'],
      ['fromEdge', 'First from the edge'],
      ['spacing', 'Apart at most'],
    ]),
}

export const dadoFront: ChoiceOf<DadoFront | undefined> = {
  label: 'Dados at the front',
  ways: [
    ['through', 'out through the band'],
    ['covered', 'banded over'],
    ['stopped', 'stopped behind the edge'],
  ],
  wayOf: (value) => value?.kind ?? 'through',
  make: (way) => USUAL_DADO_FRONTS[way as DadoFront['kind']],
  measures: (value) => measuresOf(value ?? USUAL_DADO_FRONTS.through, [['behind', 'Stop short by']]),
}

export const frameFixing: ChoiceOf<FrameFixing | undefined> = {
  label: 'Frame to carcass',
  ways: [
    ['glue', 'glue alone'],
    ['pocketScrews', 'glue and pocket screws'],
  ],
  wayOf: (value) => value?.kind ?? 'glue',
  make: (way) => USUAL_FRAME_FIXINGS[way as FrameFixing['kind']],
  measures: (value) =>
    measuresOf(value ?? USUAL_FRAME_FIXINGS.glue, [
      ['fromEdge', 'First from the edge'],
      ['spacing', 'Apart at most'],
    ]),
}

const ON_FRONTS = [
  ['diameter', 'Holes'],
  ['spread', 'Holes apart'],
  ['fromEdge', 'From the free edge'],
  ['fromCorner', 'From the corner'],
  ['twoFrom', 'Two from a width of'],
] as const

export const doorPull: ChoiceOf<DoorPull> = {
  label: 'Pulls of doors',
  ways: [
    ['none', 'nothing bored'],
    ['knob', 'knob'],
    ['bar', 'pull'],
  ],
  wayOf: ({ kind }) => kind,
  make: (way) => USUAL_DOOR_PULLS[way as DoorPull['kind']],
  measures: (value) => measuresOf(value, ON_FRONTS),
}

export const drawerPull: ChoiceOf<DrawerPull> = {
  label: 'Pulls of drawers',
  ways: doorPull.ways,
  wayOf: ({ kind }) => kind,
  make: (way) => USUAL_DRAWER_PULLS[way as DrawerPull['kind']],
  measures: (value) => measuresOf(value, ON_FRONTS),
}

export const frontScrews: ChoiceOf<FrontScrews | undefined> = {
  label: 'Drawer fronts',
  ways: [
    ['none', 'nothing bored'],
    ['screws', 'screwed from inside the box'],
  ],
  wayOf: (value) => value?.kind ?? 'none',
  make: (way) => USUAL_FRONT_SCREWS[way as FrontScrews['kind']],
  measures: (value) =>
    measuresOf(value ?? USUAL_FRONT_SCREWS.none, [
      ['diameter', 'Screw'],
      ['length', 'Screw length'],
      ['head', 'Head'],
      ['hole', 'Hole in the box'],
      ['pilot', 'Hole for its point'],
      ['fromEdge', 'First from the edges'],
      ['spacing', 'Apart at most'],
    ]),
}
