import { settle } from '../units/length'
import { shortName } from './name'

/** Numbers of the document that are not lengths: shares, money, minutes, kilograms. */
const NOT_LENGTHS = new Set([
  'at',
  'share',
  'price',
  'density',
  'weight',
  'stiffness',
  'stiffnessAcross',
  'across',
  'moisture',
  'angle',
  'onePersonLift',
  'teeth',
  'perSetting',
  'perCut',
  'perSheet',
  'quantity',
  'copies',
])

/** A piece of the document as it is kept: its lengths on the grid, in lists too, its names clean. Nothing is copied without need. */
export function settled<Thing>(thing: Thing): Thing {
  if (typeof thing !== 'object' || thing === null) return thing
  if (Array.isArray(thing)) {
    const items = thing.map((item: unknown) => (typeof item === 'number' ? settle(item) : settled(item)))
    return items.every((item, at) => Object.is(item, thing[at])) ? thing : (items as Thing)
  }
  const before = Object.entries(thing)
  const after = before.map(([field, value]) => [field, settledField(field, value)] as const)
  return after.every(([, value], at) => Object.is(value, before[at]![1])) ? thing : (Object.fromEntries(after) as Thing)
}

/** The value of one field as it is kept. */
export function settledField(field: string, value: unknown): unknown {
  if (typeof value === 'number') return NOT_LENGTHS.has(field) ? value + 0 : settle(value)
  if (typeof value === 'string' && (field === 'name' || field === 'currency')) return shortName(value)
  return settled(value)
}

/** The same number, word or object, or objects that say the same whatever the order of their fields. */
export function isSame(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false
  if (Array.isArray(a) !== Array.isArray(b)) return false
  const fields = Object.keys(a)
  if (fields.length !== Object.keys(b).length) return false
  return fields.every((field) => {
    return Object.hasOwn(b, field) && isSame(a[field as keyof typeof a], b[field as keyof typeof b])
  })
}
