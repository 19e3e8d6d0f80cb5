import type { CabinetBuild, Rules } from '../cabinets/build'
import { countedFeet } from '../cabinets/cornerCarcass'
import { type Hang, hangOf } from '../cabinets/hang'
import { hingeRoom, hingesFor } from '../cabinets/hinge'
import { roomForHinges } from '../cabinets/hingeBoring'
import { cupsIn, leafWeight, leavesOf } from '../cabinets/leaf'
import { legsAcross } from '../cabinets/leg'
import { packedOut } from '../cabinets/slideBoring'
import type { Part } from '../parts/part'
import { formatFine, PLAIN_MM } from '../units/format'
import type { Mm } from '../units/length'
import { slideClass } from '../units/weight'
import { cornerHinges } from './cornerHinges'
import { fixingsFor, frontScrewsFor } from './fixings'
import { hingePlates, ON_FRAME } from './plates'
import { pullsFor } from './pulls'
import type { HardwareRow } from './row'

/** Hinges, stays, slides, shelf pins and legs of one cabinet. */
export function hardwareOf(build: CabinetBuild, parts: readonly Part[], rules: Rules): HardwareRow[] {
  const rows: HardwareRow[] = [
    ...(build.cabinet.corner ? cornerHinges(build, rules) : hingesOf(build, rules)),
    { name: 'pair of flap stays', quantity: flapsIn(build), length: null },
    ...lidHardware(parts, rules),
    ...slidesFor(parts, rules),
    ...packingFor(parts, rules),
    { name: 'shelf pin', quantity: pinsUnder(parts, rules, build.cabinet.corner ? 5 : 4), length: null },
    ...legsUnder(build, rules),
    ...fixingsFor(parts, rules),
    ...frontScrewsFor(parts, rules),
    ...pullsFor(parts, rules),
  ]
  return rows.filter(({ quantity }) => quantity > 0)
}

function flapsIn({ boards, fronts }: CabinetBuild): number {
  return leavesOf(boards, fronts).filter(({ hinge }) => hinge === 'top').length
}

/**
 * By how they sit on their boards, in the order of the doors, and a plate for each. Those of a face frame have their plate
 * on them and are screwed to the frame: nothing is bored for it.
 */
function hingesOf({ cabinet, fronts, boards }: CabinetBuild, rules: Rules): HardwareRow[] {
  const { method, materials } = rules
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
    // A flap hangs along its width, and beside a middle that is taken it may have one more, which is bored.
    const asked = hingesFor(leaf.hinge === 'top' ? width : height, kg, method.hinge)
    const most = Math.max(1, Math.floor(roomForHinges(leaf, method) / hingeRoom(method.hinge)))
    const hinges = Math.max(Math.min(asked, most), cupsIn(leaf.hung))
    const hang = hangOf(leaf, hung)
    counts.set(hang, (counts.get(hang) ?? 0) + hinges)
  }
  const hinges = [...counts].map(([hang, quantity]) => ({ name: nameOfHinge(hang, rules), quantity, length: null }))
  const plates = hinges.reduce((sum, { quantity }) => sum + quantity, 0)
  return method.faceFrame ? hinges : [...hinges, hingePlates(plates, rules)]
}

/** One for a face frame is bought by how far its door covers the frame. */
function nameOfHinge(hang: Hang, { method: { faceFrame }, display = PLAIN_MM }: Rules): string {
  if (!faceFrame) return `${hang} hinge`
  const { fronts } = faceFrame
  const by = fronts.kind === 'overlay' ? ` of ${formatFine(fronts.by, display)}` : ''
  return `${hang} hinge${by}${ON_FRAME}`
}

/** A lid hangs along its length, and stays hold it open. */
function lidHardware(parts: readonly Part[], { method, materials }: Rules): HardwareRow[] {
  const lids = parts.filter(({ role }) => role === 'lid')
  const hinges = lids.reduce((sum, { length, width, thickness, material }) => {
    const kg = ((length * width * thickness) / 1e9) * (materials[material]?.density ?? 0)
    return sum + hingesFor(length, kg, method.hinge)
  }, 0)
  return [
    { name: 'lid hinge', quantity: hinges, length: null },
    { name: 'pair of lid stays', quantity: lids.length, length: null },
  ]
}

/** A pair for every drawer box, as long as the box, of the class that the method asks for. */
function slidesFor(parts: readonly Part[], { method, display = PLAIN_MM }: Rules): HardwareRow[] {
  const lengths = new Map<Mm, number>()
  for (const { role, length } of parts) {
    if (role === 'drawerSide') lengths.set(length, (lengths.get(length) ?? 0) + 1)
  }
  const extension = method.slides.extension === 'standard' ? 'standard ' : ''
  const kind = `${extension}${method.slide.kind === 'side' ? 'side slides' : 'undermount slides'}`
  const name = `pair of ${kind}, carries ${slideClass(method.slides.loadClass, display)}`
  return [...lengths].map(([length, sides]) => ({ name, quantity: sides / 2, length }))
}

/** A strip under each slide that does not reach its upright, as beside an open door. */
function packingFor(parts: readonly Part[], { method }: Rules): HardwareRow[] {
  const counts = new Map<Mm, number>()
  for (const { length } of packedOut(parts, method)) counts.set(length, (counts.get(length) ?? 0) + 1)
  return [...counts].map(([length, quantity]) => ({ name: 'packing strip', quantity, length }))
}

/** Four under every shelf that rests on pins, and one more in a corner, in its post. */
function pinsUnder(parts: readonly Part[], { method }: Rules, each: number): number {
  const arePinned = method.fixedShelf === 'pinned'
  return each * parts.filter(({ role }) => role === 'adjustableShelf' || (arePinned && role === 'fixedShelf')).length
}

/** Two rows of legs, and a clip on each of the front row for the board of the kick; in a corner as they stand there. */
function legsUnder({ cabinet, boards }: CabinetBuild, rules: Rules): HardwareRow[] {
  const { floor, legs } = rules.method
  if (floor.kind !== 'legs' || cabinet.kind === 'upper' || cabinet.space || boards.length === 0) return []
  const across = legsAcross(cabinet.width, legs).length
  const { all, front } = countedFeet(cabinet, rules) ?? { all: 2 * across, front: across }
  return [
    { name: 'leg', quantity: all, length: null },
    { name: 'kick clip', quantity: front, length: null },
  ]
}
