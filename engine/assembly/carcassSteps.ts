import { listed } from '../basics/listed'
import type { BoardRole } from '../cabinets/board'
import { isSlantedCut } from '../cabinets/operation'
import { boxesOverlap } from '../geometry/box'
import type { Part } from '../parts/part'
import { roomOf } from '../solids/seating'
import { blankInCabinet, boxesInCabinet } from '../solids/solid'
import { formatWithUnit } from '../units/format'
import type { LengthDisplay } from '../units/length'
import { buttedWords, closingWords, holdOf } from './holdWords'
import { assemblyOrder, type Placing } from './order'
import { type AssemblyStep, stepOf } from './step'

const CARCASS: readonly BoardRole[] = [
  ...(['leftSide', 'rightSide', 'bottom', 'top', 'frontStretcher', 'backStretcher', 'back'] as const),
  ...(['topNailer', 'bottomNailer', 'middleNailer', 'fixedShelf', 'partition', 'divider', 'cornerPost'] as const),
]

export function isOfCarcass({ role }: Part): boolean {
  return CARCASS.includes(role)
}

/** The carcass, board by board, in an order in which each can go in; boards that go in alike are one step. */
export function carcassSteps(parts: readonly Part[], display: LengthDisplay): AssemblyStep[] {
  const order = assemblyOrder(parts.filter(isOfCarcass))
  if (order.length === 0) return []
  const [first] = order
  const last = order.at(-1)!.board
  const isBackLast = last.role === 'back'
  const groups = alikeIn(order)
  const placed: Part[] = []
  const steps = groups.map((group) => {
    const boards = group.map(({ board }) => board)
    const step = stepOf('carcass', wordsOf(group, placed, first!.board), boards)
    placed.push(...boards)
    return step
  })
  const square = stepOf('carcass', squareWords(order, isBackLast, display), [])
  return isBackLast ? [...steps.slice(0, -1), square, ...steps.slice(-1)] : [...steps, square]
}

/** Boards of one kind that follow one another from one side. */
function alikeIn(order: readonly Placing<Part>[]): Placing<Part>[][] {
  const groups: Placing<Part>[][] = []
  for (const placing of order) {
    const before = groups.at(-1)
    const one = before?.[0]
    if (before && one && one.board.role === placing.board.role && one.from === placing.from) before.push(placing)
    else groups.push([placing])
  }
  return groups
}

function wordsOf(group: readonly Placing<Part>[], placed: readonly Part[], first: Part): string {
  const [{ board, from }] = group as readonly [Placing<Part>]
  if (board === first) return `Lay the ${board.name} down, its inside up.`
  const boards = group.map((one) => one.board)
  const name = `the ${board.name}${boards.length > 1 ? 's' : ''}`
  if (from === null) return `Put in ${name} together with what lies beside it: these boards hold one another.`
  const hosts = placed.filter((host) => boards.some((one) => isLetInto(one, host)))
  const guests = placed.filter((guest) => boards.some((one) => isLetInto(guest, one)))
  if (board.role === 'back') return backWords(from === '-z', hosts)
  const into = hosts.length > 0 ? ` into ${listed(hosts.map(({ mark }) => mark))}` : ''
  if (guests.length > 0)
    return `Close with ${name}${into}, over ${listed(guests.map(({ mark }) => mark))}. ${closingWords(boards, placed)}`
  if (hosts.length === 0) return buttedWords(name, boards, placed)
  const { by } = holdOf(boards, placed)
  return by ? `Set ${name}${into}. ${closingWords(boards, placed)}` : `Glue ${name}${into}.`
}

function backWords(isLast: boolean, hosts: readonly Part[]): string {
  if (!isLast)
    return `Slide the back into its groove in ${listed(hosts.map(({ mark }) => mark))} now, while gluing: it cannot go in later.`
  const where = hosts.length > 0 ? 'into its rabbet' : 'on'
  return `The back last: lay it ${where} with the diagonals equal, glue it, and screw or staple it all round. It keeps the box square.`
}

/** Whether the wood of a board reaches into what is cut in another. */
function isLetInto(guest: Part, host: Part): boolean {
  const wood = boxesInCabinet(guest)
  return host.operations.some((one) => {
    const room = one.kind === 'holeRow' || one.kind === 'notch' || isSlantedCut(one) ? null : roomOf(one, host)
    return room !== null && wood.some((box) => boxesOverlap(box, room, 0.01))
  })
}

/** The diagonals over the outsides of what is glued, as seen from the room. */
function squareWords(order: readonly Placing<Part>[], isBackLast: boolean, display: LengthDisplay): string {
  const boxes = order.filter(({ board }) => board.role !== 'back').map(({ board }) => blankInCabinet(board))
  const span = (axis: 'x' | 'y') =>
    Math.max(...boxes.map(({ max }) => max[axis])) - Math.min(...boxes.map(({ min }) => min[axis]))
  const diagonal = formatWithUnit(Math.hypot(span('x'), span('y')), display)
  const why = isBackLast ? 'The back will hold it so' : 'Leave it clamped until the glue is dry'
  return `Measure both diagonals over the outside: ${diagonal} each when it is square. ${why}.`
}
