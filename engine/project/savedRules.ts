import { z } from 'zod'
import { savedLegs, savedPockets } from './savedFixing'
import { savedChart, savedMachining } from './savedMachining'
import { field, measure } from './savedNumber'
import { flag, oneOf } from './savedWord'

const ends = oneOf('uppers', 'uppersAndTalls')
const balance = z.strictObject({ rows: oneOf('asLeft', 'multiple'), arePlatesOn: flag })

/** The measures of a build method, by what they are of, as a file has them. */
export const savedRules = {
  shelves: z.strictObject({
    sideClearance: measure,
    setback: measure,
    pinDiameter: measure,
    pinDepth: measure,
    pitch: field('pitch'),
    rowSetback: measure,
    firstHole: measure,
    balance: balance.optional(),
  }),
  banding: z.strictObject({ carcass: measure, fronts: measure, isInFinishedSize: flag, ends: ends.optional() }),
  fronts: z.strictObject({
    ...{ gap: measure, endReveal: measure, topReveal: measure, bottomReveal: measure },
    widestDoor: measure.optional(),
  }),
  drawers: z.strictObject({
    bottomClearance: measure,
    topClearance: measure,
    lengthStep: field('lengthStep'),
    rearClearance: measure,
    grooveDepth: measure,
    grooveUp: measure,
    bottomPlay: measure,
  }),
  ...savedMachining,
  legs: savedLegs,
}

const { shelves, banding, fronts, drawers, hinge, slides, legs } = savedRules

/** What a cabinet has of these otherwise than its method: some of them, and null for what it does without. */
export const savedOwnRules = {
  shelves: shelves.extend({ balance: balance.nullable() }).partial(),
  slides: slides.extend({ extension: z.literal('standard').nullable() }).partial(),
  banding: banding.extend({ ends: ends.nullable() }).partial(),
  fronts: fronts.partial(),
  drawers: drawers.partial(),
  hinge: hinge.extend({ chart: savedChart.nullable() }).partial(),
  legs: legs.partial(),
  pockets: savedPockets.partial(),
}
