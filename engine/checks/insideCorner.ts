import { CORNER_FILLER } from '../project/blind'
import { cutoutAlong } from '../project/cutout'
import type { Project } from '../project/document'
import { find } from '../project/references'
import { meetingsOf } from '../runs/reach'
import { inch, type Mm, settle } from '../units/length'
import { fillerRemedy, hingedAt, roomRemedy, type Standing, turnRemedy } from './beside'
import { appliancesIn, facingsOf, movingIn, pullsOf } from './facing'
import { about, type Finding, GEOMETRY, withRemedy } from './finding'
import { foldDoorFindings } from './foldDoor'
import { sayIn } from './say'
import { slantDoorFindings } from './slantDoor'
import { standingRoomFindings } from './standingRoom'

/** Beside a range or a dishwasher the filler of an inside corner is wider. */
const FILLER_AT_APPLIANCE = inch(6)
const FILLER_SOURCE = 'a dealer glossary: at least 3 in from the corner, 6 in beside a range or dishwasher'
/** From an appliance to an inside corner, so that its handle clears the drawers round it. */
const APPLIANCE = inch(15)
const APPLIANCE_SOURCE = 'LSU AgCenter, Kitchen Design and Space Guidelines'

/** What collides in the inside corners of walls that meet: fronts, pulls, appliance doors. */
export function insideCornerFindings(
  project: Project,
  standing: readonly Standing[],
  asked: readonly Standing[] = standing,
): Finding[] {
  return asked.flatMap((one) => [
    ...applianceFindings(one, project, standing),
    ...standingRoomFindings(one, project),
    ...frontFindings(one, project, standing),
    ...crossingFindings(one, project, standing),
    ...slantDoorFindings(one, project, standing),
    ...foldDoorFindings(one, project, standing),
  ])
}

function frontFindings(one: Standing, project: Project, standing: readonly Standing[]): Finding[] {
  return facingsOf(one, movingIn(one), project, standing).flatMap((facing) => {
    const { other, side, gap } = facing
    const isAtAppliance = isAppliance(one) || isAppliance(other)
    const wanted = isAtAppliance ? FILLER_AT_APPLIANCE : CORNER_FILLER
    if (gap >= wanted) return []
    const say = sayIn(project.display)
    const [measure, limit] = say.apart(gap, wanted)
    const where =
      gap < 0
        ? `part of what opens stands ${say.length(-gap)} behind the face of ${other.mark} round the corner and cannot open`
        : `what opens is ${measure} from the face of ${other.mark} round the corner`
    const message =
      `${where}; ${limit} of filler is usual${isAtAppliance ? ' beside an appliance' : ''}, and the pulls of ${other.mark} ` +
      `take ${say.length(pullsOf(other))} of it.`
    const weight = gap < pullsOf(other) ? 'mind' : 'know'
    const told = { weight, message, measure, limit, source: FILLER_SOURCE } as const
    return [withRemedy(about(one, told), () => fillerRemedy(one, side, { gap, wanted }, project))]
  })
}

/** An appliance near a corner, or one whose door would open against what stands there. */
function applianceFindings(one: Standing, project: Project, standing: readonly Standing[]): Finding[] {
  const appliances = [...appliancesIn(one), ...hobsIn(one)]
  return facingsOf(one, appliances, project, standing).flatMap((facing) => {
    const { other, side, gap } = facing
    if (gap >= APPLIANCE) return []
    const say = sayIn(project.display)
    const [is, limit] = say.apart(gap, APPLIANCE)
    const measure = gap < 0 ? `${say.length(-gap)} in its way` : is
    const room = pullsOf(other)
    const out = Math.max(0, ...appliancesIn(one).map((appliance) => appliance.out))
    const isBlocked = out > 0 && gap < room
    const message = isBlocked
      ? `the door of its appliance opens ${say.length(out)} out, and ${other.mark} ` +
        (gap < 0
          ? `round the corner stands ${measure}`
          : `with its pulls wants ${say.length(room)} where there are ${measure}`) +
        `; ${limit} to an inside corner is asked for.`
      : `its appliance is ${measure} from the inside corner at ${other.mark}; ${limit} lets handles pass the drawers there.`
    const told = { weight: isBlocked ? 'mind' : 'know', message, measure, limit, source: APPLIANCE_SOURCE } as const
    return [withRemedy(about(one, told), () => roomRemedy(one, side, settle(APPLIANCE - gap), project))]
  })
}

function hobsIn({ cabinet }: Standing) {
  const { cutout, bottom, height, depth } = cabinet
  if (cutout?.of !== 'hob') return []
  const { left } = cutoutAlong(cabinet, cutout)
  return [{ rect: { left, bottom, width: cutout.width, height }, out: depth }]
}

function isAppliance(one: Standing): boolean {
  return one.cabinet.cutout?.of === 'hob' || appliancesIn(one).length > 0
}

/**
 * Doors of both walls that are hinged in the corner: opened square, each stands in the way of the other.
 *
 *      B1  |=====       door of B1, opened
 *     -----+    |
 *               +---    door of B2, opened, from the other wall
 */
function crossingFindings(one: Standing, project: Project, standing: readonly Standing[]): Finding[] {
  const wall = find(project.walls, one.cabinet.wall)
  const meeting = wall && meetingsOf(project, wall).find(({ side }) => side === 'right')
  if (!wall || !meeting || one.cabinet.corner) return []
  const there = standing.filter(({ cabinet }) => cabinet.wall === meeting.wall.id && !cabinet.corner)
  const crossed = there.find((other) => doCross(one, other, wall.length))
  if (!crossed) return []
  const message = `its door and that of ${crossed.mark} are both hinged in the corner: opened square they meet, so only one of them can be open.`
  const finding = about(one, { weight: 'know', message, measure: '1 open at a time', limit: '2', source: GEOMETRY })
  return [withRemedy(finding, () => turnRemedy(one, 'right') ?? turnRemedy(crossed, 'left'))]
}

function doCross(first: Standing, second: Standing, length: Mm): boolean {
  return hingedAt(first, 'right').some((a) =>
    hingedAt(second, 'left').some((b) => {
      const fromCorner = settle(length - first.cabinet.left - a.rect.left - a.rect.width)
      const alongOther = settle(second.cabinet.left + b.rect.left)
      return (
        isUpTo(fromCorner, faceOf(second), b.rect.width) &&
        isUpTo(alongOther, faceOf(first), a.rect.width) &&
        heightsMeet(first, a.rect, second, b.rect)
      )
    }),
  )
}

function isUpTo(at: Mm, face: Mm, width: Mm): boolean {
  return at >= face && at <= settle(face + width)
}

function faceOf({ cabinet, frontThickness }: Standing): Mm {
  return settle(cabinet.depth + frontThickness)
}

type Level = { readonly bottom: Mm; readonly height: Mm }

function heightsMeet(first: Standing, a: Level, second: Standing, b: Level): boolean {
  const [low, high] = [first.cabinet.bottom + a.bottom, second.cabinet.bottom + b.bottom]
  return settle(Math.min(low + a.height, high + b.height) - Math.max(low, high)) > 0
}
