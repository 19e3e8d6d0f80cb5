import type { CabinetBuild, Rules } from '../cabinets/build'
import { type Hang, hangOf } from '../cabinets/hang'
import { hingesFor } from '../cabinets/hinge'
import { leafWeight, leavesOf } from '../cabinets/leaf'
import type { Part } from '../parts/part'
import type { Mm } from '../units/length'
import { cornerHinges } from './cornerHinges'

/** What is bought for a cabinet besides boards. */
export interface HardwareRow {
  readonly name: string
  readonly quantity: number
  /** Of what is sold by its length: slides. */
  readonly length: Mm | null
}

/** Hinges, stays, slides, shelf pins and legs of one cabinet. */
export function hardwareOf(build: CabinetBuild, parts: readonly Part[], rules: Rules): HardwareRow[] {
  const rows: HardwareRow[] = [
    ...(build.cabinet.corner ? cornerHinges(build, rules) : hingesOf(build, rules)),
    { name: 'pair of flap stays', quantity: flapsIn(build), length: null },
    ...lidHardware(parts, rules),
    ...slidesFor(parts, rules),
    { name: 'shelf pin', quantity: pinsUnder(parts, rules, build.cabinet.corner ? 5 : 4), length: null },
    { name: 'leg', quantity: legsUnder(build, rules), length: null },
  ]
  return rows.filter(({ quantity }) => quantity > 0)
}

function flapsIn({ boards, fronts }: CabinetBuild): number {
  return leavesOf(boards, fronts).filter(({ hinge }) => hinge === 'top').length
}

/** By how they sit on their boards, in the order of the doors. */
function hingesOf({ cabinet, fronts, boards }: CabinetBuild, { method, materials }: Rules): HardwareRow[] {
  const hung = {
    width: cabinet.width,
    height: cabinet.height,
    thickness: materials[method.carcassMaterial]?.thickness ?? 0,
    mount: method.frontMount,
    onFrame: method.faceFrame?.fronts.kind ?? null,
  }
  const counts = new Map<Hang, number>()
  for (const leaf of leavesOf(boards, fronts)) {
    const { width, height } = leaf.rect
    const kg = leafWeight(leaf, ({ material }) => materials[material]?.density ?? 0)
    // A flap hangs along its width.
    const hinges = hingesFor(leaf.hinge === 'top' ? width : height, kg)
    const hang = hangOf(leaf, hung)
    counts.set(hang, (counts.get(hang) ?? 0) + hinges)
  }
  return [...counts].map(([hang, quantity]) => ({ name: `${hang} hinge`, quantity, length: null }))
}

/** A lid hangs along its length, and stays hold it open. */
function lidHardware(parts: readonly Part[], { materials }: Rules): HardwareRow[] {
  const lids = parts.filter(({ role }) => role === 'lid')
  const hinges = lids.reduce((sum, { length, width, thickness, material }) => {
    const kg = ((length * width * thickness) / 1e9) * (materials[material]?.density ?? 0)
    return sum + hingesFor(length, kg)
  }, 0)
  return [
    { name: 'lid hinge', quantity: hinges, length: null },
    { name: 'pair of lid stays', quantity: lids.length, length: null },
  ]
}

/** A pair for every drawer box, as long as the box. */
function slidesFor(parts: readonly Part[], { method }: Rules): HardwareRow[] {
  const lengths = new Map<Mm, number>()
  for (const { role, length } of parts) {
    if (role === 'drawerSide') lengths.set(length, (lengths.get(length) ?? 0) + 1)
  }
  const name = method.slide.kind === 'side' ? 'pair of side slides' : 'pair of undermount slides'
  return [...lengths].map(([length, sides]) => ({ name, quantity: sides / 2, length }))
}

/** Four under every shelf that rests on pins, and one more in a corner, in its post. */
function pinsUnder(parts: readonly Part[], { method }: Rules, each: number): number {
  const arePinned = method.fixedShelf === 'pinned'
  return each * parts.filter(({ role }) => role === 'adjustableShelf' || (arePinned && role === 'fixedShelf')).length
}

/** A leg at each corner, and two more under a wide cabinet. Common practice, no source. */
function legsUnder({ cabinet, boards }: CabinetBuild, { method }: Rules): number {
  if (method.floor.kind !== 'legs' || cabinet.kind === 'upper' || boards.length === 0) return 0
  // One at each end of both legs, one in the corner and one at the inside of it.
  if (cabinet.corner) return 6
  return cabinet.width > 900 ? 6 : 4
}
