import fc from 'fast-check'
import type { MaterialId } from '../../engine/basics/id'
import { type Rules, withOverrides } from '../../engine/cabinets/build'
import type { Corner } from '../../engine/project/corner'
import { newProject } from '../../engine/project/defaults'
import { type Beside, type Cabinet, type CabinetKind, type Front, NOTHING_BESIDE } from '../../engine/project/document'
import { startOf } from '../../engine/project/ready'
import { type NewKind, READY } from '../../engine/project/readyKinds'
import { anyFront, anyInterior, saidFront, wantedBy } from './anyFront'
import { anyOf, anyRules, mm, oneOf } from './anyMethod'
import { aCabinet, rulesWith } from './cabinets'

/** A cabinet with what it is built by, its own choices among them. */
export interface Made {
  readonly what: string
  readonly cabinet: Cabinet
  readonly rules: Rules
}

const foot = oneOf<Extract<Beside, { kind: 'panel' }>['foot']>('floor', 'notched')

const anyBeside = anyOf<Beside>(
  [1, fc.constant({ kind: 'none' })],
  [1, fc.record({ kind: fc.constant('filler' as const), width: mm(25, 90), scribe: oneOf(8, 0) })],
  [1, fc.constant({ kind: 'skin', material: 'back' as MaterialId })],
  [2, fc.record({ kind: fc.constant('panel' as const), material: fc.constant('front' as MaterialId), foot })],
)

/** What is round a front at most, of carcass, frame, kick and top. */
const ROUND = 230

/** Along one wall: any front before any interior, within sizes that a shop builds. */
export const anyStraight: fc.Arbitrary<Made> = fc
  .record({
    kind: oneOf<CabinetKind>('base', 'upper', 'tall'),
    ...{ width: mm(320, 1100), low: mm(560, 940), high: mm(1500, 2300), deep: mm(450, 650), shallow: mm(280, 400) },
    front: anyFront,
    interior: anyInterior,
    isGrainRunning: fc.boolean(),
    hung: oneOf(0, 0, 0, 0, 0, 260),
    beside: fc.record({ left: anyBeside, right: anyBeside }),
    rules: anyRules,
  })
  .map(({ kind, low, high, deep, shallow, hung, rules, ...said }) => {
    const wants = wantedBy(said.front)
    const height = Math.max(kind === 'tall' ? high : low, wants.height + ROUND)
    const width = Math.max(said.width, wants.width + ROUND)
    const depth = kind === 'upper' ? shallow : deep
    const hangs = kind === 'base' && hung > 0 ? { bottom: hung } : {}
    return made(kind, aCabinet(kind, { ...said, width, height, depth, ...hangs }), rules)
  })

/** In a corner of two walls, with a leg along either. */
export const anyInCorner: fc.Arbitrary<Made> = fc
  .record({
    kind: oneOf('base' as const, 'upper' as const),
    ...{ corner: oneOf<Corner['kind']>('L', 'diagonal'), hand: oneOf('left' as const, 'right' as const) },
    ...{ on: mm(200, 500), otherOn: mm(200, 500), height: mm(560, 940) },
    ...{ deep: mm(450, 650), otherDeep: mm(450, 650), shallow: mm(280, 400), otherShallow: mm(280, 400) },
    front: oneOf<Front>({ kind: 'open' }, { kind: 'door', hinge: 'left' }, { kind: 'door', hinge: 'right' }),
    ...{ fixedShelves: oneOf(0, 1, 2), adjustableShelves: oneOf(0, 1, 2) },
    beside: anyBeside,
    rules: anyRules,
  })
  .map((any) => {
    const { kind, hand, front, height, rules } = any
    const [depth, otherDepth] = kind === 'upper' ? [any.shallow, any.otherShallow] : [any.deep, any.otherDeep]
    const corner: Corner = { kind: any.corner, hand, other: depth + any.on, otherDepth }
    const interior = { fixedShelves: any.fixedShelves, adjustableShelves: any.adjustableShelves, partition: null }
    const beside = { ...NOTHING_BESIDE, [hand === 'left' ? 'right' : 'left']: any.beside }
    const width = otherDepth + any.otherOn
    return made(
      `${any.corner} ${kind}`,
      aCabinet(kind, { front, interior, beside, corner, width, height, depth }),
      rules,
    )
  })

export const READY_KINDS: readonly NewKind[] = ['base', 'upper', 'tall', ...READY.map(([name]) => name)]

/** As it stands ready beside the tray, begun in millimetres or inches, at either end of a wall and wider or narrower than usual. */
export const anyReady: fc.Arbitrary<Made> = fc
  .record({
    what: oneOf(...READY_KINDS),
    unit: oneOf('mm' as const, 'in' as const),
    isAtRight: fc.boolean(),
    ...{ wider: mm(0, 240), narrower: oneOf(0, 0, 25, 50), higher: mm(0, 90), deeper: mm(0, 60) },
    beside: fc.record({ left: anyBeside, right: anyBeside }),
    rules: anyRules,
  })
  .map(({ what, unit, isAtRight, wider, narrower, higher, deeper, beside, rules }) => {
    const plain = newProject(unit)
    const { method, materials } = rules
    const project = { ...plain, materials, methods: { [method.id]: method }, method: method.id } as typeof plain
    const usual = startOf(project, what, { isAtRight })
    const width = usual.width + wider - narrower
    const { kind, ...start } = startOf(project, what, { isAtRight, width })
    const { corner, height, depth } = start
    const size = { width, height: height + higher, depth: depth + deeper }
    const free = corner ? { ...NOTHING_BESIDE, [isAtRight ? 'left' : 'right']: beside.left } : beside
    return made(what, aCabinet(kind, { ...start, ...size, beside: free }), rules)
  })

/** 5000 in all, the same ones wherever they are asked for with this seed. */
export const ANY_KIND = [
  ['straight cabinets', anyStraight, 2600],
  ['corner cabinets', anyInCorner, 800],
  ['ready kinds', anyReady, 1600],
] as const

export const SEED = 1868

function made(what: string, cabinet: Cabinet, rules: Rules): Made {
  const own = { ...rules, method: withOverrides(rules.method, cabinet) }
  const one: Made = { what, cabinet, rules: own }
  return Object.assign(one, { [fc.toStringMethod]: () => said(one) })
}

/** A cabinet as one says it: its kind and sizes, and of all else only what is not the plainest. */
export function said({ what, cabinet, rules }: Made): string {
  const { width, height, depth, front, interior, beside, corner, bottom } = cabinet
  const usual = aCabinet(cabinet.kind)
  const { materials, method } = rulesWith()
  const thick = (all: Rules['materials']) =>
    Object.fromEntries(Object.entries(all).map(([name, { thickness }]) => [name, thickness]))
  return [
    `${what} ${width} x ${height} x ${depth}, ${saidFront(front)}`,
    ...apart('', { bottom: usual.bottom, corner: null }, { bottom, corner }),
    ...apart('', { fixedShelves: 0, adjustableShelves: 0, partition: null }, interior),
    ...apart('beside ', NOTHING_BESIDE, beside),
    ...apart('', { ...method, ...LEFT_OUT }, rules.method),
    ...apart('board ', thick(materials), thick(rules.materials)),
    ...(rules.kick === 'inLengths' ? ['kick in lengths'] : []),
  ].join('; ')
}

/** What a method does that does not say it. */
const LEFT_OUT = { frameFixing: { kind: 'glue' }, frontScrews: { kind: 'none' }, dadoFront: { kind: 'through' } }

function apart(name: string, usual: object, is: object): string[] {
  const plain = new Map(Object.entries(usual).map(([field, value]) => [field, JSON.stringify(value)]))
  return Object.entries(is).flatMap(([field, value]) => {
    const text = JSON.stringify(value)
    return text === plain.get(field) ? [] : [`${name}${field} ${text}`]
  })
}
