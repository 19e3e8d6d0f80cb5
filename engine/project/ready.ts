import { inch, type Mm, settle } from '../units/length'
import { blindWidthLeast, CORNER_FILLER } from './blind'
import type { Corner } from './corner'
import type { CabinetKind, Front, FrontRow, Interior, NewCabinet, Project } from './document'
import { DOORS } from './doors'
import type { BuildMethod } from './method'
import type { Overrides } from './overrides'
import { kindOf, type NewKind } from './readyKinds'
import type { Appliance, ApplianceSpace } from './space'
import { usualSpace } from './usualSpace'

/** All of a new cabinet but its place, in mm. */
export interface Start extends NewCabinet {
  readonly kind: CabinetKind
  readonly front: Front
  readonly interior: Interior
  readonly overrides: Overrides
  readonly corner: Corner | null
  readonly space?: ApplianceSpace
}

/** Where it is put: its width, and whether that is nearer the right end of the wall. */
export interface Put {
  readonly width?: Mm
  readonly isAtRight?: boolean
}

const DRAWER: Front = { kind: 'drawer' }

/** How a new cabinet begins. Sizes that no maker has typed are common practice, no source. */
export function startOf(project: Project, what: NewKind, put: Put = {}): Start {
  const kind = kindOf(what)
  const plain: Start = {
    kind,
    ...project.newCabinets[kind],
    ...nothingIn(kind),
    front: DOORS,
    overrides: {},
    corner: null,
  }
  const usual = { ...plain, ...readyPart(project, what, put) }
  const width = put.width ?? usual.width
  return { ...usual, width }
}

/** What sets a ready cabinet apart from a plain box of its kind. */
function readyPart(project: Project, what: NewKind, put: Put): Partial<Start> {
  switch (what) {
    case 'base':
    case 'upper':
    case 'tall':
      return {}
    case 'drawerBase':
      return { front: rowsOf(fixed(topDrawerHeight(project), DRAWER), share(DRAWER), share(DRAWER)), interior: EMPTY }
    case 'sinkBase':
      return sinkBase(project, put)
    case 'vanityBase':
      return vanityBase(project, put)
    case 'blindBase':
    case 'blindUpper':
      return blindCorner(project, kindOf(what), put)
    case 'cornerBase':
    case 'cornerUpper':
      return inCorner(project, 'L', kindOf(what), put)
    case 'diagonalBase':
    case 'diagonalUpper':
      return inCorner(project, 'diagonal', kindOf(what), put)
    case 'islandBase':
      return islandBase(project)
    case 'endShelf':
      return { width: inUnits(project, 250, 10), front: { kind: 'open' }, interior: { ...EMPTY, fixedShelves: 2 } }
    case 'benchBox':
      return benchBox(project)
    case 'openShelves':
      return { front: { kind: 'open' }, interior: { ...EMPTY, adjustableShelves: 2 } }
    case 'pantry':
      return pantry()
    case 'applianceHousing':
      return applianceHousing(project, put)
    case 'dishwasherSpace':
      return spaceFor(project, 'dishwasher', what)
    case 'washerSpace':
      return spaceFor(project, 'washingMachine', what)
    case 'rangeSpace':
      return spaceFor(project, 'range', what)
    case 'fridgeSpace':
    case 'tallFridgeSpace':
      return spaceFor(project, 'fridge', what)
  }
}

/** A top on edge takes of the height behind the topmost front, which is higher by that. */
function topDrawerHeight(project: Project): Mm {
  const { baseTop } = methodIn(project)
  const usual = inUnits(project, 140, 5.5)
  if (baseTop.kind === 'full' || baseTop.kind === 'stretchersFlat') return usual
  return settle(usual + Math.max(0, baseTop.width - thicknessOf(project, 'carcassMaterial')))
}

/** No top and nothing behind the rail, a front that does not move before the bowl, and a window in the back for pipes. */
function sinkBase(project: Project, put: Put): Partial<Start> {
  const width = put.width ?? inUnits(project, 800, 30)
  const method = methodIn(project)
  const top = method.baseTop
  const floor = method.floor.kind === 'none' ? 0 : method.floor.height
  return {
    width,
    front: rowsOf(fixed(inUnits(project, 160, 6), { kind: 'falseFront' }), share(DOORS)),
    interior: {
      ...EMPTY,
      pipes: {
        width: inUnits(project, 300, 12),
        height: inUnits(project, 250, 10),
        bottom: settle(floor + inUnits(project, 200, 8)),
      },
    },
    overrides: { baseTop: { kind: 'frontRail', width: top.kind === 'full' ? inUnits(project, 75, 3) : top.width } },
  }
}

/** A low sink base that hangs clear of the floor by a rail before its back: its top is where that of a base stands. */
function vanityBase(project: Project, put: Put): Partial<Start> {
  const width = put.width ?? inUnits(project, 600, 24)
  const height = inUnits(project, 600, 24)
  const { nailers } = methodIn(project)
  return {
    ...sinkBase(project, { ...put, width }),
    height,
    depth: inUnits(project, 480, 19),
    bottom: settle(project.newCabinets.base.height - height),
    // A pair as wide as it begins, since one low door would be wider than its hinges are apart.
    front: rowsOf(fixed(inUnits(project, 100, 4), { kind: 'falseFront' }), share(DOORS)),
    interior: {
      ...EMPTY,
      pipes: { width: inUnits(project, 300, 12), height: inUnits(project, 200, 8), bottom: inUnits(project, 200, 8) },
    },
    overrides: {
      ...sinkBase(project, put).overrides,
      floor: { kind: 'none' },
      nailers: { ...nailers, top: true },
    },
  }
}

/**
 * Both legs as long and as deep as one another. A shelf of one board round the corner cannot be put into a base, nor past the
 * stiles of an L: there shelves are fixed, and built in with the other boards.
 */
function inCorner(project: Project, kind: Corner['kind'], of: CabinetKind, put: Put): Partial<Start> {
  const width = put.width ?? (of === 'upper' ? inUnits(project, 600, 24) : inUnits(project, 900, 36))
  const { depth } = project.newCabinets[of]
  const isBuiltIn = of === 'base' || (kind === 'L' && methodIn(project).faceFrame !== null)
  const { interior } = nothingIn(of)
  return {
    width,
    front: { kind: 'door', hinge: 'left' },
    corner: { kind, hand: put.isAtRight ? 'right' : 'left', other: width, otherDepth: depth },
    ...(isBuiltIn && { interior: { ...interior, fixedShelves: interior.adjustableShelves, adjustableShelves: 0 } }),
  }
}

/**
 * The door beside the blind part hangs on the far side, so that it opens away from the corner, and begins a filler from the
 * face of the run that will stand before it.
 */
function blindCorner(project: Project, kind: CabinetKind, { isAtRight = false }: Put): Partial<Start> {
  const blind = {
    kind: 'blind',
    neighbour: project.newCabinets[kind].depth,
    filler: inUnits(project, 80, 3),
    pull: inUnits(project, 40, 1.5),
  } as const
  const pull = Math.max(blind.pull, CORNER_FILLER)
  const least = blindWidthLeast({ ...blind, pull }, thicknessOf(project, 'frontMaterial'))
  const step = inUnits(project, 10, 0.5)
  const width = settle(Math.ceil(least / step - 1e-6) * step)
  const door: Front = { kind: 'door', hinge: isAtRight ? 'left' : 'right' }
  const corner = { size: { kind: 'fixed', width }, front: blind, shelves: null } as const
  const open = { size: { kind: 'share', share: 1 }, front: door, shelves: null } as const
  return {
    width: settle(width + inUnits(project, 450, 18)),
    front: rowsOf(share({ kind: 'columns', columns: isAtRight ? [open, corner] : [corner, open] })),
  }
}

/** Seen from behind: the back is a board of the fronts that covers the whole carcass, and nothing hangs on a wall. */
function islandBase(project: Project): Partial<Start> {
  const { nailers, frontMaterial } = methodIn(project)
  return {
    overrides: {
      back: { kind: 'applied', margin: 0 },
      backMaterial: frontMaterial,
      nailers: { ...nailers, top: false, bottom: false },
    },
  }
}

/** The lid lies over the carcass, so that with it the seat is at the usual height. */
function benchBox(project: Project): Partial<Start> {
  return {
    width: inUnits(project, 900, 36),
    height: settle(inUnits(project, 450, 18) - thicknessOf(project, 'frontMaterial')),
    depth: inUnits(project, 450, 18),
    front: { kind: 'falseFront' },
    interior: EMPTY,
    overrides: { baseTop: { kind: 'lid', width: inUnits(project, 60, 2.5) } },
  }
}

function pantry(): Partial<Start> {
  return {
    front: rowsOf(share(DOORS, 2), share(DOORS, 3)),
    interior: { ...EMPTY, fixedShelves: 1, adjustableShelves: 4 },
  }
}

/** Nothing but its place: what it is for, and how large that is. */
function spaceFor(project: Project, of: Appliance, what: NewKind): Partial<Start> {
  return { ...usualSpace(project, of, kindOf(what)), front: { kind: 'open' }, interior: EMPTY }
}

/** A usual built-in oven over two drawers; the maker's drawing is what counts. */
function applianceHousing(project: Project, put: Put): Partial<Start> {
  const niche = { kind: 'appliance', width: 560, height: 590, depth: 500, air: 45 } as const
  const thickness = thicknessOf(project, 'carcassMaterial')
  const { faceFrame, fronts } = methodIn(project)
  const drawer = fixed(inUnits(project, 300, 12), DRAWER)
  const step = inUnits(project, 10, 0.5)
  const least = settle(niche.width + 2 * Math.max(thickness, faceFrame?.stile ?? 0))
  const usual = project.newCabinets.tall.width
  const width = put.width ?? (usual >= least ? usual : settle(Math.ceil(least / step - 1e-6) * step))
  // Fronts that cover a frame are higher than its opening, which the appliance goes in through.
  const cover = faceFrame?.fronts.kind === 'overlay' ? faceFrame.fronts.by : 0
  const height = Math.max(nicheFrontHeight(niche.height, thickness, fronts.gap), settle(niche.height + 2 * cover))
  return {
    width,
    front: rowsOf(share(DOORS), fixed(height, niche), drawer, drawer),
    interior: { ...EMPTY, adjustableShelves: 2 },
  }
}

/**
 * How high a row between two others is that holds a niche: the boards of the niche lie behind the middles of the gaps
 * beside it, so each takes half of its thickness from the row and half of a gap comes to it.
 */
export function nicheFrontHeight(clear: Mm, boardThickness: Mm, gap: Mm): Mm {
  return settle(clear + boardThickness - gap)
}

const EMPTY: Interior = { fixedShelves: 0, adjustableShelves: 0, partition: null }

function nothingIn(kind: CabinetKind): { readonly interior: Interior } {
  return { interior: { ...EMPTY, adjustableShelves: kind === 'tall' ? 4 : kind === 'upper' ? 2 : 1 } }
}

function rowsOf(...rows: readonly FrontRow[]): Front {
  return { kind: 'rows', rows }
}

function share(front: Front, part = 1): FrontRow {
  return { size: { kind: 'share', share: part }, front }
}

function fixed(height: Mm, front: Front): FrontRow {
  return { size: { kind: 'fixed', height }, front }
}

/** A size that a shop of its unit would choose. */
function inUnits({ display }: Project, mm: Mm, inches: number): Mm {
  return settle(display.unit === 'mm' ? mm : inch(inches))
}

function methodIn({ methods, method }: Project): BuildMethod {
  return methods[method]!
}

/** Of a board as the project is built; 0 where it is not there. */
export function thicknessOf(project: Project, material: 'carcassMaterial' | 'frontMaterial'): Mm {
  return project.materials[methodIn(project)[material]]?.thickness ?? 0
}
