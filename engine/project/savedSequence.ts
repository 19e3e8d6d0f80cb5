import { z } from 'zod'
import { id, oneOf } from './savedWord'
import { BOARD_NAME, MOST_IN_SEQUENCE } from './sequence'

const BOARD_FORM = 'it must be named after its cabinet or run and its place in it: k1/left-side'

/** Boards that are cut in sequence, as a file has them. */
export const savedSequence = z.strictObject({
  id,
  along: oneOf('length', 'width'),
  boards: z
    .array(z.string({ error: BOARD_FORM }).regex(BOARD_NAME, { error: BOARD_FORM }))
    .min(1)
    .max(MOST_IN_SEQUENCE),
})
