import type { Board, BoardRole } from '../../engine/cabinets/board'
import { boxOf } from '../../engine/cabinets/boardBox'
import type { CabinetBuild } from '../../engine/cabinets/build'
import { buildCabinet } from '../../engine/cabinets/buildCabinet'
import type { Recess } from '../../engine/cabinets/operation'
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
  if (hungIn(other) === hungIn(build)) return paired(build, other)
  // What may be a pair is one door in one of them and two in the other: then both are judged with one.
  const front = neverPair(cabinet.front)
  return paired(buildCabinet({ ...cabinet, front }, rules), buildCabinet({ ...wider, front }, rules))
}

/** The fronts as they hang, one after another: as many doors may be one pair less and one single more. */
const hungIn = ({ fronts }: CabinetBuild) => fronts.map(({ kind, hinge }) => `${kind} ${hinge}`).join()

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

/**
 * Where a finding tells of boards that cannot be made in one of the two, those of which both have as many; and of the others
 * each that is the only one of its role at its height in both, since no board moves up or down for the width. Two at one
 * height cannot be told apart there: which of them was lost is not said.
 */
function paired(one: CabinetBuild, other: CabinetBuild): Pairs {
  const isOdd = (role: BoardRole) => countOf(one, role) !== countOf(other, role)
  const odd = [...new Set([...one.boards, ...other.boards].map(({ role }) => role))].filter(isOdd)
  const there = new Map(other.boards.map((board) => [nameOf(board), board]))
  const pairs = one.boards.flatMap((board): Pair[] => {
    const { role } = board
    const after = odd.includes(role) ? onlyAtHeight(board, one, other) : there.get(nameOf(board))
    if (!after) return []
    return [{ name: nameOf(board), role, before: boxOf(board), after: boxOf(after), boards: [board, after] }]
  })
  return { pairs, odd: tellsOfBoards(one) || tellsOfBoards(other) ? [] : odd }
}

function onlyAtHeight(board: Board, one: CabinetBuild, other: CabinetBuild): Board | null {
  const { min, max } = boxOf(board)
  const isLevel = (seen: Board) => {
    const box = boxOf(seen)
    return seen.role === board.role && near(box.min.y, min.y) && near(box.max.y, max.y)
  }
  const [own, theirs] = [one.boards.filter(isLevel), other.boards.filter(isLevel)]
  return own.length === 1 && theirs.length === 1 ? theirs[0]! : null
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
 * A side whose front edge a slant cuts, seen from its rear edge: all that is cut in it is as high and as deep, and either end
 * of it stays, or goes with the long or the short point of the bevel, or is as far behind the slant. The bevel is the
 * thickness by out / along of the slant at the own wall, by along / out at the other, and only along grows.
 */
function wrongInCutSide({ name, role, boards }: Pair, { along, out }: Slant, more: Mm): string[] {
  if (role !== 'leftSide' && role !== 'rightSide') return []
  const [was, is] = boards.map(cutFromRear) as [CutSide, CutSide]
  const isOther = boards[0].placement.width.endsWith('x')
  const steeper = isOther ? (along + more) / along : along / (along + more)
  // What is as far behind the slant, square to it, is so much farther from its point along the side.
  const farther = (Math.hypot(along + more, out) / Math.hypot(along, out)) * (isOther ? 1 : along / (along + more))
  const goesRight = (at: Mm, after = Number.NaN) =>
    Math.abs(at - after) < TURNED ||
    was.points.some((point, end) =>
      [1, farther].some((by) => Math.abs(is.points[end]! - after - (point - at) * by) < TURNED),
    )
  const rules: readonly (readonly [string, boolean])[] = [
    ['keep what is cut in it', was.said === is.said],
    ['have its cuts where it had them, seen from its rear edge', was.at.every((at, end) => goesRight(at, is.at[end]))],
    ['have a bevel that follows the slant', Math.abs(is.bevel - was.bevel * steeper) < TURNED],
  ]
  return toldOf(name, rules)
}

interface Slant {
  readonly along: Mm
  readonly out: Mm
}

interface CutSide {
  readonly bevel: Mm
  /** The long and the short one of its front edge. */
  readonly points: readonly Mm[]
  readonly said: string
  /** Both ends of each cut. */
  readonly at: readonly Mm[]
}

function cutFromRear({ role, operations, width }: Board): CutSide {
  const front = operations.find((one) => one.kind === 'bevel')
  const cuts = operations.flatMap((one) => (one.kind === 'holeRow' || one.kind === 'bevel' ? [] : [one as Recess]))
  const fromRear = (at: Mm) => (role === 'rightSide' ? width - at : at)
  const bevel = front?.by ?? 0
  return {
    bevel,
    points: [width, width - bevel],
    said: JSON.stringify([front?.edge, front?.face, cuts.map(({ y: _, width: __, ...rest }) => rest)]),
    at: cuts.flatMap((one) => [fromRear(one.y), fromRear(one.y + one.width)]),
  }
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

/** The corners of what stands slantwise are settled in two directions. */
const TURNED = 0.01

/** From stile to stile of the frame before a diagonal. */
const RAILS: readonly BoardRole[] = ['topRail', 'bottomRail']

/**
 * What the direction of a board in a slant says of it. The slant goes `out` from the wall, which stays, and along it, which
 * is out / tan of its angle: that grows by all that is more, and the slant itself as its hypotenuse. Doors, kicks, plinths and
 * the stiles of the frame have ends or edges that lean with the angle, so that no more than their direction is said.
 */
function slantOf(out: Mm, more: Mm, { boards: [before, after] }: Pair): { along: Mm; grown: Mm } | null {
  const [was, is] = [before.placement.turn, after.placement.turn]
  if (!was || !is) return null
  const [along, wider] = [was, is].map(({ cos, sin }) => Math.abs((out * cos) / sin)) as [Mm, Mm]
  return { along: wider - along, grown: Math.hypot(along + more, out) - Math.hypot(along, out) }
}

/** Square to the walls, and cut where a frame or a front stands slantwise between them. */
const CUT_TO_SLANT: readonly BoardRole[] = ['leftSide', 'rightSide', 'plinthEnd']

function wrongInCorner({ cabinet, rules }: Made): (pair: Pair, more: Mm) => string[] {
  const { faceFrame, frontMount, dadoFront = { kind: 'through' } } = rules.method
  const isDiagonal = cabinet.corner?.kind === 'diagonal'
  const isInSlant = isDiagonal && (faceFrame !== null || frontMount === 'inset')
  const { other = 0, otherDepth = 0 } = cabinet.corner ?? {}
  const slanting: Slant = { along: cabinet.width - otherDepth, out: other - cabinet.depth }
  return (pair, more) => {
    const { name, role, before, after } = pair
    const [one, other] = pair.boards
    const [left, right] = [after.min.x - before.min.x, after.max.x - before.max.x]
    const isAs = (axis: 'y' | 'z', end: 'min' | 'max') => near(after[end][axis], before[end][axis])
    const isTurned = one.placement.turn !== undefined
    const slant = isDiagonal ? slantOf(slanting.out, more, pair) : null
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
      ['turns with the slant', !slant || Math.abs(slant.along - more) < TURNED],
      [
        'grows with the slant',
        !slant || !RAILS.includes(role) || Math.abs(slant.grown - other.length + one.length) < TURNED,
      ],
      ['is as wide in the slant', !slant || role !== 'doorStile' || one.width === other.width],
    ]
    return [
      ...toldOf(name, law),
      ...(isDiagonal && (isInSlant || dadoFront.kind !== 'through')
        ? wrongInCutSide(pair, slanting, more)
        : wrongInSide(pair)),
    ]
  }
}
