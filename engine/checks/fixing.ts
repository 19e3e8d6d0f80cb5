import { counted } from '../basics/counted'
import { type Meeting, meetingsOf } from '../cabinets/meeting'
import { isInEdge } from '../cabinets/operation'
import type { Part } from '../parts/part'
import { settle } from '../units/length'
import { about, type Checked, type Finding, GEOMETRY, PRACTICE } from './finding'
import { sayIn } from './say'

/** Dowels that are longer than their holes, screws that hardly reach the end, and corners that are held by their housing alone. */
export function fixingFindings(checked: Checked): Finding[] {
  const { fixing } = checked.rules.method
  if (fixing.kind === 'none') return []
  return [...lengthFinding(checked), ...biteFinding(checked), ...housedFinding(checked)]
}

/** What of a screw is to hold in the end at least. Common practice, no source. */
const LEAST_BITE = 20

const INSERTED = {
  dowels: 'dowels',
  looseTenons: 'loose tenons',
  biscuits: 'biscuits',
  pocketScrews: 'pocket screws',
} as const

interface Bored {
  readonly inFace: number
  readonly inEnd: number
}

/** The holes of the joint whose two holes are shortest together. */
function shortest({ parts }: Checked): Bored | null {
  const bored = parts.flatMap(({ operations }) => operations.flatMap((one) => (one.kind === 'holeRow' ? [one] : [])))
  const isFixing = (purpose: string) => ['dowel', 'looseTenon', 'biscuit', 'screw', 'pilot'].includes(purpose)
  const faces = bored.filter((one) => isFixing(one.purpose) && !isInEdge(one)).map(({ depth }) => depth)
  const ends = bored.filter((one) => isFixing(one.purpose) && isInEdge(one)).map(({ depth }) => depth)
  return ends.length === 0 ? null : { inFace: Math.min(...faces), inEnd: Math.min(...ends) }
}

function lengthFinding(checked: Checked): Finding[] {
  const { fixing } = checked.rules.method
  const least = shortest(checked)
  if (!least || fixing.kind === 'none' || fixing.kind === 'screws' || fixing.kind === 'pocketScrews') return []
  const room = settle(least.inFace + least.inEnd)
  if (room >= fixing.length) return []
  const say = sayIn(checked.display)
  const what = INSERTED[fixing.kind]
  const message = `its ${what} are ${say.length(fixing.length)} long; the two holes of one are ${say.length(room)} deep together, ${say.length(least.inFace)} and ${say.length(least.inEnd)}. Bore deeper, or take shorter ones.`
  const told = { measure: say.length(room), limit: say.length(fixing.length), source: GEOMETRY }
  return [about(checked, { weight: 'mind', message, ...told })]
}

function biteFinding(checked: Checked): Finding[] {
  const { fixing } = checked.rules.method
  const least = shortest(checked)
  if (!least || fixing.kind !== 'screws' || least.inEnd >= LEAST_BITE) return []
  const say = sayIn(checked.display)
  const message = `of its screws of ${say.length(fixing.length)} only ${say.length(least.inEnd)} hold in an end; ${say.length(LEAST_BITE)} at least is usual. Take longer ones.`
  const told = { measure: say.length(least.inEnd), limit: say.length(LEAST_BITE), source: PRACTICE }
  return [about(checked, { weight: 'mind', message, ...told })]
}

function housedFinding(checked: Checked): Finding[] {
  const { fixing } = checked.rules.method
  if (fixing.kind === 'none' || fixing.kind === 'screws') return []
  const housed = meetingsOf(checked.parts).filter(({ sunk }: Meeting) => sunk > 0)
  if (housed.length === 0) return []
  const what = INSERTED[fixing.kind]
  const boards = new Set(housed.map(({ mate }) => (mate as Part).id)).size
  const message = `${counted(housed.length, 'end')} of ${counted(boards, 'board')} are housed in its corners and get no ${what}: a dado or a rabbet holds them in place. Butt the corners to have ${what} in them.`
  return [
    about(checked, {
      weight: 'know',
      message,
      measure: counted(housed.length, 'end'),
      limit: 'none',
      source: PRACTICE,
    }),
  ]
}
