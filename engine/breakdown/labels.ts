import type { PartId } from '../basics/id'
import type { CutRow } from '../cutlist/row'
import type { Breakdown } from './step'
import type { BreakdownInput } from './steps'

/** What is stuck on one part when it comes off the saw. */
export interface Label {
  readonly part: PartId
  readonly mark: string
  /** The part with all that are equal to it: the size to cut in mm, the material, the bands. */
  readonly row: CutRow
  /** In which step of the list it is freed, from 1. */
  readonly step: number
}

/**
 * A label for every part that the steps free, in the order in which they do. Strips and offcuts get none: they are known by
 * the name that is written on them.
 */
export function labelsOf({ steps }: Pick<Breakdown, 'steps'>, { cutList, marks }: BreakdownInput): Label[] {
  const labelled = new Map<string, Omit<Label, 'step'>>()
  for (const row of cutList.rows) {
    for (const part of row.parts) {
      const mark = marks.get(part) ?? part
      labelled.set(mark, { part, mark, row })
    }
  }
  return steps.flatMap(({ write }, at) =>
    write.flatMap((mark) => {
      const label = labelled.get(mark)
      return label ? [{ ...label, step: at + 1 }] : []
    }),
  )
}
