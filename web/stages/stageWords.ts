import { counted, type Effort, type Shop } from '../../engine/index'
import { timeWords } from '../sheets/words'

/** What a layout takes to be cut. */
export interface Load extends Pick<Effort, 'minutes' | 'bladeChanges'> {
  readonly sheets: number
}

const DIRECTIONS: Readonly<Record<Shop['firstCut'], readonly [string, string]>> = {
  rip: ['rip, crosscut', 'rip, crosscut, re-rip'],
  crosscut: ['crosscut, rip', 'crosscut, rip, crosscut again'],
  any: ['two, rip or crosscut first', 'three, rip or crosscut first'],
}

/** What the chosen cut directions cost or save against three of them. */
export function stageWords(chosen: Load, three: Load, directions = DIRECTIONS.rip[1]): string {
  const say = ({ sheets, minutes, bladeChanges }: Load) =>
    `${counted(sheets, 'sheet')}, about ${timeWords(minutes)} and ${counted(bladeChanges, 'blade change')}`
  const more = [three, chosen].map(({ minutes }) => Math.round(minutes)) as [number, number]
  const differences = [
    wordsOf(chosen.sheets - three.sheets, (count) => counted(count, 'sheet')),
    wordsOf(more[1] - more[0], timeWords),
    wordsOf(chosen.bladeChanges - three.bladeChanges, (count) => counted(count, 'blade change')),
  ].filter((words) => words !== null)
  const both = differences.length === 0 ? 'Both take the same.' : `So this choice takes ${listed(differences)}.`
  return `These directions: ${say(chosen)}. ${directions[0]!.toUpperCase()}${directions.slice(1)}: ${say(three)}. ${both}`
}

function wordsOf(difference: number, say: (count: number) => string): string | null {
  if (difference === 0) return null
  return difference > 0 ? `${say(difference)} more` : `${say(-difference)} less`
}

function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`
}

type StageChoice = readonly ['two' | 'three' | 'any', string]

/** The name of three directions. */
export function threeWords(firstCut: Shop['firstCut']): string {
  return DIRECTIONS[firstCut][1]
}

/** How many cut directions are taken in turn, by the one that comes first. */
export function stageChoices(firstCut: Shop['firstCut']): readonly StageChoice[] {
  const [two, three] = DIRECTIONS[firstCut]
  return [
    ['two', two],
    ['three', three],
    ['any', 'as many as it takes'],
  ]
}
