import { type Beside, type Cabinet, fitOf, type Project, type Side } from '../../engine/index'
import type { Outcome } from './hand'

/** What a filler's width and what is scribed of it may be, in mm: a wider gap is filled by a cabinet. */
export const FILLER_WIDTH = { spoken: 'The filler', least: 1, most: 600 } as const
export const SCRIBE = { spoken: 'The scribe', least: 0, most: 100 } as const

/** Puts something beside cabinets, if it finds its width of the wall free. */
export function besideOutcome(project: Project, cabinets: readonly Cabinet[], side: Side, beside: Beside): Outcome {
  const about = cabinets.map(({ id }) => id)
  const fit = fitOf(
    project,
    cabinets.map((cabinet) => ({ ...cabinet, beside: { ...cabinet.beside, [side]: beside } })),
  )
  const words = { fits: fit.fits, text: fit.fits ? fit.says : fit.why }
  return { edit: { kind: 'setBeside', ids: about, side, beside }, guides: [], about, words }
}
