import { assert } from '../basics/assert'
import type { MaterialId, PartId } from '../basics/id'
import type { CutList } from '../cutlist/row'
import type { CutOrder, Material, Shop } from '../project/document'
import type { JobStock, SheetJob } from '../sheets/job'
import type { PartPiece, SheetAnswer, SheetLayout } from '../sheets/layout'
import type { LengthDisplay } from '../units/length'
import { assignParts } from './assign'
import { cautionsFor, SHOP_CAUTIONS } from './cautions'
import { effortOf } from './minutes'
import { orderWorks, type Work } from './order'
import type { Breakdown, Step, StepPiece } from './step'
import { type SheetWalk, type Task, tasksOfSheet } from './task'
import { nameList, wordsOf } from './wording'

export interface BreakdownInput {
  readonly job: SheetJob
  readonly answer: SheetAnswer
  readonly shop: Shop
  readonly cutList: CutList
  /** The mark of every part, `B3-LS`. A part without one is called after its row. */
  readonly marks: ReadonlyMap<PartId, string>
  readonly materials: Readonly<Record<MaterialId, Material>>
  /** How lengths are written in the words of a step; tenths of a millimetre when left out. */
  readonly display?: LengthDisplay
}

const TENTHS: LengthDisplay = { unit: 'mm', step: 0.1 }

/**
 * The layouts as a list of things to do. Both orders of cutting are worked out and the quicker one is proposed; the kerf
 * is the job's own, so the sizes of the steps are those of the layout.
 */
export function breakdownOf(input: BreakdownInput): Breakdown {
  const { job } = input
  const shop = { ...input.shop, kerf: job.kerf }
  const firstBlade = firstBladeOf(input.answer.sheets)
  const sheets = walksOf(input, firstBlade).flatMap(tasksOfSheet)
  const orders: readonly CutOrder[] = ['setting by setting', 'sheet by sheet']
  const [one, other] = orders
    .map((order) => {
      const works = orderWorks(sheets, shop, firstBlade, order)
      return { order, works, ...effortOf(works, shop) }
    })
    .sort((a, b) => a.minutes - b.minutes)
  assert(one && other, 'there are two orders of cutting')
  return {
    steps: stepsOf(one.works, { ...input, shop }),
    settings: one.settings,
    minutes: one.minutes,
    order: one.order,
    minutesOtherwise: other.minutes,
    bladeChanges: one.bladeChanges,
    cautions: sheets.length > 0 ? SHOP_CAUTIONS : [],
  }
}

/** The rip blade, unless every sheet is crosscut first: then it need not go in before the re-rips. */
function firstBladeOf(sheets: readonly SheetLayout[]): 'rip' | 'crosscut' {
  const isCrosscut = ({ root }: SheetLayout) => root.kind === 'cut' && root.direction === 'crosscut'
  return sheets.length > 0 && sheets.every(isCrosscut) ? 'crosscut' : 'rip'
}

/** Every sheet by itself, copies counted out, with the part that each of its places was dealt. */
function walksOf({ job, answer, cutList, marks }: BreakdownInput, firstBlade: 'rip' | 'crosscut'): SheetWalk[] {
  const stock = new Map(job.stock.map((each) => [each.id, each]))
  const rowMarks = new Map<string, string>(cutList.rows.map(({ key, mark }) => [key, mark]))
  const marksOfSheet = new Map<number, string[]>()
  for (const { sheet, part, row } of assignParts(cutList, answer)) {
    const mark = marks.get(part) ?? rowMarks.get(row) ?? row
    marksOfSheet.set(sheet, [...(marksOfSheet.get(sheet) ?? []), mark])
  }
  const walks: SheetWalk[] = []
  for (const { stock: id, copies, root } of answer.sheets) {
    const from = stock.get(id)
    assert(from, `the layout uses stock ${id}, which the job does not have`)
    const order = new Map(partPieces(root).map((piece, at) => [piece, at]))
    for (let copy = 0; copy < copies; copy++) {
      const sheet = walks.length + 1
      const markOf = (piece: PartPiece) => marksOfSheet.get(sheet)?.[order.get(piece)!] ?? piece.part
      const { material } = from
      walks.push({ sheet, material, kerf: job.kerf, root, rough: roughOf(from, root), firstBlade, markOf })
    }
  }
  return walks
}

function partPieces(piece: SheetLayout['root']): PartPiece[] {
  if (piece.kind === 'cut') return piece.pieces.flatMap(partPieces)
  return piece.kind === 'part' ? [piece] : []
}

function roughOf(stock: JobStock, root: SheetLayout['root']): SheetWalk['rough'] {
  return {
    start: root.x,
    low: root.y,
    end: stock.length - root.x - root.length,
    high: stock.width - root.y - root.width,
  }
}

interface Context extends BreakdownInput {
  readonly shop: Shop
}

/** Equal works of one run become one step. */
function stepsOf(works: readonly Work[], context: Context): Step[] {
  const groups = new Map<string, Work[]>()
  for (const work of works) {
    const key = likeness(work)
    groups.set(key, [...(groups.get(key) ?? []), work])
  }
  const set: Record<Step['tool'], number | null> = { guides: null, bench: null, rail: null }
  return [...groups.values()].map((alike, at) => {
    const { tool, setting } = alike[0]!
    const isSet = setting !== null && set[tool] === setting
    if (setting !== null) set[tool] = setting
    return stepOf(alike, isSet, String(at + 1), context)
  })
}

function likeness({ run, kind, tool, blade, size, takes, cuts, leaves, task }: Work): string {
  const left = leaves.map(({ kind, length, width }) => `${kind} ${length} ${width}`).sort()
  return [run, kind, task.material, tool, blade, size, takes.length, takes.width, cuts, ...left].join('|')
}

function stepOf(alike: readonly Work[], isSet: boolean, id: string, context: Context): Step {
  const first = alike[0]!
  const { kind, tool, blade, setting, task } = first
  const display = context.display ?? TENTHS
  const names = alike.map(({ takes }) => takes.name)
  const material = context.materials[task.material as MaterialId]
  return {
    ...{ id, kind, tool, blade, setting, material: task.material },
    sheets: [...new Set(alike.map((work) => work.task.sheet))].sort((a, b) => a - b),
    takes: { ...first.takes, name: nameList(names) },
    count: alike.length,
    cuts: alike.reduce((sum, { cuts }) => sum + cuts, 0),
    leaves: leavesOf(alike),
    write: alike.flatMap(({ leaves }) => leaves.flatMap(({ mark }) => (mark === null ? [] : [mark]))),
    text: wordsOf(first, { names, isSet, display }),
    cautions: cautionsFor(first, { shop: context.shop, material, display }),
  }
}

/** Pieces of one kind and size together, in the order in which the first piece leaves them. */
function leavesOf(alike: readonly Work[]): StepPiece[] {
  const groups = new Map<string, Task['groups'][number]['children'][number][]>()
  for (const piece of alike.flatMap(({ leaves }) => leaves)) {
    const key = `${piece.kind} ${piece.length} ${piece.width}`
    groups.set(key, [...(groups.get(key) ?? []), piece])
  }
  return [...groups.values()].map((pieces) => {
    const { kind, length, width } = pieces[0]!
    const name = nameList([...new Set(pieces.map((piece) => piece.name))])
    return { kind, name, length, width, count: pieces.length }
  })
}
