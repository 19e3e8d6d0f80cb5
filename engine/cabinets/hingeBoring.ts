import type { Interval } from '../geometry/interval'
import { type Rect, rightOf, topOf } from '../geometry/rect'
import type { Vec3 } from '../geometry/vector'
import type { MethodChoices } from '../project/method'
import { type Mm, settle } from '../units/length'
import { givenToPlates, isPinOnGrid, nearestOnGrid, type PanelGrid, panelGrid } from './balance'
import type { Board, FrontFace } from './board'
import { boxOf } from './boardBox'
import { type Carcass, insideFront } from './carcass'
import { type Line, nearestFree, nearestOf, type Plate, takenByBoards, takenByWork } from './clearing'
import { beside, type Finder, spreadOver } from './fromBothEnds'
import { type Hanging, hangingsOf } from './hanging'
import { cupCentre, hingeLine, hingeRoom, hingesFor, LEAST_WOOD } from './hinge'
import { boreDepth, holesBetween, withHoles } from './holes'
import { type Leaf, leavesOf } from './leaf'
import type { Face, HoleRow } from './operation'

type WeightOf = (leaf: Pick<Leaf, 'boards'>) => number

/**
 * The boards with what is bored for the hinges of doors and flaps: cups in these, holes for plates in what they hang on.
 * Plates on a face frame are screwed to it where the door is hung, so nothing is bored for them.
 */
export function hung(
  boards: readonly Board[],
  fronts: readonly FrontFace[],
  carcass: Carcass,
  weightOf: WeightOf,
): readonly Board[] {
  return carcass.frame ? withCups(boards, fronts, carcass, weightOf) : hungOnCarcass(boards, fronts, carcass, weightOf)
}

/** The boards with cups in doors and flaps, spread over their height alone. */
export function withCups(
  boards: readonly Board[],
  fronts: readonly FrontFace[],
  carcass: Carcass,
  weightOf: WeightOf,
): readonly Board[] {
  const { hinge } = carcass.method
  const cups = new Map<Board, HoleRow[]>()
  for (const leaf of leavesOf(boards, fronts)) {
    const axis = axisOf(leaf)
    const range = alongOf(leaf.rect, axis)
    const inHung = cupRange(leaf.hung, axis, carcass.method)
    const half = hingeRoom(hinge) / 2
    const within = { from: settle(inHung.from + half), to: settle(inHung.to - half) }
    const wishes = hingeLine(range, hingesFor(range.to - range.from, weightOf(leaf), hinge), hinge)
    const middles = spreadOver(wishes, axis, hingeRoom(hinge), (wish, taken, rather) =>
      nearestFree(wish, taken, within, rather),
    )
    const holes = middles.flatMap((middle) => cupHoles({ leaf: leaf.hung, hinge: leaf.hinge }, middle, carcass))
    cups.set(leaf.hung, holes)
  }
  return boards.map((board) => withHoles(board, cups.get(board) ?? []))
}

function hungOnCarcass(
  boards: readonly Board[],
  fronts: readonly FrontFace[],
  carcass: Carcass,
  weightOf: WeightOf,
): readonly Board[] {
  let now = boards
  const places: Placed[] = []
  const weights = new Map(leavesOf(boards, fronts).map((leaf) => [leaf.hung, weightOf(leaf)]))
  for (const { leaf, carrier, also = [], ...rest } of hangingsOf(boards, fronts)) {
    // What was bored for the doors before this one is on the boards of now.
    const at = (board: Board) => now[boards.indexOf(board)]!
    const hanging = { ...rest, leaf: at(leaf), carrier: at(carrier), also: also.map(at) }
    const middles = middlesOf(hanging, now, places, carcass, weights.get(leaf)!)
    const { cups } = holesFor(hanging, middles, carcass)
    const bored = new Map(
      [carrier, ...also].map((one) => {
        const own = middles.filter((middle) => also.length === 0 || isBefore(one, middle))
        places.push(...own.map((middle) => ({ carrier: one, face: rest.face, middle })))
        return [at(one), holesFor({ ...hanging, carrier: at(one) }, own, carcass).plates]
      }),
    )
    now = now.map((board) => {
      const plates = bored.get(board)
      if (plates) return withPlates(board, plates, carcass)
      return withHoles(board, board === hanging.leaf ? cups : [])
    })
  }
  return now
}

/**
 * What is bored for one door by itself and for the board that it hangs on. Each may be in a frame of its own, as long as
 * heights are the same; `boards` are those of the carrier's.
 */
export function hungOn(
  hanging: Hanging,
  boards: readonly Board[],
  carcass: Carcass,
  kg: number,
): { readonly cups: readonly HoleRow[]; readonly plates: readonly HoleRow[] } {
  return holesFor(hanging, middlesOf(hanging, boards, [], carcass, kg), carcass)
}

function holesFor(hanging: Hanging, middles: readonly Mm[], carcass: Carcass) {
  return {
    cups: middles.flatMap((middle) => cupHoles(hanging, middle, carcass)),
    plates: middles.flatMap((middle) => plateHoles(hanging, middle, carcass)),
  }
}

/** A board with what is bored for plates; on a balanced panel they take the holes of the grid that they sit in. */
export function withPlates(board: Board, plates: readonly HoleRow[], carcass: Carcass): Board {
  return withHoles(plateGrid(carcass) ? givenToPlates(board, plates) : board, plates)
}

/** The grid that plates sit on, where the method has them there. */
function plateGrid(carcass: Carcass): PanelGrid | null {
  return carcass.method.shelves.balance?.arePlatesOn ? panelGrid(carcass) : null
}

/** A hinge of another door that is there, by what it hangs on. */
interface Placed {
  readonly carrier: Board
  readonly face: Face
  readonly middle: Mm
}

/** Flaps hang along their width, doors along their height. */
function axisOf({ hinge }: Pick<Hanging, 'hinge'>): 'x' | 'y' {
  return hinge === 'top' ? 'x' : 'y'
}

/** The line of the plates: behind the front edge of the carcass, or behind an inset front. */
export function plateLine(
  { carrier, face, hinge }: Pick<Hanging, 'carrier' | 'face' | 'hinge'>,
  carcass: Carcass,
): Line {
  const z = settle(insideFront(carcass) - carcass.method.hinge.plateFromFront)
  return { carrier, face, axis: axisOf({ hinge }), z }
}

/**
 * Where the hinges of a door sit along it. Each goes where it is wished, or to the nearest place where its plate meets
 * no shelf, no other board, no dado and no hole. A loose shelf can be put elsewhere: where nothing else is left, the plate
 * may sit at its height. A hinge that finds no place is left out. One of a flap before several bays is on the nearest board
 * over them, and where the middle of it is between two, there is one on either.
 */
function middlesOf(
  hanging: Hanging,
  boards: readonly Board[],
  places: readonly Placed[],
  carcass: Carcass,
  kg: number,
): Mm[] {
  const { hinge } = carcass.method
  const { rect, carrier, also = [] } = hanging
  const axis = axisOf(hanging)
  const { from, to } = alongOf(rect, axis)
  const finders = [carrier, ...also].map((one) => finderOn({ ...hanging, carrier: one }, boards, places, carcass))
  return spreadOver(
    hingeLine({ from, to }, hingesFor(to - from, kg, hinge), hinge),
    axis,
    hingeRoom(hinge),
    (wish, placed, rather) =>
      nearestOf(
        wish,
        finders.flatMap((find) => find(wish, placed, rather) ?? []),
        rather,
      ),
  )
}

/** Where a hinge may be on one of the boards that a door hangs on. */
function finderOn(hanging: Hanging, boards: readonly Board[], places: readonly Placed[], carcass: Carcass): Finder {
  const { hinge } = carcass.method
  const { leaf, carrier, face } = hanging
  const line = plateLine(hanging, carcass)
  const depth = boreDepth(hinge.plateDepth, carrier)
  const plate: Plate = { spread: hinge.plateSpread, diameter: hinge.plateDiameter, length: hinge.plateLength, depth }
  const range = withinBoth(
    cupRange(leaf, line.axis, carcass.method),
    hingeRoom(hinge) / 2,
    rangeOf(carrier, line.axis),
    plate,
  )
  const byBoards = takenByBoards(line, plate, boards)
  const grid = line.axis === 'y' ? plateGrid(carcass) : null
  const soft = takenByBoards(line, plate, boards, ['adjustableShelf'])
  const there = places
    .filter((one) => one.carrier.role === carrier.role && one.carrier.number === carrier.number && one.face === face)
    .map(({ middle }) => beside(middle, hingeRoom(hinge)))
  const hard = [...takenByWork(line, plate), ...byBoards, ...there]
  // Holes for pins that are on the grid are those that a plate is screwed in.
  const onGrid = grid ? [...takenByWork(withoutPins(line, grid, carcass), plate), ...byBoards, ...there, ...soft] : []
  return (wish, placed, rather) =>
    (grid && nearestOnGrid(wish, [...onGrid, ...placed], range, grid, plate.spread)) ??
    nearestFree(wish, [...hard, ...placed, ...soft], range, rather) ??
    nearestFree(wish, [...hard, ...placed], range, rather)
}

/** Whether a flap's hinge is on a board: of several over bays each has its own stretch. */
function isBefore(board: Board, middle: Mm): boolean {
  const { from, to } = rangeOf(board, 'x')
  return middle > from && middle < to
}

/** The line on a board without those rows of pins that a plate on the grid can be screwed in: on its line, and as wide as its holes. */
function withoutPins(line: Line, grid: PanelGrid, { method: { hinge, shelves } }: Carcass): Line {
  const isShared =
    hinge.plateFromFront === shelves.rowSetback &&
    hinge.plateDiameter === shelves.pinDiameter &&
    settle(hinge.plateSpread % grid.pitch) === 0
  if (!isShared) return line
  const { carrier } = line
  return {
    ...line,
    carrier: { ...carrier, operations: carrier.operations.filter((one) => !isPinOnGrid(one, carrier, grid)) },
  }
}

function alongOf(rect: Rect, axis: 'x' | 'y'): Interval {
  return axis === 'x' ? { from: rect.left, to: settle(rightOf(rect)) } : { from: rect.bottom, to: settle(topOf(rect)) }
}

/** Where cups can be bored along a leaf's board, since it has both its faces there: a rail without its stub tenons. */
export function cupRange(board: Board, axis: 'x' | 'y', { frontBuild }: Pick<MethodChoices, 'frontBuild'>): Interval {
  const { from, to } = rangeOf(board, axis)
  if (board.role !== 'doorRail' || frontBuild.kind !== 'fivePart') return { from, to }
  return { from: settle(from + frontBuild.groove), to: settle(to - frontBuild.groove) }
}

/** What the board with the cups of a leaf has for them along its hinges. */
export function roomForHinges({ hung: board, hinge }: Leaf, method: Pick<MethodChoices, 'frontBuild'>): Mm {
  const { from, to } = cupRange(board, axisOf({ hinge }), method)
  return settle(to - from)
}

function rangeOf(board: Board, axis: 'x' | 'y'): Interval {
  const { min, max } = boxOf(board)
  return { from: min[axis], to: max[axis] }
}

/** Where the middle of a hinge leaves wood around its screws in the door, and around its plate's holes in the other board. */
function withinBoth(leaf: Interval, half: Mm, carrier: Interval, { spread, diameter }: Plate): Interval {
  const end = (spread + diameter) / 2 + LEAST_WOOD
  return {
    from: settle(Math.max(leaf.from + half, carrier.from + end)),
    to: settle(Math.min(leaf.to - half, carrier.to - end)),
  }
}

/** The cup, and its two screws behind it, on the inside of a door. */
function cupHoles({ leaf, hinge: side }: Pick<Hanging, 'leaf' | 'hinge'>, middle: Mm, carcass: Carcass): HoleRow[] {
  const { hinge } = carcass.method
  const centre = cupCentre(hinge)
  const { min, max } = boxOf(leaf)
  const inward = (by: Mm): Partial<Vec3> => {
    if (side === 'top') return { y: max.y - by }
    return { x: side === 'left' ? min.x + by : max.x - by }
  }
  const axis = axisOf({ hinge: side })
  const at = (along: Mm, by: Mm): Vec3 => ({ ...min, ...inward(by), [axis]: along })
  const screwLine = centre + hinge.screwBehind
  const half = hinge.screwSpread / 2
  const cup = { purpose: 'hingeCup', diameter: hinge.cupDiameter, depth: hinge.cupDepth } as const
  const screws = { purpose: 'hingeScrew', diameter: hinge.screwDiameter, depth: hinge.screwDepth } as const
  return [
    ...holesBetween(leaf, 'inside', at(middle, centre), at(middle, centre), cup),
    ...holesBetween(leaf, 'inside', at(middle - half, screwLine), at(middle + half, screwLine), screws),
  ]
}

/** The two holes of a plate. */
function plateHoles(hanging: Hanging, middle: Mm, carcass: Carcass): HoleRow[] {
  const { hinge } = carcass.method
  const { carrier, face } = hanging
  const { axis, z } = plateLine(hanging, carcass)
  const { min } = boxOf(carrier)
  const at = (along: Mm): Vec3 => ({ ...min, z, [axis]: along })
  const half = hinge.plateSpread / 2
  return holesBetween(carrier, face, at(middle - half), at(middle + half), {
    ...{ purpose: 'hingePlate', diameter: hinge.plateDiameter, depth: hinge.plateDepth },
  })
}
