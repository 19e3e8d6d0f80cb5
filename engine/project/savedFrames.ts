import { z } from 'zod'
import { field, measure } from './savedNumber'
import { flag } from './savedWord'

/** What a build method says of face frames and five-part fronts, as a file has it. */
export const savedFrames = {
  faceFrame: z
    .strictObject({
      stile: measure,
      topRail: measure,
      upperTopRail: measure.optional(),
      bottomRail: measure,
      mullion: measure,
      pastLeft: measure,
      pastRight: measure,
      proud: measure,
      joint: z.discriminatedUnion('kind', [
        z.strictObject({ kind: z.literal('pocketScrews') }),
        z.strictObject({ kind: z.literal('tenon'), length: measure }),
      ]),
      fronts: z.discriminatedUnion('kind', [
        z.strictObject({ kind: z.literal('inset') }),
        z.strictObject({ kind: z.literal('overlay'), by: measure }),
      ]),
    })
    .nullable(),
  frontBuild: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('slab') }),
    z.strictObject({
      kind: z.literal('fivePart'),
      stile: measure,
      rail: measure,
      groove: measure,
      play: measure,
      areDrawersToo: flag,
      midRailFrom: measure.optional(),
    }),
  ]),
  panelWood: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('sheet') }),
    z.strictObject({ kind: z.literal('solid'), across: field('across'), moisture: field('moisture') }),
  ]),
}
