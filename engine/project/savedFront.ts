import { z } from 'zod'
import { RANGES } from './ranges'
import { field, measure } from './savedNumber'
import { oneOf } from './savedWord'

/** The front of a cabinet, or of a part of it, as a file has it. */
export const savedFront: z.ZodType = z.lazy(() =>
  z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('open') }),
    z.strictObject({
      kind: z.literal('door'),
      hinge: oneOf('left', 'right', 'top'),
      orPair: z.literal(true).optional(),
    }),
    z.strictObject({ kind: z.literal('pair') }),
    z.strictObject({
      kind: z.literal('drawer'),
      insert: z.strictObject({ divisions: field('divisions'), height: measure }).optional(),
    }),
    z.strictObject({ kind: z.literal('pullOut'), box: measure }),
    z.strictObject({ kind: z.literal('falseFront') }),
    z.strictObject({ kind: z.literal('blind'), neighbour: measure, filler: measure, pull: measure }),
    z.strictObject({
      ...{ kind: z.literal('appliance'), width: measure, height: measure, air: measure },
      depth: measure.optional(),
    }),
    z.strictObject({
      kind: z.literal('rows'),
      rows: z
        .array(z.strictObject({ size, front: savedFront }))
        .min(1)
        .max(20),
    }),
    z.strictObject({
      kind: z.literal('columns'),
      columns: z
        .array(z.strictObject({ size: across, front: savedFront, shelves: columnShelves }))
        .min(2)
        .max(6),
    }),
  ]),
)

/** What stands in a bay. */
export const savedShelves = {
  fixedShelves: field('fixedShelves'),
  adjustableShelves: field('adjustableShelves'),
  fixedAt: z.array(measure.nullable()).max(RANGES.fixedShelves.most).optional(),
  rollOuts: z.strictObject({ count: field('count'), height: measure }).optional(),
  dividers: field('dividers').optional(),
}
const MOST_BAYS = 10
const columnShelves = z.strictObject(savedShelves).nullable()
const across = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('fixed'), width: measure }),
  z.strictObject({ kind: z.literal('share'), share: field('share') }),
])
/** The bays inside, from the left. */
export const savedBays = z
  .array(z.strictObject({ size: across, shelves: columnShelves }))
  .min(2)
  .max(MOST_BAYS)
const size = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('fixed'), height: measure }),
  z.strictObject({ kind: z.literal('share'), share: field('share'), more: measure.optional() }),
])
