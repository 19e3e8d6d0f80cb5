import { z } from 'zod'
import { field, measure } from './savedNumber'

/** What a build method bores for hardware, as a file has it. */
export const savedMachining = {
  hinge: z.strictObject({
    cupDiameter: measure,
    cupDepth: measure,
    cupFromEdge: measure,
    screwSpread: measure,
    screwBehind: measure,
    screwDiameter: measure,
    screwDepth: measure,
    firstFromEnd: measure,
    plateFromFront: measure,
    plateSpread: measure,
    plateDiameter: measure,
    plateDepth: measure,
    plateLength: measure,
    plateHeight: measure,
    fixedDistance: measure,
    halfCrank: measure,
    fullCrank: measure,
    sideAdjustment: measure,
    foldFromEdge: measure.optional(),
  }),
  slides: z.strictObject({
    lineUp: measure,
    firstFromFront: measure,
    pitch: field('pitch'),
    holeDiameter: measure,
    holeDepth: measure,
    setback: measure,
    loadClass: field('loadClass'),
    extension: z.literal('standard').optional(),
  }),
}
