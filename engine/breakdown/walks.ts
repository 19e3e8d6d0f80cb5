import { assert } from '../basics/assert'
import type { PartId } from '../basics/id'
import type { CutRow } from '../cutlist/row'
import type { JobStock, SheetJob } from '../sheets/job'
import type { PartPiece, Piece, SheetAnswer, SheetLayout } from '../sheets/layout'
import { assignParts, type PlacedPart } from './assign'
import type { Rough } from './factoryEdges'
import type { GrainPlace } from './grainRuns'
import { AS_IT_CAME, type Stage } from './stage'
import { partsIn, type SheetWalk } from './task'

export interface Laid {
  readonly job: SheetJob
  readonly answer: SheetAnswer
  readonly cutList: { readonly rows: readonly CutRow[] }
  /** The mark of every part, `B3-LS`. A part without one is called after its row. */
  readonly marks: ReadonlyMap<PartId, string>
  /** Pieces of earlier sheets that are in stock, by the id of their stock. */
  readonly atHand?: ReadonlyMap<string, AtHand>
  /** The number of the first sheet; 1 when left out. */
  readonly firstSheet?: number
  /** The numbers that sheets have already, by the id of their stock, in the order of the layouts; others count on. */
  readonly numbered?: ReadonlyMap<string, readonly number[]>
  /** Of the sheets that are laid out, the numbers of those that nobody has yet: they are bought before they are cut. */
  readonly toBuy?: ReadonlySet<number>
  /**
   * Of a plan made again: the rounds of whole sheets that are cut after what was there, by their numbers. What is at hand
   * has its round in its stage.
   */
  readonly rounds?: ReadonlyMap<number, number>
  /** The blade that goes in first; the easier one when left out. */
  readonly firstBlade?: 'rip' | 'crosscut'
}

/** Equal pieces that were cut from earlier sheets: what is written on each, and the factory edges beyond the stock's size. */
export interface AtHand {
  readonly names: readonly string[]
  readonly rough: Rough
  /** How far they have come; when left out they are laid down like sheets. */
  readonly stage?: Stage
  /** What the pieces of each are called, where that was settled before. */
  readonly called?: readonly (readonly string[])[]
}

/** Every sheet by itself, copies counted out, with the part that each of its places was dealt. */
export function walksOf(laid: Laid, firstBlade: 'rip' | 'crosscut'): SheetWalk[] {
  const { job, answer } = laid
  const numbers = sheetNumbers(laid).laid
  const stock = new Map(job.stock.map((each) => [each.id, each]))
  const dealt = dealtOn(laid)
  const lateRows = new Set<string>(laid.cutList.rows.flatMap(({ key, isLate }) => (isLate ? [key] : [])))
  const runs = new Map<PartId, GrainPlace>(
    laid.cutList.rows.flatMap(({ bank, parts }) => (bank ? [[parts[0]!, { run: bank.id, place: bank.place }]] : [])),
  )
  const taken = new Map<string, number>()
  return copiesOf(answer).map(({ stock: id, root }, at): SheetWalk => {
    const from = stock.get(id)
    assert(from, `the layout uses stock ${id}, which the job does not have`)
    const hand = laid.atHand?.get(id)
    const count = taken.get(id) ?? 0
    taken.set(id, count + 1)
    const sheet = numbers[at]!
    const order = new Map(partsIn(root).map((piece, place) => [piece, place]))
    const dealtTo = (piece: PartPiece) => dealt.get(at + 1)?.[order.get(piece)!] ?? { mark: piece.part, part: null }
    return {
      ...{ sheet, material: from.material, kerf: job.kerf, root, firstBlade },
      name: hand?.names[count] ?? `sheet ${sheet}`,
      stage: hand?.stage ?? sheetStage(laid.rounds?.get(sheet)),
      called: hand?.called?.[count] ?? [],
      rough: roughOf(from, root, hand?.rough),
      isLate: (piece) => lateRows.has(piece.part),
      dealt: dealtTo,
      runOf: (piece) => runs.get(dealtTo(piece).part ?? ('' as PartId)) ?? null,
    }
  })
}

function sheetStage(round: number | undefined): Stage {
  return round === undefined ? AS_IT_CAME : { ...AS_IT_CAME, round }
}

/**
 * The numbers of what is laid out, copies counted out, and those of what stays on the rack. Sheets that have a number keep
 * it, and others count on from the first, laid out or not; pieces of earlier sheets, which have names of their own, come
 * behind them all.
 */
export function sheetNumbers({
  job,
  answer,
  atHand,
  firstSheet = 1,
  numbered,
}: Omit<Laid, 'cutList' | 'marks' | 'firstBlade' | 'toBuy'>) {
  const isPiece = (id: string) => atHand?.has(id) === true
  const given = new Map([...(numbered ?? [])].map(([id, numbers]) => [id, numbers.values()]))
  const givenTo = (id: string) => (isPiece(id) ? undefined : given.get(id)?.next().value)
  const known = (ids: readonly string[]) => ids.map((id) => ({ id, number: givenTo(id) }))
  const laid = known(copiesOf(answer).map(({ stock }) => stock))
  const rack = known(onRack(job, answer))
  const isNew = ({ id, number }: (typeof laid)[number]) => !isPiece(id) && number === undefined
  const sheets = firstSheet + laid.filter(isNew).length
  let nextSheet = firstSheet
  let nextPiece = sheets + rack.filter(isNew).length
  const numberOf = ({ id, number }: (typeof laid)[number]) => number ?? (isPiece(id) ? nextPiece++ : nextSheet++)
  return { laid: laid.map(numberOf), rack: rack.map(numberOf), afterSheets: sheets + rack.filter(isNew).length }
}

/** What lies in the shop and is on no layout, by its stock. */
function onRack({ stock }: SheetJob, { sheets }: SheetAnswer): string[] {
  return stock.filter(isInShop).flatMap(({ id, quantity }) => {
    const taken = sheets.reduce((sum, each) => sum + (each.stock === id ? each.copies : 0), 0)
    return Array.from({ length: Math.max(0, quantity! - taken) }, () => id)
  })
}

/** What is there costs nothing more; of what can be bought there may be a limit too. */
export function isInShop({ offcut, quantity }: JobStock): boolean {
  return offcut === true && quantity !== undefined
}

export function copiesOf({ sheets }: SheetAnswer): SheetLayout[] {
  return sheets.flatMap((layout) => Array.from({ length: layout.copies }, () => layout))
}

type Dealt = ReturnType<SheetWalk['dealt']>

function dealtOn({ cutList, answer, marks }: Laid): Map<PlacedPart['sheet'], Dealt[]> {
  const rowMarks = new Map<string, string>(cutList.rows.map(({ key, mark }) => [key, mark]))
  const bySheet = new Map<number, Dealt[]>()
  for (const { sheet, part, row } of assignParts(cutList, answer)) {
    const mark = marks.get(part) ?? rowMarks.get(row) ?? row
    bySheet.set(sheet, [...(bySheet.get(sheet) ?? []), { mark, part }])
  }
  return bySheet
}

function roughOf(stock: JobStock, root: Piece, beyond: Rough = NONE): Rough {
  return {
    start: root.x + beyond.start,
    low: root.y + beyond.low,
    end: stock.length - root.x - root.length + beyond.end,
    high: stock.width - root.y - root.width + beyond.high,
  }
}

const NONE: Rough = { start: 0, low: 0, end: 0, high: 0 }
