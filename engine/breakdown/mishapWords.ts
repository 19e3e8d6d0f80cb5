import type { PartId } from '../basics/id'
import type { CutRow } from '../cutlist/row'
import { formatLength, formatWithUnit, unitName } from '../units/format'
import type { LengthDisplay } from '../units/length'
import type { PieceAtHand } from './atHand'
import type { Mishap } from './mishapKinds'
import { type BreakdownInput, TENTHS } from './steps'
import { nameList } from './wording'

export interface Outcome {
  readonly input: BreakdownInput
  readonly mishap: Mishap
  readonly cut: readonly PartId[]
  readonly lost: readonly PartId[]
  readonly hand: readonly PieceAtHand[]
  readonly needed: readonly CutRow[]
}

/** What changes after a mishap, a sentence each. */
export function toldOf(outcome: Outcome): string[] {
  const { cut, hand, needed, input } = outcome
  const display = input.display ?? TENTHS
  const left = needed.reduce((sum, { quantity }) => sum + quantity, 0)
  const whole = hand.filter(({ isWhole }) => isWhole).length
  const pieces = hand.filter(({ isWhole }) => !isWhole)
  const things = [
    ...(whole > 0 ? [counted(whole, 'whole sheet')] : []),
    ...pieces.map((piece) => `${piece.name}, ${sizeOf(piece, display)}`),
  ]
  return [
    ...happened(outcome, display),
    ...(cut.length > 0 ? [`${counted(cut.length, 'part')} ${cut.length === 1 ? 'stays' : 'stay'} as cut.`] : []),
    ...(things.length > 0 ? [`At hand: ${things.join('; ')}.`] : []),
    left === 0
      ? 'Nothing is left to cut.'
      : `${counted(left, 'part')} ${left === 1 ? 'is' : 'are'} still to be cut; the sheets are laid out anew for ${left === 1 ? 'it' : 'them'}.`,
  ]
}

function happened({ mishap, lost, input, hand, needed }: Outcome, display: LengthDisplay): string[] {
  switch (mishap.kind) {
    case 'spoiled':
      return [`${partsIn(lost, input)} ${lost.length === 1 ? 'is spoiled and is' : 'are spoiled and are'} cut again.`]
    case 'damaged': {
      const { left, bottom, width, height } = mishap.rect
      const size = `${formatLength(width, display)} x ${formatWithUnit(height, display)}`
      const from = `${formatLength(left, display)} along and ${formatWithUnit(bottom, display)} up`
      const clean = hand.filter(({ name }) => name.startsWith('clean piece of ')).length
      return [
        `Sheet ${mishap.sheet} is damaged over ${size}, from ${from}: cut that away. ${clean === 0 ? 'No clean piece of what lay there' : `${counted(clean, 'clean piece')} of what lay there`} can be used.`,
        ...again(lost, input, 'lay there'),
      ]
    }
    case 'thickness': {
      const name = input.materials[mishap.material as keyof typeof input.materials]?.name ?? mishap.material
      const measured = [...needed, ...mishap.rows].find(({ material }) => material === mishap.material)?.thickness
      const said = measured === undefined ? 'is no longer used' : `measures ${formatWithUnit(measured, display)}`
      return [`${name} ${said}: what is still to be cut takes its new sizes.`, ...again(lost, input, 'no longer fit')]
    }
  }
}

function again(lost: readonly PartId[], input: BreakdownInput, why: string): string[] {
  return lost.length === 0 ? [] : [`Of what is cut, these ${why}: ${partsIn(lost, input)}.`]
}

function partsIn(parts: readonly PartId[], { marks }: BreakdownInput): string {
  return nameList(parts.map((part) => marks.get(part) ?? part))
}

function sizeOf({ place }: PieceAtHand, display: LengthDisplay): string {
  return `${formatLength(place.width, display)} x ${formatLength(place.height, display)} ${unitName(display)}`
}

function counted(count: number, thing: string): string {
  return `${count} ${thing}${count === 1 ? '' : 's'}`
}
