import type { SheetJob } from '../sheets/job'
import type { SheetAnswer } from '../sheets/layout'
import { anewWords, keptWords } from './goOnWords'
import { compare } from './inset'
import { type Kept, keptAnswer } from './keep'
import type { Replan } from './mishap'
import type { BreakdownInput } from './steps'
import { moreWords, newSheets, withToBuy } from './toBuy'

/** How the cutting goes on after a mishap: what the steps are made from now, and in plain words what has changed. */
export interface GoingOn {
  readonly input: BreakdownInput
  readonly told: readonly string[]
}

/** So many ways of giving up some layouts are tried before all of a material are, and then all of them. */
const SINGLE = 4
const TOGETHER = [2, 3, 4, 6]

/**
 * Chooses how to go on, and packs what must be packed. What is not cut yet stays as it was laid out, and what is missing
 * goes where there is room. Where that takes a sheet more than laying out all anew, as few layouts as can be found are
 * given up for it, of the materials of which a sheet is saved; all of them only where nothing else saves the sheet.
 */
export async function goOnAfter(
  before: BreakdownInput,
  plan: Replan,
  pack: (job: SheetJob) => Promise<SheetAnswer>,
): Promise<GoingOn> {
  if (!plan.kept) return anew(before, plan, pack)
  const stays = await withRest(before, plan, { kept: plan.kept, givenUp: [] }, pack)
  if (!isShort(stays)) return stays
  const other = await anew(before, plan, pack)
  if (!isBetter(other, stays)) return stays
  for (const some of givenUp(plan.kept, savedBy(other, stays))) {
    const kept = plan.kept.without(new Set(some))
    const names = some.map(({ name }) => name)
    const going = kept && (await withRest(before, plan, { kept, givenUp: names }, pack))
    if (going && !isBetter(other, going)) return going
  }
  const fewer = Math.max(
    sheetsIn(stays) - sheetsIn(other),
    newSheets(stays.input).length - newSheets(other.input).length,
  )
  return { ...other, told: [...other.told, anewWords(fewer)] }
}

interface Packed extends GoingOn {
  /** Sheets that nothing was laid out on before. */
  readonly more: number
}

function isShort({ more, input }: Packed): boolean {
  return more > 0 || input.answer.unplaced.length > 0
}

/** Fewer parts without a place, then fewer sheets to buy or to take from those on hand, then fewer sheets. */
function isBetter(a: GoingOn, b: GoingOn): boolean {
  const unplaced = ({ answer }: BreakdownInput) => answer.unplaced.reduce((sum, { quantity }) => sum + quantity, 0)
  const rank = (going: GoingOn) => [unplaced(going.input), newSheets(going.input).length, sheetsIn(going)]
  return compare(rank(a), rank(b)) < 0
}

function* givenUp({ loosest }: Kept, materials: ReadonlySet<string>) {
  const some = loosest.filter(({ material }) => materials.has(material))
  for (const piece of some.slice(0, SINGLE)) yield [piece]
  for (const count of TOGETHER) if (count < some.length) yield some.slice(0, count)
  yield some
}

/** The materials of which one way of going on leaves fewer parts without a place, or takes fewer sheets. */
function savedBy({ input: fewer }: GoingOn, { input: more }: GoingOn): Set<string> {
  const [few, many] = [fewer, more].map(takenOf)
  return new Set(
    [...many!].flatMap(([material, taken]) => {
      const less = few!.get(material) ?? [0, 0, 0]
      return taken.some((count, at) => count > less[at]!) ? [material] : []
    }),
  )
}

/** Of each material the parts without a place, the sheets more than there were, and the whole sheets that are cut. */
function takenOf(input: BreakdownInput): Map<string, readonly [number, number, number]> {
  const { answer, atHand, job } = input
  const counts = new Map<string, readonly [number, number, number]>()
  const count = (material: string | undefined, ...by: readonly [number, number, number]) => {
    if (material === undefined) return
    const [unplaced, fresh, whole] = counts.get(material) ?? [0, 0, 0]
    counts.set(material, [unplaced + by[0], fresh + by[1], whole + by[2]])
  }
  for (const { part, quantity } of answer.unplaced)
    count(job.parts.find(({ id }) => id === part)?.material, quantity, 0, 0)
  for (const { stock } of newSheets(input)) count(stock.material, 0, 1, 0)
  for (const { stock, copies } of answer.sheets) {
    if (!atHand?.has(stock)) count(job.stock.find(({ id }) => id === stock)?.material, 0, 0, copies)
  }
  return counts
}

async function anew(before: BreakdownInput, plan: Replan, pack: (job: SheetJob) => Promise<SheetAnswer>) {
  const { job, cutList, atHand, kinds, numbered } = plan
  const answer = await pack(job)
  const laid = { ...shared(before, plan), job, answer, cutList, atHand, kinds, numbered, rounds: new Map() }
  const after = withToBuy(laid, before)
  return { input: after, told: [...plan.told, ...moreWords(plan.pieces, after)] }
}

async function withRest(
  before: BreakdownInput,
  plan: Replan,
  { kept, givenUp: names }: { readonly kept: Kept; readonly givenUp: readonly string[] },
  pack: (job: SheetJob) => Promise<SheetAnswer>,
): Promise<Packed> {
  const { job, cutList, atHand, kinds, numbered, rounds, shop } = kept
  const rest = kept.open ? await pack(kept.open) : null
  const answer = keptAnswer(kept, rest)
  const laid = { ...shared(before, plan), job, answer, cutList, atHand, kinds, numbered, rounds, shop }
  const input = withToBuy(laid, before)
  const more = rest ? sheetsIn({ input: { ...input, answer: rest } }) : 0
  return {
    input,
    more,
    told: [...plan.happened, ...keptWords(input, plan, kept, names), ...moreWords(plan.pieces, input)],
  }
}

/** What is the same whether layouts stay or not; with which blade the plan begins is seen anew. */
function shared({ firstBlade: _, ...before }: BreakdownInput, plan: Replan) {
  const { firstSheet, cutAways, cutBefore, aside, bladeIn } = plan
  return { ...before, firstSheet, cutAways, cutBefore, aside, ...(bladeIn ? { bladeIn } : {}) }
}

/** Whole sheets that are to be cut. */
function sheetsIn({ input: { answer, atHand } }: Pick<GoingOn, 'input'>): number {
  return answer.sheets.reduce((sum, { stock, copies }) => sum + (atHand?.has(stock) ? 0 : copies), 0)
}
