import { once } from '../basics/remember'
import type { FrontFace } from '../cabinets/board'
import { rulesOf } from '../cabinets/build'
import { buildCabinet } from '../cabinets/buildCabinet'
import { partsOf } from '../parts/partsOf'
import { applyEdit } from '../project/apply'
import { methodOf, standsFree } from '../project/builtBy'
import type { Cabinet, Front, Interior, Project, Side, Wall } from '../project/document'
import type { Edit } from '../project/edit'
import { childrenOf } from '../project/frontTree'
import { find } from '../project/references'
import { gapFilled } from '../runs/fill'
import { rightEdge, sharedBy } from '../runs/lane'
import { gapsBeside } from '../runs/neighbours'
import { roomMade } from '../runs/push'
import { faceFrom, meetingsOf, reachingFrom } from '../runs/reach'
import { type Mm, settle } from '../units/length'
import { about, type Finding, PRACTICE, type Remedy, withRemedy } from './finding'
import { lackingToHold } from './narrow'
import { sayIn } from './say'

/** A cabinet with its fronts where it stands. */
export interface Standing {
  readonly cabinet: Cabinet
  readonly mark: string
  readonly fronts: readonly FrontFace[]
  /** Of its doors and drawer fronts; 0 where they are inset and stand no further out. */
  readonly frontThickness: Mm
  /** How far its longest drawer comes out; 0 without one. */
  readonly drawerOut: Mm
}

const SIDES: readonly Side[] = ['left', 'right']

/** What a handle stands out from its door, and how far from the free edge it sits. Common practice, no source. */
export const HANDLE_OUT: Mm = 40
const HANDLE_IN: Mm = 50

/** Walls are not straight: installers ask for so much beside a cabinet at one. */
const INSTALLERS_GAP: Mm = 25
const INSTALLERS_SOURCE = 'a drafting course page: 25 to 28 mm at walls for installers'

/** What is beside a cabinet, and how far from it. */
interface Obstacle {
  readonly gap: Mm
  readonly words: string
}

/** Doors and drawers that meet a wall or a deeper neighbour when they are opened: one finding for each cabinet. */
export function besideFindings(
  project: Project,
  standing: readonly Standing[],
  asked: readonly Standing[] = standing,
): Finding[] {
  return asked.flatMap((one) => {
    if (one.fronts.length === 0) return []
    const hinged = SIDES.flatMap((side) => hingedFinding(one, side, project, standing))
    return hinged.length > 0 ? hinged.slice(0, 1) : SIDES.flatMap((side) => hardFinding(one, side, project))
  })
}

/** The end of the wall, where it is so near and no cabinet stands between. */
function wallEnd({ cabinet }: Standing, side: Side, within: Mm, project: Project): Obstacle | null {
  const wall = find(project.walls, cabinet.wall)
  if (!wall) return null
  const gap = settle(side === 'left' ? cabinet.left : wall.length - rightEdge(cabinet))
  // Most stand far from both ends, and that is seen without looking for neighbours.
  if (gap < 0 || gap >= within || gapsBeside(project, cabinet)[side].to !== 'the wall end') return null
  // What stands at no wall has one at its end only where walls meet.
  const isMet = meetingsOf(project, wall).some((one) => one.side === side)
  if (standsFree(methodOf(cabinet, project)) && !isMet) return null
  return isBuried(cabinet, side, project, wall) ? null : { gap, words: 'the wall end' }
}

/** Nearer than this to a face, what stands before it hides it: a filler of 3 in and a front. Common practice, no source. */
const BURIED_WITHIN: Mm = 100

/** Whether cabinets of the wall that meets there stand before that end, so that it is in the corner and no end is seen. */
function isBuried(cabinet: Cabinet, side: Side, project: Project, wall: Wall): boolean {
  const meeting = meetingsOf(project, wall).find((one) => one.side === side)
  if (!meeting) return false
  const before = settle(faceFrom(cabinet, project) + BURIED_WITHIN)
  return reachingFrom(project, meeting).some((body) => {
    const { x, y } = sharedBy(cabinet, body)
    return x > 0 && y > 0 && body.rear < before
  })
}

/** Whether what does not move closes the corner at that side: nothing there is fitted to the wall or opens. */
function isBlindAt({ fronts }: Standing, side: Side): boolean {
  const edge = (face: FrontFace) => (side === 'left' ? face.rect.left : -face.rect.left - face.rect.width)
  const outermost = Math.min(...fronts.map(edge))
  return fronts.some((face) => (face.kind === 'blindPanel' || face.kind === 'cornerFiller') && edge(face) === outermost)
}

/** The doors whose hinges are at a side of the cabinet. */
export function hingedAt({ fronts }: Standing, side: Side): FrontFace[] {
  const edge = (face: FrontFace) => (side === 'left' ? face.rect.left : -face.rect.left - face.rect.width)
  const outermost = Math.min(...fronts.map(edge))
  return fronts.filter((face) => face.kind === 'door' && face.hinge === side && edge(face) === outermost)
}

/**
 * A door that is opened square stands along the wall, and its handle wants room there.
 *
 *      wall |  |door, opened          wall | handle meets the wall
 *           |  |=o handle                  |o=|
 *           |__|________                   |__|________
 */
function hingedFinding(one: Standing, side: Side, project: Project, standing: readonly Standing[]): Finding[] {
  const doors = hingedAt(one, side)
  if (doors.length === 0) return []
  const widest = Math.max(...doors.map(({ rect }) => rect.width))
  const against = wallEnd(one, side, HANDLE_OUT, project) ?? deepNeighbour(one, side, widest, standing)
  if (!against) return []
  const { gap, words } = against
  const say = sayIn(project.display)
  const made = once(() => fillerRemedy(one, side, { gap, wanted: HANDLE_OUT }, project))
  const message = () =>
    `a door hinged at its ${side} opens against ${words}, ${say.length(gap)} beside it; its handle wants ${say.length(HANDLE_OUT)}. ` +
    roomWords(made(), hasPair(one.cabinet.front, one.fronts), say.between(HANDLE_OUT, gap))
  const told = { message, measure: say.length(gap), limit: say.length(HANDLE_OUT), source: PRACTICE }
  return [withRemedy(about(one, { weight: 'mind', ...told }), () => made() ?? turnRemedy(one, side))]
}

/** What can be done for a handle: a filler where one fits, else only what is left. */
function roomWords(made: Remedy | null, isPair: boolean, lacking: string): string {
  if (!made) {
    const none = `There is no room for a filler: the cabinets of this run would have to be ${lacking} narrower`
    return isPair ? `${none}.` : `${none}. Hinge it at the other side.`
  }
  const way = made.edit.kind === 'several' ? 'Make it that with a filler' : 'Leave it that much room'
  return `${way}${isPair ? '' : ', or hinge it at the other side'}.`
}

/** A neighbour that stands out as far as the handle of the opened door. */
function deepNeighbour(
  { cabinet, frontThickness }: Standing,
  side: Side,
  doorWidth: Mm,
  standing: readonly Standing[],
): Obstacle | null {
  const reach = cabinet.depth + frontThickness + doorWidth - HANDLE_IN
  for (const { cabinet: other, mark, frontThickness: front } of standing) {
    if (other.wall !== cabinet.wall || other.depth + front < reach) continue
    const gap = settle(side === 'left' ? cabinet.left - rightEdge(other) : other.left - rightEdge(cabinet))
    if (gap >= 0 && gap < HANDLE_OUT && sharedBy(cabinet, other).y > 0) return { gap, words: mark }
  }
  return null
}

/**
 * A filler, when everything then fits: the cabinet moves away by what the gap lacks of what is wanted, pushes its
 * neighbours along, and the filler closes the gap. Where the filler would be too narrow to be sawn safely, the cabinet moves
 * by so much more. Where a finished end stands, or what would have to be closed is wider than that, as where the corner is
 * open, only room is made.
 */
export function fillerRemedy(
  one: Standing,
  side: Side,
  { gap, wanted }: { readonly gap: Mm; readonly wanted: Mm },
  project: Project,
): Remedy | null {
  const room = roomRemedy(one, side, settle(wanted - gap), project)
  const filler = room && fillerIn(room, one, side, project)
  if (!filler || filler.width > wanted) return room
  const { lacking } = filler
  const label = `Put a filler at the ${side} of ${one.mark}`
  if (lacking === 0) return { label, edit: { kind: 'several', edits: [room.edit, filler.edit] } }
  const wider = roomRemedy(one, side, settle(wanted - gap + lacking), project)
  const filled = wider && fillerIn(wider, one, side, project)
  return filled?.lacking === 0 ? { label, edit: { kind: 'several', edits: [wider!.edit, filled.edit] } } : room
}

const EMPTY: Interior = { fixedShelves: 0, adjustableShelves: 0, partition: null }

interface Filled {
  readonly edit: Edit
  readonly width: Mm
  /** Of its width, so that it can be sawn safely. */
  readonly lacking: Mm
}

/** The filler that closes the gap beside a cabinet once it has room. */
function fillerIn({ edit }: Remedy, { cabinet: { id } }: Standing, side: Side, project: Project): Filled | null {
  const after = applyEdit(project, edit)
  const moved = find(after.cabinets, id)
  const filled = moved && gapFilled(after, moved, side)
  if (!moved || filled?.kind !== 'setBeside' || filled.beside.kind !== 'filler') return null
  const rules = rulesOf(moved, after)
  // What is in the cabinet and before it changes nothing of the width.
  const bare = { ...moved, front: { kind: 'open' }, interior: EMPTY, corner: null } as const
  const build = buildCabinet({ ...bare, beside: { ...moved.beside, [side]: filled.beside } }, rules)
  const number = side === 'left' ? 1 : 2
  const strip = partsOf(build, rules).find((part) => part.role === 'filler' && part.number === number)
  return { edit: filled, width: filled.beside.width, lacking: strip ? lackingToHold(strip) : 0 }
}

/** More room beside a cabinet, when everything then fits: it moves away and pushes its neighbours along. */
export function roomRemedy({ cabinet, mark }: Standing, side: Side, lacking: Mm, project: Project): Remedy | null {
  const shapes = roomMade(project, cabinet, side, lacking)
  if (!shapes) return null
  return { label: `Leave room at the ${side} of ${mark}`, edit: { kind: 'shapeCabinets', shapes } }
}

/** Each door of a pair hangs at its own side. One that may be a pair is one where doors hang at both. */
function hasPair(front: Front, faces: readonly FrontFace[]): boolean {
  if (front.kind === 'door' && front.orPair) return hasBothHands(faces)
  return front.kind === 'pair' || childrenOf(front).some((child) => hasPair(child.front, faces))
}

function hasBothHands(faces: readonly FrontFace[]): boolean {
  return (['left', 'right'] as const).every((hand) =>
    faces.some(({ kind, hinge }) => kind === 'door' && hinge === hand),
  )
}

/** A single door can be hinged at the other side. */
export function turnRemedy({ cabinet: { id, front }, fronts, mark }: Standing, side: Side): Remedy | null {
  if (front.kind !== 'door' || front.hinge !== side || hasBothHands(fronts)) return null
  const turned = { ...front, hinge: side === 'left' ? 'right' : 'left' } as const
  return { label: `Hinge ${mark} at the other side`, edit: { kind: 'setFront', ids: [id], front: turned } }
}

/** Nothing opens against the wall, but a front hard against it rubs where the wall comes forward. */
function hardFinding(one: Standing, side: Side, project: Project): Finding[] {
  const end = wallEnd(one, side, INSTALLERS_GAP, project)
  if (!end || isBlindAt(one, side)) return []
  const { gap } = end
  const say = sayIn(project.display)
  const message =
    `its fronts are ${say.length(gap)} from the ${side} end of the wall; walls are not straight, so ${say.length(INSTALLERS_GAP)} ` +
    'with a filler that is scribed to it is usual.'
  const told = { message, measure: say.length(gap), limit: say.length(INSTALLERS_GAP), source: INSTALLERS_SOURCE }
  return [
    withRemedy(about(one, { weight: 'know', ...told }), () =>
      fillerRemedy(one, side, { gap, wanted: INSTALLERS_GAP }, project),
    ),
  ]
}
