import type { Board, BoardRole } from '../../engine/cabinets/board'
import { boxOf } from '../../engine/cabinets/boardBox'
import type { CabinetBuild } from '../../engine/cabinets/build'
import { buildCabinet } from '../../engine/cabinets/buildCabinet'
import type { Box } from '../../engine/geometry/box'
import type { Front } from '../../engine/project/document'
import { type Mm, settle } from '../../engine/units/length'
import type { Made } from './anyMade'
import type { Law } from './judge'

/** Shares settle on the grid of 1/3200 mm. */
const TICKS = 0.002

const AT_LEFT: readonly BoardRole[] = ['leftSide', 'leftEnd']
const AT_RIGHT: readonly BoardRole[] = ['rightSide', 'rightEnd']
/** What goes from side to side, and grows by all that the cabinet does. */
const THROUGH: readonly BoardRole[] = [
  ...(['bottom', 'top', 'lid', 'lidStrip', 'frontStretcher', 'backStretcher', 'back'] as const),
  ...([
    'topNailer',
    'bottomNailer',
    'middleNailer',
    'kickBoard',
    'plinthFront',
    'plinthBack',
    'topRail',
    'bottomRail',
  ] as const),
]
/** What is as wide in a wider cabinet, wherever it stands in it. */
const NEVER_WIDER: readonly BoardRole[] = [
  ...(['leftSide', 'rightSide', 'leftEnd', 'rightEnd', 'partition', 'divider', 'plinthEnd', 'filler'] as const),
  ...(['fillerReturn', 'stile', 'mullion', 'doorStile', 'drawerStile', 'drawerSide', 'cornerFiller'] as const),
]

/** A board in a cabinet and in the same one made wider. */
export interface Pair {
  readonly name: string
  readonly role: BoardRole
  readonly before: Box
  readonly after: Box
  readonly boards: readonly [before: Board, after: Board]
}

const nameOf = ({ role, number }: Board) => `${role} ${number}`

export interface Pairs {
  readonly pairs: readonly Pair[]
  /** Boards of which one of the two has more, though nothing is said of any that could not be made. */
  readonly odd: readonly string[]
}

/** A cabinet, as it is built, and the same one wider, board by board. */
export function widened({ cabinet, rules }: Made, more: Mm, build = buildCabinet(cabinet, rules)): Pairs {
  const wider = { ...cabinet, width: settle(cabinet.width + more) }
  const other = buildCabinet(wider, rules)
  if (doorsIn(other) === doorsIn(build)) return paired(build, other)
  // What may be a pair is one door in one of them and two in the other: then both are judged with one.
  const front = neverPair(cabinet.front)
  return paired(buildCabinet({ ...cabinet, front }, rules), buildCabinet({ ...wider, front }, rules))
}

const doorsIn = ({ fronts }: CabinetBuild) => fronts.filter(({ kind }) => kind === 'door').length

/** A front whose doors stay single however wide they are. */
export function neverPair(front: Front): Front {
  switch (front.kind) {
    case 'door':
      return { kind: 'door', hinge: front.hinge }
    case 'rows':
      return { ...front, rows: front.rows.map((row) => ({ ...row, front: neverPair(row.front) })) }
    case 'columns':
      return {
        ...front,
        columns: front.columns.map((column) => ({ ...column, front: neverPair(column.front) })),
      }
    default:
      return front
  }
}

/** Where a finding tells of boards that cannot be made in one of the two, those of which both have as many. */
function paired(one: CabinetBuild, other: CabinetBuild): Pairs {
  const isOdd = (role: BoardRole) => countOf(one, role) !== countOf(other, role)
  const odd = [...new Set([...one.boards, ...other.boards].map(({ role }) => role))].filter(isOdd)
  const there = new Map(other.boards.map((board) => [nameOf(board), board]))
  const pairs = one.boards.flatMap((board): Pair[] => {
    const after = there.get(nameOf(board))
    if (!after || odd.includes(board.role)) return []
    const { role } = board
    return [{ name: nameOf(board), role, before: boxOf(board), after: boxOf(after), boards: [board, after] }]
  })
  return { pairs, odd: tellsOfBoards(one) || tellsOfBoards(other) ? [] : odd }
}

const countOf = ({ boards }: CabinetBuild, of: BoardRole) => boards.filter(({ role }) => role === of).length

function tellsOfBoards({ problems }: CabinetBuild): boolean {
  return problems.some(({ message }) => !/fixing|legs|pull|screw|hole|pin /.test(message))
}

const near = (a: number, b: number) => Math.abs(a - b) < TICKS

/** What of a board does not do in a cabinet that is wider by so much what it should. */
function wrongWith(pair: Pair, more: Mm): string[] {
  const { name, role, before, after } = pair
  const [left, right] = [after.min.x - before.min.x, after.max.x - before.max.x]
  const isAs = (axis: 'y' | 'z') => near(after.min[axis], before.min[axis]) && near(after.max[axis], before.max[axis])
  const rules: readonly (readonly [string, boolean])[] = [
    ['keeps its height and where it stands in it', isAs('y')],
    ['keeps its depth and where it stands in it', isAs('z')],
    ['moves no farther than the cabinet grows', left > -TICKS && right < more + TICKS],
    ['gets no narrower', right - left > -TICKS],
    ['stays at the left', !AT_LEFT.includes(role) || (near(left, 0) && near(right, 0))],
    ['goes with the right side', !AT_RIGHT.includes(role) || (near(left, more) && near(right, more))],
    ['grows by all of it from the left', !THROUGH.includes(role) || (near(left, 0) && near(right, more))],
    ['is no wider', !NEVER_WIDER.includes(role) || near(left, right)],
  ]
  return [...toldOf(name, rules), ...wrongInSide(pair)]
}

function toldOf(name: string, law: readonly (readonly [what: string, isSo: boolean])[]): string[] {
  return law.flatMap(([what, isSo]) => (isSo ? [] : [`${name} does not: ${what}`]))
}

/** The cuts into a side, but for its holes: how many hinges a door has depends on what it weighs. */
function cutsIn(board: Board): string {
  return JSON.stringify(board.operations.filter(({ kind }) => kind !== 'holeRow'))
}

function wrongInSide({ name, role, boards: [before, after] }: Pair): string[] {
  if (role !== 'leftSide' && role !== 'rightSide') return []
  return cutsIn(before) === cutsIn(after) ? [] : [`${name} is cut otherwise`]
}

/**
 * Its right end moves and nothing moves up or out; boards from side to side grow by all of it, uprights by nothing, fronts
 * and shelves by their share. In a corner every board stays, goes along or grows by all of it, but for what a slant turns.
 */
export const growsAtItsRight: Law = (built) => {
  const { more } = built
  const { pairs, odd } = widened(built, more, built.build)
  const wrong = built.cabinet.corner ? wrongInCorner(built) : wrongWith
  return [...odd.map((role) => `another number of ${role}`), ...pairs.flatMap((pair) => wrong(pair, more))]
}

/** Square to the walls, and cut where a frame or a front stands slantwise between them. */
const CUT_TO_SLANT: readonly BoardRole[] = ['leftSide', 'rightSide', 'plinthEnd']

function wrongInCorner({ cabinet, rules }: Made): (pair: Pair, more: Mm) => string[] {
  const { faceFrame, frontMount, dadoFront = { kind: 'through' } } = rules.method
  const isDiagonal = cabinet.corner?.kind === 'diagonal'
  const isInSlant = isDiagonal && (faceFrame !== null || frontMount === 'inset')
  return (pair, more) => {
    const { name, role, before, after } = pair
    const [one, other] = pair.boards
    const [left, right] = [after.min.x - before.min.x, after.max.x - before.max.x]
    const isAs = (axis: 'y' | 'z', end: 'min' | 'max') => near(after[end][axis], before[end][axis])
    const isTurned = one.placement.turn !== undefined
    const isCut = isInSlant && CUT_TO_SLANT.includes(role)
    const isWhole = near(left, right) ? near(left, 0) || near(left, more) : near(left, 0) && near(right, more)
    // A solid panel has play by its width; what is cut has one end that stays or goes along.
    const isPanel = role === 'doorPanel' && left > -TICKS && right < more + TICKS && right - left > -TICKS
    const isHalf = isCut && [left, right].some((by) => near(by, 0) || near(by, more))
    const law: readonly (readonly [string, boolean])[] = [
      ['keeps its height and where it stands in it', isAs('y', 'min') && isAs('y', 'max')],
      ['keeps its thickness', one.thickness === other.thickness],
      ['keeps its depth', isTurned || (isAs('z', 'min') && (isCut || isAs('z', 'max')))],
      ['stays, goes along or grows by all of it', isTurned || isWhole || isPanel || isHalf],
      ['stays at the left', !AT_LEFT.includes(role) || near(left, 0)],
      ['goes with the right side', !AT_RIGHT.includes(role) || near(right, more)],
    ]
    return [...toldOf(name, law), ...(isCut || (isDiagonal && dadoFront.kind !== 'through') ? [] : wrongInSide(pair))]
  }
}
