import { ticks } from '../units/length'
import type { JobPart, JobStock, SheetJob } from './job'
import type { Piece, SheetAnswer, SheetLayout } from './layout'
import { wrongInBanks } from './verifyBanks'
import { wrongInNumbers, wrongInPins } from './verifyPins'

interface Ledger {
  readonly job: SheetJob
  readonly kerf: number
  readonly parts: ReadonlyMap<string, JobPart>
  readonly stock: ReadonlyMap<string, JobStock>
  readonly wrong: string[]
}

/**
 * What is wrong with an answer, each in a sentence; nothing when it is sound. Shares no code with the packer: it walks
 * the tree of cuts as a sawyer would, in whole ticks, and counts.
 */
export function verify(job: SheetJob, answer: SheetAnswer): string[] {
  const ledger = ledgerOf(job)
  for (const sheet of answer.sheets) judgeSheet(sheet, ledger)
  judgeCounts(answer, ledger)
  judgeProof(answer, ledger)
  judgeWishes(answer, ledger)
  ledger.wrong.push(...wrongInBanks(job, answer), ...wrongInPins(job, answer), ...wrongInNumbers(job, answer))
  return ledger.wrong
}

/** What is wrong with sheets by themselves, whatever else the job asks for. */
export function wrongInSheets(job: SheetJob, sheets: readonly SheetLayout[]): string[] {
  const ledger = ledgerOf(job)
  for (const sheet of sheets) judgeSheet(sheet, ledger)
  return ledger.wrong
}

function ledgerOf(job: SheetJob): Ledger {
  return {
    job,
    kerf: ticks(job.kerf),
    parts: new Map(job.parts.map((part) => [part.id, part])),
    stock: new Map(job.stock.map((stock) => [stock.id, stock])),
    wrong: [],
  }
}

/** Locked sheets are there as they are, and first unless they have places; no other sheet is of an excluded kind. */
function judgeWishes({ sheets }: SheetAnswer, { job, stock, wrong }: Ledger): void {
  const others = [...sheets]
  for (const [at, sheet] of (job.locked ?? []).entries()) {
    const text = JSON.stringify(sheet)
    const place = job.lockedAt ? others.findIndex((other) => JSON.stringify(other) === text) : 0
    const [found] = place < 0 ? [] : others.splice(place, 1)
    if (JSON.stringify(found) !== text) wrong.push(`sheet ${at + 1} is not as it was locked`)
  }
  for (const sheet of others) {
    if (stock.get(sheet.stock)?.excluded) wrong.push(`sheet ${sheet.stock} is used and was excluded`)
  }
}

function judgeSheet(sheet: SheetLayout, ledger: Ledger): void {
  const { job, wrong } = ledger
  const stock = ledger.stock.get(sheet.stock)
  if (!stock) return void wrong.push(`sheet ${sheet.stock} is not in stock`)
  if (!Number.isInteger(sheet.copies) || sheet.copies < 1) wrong.push(`${sheet.copies} copies of ${sheet.stock}`)
  const trim = { x: ticks(stock.trim?.length ?? 0), y: ticks(stock.trim?.width ?? 0) }
  const { x, y, length, width } = inTicks(sheet.root)
  const isWhole = x === trim.x && y === trim.y
  if (!isWhole || length !== ticks(stock.length) - 2 * trim.x || width !== ticks(stock.width) - 2 * trim.y) {
    wrong.push(`the root of a sheet of ${sheet.stock} is not the sheet less its trim`)
  }
  const directions = judgePiece(sheet.root, stock.material, ledger)
  const stages = job.stages === null ? Infinity : (job.stages ?? 3)
  if (directions.count > stages) {
    wrong.push(`a sheet of ${sheet.stock} takes ${directions.count} directions, not ${stages}`)
  }
  const first = job.firstCut ?? 'rip'
  if (directions.first && first !== 'any' && directions.first !== first && directions.count === stages) {
    wrong.push(`a sheet of ${sheet.stock} begins with a ${directions.first}`)
  }
  judgePlacements(sheet, ledger)
}

function judgePlacements(sheet: SheetLayout, { parts, wrong }: Ledger): void {
  const named = sheet.placements.map(({ part, x, y, rotated }) => [part, x, y, rotated])
  if (JSON.stringify(placesIn(sheet.root)) !== JSON.stringify(named)) {
    wrong.push(`the placements on a sheet of ${sheet.stock} are not the parts of its tree`)
  }
  for (const { part: id, length, width } of sheet.placements) {
    const part = parts.get(id)
    const isOwn = part && ticks(part.length) === ticks(length) && ticks(part.width) === ticks(width)
    if (!isOwn) wrong.push(`a placement of ${id} does not give the part's own length and width`)
    if (part?.from !== undefined && part.from !== sheet.stock)
      wrong.push(`${id} is cut from ${sheet.stock}, not from ${part.from}`)
  }
}

interface Directions {
  readonly count: number
  readonly first: 'rip' | 'crosscut' | null
}

/** Judges a piece and all within it; how many directions are taken in turn to cut it. */
function judgePiece(piece: Piece, material: string, ledger: Ledger): Directions {
  if (piece.kind === 'part') judgePart(piece, material, ledger)
  else if (piece.kind !== 'cut') judgeLeft(piece, ledger)
  if (piece.kind !== 'cut') return { count: 0, first: null }
  const { kerf, wrong } = ledger
  const isRip = piece.direction === 'rip'
  const whole = inTicks(piece)
  let at = isRip ? whole.y : whole.x
  let count = 1
  for (const inner of piece.pieces) {
    const place = inTicks(inner)
    const starts = isRip ? place.y : place.x
    const spans = isRip
      ? place.x === whole.x && place.length === whole.length
      : place.y === whole.y && place.width === whole.width
    if (starts !== at || !spans) {
      wrong.push(`a piece at ${inner.x}, ${inner.y} is not edge to edge behind the cut before it`)
    }
    at = starts + (isRip ? place.width : place.length) + kerf
    const within = judgePiece(inner, material, ledger)
    count = Math.max(count, within.first === piece.direction ? within.count : within.count + 1)
  }
  const beyond = (isRip ? whole.y + whole.width : whole.x + whole.length) - (at - kerf)
  if (beyond < 0 || beyond > kerf) wrong.push(`the piece at ${piece.x}, ${piece.y} is not accounted for to its end`)
  return { count, first: piece.direction }
}

function judgePart(piece: Extract<Piece, { kind: 'part' }>, material: string, { parts, wrong }: Ledger): void {
  const part = parts.get(piece.part)
  if (!part) return void wrong.push(`${piece.part} is not in the job`)
  const { length, width } = inTicks(piece)
  const [along, across] = piece.rotated ? [width, length] : [length, width]
  if (along !== ticks(part.length) || across !== ticks(part.width)) wrong.push(`${part.id} is not cut to its size`)
  if (piece.rotated && !part.rotate) wrong.push(`${part.id} is turned and may not be`)
  if (part.material !== material) wrong.push(`${part.id} lies on ${material}`)
}

/** What is left over is an offcut exactly when it is long and wide enough to be kept. */
function judgeLeft(piece: Exclude<Piece, { kind: 'part' | 'cut' }>, { job, wrong }: Ledger): void {
  const { length, width } = inTicks(piece)
  if (length <= 0 || width <= 0) wrong.push(`what is left at ${piece.x}, ${piece.y} has no size`)
  const least = job.offcutLeast
  if (!least) return
  const isKept = length >= ticks(least.length) && width >= ticks(least.width)
  if (isKept !== (piece.kind === 'offcut')) {
    wrong.push(`what is left at ${piece.x}, ${piece.y}, ${piece.length} x ${piece.width}, is called ${piece.kind}`)
  }
}

function judgeCounts(answer: SheetAnswer, { job, wrong }: Ledger): void {
  const found = new Map<string, number>()
  const used = new Map<string, number>()
  const add = (counts: Map<string, number>, id: string, more: number) => counts.set(id, (counts.get(id) ?? 0) + more)
  for (const { stock, copies, placements } of answer.sheets) {
    add(used, stock, copies)
    for (const { part } of placements) add(found, part, copies)
  }
  for (const { part, quantity } of answer.unplaced) add(found, part, quantity)
  for (const { id, quantity } of job.parts) {
    const count = found.get(id) ?? 0
    if (count !== quantity) wrong.push(`${id} is there ${count} times, not ${quantity}`)
  }
  for (const { id, quantity } of job.stock) {
    const count = used.get(id) ?? 0
    if (quantity !== undefined && count > quantity) {
      wrong.push(`${count} sheets of ${id} are used; there are ${quantity}`)
    }
  }
}

/** No answer has fewer sheets than its own bound; the one that has exactly as many, with nothing left out, is proved. */
function judgeProof({ sheets, unplaced, bounds, proved }: SheetAnswer, { stock, wrong }: Ledger): void {
  const counts = new Map<string, number>()
  for (const sheet of sheets) {
    const material = stock.get(sheet.stock)?.material ?? ''
    counts.set(material, (counts.get(material) ?? 0) + sheet.copies)
  }
  if (proved && unplaced.length > 0) wrong.push('the answer is called proved, and parts are left out')
  for (const [material, bound] of Object.entries(bounds)) {
    const count = counts.get(material) ?? 0
    if (unplaced.length === 0 && count < bound)
      wrong.push(`${count} sheets of ${material} are under the bound ${bound}`)
    if (proved && count !== bound) wrong.push(`${count} sheets of ${material} are called proved; the bound is ${bound}`)
  }
}

function placesIn(piece: Piece): [string, number, number, boolean][] {
  if (piece.kind === 'cut') return piece.pieces.flatMap(placesIn)
  return piece.kind === 'part' ? [[piece.part, piece.x, piece.y, piece.rotated]] : []
}

function inTicks({ x, y, length, width }: Piece) {
  return { x: ticks(x), y: ticks(y), length: ticks(length), width: ticks(width) }
}
