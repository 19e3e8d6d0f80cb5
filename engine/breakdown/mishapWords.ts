import { counted } from '../basics/counted'
import type { PartId } from '../basics/id'
import type { CutRow } from '../cutlist/row'
import { formatLength, formatWithUnit, PLAIN_MM } from '../units/format'
import type { LengthDisplay } from '../units/length'
import type { Hand } from './atHand'
import { cleanOf } from './cutAway'
import type { Placed } from './damage'
import type { FloorPiece } from './floor'
import type { Damage, Mishap } from './mishapKinds'
import type { BreakdownInput } from './steps'
import { nameList } from './wording'

export interface Outcome {
  readonly input: BreakdownInput
  readonly mishap: Mishap
  readonly damage: Placed | null
  readonly cut: readonly PartId[]
  readonly lost: readonly PartId[]
  /** Cut earlier, and of the right size again. */
  readonly again: readonly PartId[]
  /** What lay where the damage is. */
  readonly hit: readonly FloorPiece[]
  readonly hand: Hand
  readonly needed: readonly CutRow[]
  readonly resized: readonly Resized[]
  /** Still to be cut, and too large now for the piece at hand that they were to be cut from. */
  readonly outgrown: readonly PartId[]
}

/** A part that is cut otherwise than it was planned. */
export interface Resized {
  readonly part: PartId
  readonly from: Pick<CutRow, 'length' | 'width'>
  readonly to: Pick<CutRow, 'length' | 'width'>
}

/** What changes after a mishap, a sentence each. What lies there is a list of its own. */
export function toldOf(outcome: Outcome): string[] {
  const { cut, needed } = outcome
  const left = needed.reduce((sum, { quantity }) => sum + quantity, 0)
  return [
    ...happened(outcome),
    ...(cut.length > 0 ? [`${counted(cut.length, 'part')} ${cut.length === 1 ? 'stays' : 'stay'} as cut.`] : []),
    left === 0
      ? 'Nothing is left to cut.'
      : `${counted(left, 'part')} ${left === 1 ? 'is' : 'are'} still to be cut, and laid out anew.`,
  ]
}

/** What is no longer as it was planned. */
export function happened(outcome: Outcome): string[] {
  return [...changed(outcome), ...grainWords(outcome), ...partedWords(outcome)]
}

/** What becomes of runs of grain where a board of them is cut again. */
function grainWords({ lost, needed, input }: Outcome): string[] {
  const hit = new Set(needed.flatMap(({ bank, parts }) => (bank && lost.includes(parts[0]!) ? [bank.id] : [])))
  return [...hit].map((id) => {
    const of = (rows: readonly CutRow[]) =>
      rows.filter(({ bank }) => bank?.id === id).sort((a, b) => a.bank!.place - b.bank!.place)
    const again = of(needed).flatMap(({ parts }) => parts)
    const all = of([...input.cutList.rows, ...(input.cutBefore ?? [])]).flatMap(({ parts }) => parts)
    if (again.length === all.length)
      return `The grain runs on over ${partsIn(again, input)}: all of them are cut from one sheet again, in this order.`
    const spoiled = partsIn(
      again.filter((part) => lost.includes(part)),
      input,
    )
    return `${spoiled} no longer continues the grain of the others of its run. Where that matters, tell those that are cut as spoiled too: all of it is cut from one sheet again.`
  })
}

/** Boards still to be cut that are of another size now than those that they were to continue the grain of. */
function partedWords({ resized, needed, input }: Outcome): string[] {
  const isResized = new Set(resized.map(({ part }) => part))
  const bankNow = new Map(needed.flatMap(({ bank, parts }) => parts.map((part) => [part, bank?.id] as const)))
  const runs = new Map<string, PartId[]>()
  for (const { bank, parts } of input.cutList.rows) {
    if (bank) runs.set(bank.id, [...(runs.get(bank.id) ?? []), ...parts.filter((part) => bankNow.has(part))])
  }
  return [...runs.values()].flatMap((run) => {
    const isWhole = new Set(run.map((part) => bankNow.get(part) ?? part)).size === 1
    const out = run.filter((part) => isResized.has(part))
    const others = run.filter((part) => !isResized.has(part))
    if (run.length < 2 || isWhole || out.length === 0 || others.length === 0) return []
    const [no, is] =
      out.length === 1 ? ['no longer continues', 'its size is'] : ['no longer continue', 'their sizes are']
    return [
      `${partsIn(out, input)} ${no} the grain of ${partsIn(others, input)}, since ${is} another now. Where that matters, have the run cut as drawn, and trim what is too large afterwards.`,
    ]
  })
}

function changed(outcome: Outcome): string[] {
  const { mishap, lost, input, needed, damage } = outcome
  const display = input.display ?? PLAIN_MM
  switch (mishap.kind) {
    case 'spoiled':
      return [`${partsIn(lost, input)} ${lost.length === 1 ? 'is spoiled and is' : 'are spoiled and are'} cut again.`]
    case 'damaged':
      return [...damageWords(damage!, mishap, outcome, display), ...again(lost, input, 'lay there')]
    case 'thickness': {
      const name = input.materials[mishap.material as keyof typeof input.materials]?.name ?? mishap.material
      const measured = [...needed, ...mishap.rows].find(({ material }) => material === mishap.material)?.thickness
      const said = measured === undefined ? 'is no longer used' : `measures ${formatWithUnit(measured, display)}`
      return [
        `${name} ${said}: what is still to be cut takes its new sizes.`,
        ...resizedCount(outcome),
        ...again(lost, input, 'no longer fit'),
        ...fitWords(outcome),
      ]
    }
    case 'openings':
      return [
        ...outcome.resized.map((one) => resizedWords(one, input, display)),
        ...again(lost, input, 'no longer fit'),
        ...fitWords(outcome),
      ]
  }
}

/** Of a batch that measures otherwise: how many parts change, and why what lies there does not do for all of them. */
function resizedCount({ lost, resized, outgrown, needed, input: { materials } }: Outcome): string[] {
  const count = othersResized(lost, resized)
  if (count === 0) return []
  const get = `${counted(count, 'part')} still to be cut ${count === 1 ? 'gets another size' : 'get other sizes'}`
  const too = new Set(outgrown)
  const named = needed.flatMap(({ material, parts }) => parts.flatMap((part) => (too.has(part) ? [material] : [])))
  if (named.length === 0) return [`${get}.`]
  const of = [...new Set(named)].map((id) => {
    return `${named.filter((one) => one === id).length} of ${materials[id]?.name ?? id}`
  })
  const fit = named.length === 1 ? 'no longer fits the piece that it was' : 'no longer fit the pieces that they were'
  return [`${get}; ${nameList(of)} ${fit} to be cut from.`]
}

function othersResized(lost: readonly PartId[], resized: readonly Resized[]): number {
  return resized.filter(({ part }) => !lost.includes(part)).length
}

function fitWords({ again: fitting, input }: Outcome): string[] {
  return fitting.length === 0 ? [] : [`Of what was cut before, these fit again: ${partsIn(fitting, input)}.`]
}

/** In a line, before anything is done: what becomes of parts that are cut, and of what is still to be cut. */
export function summaryOf({ lost, again: fitting, resized }: Outcome): string {
  const others = othersResized(lost, resized)
  const said = [
    lost.length === 0
      ? 'no part that is cut is lost'
      : `${counted(lost.length, 'part')} that ${lost.length === 1 ? 'is' : 'are'} cut ${lost.length === 1 ? 'is' : 'are'} written off and cut again`,
    ...(fitting.length > 0
      ? [`${counted(fitting.length, 'part')} cut before ${fitting.length === 1 ? 'fits' : 'fit'} again`]
      : []),
    ...(others > 0
      ? [`${counted(others, 'part')} still to be cut ${others === 1 ? 'gets another size' : 'get other sizes'}`]
      : []),
  ].join('; ')
  return `${said[0]!.toUpperCase()}${said.slice(1)}.`
}

function resizedWords({ part, from, to }: Resized, { marks }: BreakdownInput, display: LengthDisplay): string {
  const size = ({ length, width }: Resized['to']) =>
    `${formatLength(length, display)} x ${formatWithUnit(width, display)}`
  return `${marks.get(part) ?? part} is cut ${size(to)} and not ${size(from)}.`
}

/** In the frame that the maker measured in; what came to lie off the piece is left out. */
function damageWords(
  { name, rect }: Placed,
  told: Damage,
  { hand, hit, lost }: Outcome,
  display: LengthDisplay,
): string[] {
  const { left, bottom } = told.rect
  const size = `${formatLength(rect.width, display)} x ${formatWithUnit(rect.height, display)}`
  const from = `${formatLength(left, display)} along and ${formatWithUnit(bottom, display)} up`
  const where = `${name.replace(/^[sr]/, (first) => first.toUpperCase())} is damaged over ${size}, from ${from}.`
  const names = new Set(hit.map((piece) => piece.name))
  // What an earlier damage waits to be cut away from is another matter.
  const own = hand.cutAways.filter((cutAway) => names.has(cutAway.name))
  const clean = own.flatMap(cleanOf).map((piece) => piece.name)
  if (clean.length === 0) return lost.length > 0 ? [where] : [where, 'Nothing of what lay there is left to use.']
  return [where, `The first steps cut the damage away and leave ${nameList(clean)}.`]
}

function again(lost: readonly PartId[], input: BreakdownInput, why: string): string[] {
  return lost.length === 0 ? [] : [`Of what is cut, these ${why}: ${partsIn(lost, input)}.`]
}

function partsIn(parts: readonly PartId[], { marks }: BreakdownInput): string {
  return nameList(parts.map((part) => marks.get(part) ?? part))
}
