import { z } from 'zod'
import { runPart } from './savedBetween'
import { id, oneOf } from './savedWord'
import { MOST_IN_SEQUENCE } from './sequence'

const PART_FORM = 'it must be named after its cabinet or run and its place in it: k1/left-side'
const cabinetPart = z
  .string({ error: PART_FORM })
  .regex(/^[a-z][a-z0-9-]{0,39}\/[a-z][a-z0-9-]{0,59}$/, { error: PART_FORM })

/** Boards that are cut in sequence, as a file has them. */
export const savedSequence = z.strictObject({
  id,
  along: oneOf('length', 'width'),
  boards: z
    .array(z.union([cabinetPart, runPart], { error: PART_FORM }))
    .min(1)
    .max(MOST_IN_SEQUENCE),
})
