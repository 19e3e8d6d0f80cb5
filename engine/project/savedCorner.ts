import { z } from 'zod'
import { measure } from './savedNumber'

/** How a cabinet goes on along the other wall of a corner, as a file has it. */
export const savedCorner = z
  .strictObject({
    kind: z.enum(['L', 'diagonal'], { error: 'it must be L or diagonal' }),
    hand: z.enum(['left', 'right'], { error: 'it must be left or right' }),
    other: measure,
    otherDepth: measure,
  })
  .nullable()
