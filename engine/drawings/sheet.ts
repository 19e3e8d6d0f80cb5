import { type CutNumbers, pieceKey } from '../breakdown/cutNumbers'
import type { Rect } from '../geometry/rect'
import type { JobStock } from '../sheets/job'
import type { CutPiece, PartPiece, Piece, SheetLayout } from '../sheets/layout'
import { formatLength } from '../units/format'
import type { LengthDisplay, Mm } from '../units/length'
import { type Drawing, type DrawingMark, hatch, type LineMark } from './drawing'
import { runLines } from './sheetRun'

export interface SheetDrawingInput {
  readonly layout: SheetLayout
  readonly stock: JobStock
  readonly kerf: Mm
  /** The mark of the row that a part of the job is, `A3`. */
  readonly markOf: (part: string) => string
  readonly display: LengthDisplay
  readonly hasGrain: boolean
  /** Height of the letters, for the scale it will be seen at. */
  readonly textSize?: Mm
  /** Whether the sheet's own length and width stand beside it. */
  readonly isMeasured?: boolean
  /** In which turn each cut is made; no turns are written when left out. */
  readonly numbers?: CutNumbers | undefined
  /** For each place of the layout, what is sawn out of its part later and kept: in the part's own frame, mm. */
  readonly freed?: readonly (readonly Rect[])[]
  /** The bank that a part of the job is cut in; null for none. */
  readonly runOf?: (part: string) => string | null
}

/** A width of the average letter in its height, for fitting text into parts. */
const LETTER_WIDTH = 0.6

/**
 * One sheet to scale as it lies before the saw: x along its length, y across it from the edge that is straightened first.
 * The trim shows at the rim, waste is hatched, the lines of the cuts run through their kerfs.
 */
export function sheetDrawing(input: SheetDrawingInput): Drawing {
  const { layout, stock, isMeasured = true } = input
  const size = input.textSize ?? 44
  const sheet: Rect = { left: 0, bottom: 0, width: stock.length, height: stock.width }
  const leaves = leavesOf(layout.root)
  const parts = leaves.filter((leaf): leaf is PartPiece => leaf.kind === 'part')
  const marks: DrawingMark[] = [
    { kind: 'rect', layer: 'sheet', rect: sheet },
    { kind: 'rect', layer: 'trim', rect: rectOf(layout.root) },
    ...leaves.flatMap((leaf): DrawingMark[] => (leaf.kind === 'part' ? [] : leftMarks(leaf, size, input.display))),
    ...parts.map((part, placement): DrawingMark => ({ kind: 'rect', layer: 'part', rect: rectOf(part), placement })),
    ...parts.flatMap((part, placement) => (input.freed?.[placement] ?? []).map((rect) => freedMark(part, rect))),
    ...(input.runOf ? runLines(parts, input.runOf) : []),
    ...cutLines(layout.root, input.kerf),
    ...(input.numbers ? cutTurns(layout.root, input.numbers, size * TURN_SIZE) : []),
    ...(input.hasGrain ? [grainArrow(sheet, size)].flat() : []),
    ...parts.flatMap((part, placement) => partTexts(part, placement, size, input)),
    ...(isMeasured ? measures(sheet, size, input.display) : []),
  ]
  const rim = isMeasured ? size * 3 : 0
  const slash = isMeasured ? size * 0.4 : 0
  return {
    bounds: { left: -rim, bottom: -rim, width: sheet.width + rim + slash, height: sheet.height + rim + slash },
    marks,
  }
}

function leavesOf(piece: Piece): Exclude<Piece, CutPiece>[] {
  return piece.kind === 'cut' ? piece.pieces.flatMap(leavesOf) : [piece]
}

function rectOf({ x, y, length, width }: Piece): Rect {
  return { left: x, bottom: y, width: length, height: width }
}

function leftMarks(piece: Exclude<Piece, CutPiece | PartPiece>, size: Mm, display: LengthDisplay): DrawingMark[] {
  const rect = rectOf(piece)
  if (piece.kind === 'waste') return [{ kind: 'rect', layer: 'waste', rect }, ...hatch(rect, size * 0.7, 'hatch')]
  return [{ kind: 'rect', layer: 'offcut', rect }, ...fitted(sizeText(piece, display), rect, size, 'caption')]
}

/** A part that is turned lies with its length across the sheet. */
function freedMark({ x, y, rotated }: PartPiece, { left, bottom, width, height }: Rect): DrawingMark {
  const rect = rotated
    ? { left: x + bottom, bottom: y + left, width: height, height: width }
    : { left: x + left, bottom: y + bottom, width, height }
  return { kind: 'rect', layer: 'freed', rect }
}

function partTexts(
  part: PartPiece,
  placement: number,
  size: Mm,
  { markOf, display }: SheetDrawingInput,
): DrawingMark[] {
  const rect = rectOf(part)
  const [mark, measure] = [markOf(part.part), sizeText(part, display)]
  const isUpright = rect.height > rect.width
  const [along, across] = isUpright ? [rect.height, rect.width] : [rect.width, rect.height]
  const hasRoom = across > size * 2.8 && measure.length * size * LETTER_WIDTH * 0.8 < along
  if (!hasRoom) return fitted(mark, rect, size, 'text', placement)
  const [x, y] = [rect.left + rect.width / 2, rect.bottom + rect.height / 2]
  const shift = size * 0.65
  const first = isUpright ? { x: x - shift, y } : { x, y: y + shift }
  const second = isUpright ? { x: x + shift, y } : { x, y: y - shift }
  return [
    { kind: 'text', layer: 'text', at: first, text: mark, size, isUpright, placement },
    { kind: 'text', layer: 'caption', at: second, text: measure, size: size * 0.8, isUpright, placement },
  ]
}

/** Text as large as its rectangle allows, along the longer side; none where it could not be read. */
function fitted(text: string, rect: Rect, size: Mm, layer: 'text' | 'caption', placement?: number): DrawingMark[] {
  const isUpright = rect.height > rect.width
  const [along, across] = isUpright ? [rect.height, rect.width] : [rect.width, rect.height]
  const room = Math.min(size, across * 0.8, along / (text.length * LETTER_WIDTH))
  if (room < size * 0.4) return []
  const at = { x: rect.left + rect.width / 2, y: rect.bottom + rect.height / 2 }
  return [{ kind: 'text', layer, at, text, size: room, isUpright, ...(placement === undefined ? {} : { placement }) }]
}

function sizeText({ length, width }: Piece, display: LengthDisplay): string {
  return `${formatLength(length, display)} × ${formatLength(width, display)}`
}

/** One line for each cut, through the middle of its kerf, as long as the piece it divides. */
export function cutLines(piece: Piece, kerf: Mm): LineMark[] {
  if (piece.kind !== 'cut') return []
  const isRip = piece.direction === 'rip'
  const end = isRip ? piece.y + piece.width : piece.x + piece.length
  const ends = piece.pieces.map((child) => (isRip ? child.y + child.width : child.x + child.length))
  const lines = ends
    .filter((at) => at < end)
    .map((at): LineMark => {
      const middle = at + Math.min(kerf, end - at) / 2
      const [from, to] = isRip
        ? [
            { x: piece.x, y: middle },
            { x: piece.x + piece.length, y: middle },
          ]
        : [
            { x: middle, y: piece.y },
            { x: middle, y: piece.y + piece.width },
          ]
      return { kind: 'line', layer: 'cut', from, to }
    })
  return [...lines, ...piece.pieces.flatMap((child) => cutLines(child, kerf))]
}

/** Of the letters of a mark. */
const TURN_SIZE = 0.8

/** The turn of every cut, on the side that it frees, where there is room: at the near end of a rip, at the far end of a crosscut. */
function cutTurns(piece: Piece, numbers: CutNumbers, size: Mm): DrawingMark[] {
  if (piece.kind !== 'cut') return []
  const isRip = piece.direction === 'rip'
  const turns = numbers.get(pieceKey(piece)) ?? []
  const texts = piece.pieces.flatMap((child, at): DrawingMark[] => {
    const [wide, long] = isRip ? [child.width, child.length] : [child.length, child.width]
    if (!turns[at] || wide < size * 1.4 || long < size * 3) return []
    const x = isRip ? child.x + size * 0.7 : child.x + child.length - size * 0.7
    const y = child.y + child.width - size * 0.6
    return [{ kind: 'text', layer: 'caption', at: { x, y }, text: String(turns[at]), size, isUpright: false }]
  })
  return [...texts, ...piece.pieces.flatMap((child) => cutTurns(child, numbers, size))]
}

/** Along the length, in the corner where the far edges meet: that is where offcuts lie. */
function grainArrow(sheet: Rect, size: Mm): LineMark[] {
  const y = sheet.height - size * 0.5
  const [from, to] = [sheet.width - size * 5, sheet.width - size]
  const line = (x1: Mm, y1: Mm, x2: Mm, y2: Mm): LineMark => {
    return { kind: 'line', layer: 'grain', from: { x: x1, y: y1 }, to: { x: x2, y: y2 } }
  }
  const head = size * 0.3
  return [
    line(from, y, to, y),
    line(from, y, from + head, y + head),
    line(from, y, from + head, y - head),
    line(to, y, to - head, y + head),
    line(to, y, to - head, y - head),
  ]
}

function measures(sheet: Rect, size: Mm, display: LengthDisplay): DrawingMark[] {
  const offset = size * 1.2
  const corner = { x: 0, y: 0 }
  const along = { x: sheet.width, y: 0 }
  const across = { x: 0, y: sheet.height }
  const common = { kind: 'dimension', layer: 'dimension', size } as const
  return [
    { ...common, from: along, to: corner, offset, text: formatLength(sheet.width, display) },
    { ...common, from: corner, to: across, offset, text: formatLength(sheet.height, display) },
  ]
}
