import { z } from 'zod'
import { measure } from './savedNumber'
import { oneOf } from './savedWord'

const flag = z.boolean({ error: 'it must be true or false' })

/** A space for an appliance, as a file has it. */
export const savedSpace = z.strictObject({
  of: oneOf('dishwasher', 'washingMachine', 'fridge', 'range'),
  width: measure,
  height: measure,
  depth: measure,
  isTopOver: flag,
  isKickBefore: flag,
})
