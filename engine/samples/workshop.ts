import type { OpeningId, ProjectId, WallId } from '../basics/id'
import { USUAL_DADO_FRONTS } from '../project/dadoFront'
import { newProject } from '../project/defaults'
import type { Cabinet, CabinetKind, Front, Interior, Project } from '../project/document'
import { USUAL_FIVE_PART, USUAL_FRAME, USUAL_OVERLAY, USUAL_TENON } from '../project/frames'
import type { MethodChoices } from '../project/method'
import { startOf } from '../project/ready'
import type { ReadyName, SpaceName } from '../project/readyKinds'
import { firstWall } from '../site/wall'
import type { Mm } from '../units/length'
import { numbered, place, rows, share, shelves } from './kitchen'

/** Between two talls stand so many bases and hang so many uppers. */
const SECTIONS = [
  { bases: 7, uppers: 6 },
  { bases: 6, uppers: 6 },
  { bases: 4, uppers: 3 },
] as const

const TALL_WIDTH: Mm = 600
const BASE_WIDTHS: readonly Mm[] = [600, 400, 800, 450, 900, 500]
const UPPER_WIDTHS: readonly Mm[] = [700, 450, 600, 800, 400, 550]

/** By kind; a single door becomes a pair where it would be too wide to hang. */
const FRONTS: Readonly<Record<CabinetKind, readonly Front[]>> = {
  base: [
    { kind: 'door', hinge: 'left' },
    rows(share(1, { kind: 'drawer' }), share(1, { kind: 'drawer' }), share(2, { kind: 'drawer' })),
    { kind: 'pair' },
    rows(
      { size: { kind: 'fixed', height: 180 }, front: { kind: 'drawer' } },
      share(1, { kind: 'door', hinge: 'right' }),
    ),
    { kind: 'open' },
    rows(share(1, { kind: 'drawer' }), share(1, { kind: 'drawer' })),
  ],
  upper: [
    { kind: 'door', hinge: 'left' },
    { kind: 'pair' },
    { kind: 'open' },
    rows(share(2, { kind: 'pair' }), share(1, { kind: 'open' })),
    { kind: 'door', hinge: 'right' },
  ],
  tall: [
    rows(share(2, { kind: 'door', hinge: 'left' }), share(3, { kind: 'door', hinge: 'left' })),
    rows(share(3, { kind: 'pair' }), share(1, { kind: 'drawer' }), share(1, { kind: 'drawer' })),
  ],
}

/** A wider door sags on its hinges (common practice, no source). */
const WIDEST_DOOR: Mm = 600

const INTERIORS: readonly Interior[] = [
  shelves(1),
  shelves(0),
  { ...shelves(2), partition: { at: 0.5 } },
  shelves(1),
  shelves(2, 1),
  shelves(2),
  shelves(0),
]

/** Every option of every choice of a build method, once at least. */
const CHOICES: { readonly [choice in keyof MethodChoices]?: readonly MethodChoices[choice][] } = {
  cornerJoint: [
    { kind: 'dado', depth: { rule: 'depth', depth: 6 } },
    { kind: 'butt' },
    { kind: 'rabbet', depth: { rule: 'depth', depth: 9 } },
    { kind: 'dado', depth: { rule: 'residual', residual: 10 } },
  ],
  bottom: ['between', 'between', 'under'],
  top: ['between', 'over'],
  baseTop: [{ kind: 'stretchersFlat', width: 75 }, { kind: 'full' }, { kind: 'stretchersOnEdge', width: 75 }],
  back: [
    { kind: 'groove', inset: 10, depth: 6, clearance: 1.5 },
    { kind: 'rabbet', depth: 9 },
    { kind: 'applied', margin: 2 },
    { kind: 'groove', inset: 20, depth: 6, clearance: 1.5 },
    { kind: 'none' },
  ],
  floor: [
    { kind: 'plinth', height: 100, setback: 60 },
    { kind: 'notched', height: 100, setback: 75 },
    { kind: 'legs', height: 100, setback: 60 },
    { kind: 'none' },
  ],
  nailers: [
    { where: 'inside', top: true, bottom: false, width: 90 },
    { where: 'inside', top: true, bottom: true, width: 90 },
    { where: 'behind', top: true, bottom: true, width: 75 },
  ],
  fixedShelf: ['dado', 'pinned'],
  frontMount: ['fullOverlay', 'halfOverlay', 'inset'],
  slide: [
    { kind: 'side', clearance: 12.7 },
    { kind: 'undermount', insideDeduction: 41.3 },
  ],
  dadoFront: [USUAL_DADO_FRONTS.through, USUAL_DADO_FRONTS.covered, USUAL_DADO_FRONTS.stopped],
}

/** The boxes that are of a ready kind: one of each. */
const READY_PLACES: Readonly<Record<string, ReadyName>> = {
  'base 1': 'vanityBase',
  'base 3': 'sinkBase',
  'base 7': 'islandBase',
  'base 11': 'blindBase',
  'base 13': 'drawerBase',
  'base 16': 'endShelf',
  'base 17': 'benchBox',
  'upper 3': 'openShelves',
  'upper 4': 'blindUpper',
  'tall 2': 'pantry',
  'tall 4': 'applianceHousing',
}

/**
 * What is left free at the right of a box: the dishwasher beside the sink, the range where nothing hangs over it, and all
 * under the top between two bases that hold it.
 */
const SPACE_AFTER: Readonly<Record<string, SpaceName>> = {
  'base 3': 'dishwasherSpace',
  'base 6': 'rangeSpace',
  'base 9': 'washerSpace',
  'base 14': 'fridgeSpace',
  'tall 4': 'tallFridgeSpace',
}

/** The boxes that are made otherwise than their turn would have it: by a face frame, five parts, or what is behind the door. */
const OWN_WAYS: Readonly<Record<string, Partial<Pick<Cabinet, 'front' | 'interior' | 'overrides'>>>> = {
  'base 2': { front: { kind: 'pullOut', box: 120 }, interior: shelves(0) },
  'base 9': {
    overrides: {
      faceFrame: { ...USUAL_FRAME, joint: { kind: 'tenon', length: USUAL_TENON } },
      frontBuild: USUAL_FIVE_PART,
    },
  },
  'base 10': {
    front: { kind: 'door', hinge: 'right' },
    interior: { ...shelves(0), rollOuts: { count: 2, height: 100 } },
  },
  'base 12': {
    overrides: {
      faceFrame: { ...USUAL_FRAME, fronts: { kind: 'overlay', by: USUAL_OVERLAY } },
      frontBuild: { ...USUAL_FIVE_PART, areDrawersToo: true },
    },
  },
  'base 14': { front: { kind: 'door', hinge: 'left' }, interior: { ...shelves(0), dividers: 3 } },
}

/** What stands in both corners of the short wall, from its left. */
const CORNERS: readonly (readonly [ReadyName, CabinetKind, 'left' | 'right'])[] = [
  ['cornerBase', 'base', 'left'],
  ['diagonalBase', 'base', 'right'],
  ['cornerUpper', 'upper', 'left'],
  ['diagonalUpper', 'upper', 'right'],
]

const SHORT_WALL = 'w2' as WallId
const SHORT: Mm = 3000

/** Between the uppers of the short wall, for a valance to go over. */
const BETWEEN_UPPERS = {
  ...{ id: 'o1' as OpeningId, kind: 'window' },
  ...{ left: 900, bottom: 1050, width: 1200, height: 1000 },
} as const

/**
 * Forty cabinets on a wall of 16 m and in both corners of a short one, of every kind, front and way to build, with a space
 * for each appliance among them: what a long day in the shop looks like.
 */
export function fortyCabinets(): Project {
  const bare = newProject('mm', 'Forty cabinets')
  const plain: Project = { ...bare, between: betweenThem(bare) }
  const wall = firstWall(plain)!
  const counts: Record<CabinetKind, number> = { base: 0, upper: 0, tall: 0 }
  const cabinets: Cabinet[] = []
  const spaces: Cabinet[] = []
  const put = (kind: CabinetKind, left: Mm, width: Mm): Mm => {
    const at = cabinets.length
    const front = frontOf(kind, counts[kind], width)
    const interior = isAllDrawers(front) ? shelves(0) : turn(INTERIORS, at)
    const made = place(plain, kind, ++counts[kind], left, width, front, interior)
    const name = `${kind} ${counts[kind]}`
    const ready = READY_PLACES[name]
    cabinets.push(ready ? standingReady(plain, made, ready, at) : madeItsWay(made, choicesAt(at), OWN_WAYS[name]))
    const space = SPACE_AFTER[name]
    if (space) spaces.push(leftFree(plain, space, spaces.length + 1, left + width))
    return left + width + (space ? spaces.at(-1)!.width : 0)
  }
  let left = put('tall', 0, TALL_WIDTH)
  for (const section of SECTIONS) {
    let above = left
    for (let n = 0; n < section.uppers; n++) above = put('upper', above, turn(UPPER_WIDTHS, n))
    for (let n = 0; n < section.bases; n++) left = put('base', left, turn(BASE_WIDTHS, counts.base))
    left = put('tall', left, TALL_WIDTH)
  }
  for (const [name, kind, hand] of CORNERS) cabinets.push(inItsCorner(plain, name, ++counts[kind], hand))
  const walls = {
    [wall.id]: { ...wall, name: 'Long wall', length: 16_000, height: 2600 },
    [SHORT_WALL]: {
      ...wall,
      ...{ id: SHORT_WALL, name: 'Short wall', order: 2, length: SHORT, height: 2600 },
      openings: { [BETWEEN_UPPERS.id]: BETWEEN_UPPERS },
    },
  }
  return {
    ...plain,
    id: 'forty-cabinets' as ProjectId,
    walls: walls as Project['walls'],
    cabinets: numbered([...cabinets, ...spaces]),
  }
}

function madeItsWay(made: Cabinet, choices: Partial<MethodChoices>, own: (typeof OWN_WAYS)[string] = {}): Cabinet {
  return { ...made, ...own, overrides: { ...choices, ...own.overrides } }
}

function inItsCorner(plain: Project, name: ReadyName, number: number, hand: 'left' | 'right'): Cabinet {
  const { kind, width, front, interior, corner } = startOf(plain, name, { isAtRight: hand === 'right' })
  const made = place(plain, kind, number, hand === 'left' ? 0 : SHORT - width, width, front, interior)
  return { ...made, wall: SHORT_WALL, corner }
}

function leftFree(plain: Project, name: SpaceName, number: number, left: Mm): Cabinet {
  const { kind, width, height, depth, front, interior, space } = startOf(plain, name)
  return { ...place(plain, kind, number, left, width, front, interior), height, depth, space }
}

/** A countertop with its splash over every run of bases, kicks as long as their sheets, and trims along all that hangs. */
function betweenThem({ between, methods, method }: Project): Project['between'] {
  const material = methods[method]!.frontMaterial
  return {
    ...between,
    kick: 'inLengths',
    countertop: { material, overhang: 20, ends: 10, splash: 80, banding: 1 },
    lightRail: { material, height: 40, forward: 0 },
    crown: { material, height: 80, forward: 20 },
    valance: { material, height: 100, forward: 0 },
  }
}

/** A ready kind in the place of a plain box, in as many ways to build as it leaves open. */
function standingReady(plain: Project, made: Cabinet, name: ReadyName, at: number): Cabinet {
  const { bottom, height, depth, front, interior, overrides } = startOf(plain, name, { width: made.width })
  return { ...made, bottom, height, depth, front, interior, overrides: { ...choicesAt(at), ...overrides } }
}

/** Each choice goes round its options, and every seven cabinets skips on by its own step, so that pairings vary. */
function choicesAt(at: number): Partial<MethodChoices> {
  const entries = Object.entries(CHOICES).map(([choice, options], step) => [
    choice,
    turn<unknown>(options, at + step * Math.floor(at / 7)),
  ])
  return Object.fromEntries(entries) as Partial<MethodChoices>
}

function frontOf(kind: CabinetKind, at: number, width: Mm): Front {
  const front = turn(FRONTS[kind], at)
  if (width <= WIDEST_DOOR) return front
  if (front.kind === 'door') return { kind: 'pair' }
  if (front.kind !== 'rows') return front
  return rows(
    ...front.rows.map((row) => (row.front.kind === 'door' ? { ...row, front: { kind: 'pair' } as const } : row)),
  )
}

/** A bank of drawers leaves no room for shelves. */
function isAllDrawers(front: Front): boolean {
  return front.kind === 'rows' && front.rows.every((row) => row.front.kind === 'drawer')
}

function turn<Option>(options: readonly Option[], at: number): Option {
  return options[at % options.length]!
}
