import type { Board } from '../cabinets/board'
import {
  aroundSlant,
  type Bevel,
  type Clip,
  centresOf,
  type Face,
  type HoleRow,
  isEdgeSlot,
  isLongAlong,
  isMitre,
  isSlantedCut,
  type Operation,
  wayOf,
} from '../cabinets/operation'
import type { Interval } from '../geometry/interval'
import type { Rect } from '../geometry/rect'
import { formatLength } from '../units/format'
import { type LengthDisplay, type Mm, settle } from '../units/length'
import { datumOf } from './datum'
import type { Drawing, DrawingMark, LineMark, TextMark } from './drawing'
import { edgeMarks, edgesBored } from './edges'
import { asideMarks, holeMark } from './hole'
import { apart, line, measuresUnder, sortedOnce } from './running'
import { legend } from './worked'

export interface PartDrawingInput {
  readonly part: Board
  readonly display: LengthDisplay
  /** Height of the letters as a share of the longer side of the part. */
  readonly textShare?: number
}

/**
 * A part to be marked out and bored: each face that is worked, as one looks at it, with every place measured from one edge
 * and one end, which are drawn heavy. x runs along the part's length. A face that is seen from the other side is turned
 * over its length, so that a left side and a right side are drawn as the mirrored boards that they are.
 */
export function partDrawing({ part, display, textShare = 0.03 }: PartDrawingInput): Drawing {
  const size = Math.max(part.length, part.width) * textShare
  const faces = facesWorked(part)
  const edges = edgesBored(part)
  const isStacked = faces.some((face) => titleOf(part, face, size).length > 1)
  const pitch = settle(part.width + size * (isStacked ? 17 : 13))
  const lowest = -(faces.length - 1) * pitch
  const edgePitch = settle(part.thickness + size * 8)
  const marks = [
    ...faces.flatMap((face, at) => faceMarks({ part, display, size, face, low: -at * pitch })),
    ...edges.flatMap((edge, at) => edgeMarks(part, edge, settle(lowest - (at + 1) * edgePitch), size, display)),
  ]
  const words = legend(part, display)
  const foot = lowest - edges.length * edgePitch - size * 8
  const lines = words.map((text, at): TextMark => {
    return {
      kind: 'text',
      layer: 'caption',
      at: { x: part.length / 2, y: foot - at * size * 1.5 },
      text,
      size,
      isUpright: false,
    }
  })
  const bottom = foot - (words.length + 0.5) * size * 1.5
  const all = [...marks, ...lines]
  const top = part.width + size * (isStacked ? 8 : 3)
  const [left, right] = reachOf(all, settle(-size * 9), settle(part.length + size * 3))
  return { bounds: { left, bottom, width: settle(right - left), height: top - bottom }, marks: all }
}

/** The width of a letter beside its height, on average. */
const LETTER_WIDTH = 0.55

/** From where to where a drawing reaches: words about a narrow board are wider than it is. */
function reachOf(marks: readonly DrawingMark[], left: Mm, right: Mm): readonly [Mm, Mm] {
  const words = marks.filter((mark): mark is TextMark => mark.kind === 'text' && !mark.isUpright)
  const half = ({ text, size }: TextMark) => (text.length * size * LETTER_WIDTH + size) / 2
  return [
    settle(words.reduce((least, word) => Math.min(least, word.at.x - half(word)), left)),
    settle(words.reduce((most, word) => Math.max(most, word.at.x + half(word)), right)),
  ]
}

/** What stands over a face: in one line where that keeps clear of the measures beside the face, otherwise in three. */
function titleOf(part: Board, face: Face, size: Mm): string[] {
  const { edge, end } = datumOf(part)
  const whole = `${face} face · measured from the ${edge} and the ${end}`
  const isNarrow = whole.length * size * LETTER_WIDTH > part.length + 2 * MEASURES_AT * size
  return isNarrow ? [`${face} face`, `measured from the ${edge}`, `and the ${end}`] : [whole]
}

/** Where the figures of measures across the board end beside it, in heights of letters. */
const MEASURES_AT = 1.6

function facesWorked({ operations }: Board): Face[] {
  const isWorked = (face: Face) => operations.some((one) => 'face' in one && one.face === face)
  const [isOutside, isInside] = [isWorked('outside'), isWorked('inside')]
  return isOutside ? (isInside ? ['inside', 'outside'] : ['outside']) : ['inside']
}

interface FaceInput extends Required<Pick<PartDrawingInput, 'part' | 'display'>> {
  readonly face: Face
  readonly size: Mm
  /** Where the lower edge of this face is on the paper. */
  readonly low: Mm
}

function faceMarks(input: FaceInput): DrawingMark[] {
  const { part, face, size, low } = input
  const { length, width } = part
  const own = part.operations.filter((one) => !('face' in one) || one.face === face)
  const title = titleOf(part, face, size)
  // Over the topmost measure, which may be moved up by one step, where it would run into it.
  const over = title.length > 1 ? 2.8 : 1.4
  const edge = { ...datumOf(part), y: datumHeight(input) }
  return [
    { kind: 'rect', layer: 'part', rect: { left: 0, bottom: low, width: length, height: width } },
    ...own.flatMap((one) => operationMarks(one, input)),
    ...line('datum', [0, edge.y], [length, edge.y]),
    ...line('datum', [0, low], [0, low + width]),
    ...title.map((text, at): TextMark => {
      const y = settle(low + width + size * (over + 1.4 * (title.length - 1 - at)))
      return { kind: 'text', layer: 'text', at: { x: length / 2, y }, text, size, isUpright: false }
    }),
    ...alongTexts(own, input),
    ...acrossTexts(own, input),
  ]
}

/** The height of a place across the board on the paper: the outside is seen turned over. */
function heightOf(y: Mm, { part, face, low }: FaceInput): Mm {
  return settle(low + (face === 'inside' ? y : part.width - y))
}

function datumHeight(input: FaceInput): Mm {
  return heightOf(datumOf(input.part).isEdgeAtZero ? 0 : input.part.width, input)
}

function operationMarks(one: Operation, input: FaceInput): DrawingMark[] {
  if (one.kind === 'holeRow') {
    const { slant } = one
    return centresOf(one).flatMap(({ x, y }) => {
      const at = { x, y: heightOf(y, input) }
      if (slant?.aside === undefined) return [holeMark(at, one, isLongAlong(one))]
      const way = wayOf(slant)
      return asideMarks(at, one, input.face === 'inside' ? way : { ...way, y: -way.y })
    })
  }
  if (one.kind === 'clip') return clipMarks(one, input)
  if (one.kind === 'bevel') return bevelMarks(one, input)
  const across = acrossOf(one, input.part)
  const [a, b] = [heightOf(across.from, input), heightOf(across.to, input)]
  const rect: Rect = { left: one.x, bottom: Math.min(a, b), width: one.length, height: Math.abs(a - b) }
  return [{ kind: 'rect', layer: one.kind === 'notch' ? 'sheet' : 'recess', rect }]
}

/** Where something is across the board; a slot in an edge is drawn as deep as it is, though a face does not show it. */
function acrossOf(any: Exclude<Operation, HoleRow>, part: Pick<Board, 'length' | 'width'>): Interval {
  const one = isSlantedCut(any) ? aroundSlant(any, part) : any
  if (!isEdgeSlot(one)) return { from: one.y, to: settle(one.y + one.width) }
  return one.edge === 'low' ? { from: 0, to: one.depth } : { from: settle(part.width - one.depth), to: part.width }
}

/** The line that the corner is cut off along, and lines beside it over what goes. */
function clipMarks(clip: Clip, input: FaceInput): DrawingMark[] {
  const { part } = input
  const alongAt = (by: Mm) => settle(clip.end === 'start' ? by : part.length - by)
  const acrossAt = (by: Mm) => settle(clip.edge === 'low' ? by : part.width - by)
  const slant = (layer: LineMark['layer'], share: number) =>
    line(
      layer,
      [alongAt(clip.length * share), heightOf(acrossAt(0), input)],
      [alongAt(0), heightOf(acrossAt(clip.width * share), input)],
    )
  return [...slant('part', 1), ...[0.2, 0.4, 0.6, 0.8].flatMap((share) => slant('hatch', share))]
}

/** The line where a bevel begins on the face that it makes narrower or shorter, and lines beside it over what goes. */
function bevelMarks(bevel: Bevel, input: FaceInput): DrawingMark[] {
  const { part, low } = input
  if (isMitre(bevel)) {
    const alongAt = (by: Mm) => settle(bevel.edge === 'start' ? by : part.length - by)
    const across = (layer: LineMark['layer'], share: number) =>
      line(layer, [alongAt(bevel.by * share), low], [alongAt(bevel.by * share), settle(low + part.width)])
    return [...across('part', 1), ...[0.25, 0.5, 0.75].flatMap((share) => across('hatch', share))]
  }
  const acrossAt = (by: Mm) => heightOf(settle(bevel.edge === 'low' ? by : part.width - by), input)
  const along = (layer: LineMark['layer'], share: number) =>
    line(layer, [0, acrossAt(bevel.by * share)], [part.length, acrossAt(bevel.by * share)])
  return [...along('part', 1), ...[0.25, 0.5, 0.75].flatMap((share) => along('hatch', share))]
}

/** Every place along the board that is measured, from its datum end; of a row the first and the last hole. */
function placesAlong(own: readonly Operation[], part: Board): Mm[] {
  const { length } = part
  const places = own.flatMap((any) => {
    if (any.kind === 'bevel' && !isMitre(any)) return []
    const one = isSlantedCut(any) ? aroundSlant(any, part) : any
    if (one.kind !== 'holeRow') return [one.x, settle(one.x + one.length)]
    const centres = centresOf(one)
    return [centres[0]!.x, centres.at(-1)!.x]
  })
  return sortedOnce([...places, length])
}

/** Every place across the board that is measured, from its datum edge. */
function placesAcross(own: readonly Operation[], part: Board): Mm[] {
  const { width } = part
  const { isEdgeAtZero } = datumOf(part)
  const places = own.flatMap((one) => {
    if (one.kind === 'bevel' && isMitre(one)) return []
    if (one.kind !== 'holeRow') {
      const { from, to } = acrossOf(one, part)
      return [from, to]
    }
    const centres = centresOf(one)
    return [centres[0]!.y, centres.at(-1)!.y]
  })
  return sortedOnce([...places.map((y) => settle(isEdgeAtZero ? y : width - y)), width])
}

function alongTexts(own: readonly Operation[], { part, size, low, display }: FaceInput): DrawingMark[] {
  return measuresUnder(placesAlong(own, part), low, size, display)
}

function acrossTexts(own: readonly Operation[], input: FaceInput): DrawingMark[] {
  const { part, size, display } = input
  const places = placesAcross(own, part)
  const datum = datumHeight(input)
  const way = heightOf(1, input) > heightOf(0, input) === datumOf(part).isEdgeAtZero ? 1 : -1
  return apart(places, size * 1.15).flatMap((at, index): DrawingMark[] => {
    const y = settle(datum + way * places[index]!)
    const moved = settle(datum + way * at)
    return [
      ...line('dimension', [0, y], [-size * 0.6, y]),
      ...line('dimension', [-size * 0.6, y], [-size * 1.6, moved]),
      {
        kind: 'text',
        layer: 'caption',
        at: { x: -size * 4, y: moved },
        text: formatLength(places[index]!, display),
        size,
        isUpright: false,
      },
    ]
  })
}
