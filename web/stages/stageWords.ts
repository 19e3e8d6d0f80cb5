import { counted, type Effort } from '../../engine/index'
import { timeWords } from '../sheets/words'

/** What a layout takes to be cut. */
export interface Load extends Pick<Effort, 'minutes' | 'bladeChanges'> {
  readonly sheets: number
}

/** What the chosen cut directions cost or save against rip, crosscut, re-rip. */
export function stageWords(chosen: Load, three: Load): string {
  const say = ({ sheets, minutes, bladeChanges }: Load) =>
    `${counted(sheets, 'sheet')}, about ${timeWords(minutes)} and ${counted(bladeChanges, 'blade change')}`
  const more = [three, chosen].map(({ minutes }) => Math.round(minutes)) as [number, number]
  const differences = [
    wordsOf(chosen.sheets - three.sheets, (count) => counted(count, 'sheet')),
    wordsOf(more[1] - more[0], timeWords),
    wordsOf(chosen.bladeChanges - three.bladeChanges, (count) => counted(count, 'blade change')),
  ].filter((words) => words !== null)
  const both = differences.length === 0 ? 'Both take the same.' : `So this choice takes ${listed(differences)}.`
  return `These directions: ${say(chosen)}. Rip, crosscut, re-rip: ${say(three)}. ${both}`
}

function wordsOf(difference: number, say: (count: number) => string): string | null {
  if (difference === 0) return null
  return difference > 0 ? `${say(difference)} more` : `${say(-difference)} less`
}

function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`
}
