import type { Board } from '../../../engine/cabinets/board'
import { buildCabinet } from '../../../engine/cabinets/buildCabinet'
import type { HoleRow } from '../../../engine/cabinets/operation'
import { hardwareOf } from '../../../engine/hardware/hardwareOf'
import { partsOf } from '../../../engine/parts/partsOf'
import { aCabinet, type MethodChanges, rulesWith } from '../../helpers/cabinets'

/** Each row of pocket holes in a board: how many, in which face, towards what, from where and how far apart, in mm. */
export function told({ operations }: Board): string[] {
  return operations
    .filter((one): one is HoleRow => one.kind === 'holeRow' && one.purpose === 'pocketScrew')
    .map(({ face, x, y, step, count, slant, along }) => {
      const line = along === 'width' ? 'across' : 'along'
      return `${count} in ${face} to ${slant!.towards} from ${x.toFixed(2)},${y.toFixed(2)}, ${step.toFixed(2)} ${line}`
    })
}

/** Screws of pocket holes that are bought for a base. */
export function bought(changes: MethodChanges, cabinet = aCabinet('base')): number {
  const rules = rulesWith(changes)
  const build = buildCabinet(cabinet, rules)
  return (
    hardwareOf(build, partsOf(build, rules), rules).find(({ name }) => name === 'pocket screw of 4 mm')?.quantity ?? 0
  )
}
