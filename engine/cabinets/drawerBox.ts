import { METHOD, PRACTICE } from '../basics/source'
import type { Interval } from '../geometry/interval'
import type { DrawerInsert } from '../project/document'
import type { FrontPath } from '../project/frontTree'
import type { BuildMethod } from '../project/method'
import { type Mm, settle } from '../units/length'
import { forward, forwardAndOff, WAYS } from './apart'
import type { Bay, Upright } from './bay'
import { type Carcass, insideFront } from './carcass'
import { drawerWay } from './fronts'
import { insertOf } from './insert'
import { type Piece, room, UNBANDED } from './piece'
import type { Report } from './report'

/** Lower or shorter boxes are not worth their slides. Common practice, no source. */
const LEAST_HEIGHT = 50
const LEAST_LENGTH = 150

/**
 * Slides at the side need their clearance between the box and the board, on both sides. Slides under the box ask for a
 * clear width inside it, so the box is wider by its own two sides.
 */
export function boxWidth(opening: Mm, { method: { slide }, drawerThickness }: Carcass): Mm {
  if (slide.kind === 'side') return settle(opening - 2 * slide.clearance)
  return settle(opening - slide.insideDeduction + 2 * drawerThickness)
}

/** A box is as high as its opening less what is kept free below and above it. */
export function boxHeight(opening: Interval, { method: { drawers } }: Carcass): Mm {
  return settle(opening.to - opening.from - drawers.bottomClearance - drawers.topClearance)
}

/** From the lower edges of a box to its upper ones, in its opening. */
export function boxStretch({ opening, height: own }: DrawerPlace, carcass: Carcass): Interval {
  const low = settle(opening.from + carcass.method.drawers.bottomClearance)
  return { from: low, to: settle(low + Math.min(own ?? Number.POSITIVE_INFINITY, boxHeight(opening, carcass))) }
}

/** The longest slide, and so the longest box, that leaves the clearance behind it free, and lets its slides in where those are longer. */
export function boxLength(clearDepth: Mm, { method: { drawers, slide } }: Carcass): Mm {
  const longer = slide.kind === 'undermount' ? (slide.longerBy ?? 0) : 0
  const most = clearDepth - Math.max(drawers.rearClearance, longer)
  if (!(drawers.lengthStep > 0)) return settle(most)
  // Half a tick of grace, so that a depth of exactly twenty steps is not nineteen.
  return settle(Math.floor((most + 1 / 6400) / drawers.lengthStep) * drawers.lengthStep)
}

/** How far the front end of a slide is behind the front of what it runs in. */
export function slideSetback({ slide, slides }: Pick<BuildMethod, 'slide' | 'slides'>): Mm {
  return slide.kind === 'undermount' ? slides.setback : 0
}

/** The front and back of a box stand between its sides. */
export function boxFrontLength(width: Mm, { drawerThickness }: Carcass): Mm {
  return settle(width - 2 * drawerThickness)
}

/** The bottom spans the inside of the box and both grooves, less its play in all. */
export function drawerBottomSize(outside: Mm, { drawerThickness, method: { drawers } }: Carcass): Mm {
  return settle(outside - 2 * drawerThickness + 2 * drawers.grooveDepth - drawers.bottomPlay)
}

/** The opening of a drawer: its height, and the bay that it runs in. */
export interface DrawerPlace {
  readonly opening: Interval
  readonly bay: Bay
  /** The openings before it: of its own front, or of the doors that it stands behind. */
  readonly before: readonly FrontPath[]
  /** Of a box that is lower than its opening lets it be. */
  readonly height?: Mm
  /** From the front of other boxes to the front of this one. */
  readonly setback?: Mm
  readonly insert?: DrawerInsert
}

/** The place of a box among all of its cabinet, from 1, and how many dividers the inserts before it have. */
export interface BoxNumber {
  readonly number: number
  readonly dividers: number
}

/** The boxes of a cabinet numbered as they come. */
export function boxNumbers(places: readonly DrawerPlace[]): BoxNumber[] {
  let dividers = 0
  return places.map(({ insert }, at) => {
    const before = dividers
    dividers += insert ? insert.divisions + 1 : 0
    return { number: at + 1, dividers: before }
  })
}

/** The five boards of a drawer box and those of its insert, or none where no box fits. `rear` is the front of what lies behind it. */
export function drawerBoxOf(
  { number, dividers }: BoxNumber,
  place: DrawerPlace,
  rear: Mm,
  carcass: Carcass,
  report: Report,
): Piece[] {
  const { bay, setback = 0, insert } = place
  const front = settle(insideFront(carcass) - setback)
  const width = boxWidth(settle(bay.to - bay.from), carcass)
  const { from: low, to: high } = boxStretch(place, carcass)
  const height = settle(high - low)
  const length = boxLength(settle(front - rear - slideSetback(carcass.method)), carcass)
  if (!isWorthIt(number, { width, height, length }, carcass, report)) return []
  const { method, drawerThickness } = carcass
  const left = settle((bay.from + bay.to - width) / 2)
  const box = { left, right: left + width, low, high, rear: front - length, front }
  const common = { material: method.drawerMaterial, banded: UNBANDED } as const
  const way = drawerWay(carcass)
  const off = (x: number, z: number) => forwardAndOff(way, { x, y: 0, z })
  const y = [box.low, box.high] as const
  const z = [box.rear, box.front] as const
  const inner = [left + drawerThickness, left + drawerThickness + boxFrontLength(width, carcass)] as const
  const side = (x: readonly [Mm, Mm]) => room(x, y, z)
  return [
    {
      ...common,
      role: 'drawerSide',
      number: 2 * number - 1,
      explode: off(-sidewaysShare(bay.left, left - bay.from, carcass), 0),
      box: side([left, inner[0]]),
      lie: 'onEdgeLookingRight',
    },
    {
      ...common,
      role: 'drawerSide',
      number: 2 * number,
      explode: off(sidewaysShare(bay.right, bay.to - box.right, carcass), 0),
      box: side([inner[1], box.right]),
      lie: 'onEdgeLookingLeft',
    },
    {
      ...common,
      role: 'drawerBoxFront',
      number,
      explode: off(0, 1),
      box: room(inner, y, [front - drawerThickness, front]),
      lie: 'onEdgeLookingIn',
    },
    {
      ...common,
      role: 'drawerBoxBack',
      number,
      explode: off(0, -1),
      box: room(inner, y, [box.rear, box.rear + drawerThickness]),
      lie: 'onEdgeLookingOut',
    },
    {
      ...common,
      explode: forward(way),
      ...drawerBottom(number, { width, length, left, low, rear: box.rear }, carcass),
    },
    ...(insert ? insertOf(number, insert, box, dividers, carcass, report) : []),
  ]
}

/** How far a side leaves its box, as a share of the usual way: towards a partition less than half way to the next box. */
function sidewaysShare(upright: Upright, clearance: Mm, { thickness }: Carcass): number {
  if (upright.role !== 'partition') return 1
  return Math.min(1, Math.max(0, (clearance + thickness / 2 - 1) / WAYS.boxBoard))
}

function drawerBottom(
  number: number,
  box: { width: Mm; length: Mm; left: Mm; low: Mm; rear: Mm },
  carcass: Carcass,
): Pick<Piece, 'role' | 'number' | 'material' | 'box' | 'seat' | 'lie'> {
  const { method, drawerThickness, drawerBottomThickness } = carcass
  const { grooveDepth, grooveUp, bottomPlay } = method.drawers
  const low = settle(box.low + grooveUp)
  const place = (play: Mm) => {
    const inset = drawerThickness - grooveDepth + play / 2
    return room(
      [box.left + inset, box.left + inset + drawerBottomSize(box.width, carcass) + bottomPlay - play],
      [low, low + drawerBottomThickness],
      [box.rear + inset, box.rear + inset + drawerBottomSize(box.length, carcass) + bottomPlay - play],
    )
  }
  return {
    role: 'drawerBottom',
    number,
    material: method.drawerBottomMaterial,
    box: place(bottomPlay),
    seat: place(0),
    lie: 'levelLookingUp',
  }
}

function isWorthIt(
  number: number,
  { width, height, length }: { width: Mm; height: Mm; length: Mm },
  { drawerThickness, drawerBottomThickness, method: { drawers } }: Carcass,
  report: Report,
): boolean {
  const leastHeight = Math.max(LEAST_HEIGHT, settle(drawers.grooveUp + drawerBottomThickness))
  const leastWidth = settle(2 * drawerThickness + LEAST_HEIGHT)
  const box = `the box of drawer ${number} would be`
  if (height < leastHeight)
    report.stop(`${box} ${report.left(height)} high; ${report.say(leastHeight)} is the least.`, {
      is: report.left(height),
      limit: leastHeight,
      source: PRACTICE,
    })
  if (length < LEAST_LENGTH)
    report.stop(`${box} ${report.left(length)} long; ${report.say(LEAST_LENGTH)} is the least.`, {
      is: report.left(length),
      limit: LEAST_LENGTH,
      source: PRACTICE,
    })
  if (width < leastWidth)
    report.stop(`${box} ${report.left(width)} wide; ${report.say(leastWidth)} is the least.`, {
      is: report.left(width),
      limit: leastWidth,
      source: PRACTICE,
    })
  const isGrooveGood = drawers.grooveDepth > 0 && drawers.grooveDepth < drawerThickness
  if (!isGrooveGood) {
    const groove = `${report.say(drawers.grooveDepth)} deep in boards of ${report.say(drawerThickness)}`
    report.stop(`the groove for the bottom of drawer ${number} would be ${groove}.`, {
      is: drawers.grooveDepth,
      limit: drawerThickness,
      source: METHOD,
    })
  }
  return height >= leastHeight && length >= LEAST_LENGTH && width >= leastWidth && isGrooveGood
}
