import { listed } from '../basics/listed'
import { boxOf } from '../cabinets/boardBox'
import { type Meeting, meetingsOf } from '../cabinets/meeting'
import type { HolePurpose, HoleRow } from '../cabinets/operation'
import { toCabinet } from '../geometry/placement'
import type { Part } from '../parts/part'

/** What holds a joint besides glue, as it is bored in the board that ends there. */
type Held = 'screws' | 'dowels' | 'loose tenons' | 'biscuits' | 'pocket screws'

const HELD: Partial<Readonly<Record<HolePurpose, Held>>> = {
  pilot: 'screws',
  dowel: 'dowels',
  looseTenon: 'loose tenons',
  biscuit: 'biscuits',
  pocketScrew: 'pocket screws',
}

/** How boards of one step are held to what is placed already: only what is bored is told. */
export interface Hold {
  readonly by: Held | null
  /** What the screws go through, or what the others are in. */
  readonly marks: readonly string[]
}

/** The joints between boards that come and boards that are there, from what is bored in them. */
export function holdOf(boards: readonly Part[], placed: readonly Part[]): Hold {
  const meetings = meetingsOf([...placed, ...boards]).filter(
    ({ mate, carrier }) => isAmong(mate, boards) !== isAmong(carrier, boards),
  )
  const by = meetings.flatMap((meeting) => heldBy(meeting) ?? [])[0] ?? null
  const bored = meetings.filter((meeting) => heldBy(meeting) === by)
  const marked = bored.map(({ carrier, mate }) => (by === 'screws' ? carrier : mate) as Part)
  return { by, marks: by ? [...new Set(marked.map(({ mark }) => mark))] : [] }
}

function isAmong(one: Meeting['mate'], boards: readonly Part[]): boolean {
  return boards.some((board) => board === one)
}

function heldBy({ mate, end }: Meeting): Held | null {
  for (const one of mate.operations) {
    if (one.kind === 'holeRow' && (one.face === end || isBoredTo(end, one))) return HELD[one.purpose] ?? null
  }
  return null
}

function isBoredTo(end: Meeting['end'], { slant }: HoleRow): boolean {
  return slant !== undefined && slant.towards === end && slant.away === undefined
}

/** The sentence for boards that are butted, in the order in which it is done. */
export function buttedWords(name: string, boards: readonly Part[], placed: readonly Part[]): string {
  if (boards.some((board) => isOnPins(board, placed))) return `Lay ${name} on the pins, up to the back.`
  const { by, marks } = holdOf(boards, placed)
  const them = boards.length > 1 ? 'them' : 'it'
  switch (by) {
    case 'screws':
      return `Glue ${name} in place, flush and square, clamp ${them} and drive the screws through ${listed(marks)}.`
    case 'pocket screws':
      return `Glue ${name} in place, flush and square, clamp ${them} and drive the pocket screws of ${listed(marks)}.`
    case 'dowels':
    case 'loose tenons':
    case 'biscuits':
      return `Glue the ${by} of ${listed(marks)} in, set ${name} on them, flush and square, and clamp ${them}.`
    default:
      return `Glue ${name} in place, flush and square, and clamp ${them}: nothing is bored to hold ${them} besides.`
  }
}

/** What is done after boards that are let into others are in. */
export function closingWords(boards: readonly Part[], placed: readonly Part[]): string {
  const { by, marks } = holdOf(boards, placed)
  switch (by) {
    case 'screws':
      return `Glue, clamp and drive the screws through ${listed(marks)}.`
    case 'pocket screws':
      return `Glue, clamp and drive the pocket screws of ${listed(marks)}.`
    case null:
      return 'Glue and clamp.'
    default:
      return `Glue, with the ${by} of ${listed(marks)}, and clamp.`
  }
}

/** Whether pins for a shelf are bored right under it. */
function isOnPins(board: Part, placed: readonly Part[]): boolean {
  const under = boxOf(board).min.y
  return (
    board.role === 'fixedShelf' &&
    placed.some(({ operations, placement }) =>
      operations.some((one) => {
        if (one.kind !== 'holeRow' || one.purpose !== 'shelfPin') return false
        return Math.abs(toCabinet(placement, one.x, one.y, 0).y + one.diameter / 2 - under) < 0.01
      }),
    )
  )
}
