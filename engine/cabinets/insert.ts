import { PRACTICE } from '../basics/source'
import type { DrawerInsert } from '../project/document'
import { type Mm, settle } from '../units/length'
import { forward } from './apart'
import type { Carcass } from './carcass'
import { drawerWay } from './fronts'
import { type Piece, room, UNBANDED } from './piece'
import type { Report } from './report'

/** Between an insert and the box that it lies in, in all, each way. Common practice, no source. */
const INSERT_PLAY: Mm = 2
/** Nothing is found in a narrower division. Common practice, no source. */
const LEAST_DIVISION: Mm = 25

/** The outside of a drawer box, in the cabinet's frame. */
export interface BoxRoom {
  readonly left: Mm
  readonly right: Mm
  readonly low: Mm
  readonly high: Mm
  readonly rear: Mm
  readonly front: Mm
}

/** How far its dividers are let into its ends: a third of their thickness. */
function insertHousing({ drawerBottomThickness }: Pick<Carcass, 'drawerBottomThickness'>): Mm {
  return settle(drawerBottomThickness / 3)
}

/** As wide as the box is clear inside, less its play. */
function insertWidth({ left, right }: Pick<BoxRoom, 'left' | 'right'>, { drawerThickness }: Carcass): Mm {
  return settle(right - left - 2 * drawerThickness - INSERT_PLAY)
}

/** From front to rear: as long as the box is clear inside, less its play. */
function insertLength({ rear, front }: Pick<BoxRoom, 'rear' | 'front'>, { drawerThickness }: Carcass): Mm {
  return settle(front - rear - 2 * drawerThickness - INSERT_PLAY)
}

/** Between its ends, and into both of them. */
function insertDividerLength(box: BoxRoom, carcass: Carcass): Mm {
  return settle(insertLength(box, carcass) - 2 * carcass.drawerBottomThickness + 2 * insertHousing(carcass))
}

/** Each division is clear by what the dividers leave, all of them alike. */
function divisionWidth(width: Mm, divisions: number, { drawerBottomThickness }: Carcass): Mm {
  return settle((width - (divisions + 1) * drawerBottomThickness) / divisions)
}

/**
 * What lies loose in a drawer box to part it, of the board of drawer bottoms: an end at the front and at the rear, and one
 * divider more than there are divisions, let into both. `before` is how many dividers other drawers have.
 *
 *      ==========  end
 *      |  |  |  |  dividers
 *      ==========  end
 */
export function insertOf(
  number: number,
  { divisions, height: wished }: DrawerInsert,
  box: BoxRoom,
  before: number,
  carcass: Carcass,
  report: Report,
): Piece[] {
  const { drawerThickness, drawerBottomThickness: thickness, method } = carcass
  const [width, length] = [insertWidth(box, carcass), insertLength(box, carcass)]
  const floor = settle(box.low + method.drawers.grooveUp + thickness)
  const height = settle(Math.min(wished, box.high - floor))
  const clear = divisionWidth(width, divisions, carcass)
  if (!isWorthIt(number, { clear, height }, report)) return []
  if (height < wished)
    report.mind(
      `the insert of drawer ${number} is ${report.say(height)} high, not ${report.say(wished)}: its box is no higher inside.`,
      { is: wished, limit: height },
    )
  const left = settle(box.left + drawerThickness + INSERT_PLAY / 2)
  const rear = settle(box.rear + drawerThickness + INSERT_PLAY / 2)
  const y = [floor, floor + height] as const
  const common = {
    material: method.drawerBottomMaterial,
    banded: UNBANDED,
    explode: forward(drawerWay(carcass)),
  } as const
  const end = (at: 0 | 1): Piece => {
    const from = at === 0 ? rear : settle(rear + length - thickness)
    return {
      ...common,
      role: 'insertEnd',
      number: 2 * number - 1 + at,
      box: room([left, left + width], y, [from, from + thickness]),
      lie: at === 0 ? 'onEdgeLookingOut' : 'onEdgeLookingIn',
    }
  }
  const inner = settle(rear + thickness - insertHousing(carcass))
  const dividers = Array.from({ length: divisions + 1 }, (_, at): Piece => {
    const from = settle(left + (at * (width - thickness)) / divisions)
    return {
      ...common,
      role: 'insertDivider',
      number: before + at + 1,
      box: room([from, from + thickness], y, [inner, inner + insertDividerLength(box, carcass)]),
      lie: 'onEdgeLookingRight',
    }
  })
  return [end(0), end(1), ...dividers]
}

const LEAST_HEIGHT: Mm = 15

function isWorthIt(number: number, { clear, height }: { clear: Mm; height: Mm }, report: Report): boolean {
  const insert = `the insert of drawer ${number}`
  if (clear < LEAST_DIVISION) {
    report.stop(
      `${insert} would have divisions of ${report.left(clear)}; ${report.say(LEAST_DIVISION)} is the least. It is left out.`,
      { is: report.left(clear), limit: LEAST_DIVISION, source: PRACTICE },
    )
    return false
  }
  if (height >= LEAST_HEIGHT) return true
  report.stop(
    `${insert} would be ${report.left(height)} high; ${report.say(LEAST_HEIGHT)} is the least. It is left out.`,
    { is: report.left(height), limit: LEAST_HEIGHT, source: PRACTICE },
  )
  return false
}
