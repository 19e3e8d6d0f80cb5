import { ticks } from '../units/length'
import type { SheetJob } from './job'
import type { Piece, SheetAnswer, SheetLayout } from './layout'

/**
 * What is wrong with an answer, each in a sentence; nothing when it is sound. Shares no code with the packer: it walks
 * the tree of cuts as a sawyer would and counts.
 */
export function verify(job: SheetJob, answer: SheetAnswer): string[] {
  return [...answer.sheets.flatMap((sheet) => wrongOn(job, sheet)), ...wrongCounts(job, answer)]
}

function wrongOn(job: SheetJob, sheet: SheetLayout): string[] {
  const stock = job.stock.find(({ id }) => id === sheet.stock)
  if (!stock) return [`sheet ${sheet.stock} is not in stock`]
  const trim = { x: ticks(stock.trim?.length ?? 0), y: ticks(stock.trim?.width ?? 0) }
  const { x, y, length, width } = inTicks(sheet.root)
  const wrong: string[] = []
  const isWhole = x === trim.x && y === trim.y
  if (!isWhole || length !== ticks(stock.length) - 2 * trim.x || width !== ticks(stock.width) - 2 * trim.y) {
    wrong.push(`the root of a sheet of ${sheet.stock} is not the sheet less its trim`)
  }
  const directions = wrongIn(sheet.root, job, stock.material, wrong)
  const stages = job.stages === null ? Infinity : (job.stages ?? 3)
  if (directions.count > stages)
    wrong.push(`a sheet of ${sheet.stock} takes ${directions.count} directions, not ${stages}`)
  const first = job.firstCut ?? 'rip'
  if (directions.first && first !== 'any' && directions.first !== first && directions.count === stages) {
    wrong.push(`a sheet of ${sheet.stock} begins with a ${directions.first}`)
  }
  if (JSON.stringify(placesIn(sheet.root)) !== JSON.stringify(sheet.placements.map(({ part, x, y }) => [part, x, y]))) {
    wrong.push(`the placements on a sheet of ${sheet.stock} are not the parts of its tree`)
  }
  return wrong
}

interface Directions {
  readonly count: number
  readonly first: 'rip' | 'crosscut' | null
}

/** Checks a piece and all within it; how many directions are taken in turn to cut it. */
function wrongIn(piece: Piece, job: SheetJob, material: string, wrong: string[]): Directions {
  if (piece.kind === 'part') wrongPart(piece, job, material, wrong)
  if (piece.kind !== 'cut') return { count: 0, first: null }
  const isRip = piece.direction === 'rip'
  const whole = inTicks(piece)
  const kerf = ticks(job.kerf)
  let at = isRip ? whole.y : whole.x
  let count = 1
  for (const inner of piece.pieces) {
    const place = inTicks(inner)
    const starts = isRip ? place.y : place.x
    const spans = isRip
      ? place.x === whole.x && place.length === whole.length
      : place.y === whole.y && place.width === whole.width
    if (starts !== at || !spans)
      wrong.push(`a piece at ${inner.x}, ${inner.y} is not edge to edge behind the cut before it`)
    at = starts + (isRip ? place.width : place.length) + kerf
    const within = wrongIn(inner, job, material, wrong)
    count = Math.max(count, within.first === piece.direction ? within.count : within.count + 1)
  }
  const beyond = (isRip ? whole.y + whole.width : whole.x + whole.length) - (at - kerf)
  if (beyond < 0 || beyond > kerf) wrong.push(`the piece at ${piece.x}, ${piece.y} is not accounted for to its end`)
  return { count, first: piece.direction }
}

function wrongPart(piece: Extract<Piece, { kind: 'part' }>, job: SheetJob, material: string, wrong: string[]): void {
  const part = job.parts.find(({ id }) => id === piece.part)
  if (!part) return void wrong.push(`${piece.part} is not in the job`)
  const { length, width } = inTicks(piece)
  const [along, across] = piece.rotated ? [width, length] : [length, width]
  if (along !== ticks(part.length) || across !== ticks(part.width)) wrong.push(`${part.id} is not cut to its size`)
  if (piece.rotated && !part.rotate) wrong.push(`${part.id} is turned and may not be`)
  if (part.material !== material) wrong.push(`${part.id} lies on ${material}`)
}

function wrongCounts(job: SheetJob, answer: SheetAnswer): string[] {
  const placed = (id: string) =>
    answer.sheets.reduce(
      (sum, { copies, placements }) => sum + copies * placements.filter(({ part }) => part === id).length,
      0,
    )
  const parts = job.parts.flatMap(({ id, quantity }) => {
    const unplaced = answer.unplaced.filter(({ part }) => part === id).reduce((sum, one) => sum + one.quantity, 0)
    const found = placed(id) + unplaced
    return found === quantity ? [] : [`${id} is there ${found} times, not ${quantity}`]
  })
  const stock = job.stock.flatMap(({ id, quantity }) => {
    const used = answer.sheets.filter((sheet) => sheet.stock === id).reduce((sum, { copies }) => sum + copies, 0)
    return quantity !== undefined && used > quantity ? [`${used} sheets of ${id} are used; there are ${quantity}`] : []
  })
  return [...parts, ...stock]
}

function placesIn(piece: Piece): [string, number, number][] {
  if (piece.kind === 'cut') return piece.pieces.flatMap(placesIn)
  return piece.kind === 'part' ? [[piece.part, piece.x, piece.y]] : []
}

function inTicks({ x, y, length, width }: Piece) {
  return { x: ticks(x), y: ticks(y), length: ticks(length), width: ticks(width) }
}
