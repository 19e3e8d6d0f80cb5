import { type AlikeFindings, alikeFindings, type Derived, type Finding, remember } from '../../engine/index'

type Weight = Finding['weight']

/** From the gravest on. */
const ORDER: Readonly<Record<Weight, number>> = { stop: 0, mind: 1, know: 2 }

/** The findings of a design as they are listed: the gravest first, and what is found alike in several cabinets in one line. */
export const findingLines = remember(({ problems, cabinetOf }: Derived): readonly AlikeFindings[] => {
  const gravestFirst = [...problems].sort((a, b) => ORDER[a.weight] - ORDER[b.weight])
  return alikeFindings(gravestFirst, (cabinet) => cabinetOf[cabinet]?.mark)
})

/** How much the list holds, in its own lines: what is to be heeded, or else how many there are. */
export function findingsWords(derived: Derived): string {
  return wordsFor(findingLines(derived).map(({ finding }) => finding.weight))
}

/**
 * Nearly as many, without the words of any, which would be made anew at every move: some tell a way out that is tried for
 * them. What has the same figures and source in several cabinets counts as one line.
 */
export function findingsWordsUnderHand({ problems }: Derived): string {
  const lines: { readonly weight: Weight; readonly said: string; readonly cabinets: Set<string> }[] = []
  for (const { weight, about, measure, limit, source } of problems) {
    const cabinet = about.kind === 'cabinet' ? about.cabinet : null
    const said = JSON.stringify([weight, measure, limit, source])
    const open = cabinet && lines.find((line) => line.said === said && !line.cabinets.has(cabinet))
    if (open) open.cabinets.add(cabinet)
    else lines.push({ weight, said: cabinet ? said : '', cabinets: new Set(cabinet ? [cabinet] : []) })
  }
  return wordsFor(lines.map(({ weight }) => weight))
}

function wordsFor(weights: readonly Weight[]): string {
  const count = (weight: Weight) => weights.filter((one) => one === weight).length
  const [stops, minds] = [count('stop'), count('mind')]
  if (stops + minds === 0) return String(weights.length)
  return [stops > 0 ? `${stops} to stop for` : '', minds > 0 ? `${minds} to mind` : ''].filter(Boolean).join(', ')
}
