import type { Shop } from '../project/document'
import type { Step } from './step'
import type { Work } from './work'

const WORDS =
  'Build the carcasses and stand them square. Then measure their openings, clear from board to board, and type them in: what is left to cut is made to them.'

/** Between what is cut first and the late parts: nothing is cut, and what was set need not stand any more. */
export function pauseStep(id: string, before: readonly Work[], { shop }: { readonly shop: Shop }): Step {
  const { blade, task } = before[0]!
  const nothing = { name: 'the carcasses', names: [], length: 0, width: 0 }
  return {
    ...{ id, kind: 'pause', isLate: true, tool: 'rail', hasAttachment: false, setting: null, isNewSetting: false },
    ...{ material: task.material, sheets: [], blade, teeth: shop.blades[blade].teeth },
    ...{ takes: nothing, count: 0, cuts: 0, leaves: [], write: [] },
    text: WORDS,
    cautions: [
      'Stand tall cabinets up with two people, and hold them until they are fixed.',
      'Let glue dry as long as its maker says before a carcass is lifted.',
    ],
    sketch: { length: 0, width: 0, cuts: [], pieces: [], measuredFrom: 'edge', edgeAt: 0 },
  }
}
