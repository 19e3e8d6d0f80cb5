import { z } from 'zod'
import { field, measure } from './savedNumber'
import { oneOf } from './savedWord'

const none = z.strictObject({ kind: z.literal('none') })
const spaced = { fromEdge: measure, spacing: measure }
const inserted = { diameter: measure, length: measure, inFace: measure, inEnd: measure, ...spaced }
const onDoor = { diameter: measure, fromEdge: measure, fromCorner: measure }
const onDrawer = { diameter: measure, twoFrom: measure }

/** What a build method says of fixings and pulls, as a file has it; a cabinet may say it differently. */
export const savedFixing = {
  fixing: z.discriminatedUnion('kind', [
    none,
    z.strictObject({
      kind: z.literal('screws'),
      diameter: measure,
      head: measure,
      pilot: measure,
      length: measure,
      ...spaced,
    }),
    z.strictObject({ kind: z.literal('dowels'), ...inserted }),
    z.strictObject({ kind: z.literal('looseTenons'), across: measure, ...inserted }),
    z.strictObject({ kind: z.literal('biscuits'), size: oneOf('0', '10', '20'), across: measure, ...inserted }),
    z.strictObject({ kind: z.literal('pocketScrews'), ...spaced }),
  ]),
  frameFixing: z
    .discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('glue') }),
      z.strictObject({ kind: z.literal('pocketScrews'), ...spaced }),
    ])
    .optional(),
  frontScrews: z
    .discriminatedUnion('kind', [
      none,
      z.strictObject({
        kind: z.literal('screws'),
        diameter: measure,
        head: measure,
        hole: measure,
        pilot: measure,
        length: measure,
        ...spaced,
      }),
    ])
    .optional(),
  doorPull: z.discriminatedUnion('kind', [
    none,
    z.strictObject({ kind: z.literal('knob'), ...onDoor }),
    z.strictObject({ kind: z.literal('bar'), spread: measure, ...onDoor }),
  ]),
  drawerPull: z.discriminatedUnion('kind', [
    none,
    z.strictObject({ kind: z.literal('knob'), ...onDrawer }),
    z.strictObject({ kind: z.literal('bar'), spread: measure, ...onDrawer }),
  ]),
}

export const savedLegs = z.strictObject({
  spacing: measure,
  fromEdge: measure,
  plateSpread: measure,
  screwDiameter: measure,
  screwDepth: measure,
})

export const savedPockets = z.strictObject({
  angle: field('angle'),
  diameter: measure,
  underHead: measure,
  screwDiameter: measure,
  screwLength: measure,
  fromEdge: measure,
  spacing: measure,
})
