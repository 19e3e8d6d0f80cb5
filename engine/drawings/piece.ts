import type { Sketch, SketchPiece } from '../breakdown/step'
import type { Rect } from '../geometry/rect'
import { formatLength } from '../units/format'
import type { LengthDisplay, Mm } from '../units/length'
import { type Drawing, type DrawingMark, hatch, type LineMark, type RectMark } from './drawing'

export interface PieceDrawingInput {
  readonly sketch: Sketch
  /** What the guides or the stop are set to, in mm; null where none are. */
  readonly setting: Mm | null
  readonly display: LengthDisplay
  /** Height of the letters as a share of the longer side of the piece. */
  readonly textShare?: number
}

const LAYERS: Record<SketchPiece['kind'], 'part' | 'offcut' | 'waste' | 'sheet'> = {
  part: 'part',
  strip: 'part',
  piece: 'sheet',
  offcut: 'offcut',
  waste: 'waste',
}

/**
 * The piece of a step before the cut, small: what is cut off, the lines of the cuts, the waste hatched, and the setting
 * measured from the reference edge. Frame: x along the piece's length, y along its width from that edge, mm.
 */
export function pieceDrawing({ sketch, setting, display, textShare = 0.05 }: PieceDrawingInput): Drawing {
  const { length, width, pieces, cuts } = sketch
  const size = Math.max(length, width) * textShare
  const rim = size * 2.5
  return {
    bounds: { left: -rim, bottom: -rim, width: length + 2 * rim, height: width + 2 * rim },
    marks: [
      { kind: 'rect', layer: 'sheet', rect: { left: 0, bottom: 0, width: length, height: width } },
      ...pieces.flatMap((piece) => pieceMarks(piece, size)),
      ...cuts.map((cut) => cutLine(cut, sketch)),
      ...measures(sketch, setting, size, display),
    ],
  }
}

function pieceMarks({ kind, name, rect }: SketchPiece, size: Mm): DrawingMark[] {
  const outline: RectMark = { kind: 'rect', layer: LAYERS[kind], rect }
  if (kind === 'waste') return [outline, ...hatch(rect, size * 0.7, 'hatch')]
  const isUpright = rect.height > rect.width
  const [along, across] = isUpright ? [rect.height, rect.width] : [rect.width, rect.height]
  const hasRoom = across > size && along > name.length * size * 0.6
  const at = { x: rect.left + rect.width / 2, y: rect.bottom + rect.height / 2 }
  return hasRoom ? [outline, { kind: 'text', layer: 'text', at, text: name, size, isUpright }] : [outline]
}

/** Through the middle of the kerf, from one edge of the piece to the other. */
function cutLine({ left, bottom, width, height }: Rect, { measuredFrom }: Sketch): LineMark {
  const [x, y] = [left + width / 2, bottom + height / 2]
  return measuredFrom === 'edge'
    ? { kind: 'line', layer: 'cut', from: { x: left, y }, to: { x: left + width, y } }
    : { kind: 'line', layer: 'cut', from: { x, y: bottom }, to: { x, y: bottom + height } }
}

/** The piece's own size, and the first piece that the setting gives. */
function measures(sketch: Sketch, setting: Mm | null, size: Mm, display: LengthDisplay): DrawingMark[] {
  const { length, width, measuredFrom } = sketch
  const common = { kind: 'dimension', layer: 'dimension', size, offset: size * 1.2 } as const
  const corner = { x: 0, y: 0 }
  const whole: DrawingMark[] = [
    { ...common, from: { x: length, y: 0 }, to: corner, text: formatLength(length, display) },
    { ...common, from: corner, to: { x: 0, y: width }, text: formatLength(width, display) },
  ]
  if (setting === null) return whole
  const [from, to] =
    measuredFrom === 'edge'
      ? [
          { x: length, y: setting },
          { x: length, y: 0 },
        ]
      : [
          { x: 0, y: width },
          { x: setting, y: width },
        ]
  return [...whole, { ...common, offset: size * 1.8, from, to, text: formatLength(setting, display) }]
}
