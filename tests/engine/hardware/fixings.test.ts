import { describe, expect, it } from 'vitest'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import { hardwareOf } from '../../../engine/hardware/hardwareOf'
import { partsOf } from '../../../engine/parts/partsOf'
import { type Fixing, USUAL_FIXINGS } from '../../../engine/project/fixing'
import { aCabinet, rulesWith } from '../../helpers/cabinets'

function told(fixing: Fixing): string[] {
  const rules = rulesWith({ fixing })
  const build = buildCabinet(aCabinet('base'), rules)
  return hardwareOf(build, partsOf(build, rules), rules).map(
    ({ name, quantity, length }) => `${quantity} ${name} ${length}`,
  )
}

describe('what holds the corners of a carcass', () => {
  it('is counted by its kind and size: four in each end of the bottom and of the top', () => {
    expect(told(USUAL_FIXINGS.screws)).toEqual([`${2 * 2 * 4} screw of 4 mm 50`])
    expect(told(USUAL_FIXINGS.dowels)).toEqual([`${2 * 2 * 4} dowel of 8 mm 30`])
    expect(told(USUAL_FIXINGS.looseTenons)).toEqual([`${2 * 2 * 4} loose tenon of 5 × 19 mm 30`])
    expect(told(USUAL_FIXINGS.none)).toEqual([])
  })
})
