import {
  type DoorPull,
  type DrawerPull,
  type Fixing,
  type Mm,
  USUAL_DOOR_PULLS,
  USUAL_DRAWER_PULLS,
  USUAL_FIXINGS,
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

export const fixing: ChoiceOf<Fixing> = {
  label: 'Corner fixing',
  ways: [
    ['none', 'none'],
    ['screws', 'screws through the side'],
    ['dowels', 'dowels'],
    ['looseTenons', 'loose tenons'],
  ],
  wayOf: ({ kind }) => kind,
  make: (way) => USUAL_FIXINGS[way as Fixing['kind']],
  measures: (value) =>
    measuresOf(value, [
      ['diameter', value.kind === 'screws' ? 'Screw' : value.kind === 'dowels' ? 'Dowel' : 'Tenon, thick'],
      ['across', 'Tenon, across'],
      ['length', value.kind === 'screws' ? 'Screw length' : value.kind === 'dowels' ? 'Dowel length' : 'Tenon length'],
      ['head', 'Head'],
      ['pilot', 'Hole for its point'],
      ['inFace', 'Depth in the face'],
      ['inEnd', 'Depth in the end'],
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
