import { unreachable } from '../basics/assert'
import {
  type DimensionMark,
  type Drawing,
  type DrawingMark,
  dimensionLine,
  type Layer,
  type Point,
  type TextMark,
} from '../drawings/drawing'
import { topOf } from '../geometry/rect'
import { settle } from '../units/length'

/** Ink on white paper, whatever the screen looks like. Widths of lines in mm at full size. */
const STYLE: Record<
  Layer,
  { readonly fill: string; readonly stroke: string; readonly width: number; readonly dash?: string }
> = {
  sheet: { fill: '#ffffff', stroke: '#23261f', width: 4 },
  trim: { fill: 'none', stroke: '#8d9083', width: 1, dash: '12 8' },
  part: { fill: '#f3e7cd', stroke: '#23261f', width: 2 },
  offcut: { fill: '#ffffff', stroke: '#5d6156', width: 2, dash: '24 14' },
  freed: { fill: 'none', stroke: '#5d6156', width: 3, dash: '6 10' },
  run: { fill: 'none', stroke: '#5d6156', width: 3 },
  waste: { fill: '#ffffff', stroke: '#8d9083', width: 1 },
  hatch: { fill: 'none', stroke: '#8d9083', width: 1 },
  grain: { fill: 'none', stroke: '#5d6156', width: 2 },
  cut: { fill: 'none', stroke: '#23261f', width: 2 },
  text: { fill: '#23261f', stroke: 'none', width: 0 },
  caption: { fill: '#5d6156', stroke: 'none', width: 0 },
  dimension: { fill: '#5d6156', stroke: '#5d6156', width: 2 },
  recess: { fill: '#ddc79a', stroke: '#23261f', width: 1 },
  hole: { fill: '#ffffff', stroke: '#23261f', width: 1 },
  datum: { fill: 'none', stroke: '#23261f', width: 5 },
}

/**
 * The drawing as a file that measures true: one unit is one millimetre, at full size. It holds nothing but shapes and
 * text, and whatever a name contains stays text.
 */
export function svgOf(drawing: Drawing, title = ''): string {
  const { bounds } = drawing
  const [width, height] = [number(bounds.width), number(bounds.height)]
  const top = topOf(bounds)
  const place = ({ x, y }: Point): Point => ({ x: x - bounds.left, y: top - y })
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}">`,
    ...(title === '' ? [] : [`<title>${escaped(title)}</title>`]),
    ...drawing.marks.map((mark) => elementOf(mark, place)),
    '</svg>',
    '',
  ].join('\n')
}

function elementOf(mark: DrawingMark, place: (at: Point) => Point): string {
  switch (mark.kind) {
    case 'line':
      return lineOf(mark.layer, place(mark.from), place(mark.to))
    case 'rect': {
      const { left, bottom, width, height } = mark.rect
      const { x, y } = place({ x: left, y: bottom + height })
      const size = `x="${number(x)}" y="${number(y)}" width="${number(width)}" height="${number(height)}"`
      return `<rect ${size} ${paint(mark.layer)}/>`
    }
    case 'circle': {
      const { x, y } = place(mark.at)
      return `<circle cx="${number(x)}" cy="${number(y)}" r="${number(mark.diameter / 2)}" ${paint(mark.layer)}/>`
    }
    case 'text':
      return textOf(mark.layer, place(mark.at), mark)
    case 'dimension':
      return dimensionOf(mark, place)
    default:
      return unreachable(mark)
  }
}

function lineOf(layer: Layer, from: Point, to: Point): string {
  const ends = `x1="${number(from.x)}" y1="${number(from.y)}" x2="${number(to.x)}" y2="${number(to.y)}"`
  return `<line ${ends} ${paint(layer)}/>`
}

function textOf(
  layer: Layer,
  at: Point,
  { text, size, isUpright }: Pick<TextMark, 'text' | 'size' | 'isUpright'>,
): string {
  const turn = isUpright ? ` transform="rotate(-90 ${number(at.x)} ${number(at.y)})"` : ''
  const set = `font-family="Inter, sans-serif" font-size="${number(size)}" text-anchor="middle" dominant-baseline="central"`
  const place = `x="${number(at.x)}" y="${number(at.y)}"`
  return `<text ${place} ${set} fill="${STYLE[layer].fill}"${turn}>${escaped(text)}</text>`
}

/** The line, a slash at each of its ends, and the figure above its middle. */
function dimensionOf(mark: DimensionMark, place: (at: Point) => Point): string {
  const line = dimensionLine(mark)
  const [from, to] = [place(line.from), place(line.to)]
  const slash = mark.size * 0.3
  const slashAt = ({ x, y }: Point) => {
    return lineOf(mark.layer, { x: x - slash, y: y + slash }, { x: x + slash, y: y - slash })
  }
  const isUpright = Math.abs(to.x - from.x) < Math.abs(to.y - from.y)
  const lift = mark.size * 0.75
  const middle = { x: (from.x + to.x) / 2 - (isUpright ? lift : 0), y: (from.y + to.y) / 2 + (isUpright ? 0 : lift) }
  return [
    lineOf(mark.layer, from, to),
    slashAt(from),
    slashAt(to),
    textOf(mark.layer, middle, { ...mark, isUpright }),
  ].join('\n')
}

function paint(layer: Layer): string {
  const { fill, stroke, width, dash } = STYLE[layer]
  return `fill="${fill}" stroke="${stroke}" stroke-width="${width}"${dash ? ` stroke-dasharray="${dash}"` : ''}`
}

/** On the grid of lengths, so that no float dust reaches the file. */
function number(value: number): string {
  return String(Number(settle(value).toFixed(4)) + 0)
}

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
}

/** Control characters that XML forbids are dropped; the rest stays what it is, as text. */
function escaped(text: string): string {
  const allowed = [...text].filter((letter) => letter >= ' ' || letter === '\t' || letter === '\n')
  return allowed.map((letter) => ESCAPES[letter] ?? letter).join('')
}
