import {
  type Back,
  type BaseTop,
  type CornerJoint,
  type Floor,
  type MethodChoices,
  type SlideFit,
  UNDERMOUNT_LONGER_BY,
} from '../../engine/index'
import type { ChoiceOf } from './choiceOf'
import { dadoFront, doorPull, drawerPull, fixing, frameFixing, frontScrews } from './fixingChoices'
import { faceFrame, frontBuild, panelWood } from './frameChoices'
import { nailers } from './nailerChoice'
import { ruleLabel } from './rules'

/** Where a way is chosen for the first time, these go with it (common practice, no source). */
const USUAL = {
  depth: 6,
  residual: 10,
  stretcher: 75,
  inset: 12,
  clearance: 2,
  margin: 1,
  kick: 100,
  setback: 60,
} as const

const cornerJoint: ChoiceOf<CornerJoint> = {
  label: 'Corner joint',
  ways: [
    ['butt', 'butt'],
    ['dado depth', 'dado, by depth'],
    ['dado residual', 'dado, by what is left'],
    ['rabbet depth', 'rabbet, by depth'],
    ['rabbet residual', 'rabbet, by what is left'],
  ],
  wayOf: (joint) => (joint.kind === 'butt' ? 'butt' : `${joint.kind} ${joint.depth.rule}`),
  make(way) {
    if (way === 'butt') return { kind: 'butt' }
    const kind = way.startsWith('dado') ? 'dado' : 'rabbet'
    return way.endsWith('depth')
      ? { kind, depth: { rule: 'depth', depth: USUAL.depth } }
      : { kind, depth: { rule: 'residual', residual: USUAL.residual } }
  },
  measures(joint) {
    if (joint.kind === 'butt') return []
    const { depth } = joint
    return depth.rule === 'depth'
      ? [
          {
            label: 'Joint depth',
            value: depth.depth,
            put: (length) => ({ ...joint, depth: { ...depth, depth: length } }),
          },
        ]
      : [
          {
            label: 'Left outside',
            value: depth.residual,
            put: (length) => ({ ...joint, depth: { ...depth, residual: length } }),
          },
        ]
  },
}

const bottom: ChoiceOf<MethodChoices['bottom']> = {
  label: 'Bottom',
  ways: [
    ['between', 'between the sides'],
    ['under', 'under the sides'],
  ],
  wayOf: (value) => value,
  make: (way) => way as MethodChoices['bottom'],
}

const top: ChoiceOf<MethodChoices['top']> = {
  label: 'Top',
  ways: [
    ['between', 'between the sides'],
    ['over', 'over the sides'],
  ],
  wayOf: (value) => value,
  make: (way) => way as MethodChoices['top'],
}

const baseTop: ChoiceOf<BaseTop> = {
  label: 'Top of bases',
  ways: [
    ['full', 'full top'],
    ['stretchersFlat', 'stretchers, flat'],
    ['stretchersOnEdge', 'stretchers, on edge'],
    ['frontRail', 'front rail alone, on edge'],
    ['lid', 'lid over stretchers on edge'],
  ],
  wayOf: ({ kind }) => kind,
  make(way, before) {
    if (way === 'full') return { kind: 'full' }
    const width = before.kind === 'full' ? USUAL.stretcher : before.width
    return { kind: way as Exclude<BaseTop['kind'], 'full'>, width }
  },
  measures: (value) =>
    value.kind === 'full'
      ? []
      : [{ label: 'Stretcher', value: value.width, put: (length) => ({ ...value, width: length }) }],
}

const back: ChoiceOf<Back> = {
  label: 'Back',
  ways: [
    ['groove', 'in a groove'],
    ['rabbet', 'in a rabbet'],
    ['applied', 'applied'],
    ['none', 'none'],
  ],
  wayOf: ({ kind }) => kind,
  make(way, before) {
    const depth = 'depth' in before ? before.depth : USUAL.depth
    switch (way) {
      case 'groove':
        return { kind: 'groove', inset: USUAL.inset, depth, clearance: USUAL.clearance }
      case 'rabbet':
        return { kind: 'rabbet', depth }
      case 'applied':
        return { kind: 'applied', margin: USUAL.margin }
      default:
        return { kind: 'none' }
    }
  },
  measures(value) {
    switch (value.kind) {
      case 'groove':
        return [
          { label: 'Groove depth', value: value.depth, put: (length) => ({ ...value, depth: length }) },
          { label: 'Groove inset', value: value.inset, put: (length) => ({ ...value, inset: length }) },
          { label: 'Play in all', value: value.clearance, put: (length) => ({ ...value, clearance: length }) },
        ]
      case 'rabbet':
        return [{ label: 'Rabbet', value: value.depth, put: (length) => ({ ...value, depth: length }) }]
      case 'applied':
        return [{ label: 'Kept back', value: value.margin, put: (length) => ({ ...value, margin: length }) }]
      case 'none':
        return []
    }
  },
}

const floor: ChoiceOf<Floor> = {
  label: 'Floor',
  ways: [
    ['notched', 'notched sides'],
    ['plinth', 'separate plinth'],
    ['legs', 'levelling legs'],
    ['none', 'none'],
  ],
  wayOf: ({ kind }) => kind,
  make(way, before) {
    if (way === 'none') return { kind: 'none' }
    const { height, setback } = before.kind === 'none' ? { height: USUAL.kick, setback: USUAL.setback } : before
    return { kind: way as 'notched' | 'plinth' | 'legs', height, setback }
  },
  measures: (value) =>
    value.kind === 'none'
      ? []
      : [
          { label: 'Kick height', value: value.height, put: (length) => ({ ...value, height: length }) },
          { label: 'Kick setback', value: value.setback, put: (length) => ({ ...value, setback: length }) },
        ],
}

const fixedShelf: ChoiceOf<MethodChoices['fixedShelf']> = {
  label: 'Fixed shelves',
  ways: [
    ['dado', 'in dados'],
    ['pinned', 'on pins'],
  ],
  wayOf: (value) => value,
  make: (way) => way as MethodChoices['fixedShelf'],
}

const frontMount: ChoiceOf<MethodChoices['frontMount']> = {
  label: 'Fronts',
  ways: [
    ['fullOverlay', 'full overlay'],
    ['halfOverlay', 'half overlay'],
    ['inset', 'inset'],
  ],
  wayOf: (value) => value,
  make: (way) => way as MethodChoices['frontMount'],
}

/** Common practice, no source. */
const SIDE_CLEARANCE = 12.7
const INSIDE_DEDUCTION = 41.3

const slide: ChoiceOf<SlideFit> = {
  label: 'Slides',
  ways: [
    ['side', 'at the sides'],
    ['undermount', 'undermount'],
  ],
  wayOf: ({ kind }) => kind,
  make: (way) =>
    way === 'side'
      ? { kind: 'side', clearance: SIDE_CLEARANCE }
      : { kind: 'undermount', insideDeduction: INSIDE_DEDUCTION, longerBy: UNDERMOUNT_LONGER_BY },
  measures: (value) =>
    value.kind === 'side'
      ? [{ label: 'Each side', value: value.clearance, put: (length) => ({ ...value, clearance: length }) }]
      : [
          {
            label: 'Deduction',
            value: value.insideDeduction,
            put: (length) => ({ ...value, insideDeduction: length }),
          },
          {
            label: 'Longer than called',
            value: value.longerBy ?? 0,
            put: (length) => ({ ...value, longerBy: length }),
          },
        ],
}

/** In the order in which a carcass is thought about. */
export const CHOICES = {
  cornerJoint,
  dadoFront,
  fixing,
  bottom,
  top,
  baseTop,
  back,
  floor,
  nailers,
  fixedShelf,
  faceFrame,
  frameFixing,
  frontMount,
  frontBuild,
  panelWood,
  doorPull,
  drawerPull,
  frontScrews,
  slide,
} as const

export type ChoiceName = keyof typeof CHOICES
export const CHOICE_NAMES = Object.keys(CHOICES) as ChoiceName[]

export const MATERIAL_CHOICES = {
  carcassMaterial: 'Carcass board',
  backMaterial: 'Back board',
  frontMaterial: 'Front board',
  drawerMaterial: 'Drawer board',
  drawerBottomMaterial: 'Drawer bottom',
  frameMaterial: 'Frame board',
  panelMaterial: 'Panel board',
} as const satisfies Partial<Record<keyof MethodChoices, string>>

export type MaterialChoice = keyof typeof MATERIAL_CHOICES

/** What a choice is called, whichever it is. */
export function choiceLabel(name: string): string {
  if (Object.hasOwn(CHOICES, name)) return CHOICES[name as ChoiceName].label
  return Object.hasOwn(MATERIAL_CHOICES, name) ? MATERIAL_CHOICES[name as MaterialChoice] : name
}

/** The choices that a cabinet makes itself, by name: `Back, Loose shelves: Setback`. Empty where it is built as its method says. */
export function ownChoices(names: readonly string[]): string {
  const order = [...CHOICE_NAMES, ...Object.keys(MATERIAL_CHOICES)] as readonly string[]
  const choices = order.filter((name) => names.includes(name)).map(choiceLabel)
  return [...choices, ...names.flatMap((name) => ruleLabel(name) ?? [])].join(', ')
}
