import { z } from 'zod'
import { field, measure } from './savedNumber'
import { id, oneOf } from './savedWord'

const RUN_PART_FORM = 'it must be named after its run and its place in it: Top-k1/countertop-1'
const runPart = z.string({ error: RUN_PART_FORM }).regex(/^[A-Z][A-Za-z0-9-]{0,59}\/[a-z][a-z0-9-]{0,39}$/, {
  error: RUN_PART_FORM,
})

/** What is let into a countertop, as a file has it. */
export const savedCutout = z.strictObject({
  of: oneOf('sink', 'hob'),
  width: measure,
  depth: measure,
  fromFront: measure,
  aside: field('aside').optional(),
})

/** How a countertop is over one base, as a file has it. */
export const savedTopHere = z.strictObject({
  rear: measure.optional(),
  hasSplash: z.boolean({ error: 'it must be true or false' }).optional(),
  isOver: z.boolean({ error: 'it must be true or false' }).optional(),
  own: z
    .strictObject({ material: id, overhang: measure, ends: measure, splash: measure, banding: measure })
    .partial()
    .optional(),
})

const trim = z.strictObject({ material: id, height: field('height'), forward: field('forward') }).nullable()
/** What goes over several cabinets, as a file has it. */
export const savedBetween = z.strictObject({
  kick: oneOf('perCabinet', 'inLengths'),
  countertop: z
    .strictObject({
      material: id,
      overhang: measure,
      ends: measure,
      splash: measure,
      banding: measure,
      seamBolts: z
        .strictObject({
          bore: measure,
          slot: measure,
          depth: measure,
          fromSeam: measure,
          length: measure,
          fromEdge: measure,
          spacing: measure,
        })
        .optional(),
    })
    .nullable(),
  lightRail: trim,
  crown: trim,
  valance: trim,
  pins: z.record(runPart, id),
  sheets: z.record(runPart, field('sheet')).optional(),
})
