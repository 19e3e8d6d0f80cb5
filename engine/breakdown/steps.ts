import type { MaterialId } from '../basics/id'
import { remember } from '../basics/remember'
import type { CutRow } from '../cutlist/row'
import type { CutOrder, Material, Shop } from '../project/document'
import { PLAIN_MM } from '../units/format'
import type { LengthDisplay } from '../units/length'
import { cautionsFor, SHOP_CAUTIONS } from './cautions'
import { type CutAway, usableOf, worksOfCutAways } from './cutAway'
import { isClean } from './factoryEdges'
import { compare } from './inset'
import { effortOf, isPausedBetween, settingsOf } from './minutes'
import { orderWorks } from './order'
import { pauseStep } from './pause'
import { sketchOf } from './sketch'
import type { Breakdown, Effort, Step, StepPiece } from './step'
import { tasksOfSheet } from './task'
import { toBuyBegunBy, toBuyWords } from './toBegin'
import { type Laid, walksOf } from './walks'
import { nameList, wordsOf } from './wording'
import type { Left, Work } from './work'

export interface BreakdownInput extends Laid {
  readonly shop: Shop
  readonly materials: Readonly<Record<MaterialId, Material>>
  /** Damages that are cut away before anything else. */
  readonly cutAways?: readonly CutAway[]
  /** Rows with the parts that were cut before the layouts were made. */
  readonly cutBefore?: readonly CutRow[]
  /** Rows with parts that were cut and no longer fitted, by the sizes that they were cut to: they lie there and may fit again. */
  readonly aside?: readonly CutRow[]
  /** Of which kind of sheet the pieces at hand are: the id of the stock that was bought, by the id of their stock. */
  readonly kinds?: ReadonlyMap<string, string>
  /** The blade that is in the saw when the steps begin, where that is known. */
  readonly bladeIn?: 'rip' | 'crosscut'
  /** How lengths are written in the words of a step; tenths of a millimetre when left out. */
  readonly display?: LengthDisplay
}

/**
 * The layouts as a list of things to do. Both orders of cutting are worked out and the quicker one is proposed; what the
 * shop has chosen is done. The kerf is the job's own, so the sizes of the steps are those of the layout.
 */
export function breakdownOf(input: BreakdownInput): Breakdown {
  const { order, proposed, compared, works, context } = planOf(input)
  const otherwise = order === 'sheet by sheet' ? 'setting by setting' : 'sheet by sheet'
  const groups = withPause(alikeIn(works))
  const cuts = groups.flatMap(([first]) => first ?? [])
  const begins = toBuyBegunBy(groups, input)
  const isSet = new Map(settingsOf(cuts).map((isNew, at) => [cuts[at]!, isNew]))
  return {
    ...compared[order],
    steps: groups.map((alike, at) => {
      const [first] = alike
      if (!first) return pauseStep(idOf(at), groups[at - 1]!, context)
      const step = stepOf(alike, isSet.get(first)!, idOf(at), context)
      return begins[at]!.length > 0 ? { ...step, cautions: [toBuyWords(begins[at]!), ...step.cautions] } : step
    }),
    ...{ order, proposed, compared },
    minutesOtherwise: compared[otherwise].minutes,
    cautions: works.length > 0 ? SHOP_CAUTIONS : [],
  }
}

/** In which order the sheets are cut. */
export function cutOrderOf(input: BreakdownInput): CutOrder {
  return planOf(input).order
}

/** The works of every step by its id, in the same order. */
export function worksOf(input: BreakdownInput): ReadonlyMap<Step['id'], readonly Work[]> {
  return new Map(withPause(alikeIn(planOf(input).works)).map((alike, at) => [idOf(at), alike]))
}

/** Between what is cut first and what is late there is a step without works. */
function withPause(groups: readonly Work[][]): Work[][] {
  const at = groups.findIndex(([first], index) => index > 0 && isPausedBetween(groups[index - 1]![0]!, first!))
  const isAnythingCut = groups.slice(0, at).some(([first]) => first!.kind !== 'away')
  return at < 0 || !isAnythingCut ? [...groups] : [...groups.slice(0, at), [], ...groups.slice(at)]
}

function idOf(at: number): Step['id'] {
  return String(at + 1)
}

interface Plan {
  readonly order: CutOrder
  readonly proposed: CutOrder
  readonly compared: { readonly [order in CutOrder]: Effort }
  readonly works: readonly Work[]
  readonly context: Context
}

/** Asked for with every tick, by all that shows what lies there. */
const planOf = remember((input: BreakdownInput): Plan => {
  const shop = { ...input.shop, kerf: input.job.kerf }
  const plans = bladesFor(input).map((blade) => {
    const sheets = walksOf(input, blade).flatMap(tasksOfSheet)
    const away = worksOfCutAways(input.cutAways ?? [], input.bladeIn)
    const bladeIn = away.at(-1)?.blade ?? input.bladeIn
    const saw = { firstBlade: blade, isTurnedAtWill: input.rounds !== undefined, bladeIn }
    const worksIn = (order: CutOrder) => [...away, ...orderWorks(sheets, shop, saw, order)]
    const works = { 'sheet by sheet': worksIn('sheet by sheet'), 'setting by setting': worksIn('setting by setting') }
    const compared = {
      'sheet by sheet': effortOf(works['sheet by sheet'], shop),
      'setting by setting': effortOf(works['setting by setting'], shop),
    }
    const isSlower = compared['setting by setting'].minutes > compared['sheet by sheet'].minutes
    const proposed: CutOrder = isSlower ? 'sheet by sheet' : 'setting by setting'
    const order = shop.cutOrder ?? proposed
    return { order, proposed, compared, works: works[order], context: { ...input, shop } }
  })
  return plans.reduce((a, b) => (compare(easeOf(b, input), easeOf(a, input)) < 0 ? b : a))
})

/** The fewest changes of blade, that of the one which is in counted; then with that blade; then the least time. */
function easeOf({ works, compared, order }: Plan, { bladeIn }: BreakdownInput): number[] {
  const { bladeChanges, minutes } = compared[order]
  const isChangedAtOnce = bladeIn !== undefined && works[0] !== undefined && works[0].blade !== bladeIn
  return [bladeChanges + Number(isChangedAtOnce), Number(isChangedAtOnce), minutes]
}

/**
 * Which blade may go in first: where all sheets begin alike, the one they begin with; else, and where what is cut is begun
 * already, both are tried.
 */
function bladesFor({ answer: { sheets }, firstBlade, rounds }: BreakdownInput): ('rip' | 'crosscut')[] {
  if (firstBlade) return [firstBlade]
  if (rounds) return ['rip', 'crosscut']
  const first = new Set(sheets.map(({ root }) => (root.kind === 'cut' ? root.direction : 'rip')))
  return first.size === 0 ? ['rip'] : [...first].sort().reverse()
}

export interface Context extends BreakdownInput {
  readonly shop: Shop
}

/** Equal works of one run become one step. */
function alikeIn(works: readonly Work[]): Work[][] {
  const groups = new Map<string, Work[]>()
  for (const work of works) {
    const key = likeness(work)
    groups.set(key, [...(groups.get(key) ?? []), work])
  }
  return [...groups.values()]
}

function likeness({ run, kind, tool, hasAttachment, blade, size, takes, cuts, leaves, task, turn }: Work): string {
  const left = leaves.map(({ kind, length, width }) => `${kind} ${length} ${width}`).sort()
  const own = [run, kind, task.material, tool, hasAttachment, blade, size, takes.length, takes.width, cuts]
  // What is said of a run of grain is said of its own boards.
  return [...own, turn?.boards.join(), ...left].join('|')
}

function stepOf(alike: readonly Work[], isNewSetting: boolean, id: string, context: Context): Step {
  const first = alike[0]!
  const { kind, tool, hasAttachment, blade, setting, task, isLate } = first
  const display = context.display ?? PLAIN_MM
  const names = alike.map(({ takes }) => takes.name)
  const material = context.materials[task.material as MaterialId]
  return {
    ...{ id, kind, tool, hasAttachment, blade, setting, isNewSetting, material: task.material, isLate },
    teeth: context.shop.blades[blade].teeth,
    sheets: [...new Set(alike.map((work) => work.task.sheet))].sort((a, b) => a - b),
    takes: { name: nameList(names), names, length: first.takes.length, width: first.takes.width },
    count: alike.length,
    cuts: alike.reduce((sum, { cuts }) => sum + cuts, 0),
    leaves: leavesOf(alike),
    write: alike.flatMap(({ leaves }) => leaves.flatMap(({ mark }) => (mark === null ? [] : [mark]))),
    text: wordsOf(first, { names, isNewSetting, display }),
    cautions: cautionsFor(first, { shop: context.shop, material, display }),
    sketch: sketchOf(first, context.shop.kerf),
  }
}

/** Pieces of one kind and size together, in the order in which the first piece leaves them. */
function leavesOf(alike: readonly Work[]): StepPiece[] {
  const groups = new Map<string, Left[]>()
  for (const piece of alike.flatMap(({ leaves }) => leaves)) {
    const edges = piece.kind === 'offcut' ? Object.values(piece.rough).join(' ') : ''
    const key = `${piece.kind} ${piece.length} ${piece.width} ${edges}`
    groups.set(key, [...(groups.get(key) ?? []), piece])
  }
  return [...groups.values()].map((pieces) => {
    const { kind, length, width, rough } = pieces[0]!
    const name = nameList([...new Set(pieces.map((piece) => piece.name))])
    const said = { kind, name, length, width, count: pieces.length }
    return kind === 'offcut' && !isClean(rough)
      ? { ...said, clean: usableOf({ width: length, height: width }, rough) }
      : said
  })
}
