import { type Material, type Shop, STOP_REACH } from '../project/document'
import { formatWithUnit } from '../units/format'
import { type LengthDisplay, type Mm, settle } from '../units/length'
import { formatWeight } from '../units/weight'
import { boardWeight } from './lift'
import { roughCutOf } from './rough'
import { gripFor } from './tool'
import { nameList } from './wording'
import type { Work } from './work'

/**
 * What holds for the whole breakdown. None of it replaces what the makers of the tools say.
 * Sources: OSHA wood dust page (dust), Safety+Health magazine, OSHA tips (eyes, face, ears, guards),
 * safetytoolboxtopics.com (support, binding); the hand behind the saw from a safety deck on a real injury.
 */
export const SHOP_CAUTIONS: readonly string[] = [
  'The instructions of the makers of saw, rail, guides and blade come first; where this list says otherwise, follow them.',
  'Eye, face and ear protection on, guards checked. Unplug the saw before a blade is changed.',
  'Wood dust harms lungs and can cause cancer: extraction on at every cut.',
  'Support the sheet on both sides of the cut so that it cannot pinch the blade; let go of the switch if it binds.',
  'Never hold the piece behind the saw.',
]

export interface Circumstances {
  readonly shop: Shop
  readonly material: Material | undefined
  readonly display: LengthDisplay
}

/** So much longer than a cut its rail should be: the saw then stands on it before and after the wood (common practice, no source). */
const RAIL_TO_SPARE: Mm = 150
/** On a piece that is shorter along the cut, or narrower, neither rail nor guides lie firm (common practice, no source). */
const FIRM = { along: 400, across: 150 } as const

type Say = (length: Mm) => string

/** What to mind in one step, each with its value and the limit, and a way round where the shop's tools end. */
export function cautionsFor(work: Work, { shop, material, display }: Circumstances): string[] {
  const say: Say = (length) => formatWithUnit(length, display)
  return [
    ...liftCautions(work, { shop, material, display }, say),
    ...bladeCautions(work),
    ...railCautions(work, shop, say),
    ...smallCautions(work, say),
    ...reachCautions(work, shop, say),
    ...benchCautions(work, shop, say),
    ...stopCautions(work, shop, say),
    ...restCautions(work, say),
    ...grainCautions(work),
    ...lateCautions(work),
  ]
}

/** A long strip at the bench can be made lighter; a sheet cannot, before it is cut. */
function liftCautions(work: Work, { shop, material, display }: Circumstances, say: Say): string[] {
  if (!material) return []
  const { length, width } = work.takes
  const weight = boardWeight(length, width, material.thickness, material.density)
  if (weight <= shop.onePersonLift) return []
  const most = settle((length * shop.onePersonLift) / weight)
  const at = work.kind === 'square' ? roughCutOf(work.task, most, shop.kerf, shop.roughLength) : null
  const way = at === null ? '' : ` Or crosscut it roughly at ${say(at)} first.`
  const [weighs, lifts] = [weight, shop.onePersonLift].map((kg) => formatWeight(kg, display))
  return [`Weighs ${weighs}; one person lifts ${lifts}. Two people, or a carrier.${way}`]
}

function isRip(work: Work): boolean {
  return work.task.direction === 'rip'
}

/** An edge is straightened, and damage ripped away, with a crosscut blade that is in: common practice, no source. */
function bladeCautions({ kind, blade, task }: Work): string[] {
  const isAway = kind === 'away' && task.direction === 'rip'
  if (blade !== 'crosscut' || !(kind === 'trim' || isAway)) return []
  const why = isAway ? 'that is in' : 'that is in for the cuts after it'
  return [
    `Along the sheet, with the crosscut blade ${why}: feed slowly. Where it burns or binds, put the rip blade in for this edge.`,
  ]
}

function railCautions(work: Work, shop: Shop, say: Say): string[] {
  const cut = isRip(work) ? work.takes.length : work.takes.width
  if (work.tool === 'bench' || cut <= shop.railLength - RAIL_TO_SPARE) return []
  if (cut <= shop.railLength) {
    return [
      `The cut is ${say(cut)} long and the rail ${say(shop.railLength)}: let it stick out as far at both ends, and see that the saw stands firm on it before it enters the wood.`,
    ]
  }
  if (!shop.canJoinRails)
    return [
      `The cut is ${say(cut)} long and the rail ${say(shop.railLength)}: ${railWay(work, shop.railLength, shop, say)}`,
    ]
  const joined = 2 * shop.railLength
  if (cut <= joined)
    return [`The cut is ${say(cut)} long and the rail ${say(shop.railLength)}: join a rail before you cut.`]
  return [`The cut is ${say(cut)} long and two rails joined ${say(joined)}: ${railWay(work, joined, shop, say)}`]
}

/** What to do where a cut is longer than all rails reach. */
function railWay(work: Work, reach: Mm, shop: Shop, say: Say): string {
  const { task } = work
  if (isStraightened(task) && task.span <= reach && task.drawn.pieces.every(({ length }) => length <= reach))
    return 'crosscut it where that is drawn first, and straighten one long edge of every piece instead.'
  const canCross = isRip(work) && task.span <= reach
  const at = canCross ? roughCutOf(task, reach, shop.kerf, shop.roughLength) : null
  if (at !== null) {
    const isFirst = task.trim > 0 ? work.kind === 'trim' : work.takes.name === task.name
    if (!isFirst) return `cut both halves of it, crosscut at ${say(at)} before.`
    return `crosscut it roughly at ${say(at)} first, and do to both halves what follows. Each keeps ${say(shop.roughLength)} to be squared.`
  }
  const [leaves, other] = isRip(work) ? ['no crosscut leaves every part whole. Borrow', 'crosscut'] : ['borrow', 'rip']
  const turned =
    shop.firstCut === 'any' || shop.firstCut === other ? '' : `, or lay the sheets out with the ${other} first`
  return `${leaves} a longer rail${turned}.`
}

/** A sheet that is crosscut first, whose long edge is straightened along all of it before. */
function isStraightened({ direction, drawn }: Work['task']): boolean {
  return direction === 'rip' && drawn.direction === 'crosscut'
}

function smallCautions(work: Work, say: Say): string[] {
  if (work.tool === 'bench' || work.kind === 'away') return []
  const { length, width } = work.takes
  const [along, across] = isRip(work) ? [length, width] : [width, length]
  if (along >= FIRM.along && across >= FIRM.across) return []
  const small = along < FIRM.along ? `only ${say(along)} long along the cut` : `only ${say(across)} wide`
  return [
    `The piece is ${small}, which holds no rail by itself: clamp it down, lay boards as thick under the rest of the rail, and keep both hands on the saw.`,
  ]
}

function reachCautions(work: Work, shop: Shop, say: Say): string[] {
  const { guides } = shop
  if (!isRip(work) || work.kind === 'trim' || work.kind === 'away') return []
  if (work.size < guides.least) {
    const narrow = `${say(work.size)} is narrower than the guides reach (${say(guides.least)})`
    return [`${narrow}: ${work.hasAttachment ? 'put their attachment on' : aroundReach(work, shop, say)}.`]
  }
  if (work.size <= guides.greatest) return []
  return [
    `${say(work.size)} is wider than the guides reach (${say(guides.greatest)}): ${aroundReach(work, shop, say)}.`,
  ]
}

/** One piece can be ripped from its other edge, once that is straight: the guides then hold what falls away. */
function aroundReach({ task, takes, size, cuts }: Work, shop: Shop, say: Say): string {
  const line = 'follow a line, with the piece held down'
  const other = settle(takes.width - takes.rough.high - size - shop.kerf)
  const grip = gripFor('rip', other, takes.length, shop)
  if (cuts !== 1 || task.direction !== 'rip' || other <= 0 || grip.tool !== 'guides') return line
  const straighten = takes.rough.high > 0 ? `straighten the far edge by ${say(takes.rough.high)} and ` : ''
  const wearing = grip.hasAttachment ? ', with their attachment on,' : ''
  return `${line}; or, from the other side, ${straighten}set the guides${wearing} to ${say(other)}`
}

/** Beyond the fence a stop is clamped to what lengthens it: common practice, no source. */
function stopCautions(work: Work, { stopReach = STOP_REACH }: Shop, say: Say): string[] {
  if (work.tool !== 'bench' || work.kind !== 'crosscut' || work.size <= stopReach) return []
  return [
    `${say(work.size)} is beyond the stop (${say(stopReach)}): clamp a straight board to the fence and a block to it as the stop, and hold up what sticks out.`,
  ]
}

function benchCautions(work: Work, shop: Shop, say: Say): string[] {
  if (work.tool !== 'rail' || isRip(work) || work.kind === 'away') return []
  return [
    `${say(work.takes.width)} wide; the bench crosscuts ${say(shop.benchCrosscut)}. Square the rail to the clean edge.`,
  ]
}

/** Where parts fill a piece to its end, the last is what the others leave: it takes their errors and those of the piece. */
function restCautions(work: Work, say: Say): string[] {
  const last = work.leaves.at(-1)
  if (last?.kind !== 'part' || work.leaves.length <= work.cuts) return []
  const size = isRip(work) ? last.width : last.length
  return [
    `What the last cut leaves is a part too, and no setting cuts it: measure before that cut, it must come to ${say(size)}.`,
  ]
}

/** Lines across boards that belong beside each other show their order and their sides: common practice, no source. */
function grainCautions({ turn, place }: Work): string[] {
  // After the last one there is no next to keep it beside.
  if (!turn || place === turn.boards.length - 1) return []
  if (turn.isBegun || place !== 0)
    return [
      'The grain runs on to the next board: keep to this order, and cut nothing else from this piece between them.',
    ]
  return [
    `The grain runs on over ${nameList(turn.boards)}, in this order: draw two slanted lines across all of them before they are cut apart, and cut nothing else from this piece between them.`,
  ]
}

/** Where the parts of a piece fill it, the last one comes free with the cut before it, late or not. */
function lateCautions({ isLate, leaves }: Work): string[] {
  const freed = leaves.filter((left) => !isLate && left.isLate && left.kind === 'part').map(({ name }) => name)
  if (freed.length === 0) return []
  const [is, it] = freed.length === 1 ? ['is', 'it'] : ['are', 'them']
  return [
    `${nameList(freed)} ${is} meant to be cut late and ${is} free at this cut already, at the drawn size, with nothing beside ${it} to add. Measure the opening before fitting ${it}.`,
  ]
}
