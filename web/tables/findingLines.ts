import { type AlikeFindings, alikeFindings, type Derived, type Finding, remember } from '../../engine/index'

/** From the gravest on. */
const ORDER: Readonly<Record<Finding['weight'], number>> = { stop: 0, mind: 1, know: 2 }

/** The findings of a design as they are listed: the gravest first, and what is found alike in several cabinets in one line. */
export const findingLines = remember(({ problems, cabinetOf }: Derived): readonly AlikeFindings[] => {
  const gravestFirst = [...problems].sort((a, b) => ORDER[a.weight] - ORDER[b.weight])
  return alikeFindings(gravestFirst, (cabinet) => cabinetOf[cabinet]?.mark)
})

/** How much the list holds, in its own lines: what is to be heeded, or else how many there are. */
export function findingsWords(derived: Derived): string {
  const lines = findingLines(derived)
  const linesOf = (weight: Finding['weight']) => lines.filter(({ finding }) => finding.weight === weight).length
  const stops = linesOf('stop')
  const minds = linesOf('mind')
  if (stops + minds === 0) return String(lines.length)
  return [stops > 0 ? `${stops} to stop for` : '', minds > 0 ? `${minds} to mind` : ''].filter(Boolean).join(', ')
}
