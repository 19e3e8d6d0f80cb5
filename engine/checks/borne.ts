import { boxOf } from '../cabinets/boardBox'
import { isHung } from '../cabinets/build'
import { legsAcross } from '../cabinets/leg'
import type { Part } from '../parts/part'
import { type Mm, settle } from '../units/length'
import { bayOf, clearSpan, withRole } from './boards'
import { grainWords, legsOfSeat, stiffnessIn } from './cornerSeat'
import type { Checked } from './finding'
import { type Bearing, HOUSED_RULE } from './sag'

/** What a board bears between two things that bear it, and what the maker calls it. */
export interface Borne extends Bearing {
  readonly span: Mm
  /** Which bay of its cabinet it is in, where its bays are told apart. */
  readonly bay: number | null
  readonly one: string
  readonly many: string
  /** How it is held, as a finding says it: `on pins`. */
  readonly held: string
  /** What would bear it, where no shelf is to be fixed or parted. */
  readonly advice?: string
}

const ON_PINS = 'on pins'
const HOUSED = `(housed, so judged ${HOUSED_RULE})`

/** Shelves, and bottoms with nothing under them, of boards whose stiffness is known. */
export function boardsBorne({ parts, rules, cabinet }: Pick<Checked, 'parts' | 'rules' | 'cabinet'>): Borne[] {
  return parts.flatMap((part): Borne[] => {
    const stiffness = rules.materials[part.material]?.stiffness
    if (!stiffness) return []
    if (cabinet.corner) return legBorne(part, { parts, rules, cabinet })
    const bay = cabinet.interior.bays ? bayOf(part, parts) : null
    const board = { bay, depth: part.width, thickness: part.thickness, stiffness }
    const resting = { ...board, ends: 'resting', held: ON_PINS } as const
    const housed = { ...board, ends: 'housed', span: clearSpan(part, parts), held: HOUSED } as const
    switch (part.role) {
      case 'adjustableShelf':
        return [{ ...resting, span: part.length, one: 'loose shelf', many: 'loose shelves' }]
      case 'fixedShelf':
        return rules.method.fixedShelf === 'pinned'
          ? [{ ...resting, span: clearSpan(part, parts), one: 'fixed shelf', many: 'fixed shelves' }]
          : [{ ...housed, one: 'fixed shelf', many: 'fixed shelves' }]
      case 'bottom':
        return bottomBorne({ ...housed, one: 'bottom', many: 'bottoms' }, { parts, rules, cabinet })
      default:
        return []
    }
  })
}

const IN_CORNER: Partial<Readonly<Record<Part['role'], readonly [one: string, many: string]>>> = {
  adjustableShelf: ['loose shelf', 'loose shelves'],
  fixedShelf: ['fixed shelf', 'fixed shelves'],
  bottom: ['bottom', 'bottoms'],
}

/**
 * Of a board round a corner the leg that sags the more for its span: from the corner post to its side, as deep as the leg,
 * and not the rectangle that it is cut from. The post is let into it and bears it, so that no end is taken to be clamped.
 */
function legBorne(part: Part, { parts, rules, cabinet }: Pick<Checked, 'parts' | 'rules' | 'cabinet'>): Borne[] {
  const board = rules.materials[part.material]
  const names = IN_CORNER[part.role]
  // The bottom of a base lies on its plinth, its legs or the floor.
  if (!board || !names || (part.role === 'bottom' && !isHung(cabinet))) return []
  const [one, many] = names
  const legs = legsOfSeat(part, parts).map((leg): Borne => {
    const { span, depth, along } = leg
    const held = `along ${along === 'x' ? 'its own' : 'the other'} wall, from the corner post to the side${grainWords(leg, board)},`
    const { thickness } = part
    return {
      ...{ bay: null, depth, thickness, span, one, many, held },
      stiffness: stiffnessIn(leg, board),
      ends: 'resting',
    }
  })
  const softness = ({ span, stiffness }: Borne) => span ** 3 / stiffness
  return legs.sort((a, b) => softness(b) - softness(a)).slice(0, 1)
}

/**
 * What bears a bottom besides its sides. What hangs has nothing under it. What has no kick lies on the floor. A plinth
 * bears it at its front and its back from end to end, so that it spans no more than the depth. Legs bear it where they are.
 * Under notched sides a kick board bears it near the front edge and nothing does behind: turning about the kick, the rear
 * edge takes half of the load with a third of the board's stiffness and what twisting adds, which is near what a board
 * free from side to side does; so that is how it is judged. General mechanics; the last is common practice, no source.
 *
 *        ________________________
 *       |   free rear edge       |       a bottom from above
 *       |                        |
 *       |== kick ================|
 */
function bottomBorne(housed: Borne, { parts, rules, cabinet }: Pick<Checked, 'parts' | 'rules' | 'cabinet'>): Borne[] {
  if (isHung(cabinet)) return [housed]
  const { floor, legs } = rules.method
  if (floor.kind === 'none' || floor.kind === 'plinth' || !(floor.height > 0)) return []
  const [left] = withRole(parts, 'leftSide').map(boxOf)
  const [right] = withRole(parts, 'rightSide').map(boxOf)
  if (!left || !right) return []
  if (floor.kind === 'notched') {
    const held = `from side to side (housed, so judged ${HOUSED_RULE}; the kick board is taken to bear its front and nothing its rear edge)`
    // A partition stands on the bottom and bears nothing of it.
    const span = settle(right.min.x - left.max.x)
    return [{ ...housed, span, held, advice: 'A rail or a leg under its rear edge, or a plinth, bears it.' }]
  }
  const at = legsAcross(settle(right.max.x - left.min.x), legs)
  const span = Math.max(...at.slice(1).map((x, before) => settle(x - at[before]!)))
  const [ends, held] =
    at.length === 3
      ? (['overMiddle', 'from leg to leg (taken to rest on them and to go on over the middle ones)'] as const)
      : (['resting', 'from leg to leg (taken to rest on them)'] as const)
  const { bay, depth, thickness, stiffness, one, many } = housed
  const advice = 'Legs that are nearer to one another bear it.'
  return [{ bay, depth, thickness, stiffness, one, many, ends, span, held, advice }]
}
