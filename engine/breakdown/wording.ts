import { unreachable } from '../basics/assert'
import { listed } from '../basics/listed'
import { formatWithUnit } from '../units/format'
import type { LengthDisplay } from '../units/length'
import type { Work } from './work'

/** What is said of a step besides its first work: how many pieces, which, and whether it is set for it or stands already. */
export interface Said {
  readonly names: readonly string[]
  readonly isNewSetting: boolean
  readonly display: LengthDisplay
}

/** The step in plain words. */
export function wordsOf(work: Work, { names, isNewSetting, display }: Said): string {
  const size = formatWithUnit(work.size, display)
  const pieces = nameList(names)
  const from = names.length === 1 ? pieces : `each of ${pieces}`
  const times = work.cuts === 1 ? 'once' : `${work.cuts} times`
  switch (work.kind) {
    case 'away':
      return awayWords(work, size)
    case 'trim':
      return `Straighten one long edge of ${pieces} along the rail: take ${size} off. Mark this edge and measure from no other.`
    case 'square':
      return `Square one end of ${pieces}: take ${size} off. Mark this end and measure from no other.`
    case 'rip':
    case 'rerip':
      if (work.setting === null)
        return `Mark ${size} from the clean edge at both ends and rip ${from} along the rail, ${times}.`
      if (!isNewSetting) return `Leave both guides at ${size} and rip ${from}, ${times}.`
      return `Set both guides${work.hasAttachment ? ', attachment on,' : ''} to ${size} and rip ${from}, ${times}.`
    case 'crosscut':
      if (work.setting === null)
        return `Mark ${size} from the square end and crosscut ${from} along the rail, ${times}.`
      return isNewSetting
        ? `Set the stop to ${size} and crosscut ${from}, ${times}.`
        : `Leave the stop at ${size} and crosscut ${from}, ${times}.`
    default:
      return unreachable(work.kind)
  }
}

/** The damage is cut away along a line; what is clean lies on one side of it. */
function awayWords({ takes, task, leaves }: Work, size: string): string {
  const isRip = task.direction === 'rip'
  const [clean] = leaves
  const isBefore = isRip ? clean!.y === takes.y : clean!.x === takes.x
  const edge = takes.length >= takes.width ? 'long' : 'short'
  const from = isRip ? `its first ${edge} edge, at both ends,` : 'its first end, at both edges,'
  const side = isBefore ? 'beyond' : 'before'
  return `Cut the damage away from ${takes.name}: mark ${size} from ${from} and ${isRip ? 'rip' : 'crosscut'} along the rail, the blade ${side} the line. ${clean!.name} is clean.`
}

/** `sheets 1 to 3 and 5`, `3a, 3b and 4a`, `rest of sheet 2`. */
export function nameList(names: readonly string[]): string {
  const sheets = names.map((name) => /^(rests? of )?sheet (\d+)$/.exec(name))
  if (names.length > 1 && sheets.every((match) => match && match[1] === sheets[0]![1])) {
    const prefix = sheets[0]![1] ? 'rests of ' : ''
    return `${prefix}sheets ${numberList(sheets.map((match) => Number(match![2])))}`
  }
  const rests = names.every((name) => name.startsWith('rest of ')) && names.length > 1
  return rests ? `rests of ${listed(names.map((name) => name.slice('rest of '.length)))}` : listed(names)
}

/** `1 to 3, 5 and 8`: three or more in a row are a stretch. */
export function numberList(numbers: readonly number[]): string {
  const stretches: number[][] = []
  for (const number of [...new Set(numbers)].sort((a, b) => a - b)) {
    const last = stretches.at(-1)
    if (last && last.at(-1) === number - 1) last.push(number)
    else stretches.push([number])
  }
  return listed(
    stretches.flatMap((stretch) => (stretch.length > 2 ? [`${stretch[0]} to ${stretch.at(-1)}`] : stretch.map(String))),
  )
}
