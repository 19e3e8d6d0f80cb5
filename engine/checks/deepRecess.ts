import { counted } from '../basics/counted'
import type { Recess } from '../cabinets/operation'
import type { Part } from '../parts/part'
import { inch, type Mm, settle } from '../units/length'
import { about, type Checked, type Finding } from './finding'
import { sayIn } from './say'

const SOURCE = 'a forum thread on the depth of dados: not over half the thickness'

/** Ply is up to so much thinner than it is called, and half of what it is called is still let in. Source: Popular Woodworking 148. */
const THINNER_BY: Mm = inch(1 / 16)

/** Dados and grooves that are deeper than half of their board, which is too weak there: one finding about the deepest. */
export function deepRecessFindings(checked: Checked): Finding[] {
  const deep = checked.parts.flatMap((part) => recessesOf(part).map((recess) => ({ part, recess })))
  const [worst] = deep.sort((a, b) => overHalf(b) - overHalf(a))
  if (!worst) return []
  const { part, recess } = worst
  const boards = new Set(deep.map((one) => one.part.id)).size
  const say = sayIn(checked.display)
  const [measure, limit] = say.apart(recess.depth, settle(part.thickness / 2))
  const message =
    `the ${recess.kind} in the ${part.name} is ${measure} deep, more than half of the ${say.length(part.thickness)} of its board` +
    `${boards > 1 ? `, and so it is in ${counted(boards, 'board')} in all` : ''}: what is left there breaks easily. ` +
    'Make it shallower in the build method, or the board thicker.'
  return [about(checked, { weight: 'mind', message, measure, limit, source: SOURCE })]
}

/** Rabbets are along an edge, where nothing is weakened behind them. */
function recessesOf({ operations, thickness }: Part): Recess[] {
  return operations.filter((one): one is Recess => {
    return (one.kind === 'dado' || one.kind === 'groove') && 2 * one.depth > settle(thickness + THINNER_BY)
  })
}

function overHalf({ part, recess }: { readonly part: Part; readonly recess: Recess }): Mm {
  return recess.depth - part.thickness / 2
}
