import type { Material, Shop } from '../project/document'
import { formatWithUnit } from '../units/format'
import type { LengthDisplay } from '../units/length'
import { boardWeight } from './lift'
import type { Work } from './order'

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

/** What to mind in one step, each with its value and the limit. */
export function cautionsFor(work: Work, { shop, material, display }: Circumstances): string[] {
  const size = (length: number) => formatWithUnit(length, display)
  const cautions: string[] = []
  if (material) {
    const { length, width } = work.takes
    const weight = boardWeight(length, width, material.thickness, material.density)
    if (weight > shop.onePersonLift) {
      cautions.push(
        `Weighs ${weight.toFixed(1)} kg; one person lifts ${shop.onePersonLift} kg. Two people, or a carrier.`,
      )
    }
  }
  const isRip = work.task.direction === 'rip'
  if (isRip && work.kind !== 'trim') cautions.push(...reachCautions(work, shop, size))
  const cut = isRip ? work.takes.length : work.takes.width
  if (work.tool === 'rail' || isRip) {
    if (cut > shop.railLength) {
      cautions.push(`The cut is ${size(cut)} long and the rail ${size(shop.railLength)}: join a rail before you cut.`)
    }
  }
  if (work.tool === 'rail' && (work.kind === 'square' || work.kind === 'crosscut')) {
    cautions.push(
      `${size(work.takes.width)} wide; the bench crosscuts ${size(shop.benchCrosscut)}. Square the rail to the clean edge.`,
    )
  }
  return cautions
}

function reachCautions(work: Work, { guides }: Shop, size: (length: number) => string): string[] {
  if (work.size < guides.least) {
    return [
      `${size(work.size)} is narrower than the guides reach (${size(guides.least)}): use their attachment for narrow rips, or a line, with the piece held down.`,
    ]
  }
  if (work.size > guides.greatest)
    return [`${size(work.size)} is wider than the guides reach (${size(guides.greatest)}): follow a line.`]
  return []
}
