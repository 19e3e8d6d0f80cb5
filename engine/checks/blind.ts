import { blindWidthLeast } from '../project/blind'
import type { Front } from '../project/document'
import { childrenOf } from '../project/frontTree'
import type { Mm } from '../units/length'
import { about, type Checked, type Finding, PRACTICE } from './finding'
import { sayIn } from './say'

type Blind = Extract<Front, { kind: 'blind' }>

/** A corner whose blind part is too narrow: the doors beside it would strike the run along the other wall. */
export function blindFindings(checked: Checked): Finding[] {
  const blind = blindIn(checked.cabinet.front)
  const width = blindWidth(checked)
  if (!blind || width === null) return []
  const { method, materials } = checked.rules
  const doors = materials[method.frontMaterial]?.thickness ?? 0
  const least = blindWidthLeast(blind, doors)
  if (width >= least) return []
  const say = sayIn(checked.display)
  const [measure, limit] = say.apart(width, least)
  const message =
    `the blind part is ${measure} wide; the run along the other wall is ${say.length(blind.neighbour)} deep, ` +
    `its doors are ${say.length(doors)} thick and the pulls take ${say.length(blind.pull)}: ${limit} is the least.`
  return [about(checked, { weight: 'mind', message, measure, limit, source: PRACTICE })]
}

function blindIn(front: Front): Blind | null {
  if (front.kind === 'blind') return front
  return childrenOf(front).reduce<Blind | null>((found, child) => found ?? blindIn(child.front), null)
}

/** The panel and the strip beside it; null where the cabinet has none. */
function blindWidth({ fronts }: Checked): Mm | null {
  const widths = (['blindPanel', 'cornerFiller'] as const).flatMap((kind) => {
    const face = fronts.find((one) => one.kind === kind)
    return face ? [face.rect.width] : []
  })
  return widths.length > 0 ? widths.reduce((sum, one) => sum + one, 0) : null
}
