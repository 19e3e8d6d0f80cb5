import { counted } from '../basics/counted'
import type { CutRow } from '../cutlist/row'
import type { Material } from '../project/document'
import { formatApart } from '../units/apart'
import { PLAIN_MM } from '../units/format'
import { allRows, isSameToTheSaw, rowOfPart } from './mishap'
import type { BreakdownInput } from './steps'

/** What a design has now. */
interface Design {
  readonly rows: readonly CutRow[]
  readonly materials: Readonly<Record<string, Material>>
}

/**
 * In plain words, a sentence each: where a design that has gone on differs from what is being cut, which stays as it was.
 * Nothing where they agree.
 */
export function oddsWords(input: BreakdownInput, { rows, materials }: Design): string[] {
  const { display = PLAIN_MM } = input
  const cutting = allRows(input)
  const planned = new Map(cutting.map(({ material, thickness }) => [material, thickness]))
  const thick = [...planned].flatMap(([id, thickness]) => {
    const now = materials[id]
    if (!now || now.thickness === thickness) return []
    const [is, was] = formatApart(now.thickness, thickness, display)
    return [`${now.name} is ${is} thick in the design, and what is being cut is planned for ${was}.`]
  })
  const [asCut, asDrawn] = [rowOfPart(cutting), rowOfPart(rows)]
  const changed = [...asCut].filter(
    ([part, row]) => asDrawn.has(part) && !isSameToTheSaw(row, asDrawn.get(part)!),
  ).length
  const inRuns = [...asCut].filter(([part, row]) => asDrawn.has(part) && !isInSameRun(row, asDrawn.get(part)!)).length
  const gone = [...asCut.keys()].filter((part) => !asDrawn.has(part)).length
  const added = [...asDrawn.keys()].filter((part) => !asCut.has(part)).length
  const are = (count: number) => (count === 1 ? 'is' : 'are')
  return [
    ...thick,
    ...(changed > 0
      ? [`${counted(changed, 'part')} ${are(changed)} cut to another size than the design has now.`]
      : []),
    ...(inRuns > 0
      ? [`The grain of ${counted(inRuns, 'part')} runs on otherwise in the design than in what is being cut.`]
      : []),
    ...(gone > 0 ? [`${counted(gone, 'part')} of what is being cut ${are(gone)} not in the design any more.`] : []),
    ...(added > 0 ? [`${counted(added, 'part')} of the design ${are(added)} not in what is being cut.`] : []),
  ]
}

/** Whether the grain runs on over both from and to the same boards, or over neither. */
function isInSameRun({ bank: a = null }: CutRow, { bank: b = null }: CutRow): boolean {
  return a?.id === b?.id && a?.place === b?.place && a?.along === b?.along
}
