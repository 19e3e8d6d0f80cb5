import type { Board } from '../cabinets/board'
import { centresOf, type EdgeFace, type HoleRow } from '../cabinets/operation'
import { formatLength } from '../units/format'
import { type LengthDisplay, type Mm, settle } from '../units/length'
import { datumOf, otherEnd } from './datum'
import type { DrawingMark } from './drawing'
import { holeMark } from './hole'
import { line, measuresUnder, sortedOnce } from './running'

const EDGES: readonly EdgeFace[] = ['start', 'end', 'low', 'high']

/** The ends and edges of a part that are bored. */
export function edgesBored({ operations }: Board): EdgeFace[] {
  return EDGES.filter((edge) => operations.some((one) => one.kind === 'holeRow' && one.face === edge))
}

/**
 * An end or an edge with its holes, as one looks at it with the outside face below. Places along it are measured from the
 * part's datum, those across it from the outside face.
 */
export function edgeMarks(part: Board, edge: EdgeFace, low: Mm, size: Mm, display: LengthDisplay): DrawingMark[] {
  const isEnd = edge === 'start' || edge === 'end'
  const long = isEnd ? part.width : part.length
  const rows = part.operations.filter((one): one is HoleRow => one.kind === 'holeRow' && one.face === edge)
  const holes = rows.flatMap((row) => centresOf(row).map((centre) => ({ row, x: placeOf(centre, edge, part) })))
  const ups = sortedOnce(rows.map(({ up = 0 }) => up))
  const words = `${titleOf(part, edge)} · ${formatLength(ups[0] ?? 0, display)} from the outside face`
  return [
    { kind: 'rect', layer: 'part', rect: { left: 0, bottom: low, width: long, height: part.thickness } },
    ...holes.map(({ row, x }) => holeMark({ x, y: settle(low + (row.up ?? 0)) }, row, true)),
    ...line('datum', [0, low], [0, low + part.thickness]),
    ...line('datum', [0, low], [long, low]),
    {
      kind: 'text',
      layer: 'text',
      at: { x: long / 2, y: low + part.thickness + size * 1.4 },
      text: words,
      size,
      isUpright: false,
    },
    ...measuresUnder(sortedOnce([...holes.map(({ x }) => x), long]), low, size, display),
  ]
}

function placeOf({ x, y }: { readonly x: Mm; readonly y: Mm }, edge: EdgeFace, part: Board): Mm {
  if (edge === 'low' || edge === 'high') return x
  return datumOf(part).isEdgeAtZero ? y : settle(part.width - y)
}

function titleOf(part: Board, edge: EdgeFace): string {
  const datum = datumOf(part)
  const isDatumEdge = (edge === 'low') === datum.isEdgeAtZero
  if (edge === 'start') return `${datum.end}, from the ${datum.edge}`
  if (edge === 'end') return `${otherEnd(datum)}, from the ${datum.edge}`
  return `${isDatumEdge ? datum.edge : 'other edge'}, from the ${datum.end}`
}
