import type { Random } from '../../engine/basics/random'
import type { CutRow } from '../../engine/cutlist/row'
import type { SheetJob } from '../../engine/sheets/job'
import type { Piece, Place, Placement2D, SheetAnswer, SheetLayout } from '../../engine/sheets/layout'
import { settle } from '../../engine/units/length'

export interface Wish {
  readonly first: 'rip' | 'crosscut' | 'either'
  /** How many directions are taken in turn at most. */
  readonly depth: number
  readonly sheets: number
  readonly kerf: number
  readonly trim: number
}

type Direction = 'rip' | 'crosscut'

/** Sheets cut at random in any number of directions, with their job and the rows of their parts. */
export function randomTrees(random: Random, wish: Wish) {
  const { kerf, trim, depth } = wish
  const stock = { id: 's1', material: 'm1', length: 2440, width: 1220, trim: { length: trim, width: trim } }
  const rows = new Map<string, { length: number; width: number; quantity: number }>()
  const sheets = Array.from({ length: wish.sheets }, (): SheetLayout => {
    const copies = 1 + Math.floor(random() * 2)
    const way = wish.first === 'either' ? (random() < 0.5 ? 'rip' : 'crosscut') : wish.first
    const place = { x: trim, y: trim, length: 2440 - 2 * trim, width: 1220 - 2 * trim }
    const root = cutAtRandom(random, place, way, depth, kerf)
    const placements = placementsIn(root)
    for (const { part, length, width } of placements) {
      rows.set(part, { length, width, quantity: (rows.get(part)?.quantity ?? 0) + copies })
    }
    return { stock: stock.id, copies, root, placements }
  })
  const parts = [...rows].map(([id, row]) => ({ id, material: 'm1', ...row, rotate: true }))
  const job: SheetJob = { kerf, stages: null, firstCut: 'any', stock: [stock], parts }
  const answer: SheetAnswer = { sheets, unplaced: [], bounds: {}, proved: false }
  return { job, answer, cutList: { rows: parts.map(rowOf), totals: [] } }
}

/** Row `600x320` has the parts `600x320-1`, `600x320-2`... */
function rowOf({ id, length, width, quantity }: SheetJob['parts'][number]): CutRow {
  const parts = Array.from({ length: quantity }, (_, at) => `${id}-${at + 1}`)
  const size = { material: 'm1', length, width, thickness: 18, quantity, isGrainBound: false }
  return { key: id, mark: id, name: id, ...size, parts, cabinets: [] } as unknown as CutRow
}

function cutAtRandom(random: Random, place: Place, way: Direction, depth: number, kerf: number): Piece {
  const isRip = way === 'rip'
  const whole = isRip ? place.width : place.length
  if (depth === 0 || whole < 120) return leafAtRandom(random, place)
  const pieces: Piece[] = []
  let from = 0
  const count = 2 + Math.floor(random() * 3)
  for (let at = 0; at < count; at++) {
    const room = whole - from
    // Few sizes, so that settings are often equal.
    const wanted = 60 + Math.floor(random() * 8) * 70
    const isLast = at === count - 1 || room - wanted - kerf < 60
    const extent = isLast ? room : wanted
    const inner = isRip
      ? { ...place, y: settle(place.y + from), width: settle(extent) }
      : { ...place, x: settle(place.x + from), length: settle(extent) }
    const isCut = random() < 0.65
    pieces.push(
      isCut
        ? cutAtRandom(random, inner, isRip ? 'crosscut' : 'rip', depth - 1, kerf)
        : isLast
          ? { kind: random() < 0.5 ? 'waste' : 'offcut', ...inner }
          : leafAtRandom(random, inner),
    )
    from = settle(from + extent + kerf)
    if (isLast) break
  }
  return pieces.length < 2 ? leafAtRandom(random, place) : { kind: 'cut', direction: way, pieces, ...place }
}

function leafAtRandom(random: Random, place: Place): Piece {
  if (random() < 0.15) return { kind: 'offcut', ...place }
  const rotated = random() < 0.3
  const [length, width] = rotated ? [place.width, place.length] : [place.length, place.width]
  return { kind: 'part', part: `${length}x${width}`, rotated, ...place }
}

function placementsIn(piece: Piece): Placement2D[] {
  if (piece.kind === 'cut') return piece.pieces.flatMap(placementsIn)
  if (piece.kind !== 'part') return []
  const { part, x, y, rotated } = piece
  const [length, width] = rotated ? [piece.width, piece.length] : [piece.length, piece.width]
  return [{ part, x, y, length, width, rotated }]
}
