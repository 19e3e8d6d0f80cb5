import type { MaterialId, MethodId, ProjectId, StockId, WallId } from '../basics/id'
import { inch, type Mm } from '../units/length'
import type { CabinetKind, Material, NewCabinet, Project, Stock, Wall } from './document'
import { STOP_REACH, VERSION } from './document'
import { USUAL_LEGS } from './fixing'
import { NO_FRAMES, USUAL_FIVE_PART, USUAL_FRAME } from './frames'
import { NOTHING_LATE } from './late'
import { SLIDE_CLASSES, UNDERMOUNT_LONGER_BY, USUAL_HINGE, USUAL_SLIDES } from './machining'
import type { BuildMethod } from './method'

/**
 * A new project, from the one thing that is asked. Sizes are common practice (no source) where nothing else is said:
 * metric bases 868 high under a 32 mm top, so that the top is at 900; inch bases 34 1/2 under 1 1/2. Talls end where uppers
 * do.
 */
export function newProject(unit: 'mm' | 'in', name = 'New project'): Project {
  const preset = unit === 'mm' ? METRIC : INCH
  const methods = [shopStandard(preset), notchedSides(preset), framedInset(preset)]
  return {
    version: VERSION,
    id: 'p1' as ProjectId,
    name,
    display: unit === 'mm' ? { unit, step: 0.1 } : { unit, step: 32 },
    grid: preset.grid,
    walls: {
      [WALL]: { ...preset.wall, id: WALL, name: 'Wall', order: 1, meets: false, openings: {} },
    } as Project['walls'],
    cabinets: {},
    newCabinets: preset.newCabinets,
    methods: byId(methods) as Project['methods'],
    method: STANDARD,
    materials: byId(materialsOf(preset)) as Project['materials'],
    stock: byId(stockOf(preset)) as Project['stock'],
    kept: {},
    shop: preset.shop,
    // Studs stand 16 in apart in most framed walls. Source: thehonestcarpenter.com, on hanging wall cabinets.
    house: { shelfLoad: 'kitchen', doorway: null, studSpacing: inch(16) },
    between: { kick: 'perCabinet', countertop: null, lightRail: null, crown: null, valance: null, pins: {} },
  }
}

const WALL = 'w1' as WallId
const STANDARD = 'm1' as MethodId
const NOTCHED = 'm2' as MethodId
const FRAMED = 'm3' as MethodId
const CARCASS = 'carcass' as MaterialId
const BACK = 'back' as MaterialId
const FRONT = 'front' as MaterialId
const DRAWER = 'drawer' as MaterialId

interface Preset {
  readonly grid: Mm
  readonly wall: Pick<Wall, 'length' | 'height'>
  readonly newCabinets: { readonly [kind in CabinetKind]: NewCabinet }
  readonly plinth: Mm
  readonly stretcher: Mm
  readonly dado: Mm
  readonly nailer: Mm
  readonly grooveInset: Mm
  readonly grooveClearance: Mm
  /** Slides are sold in steps of this. Common practice, no source. */
  readonly slideStep: Mm
  readonly boards: readonly {
    readonly id: MaterialId
    readonly name: string
    nominal: Mm
    thickness: Mm
    price: number
  }[]
  readonly sheet: { readonly length: Mm; readonly width: Mm }
  readonly shop: Project['shop']
}

const SHOP: Project['shop'] = {
  // Of a rail-guided saw with a usual blade (common practice, no source).
  kerf: 2.2,
  // Factory edges are neither straight nor clean (common practice, no source).
  trim: 10,
  stages: 3,
  firstCut: 'rip',
  goals: { isOffcutLarge: true, areSettingsFew: true },
  offcutLeast: { length: 300, width: 150 },
  currency: '€',
  railLength: 2700,
  canJoinRails: true,
  // What parallel guides reach without and with their attachment differs; these are common practice, no source.
  guides: { least: 190, greatest: 650 },
  narrowRips: { least: 0, greatest: 230 },
  benchCrosscut: 650,
  stopReach: STOP_REACH,
  onePersonLift: 25,
  // Between 6 and 13 mm (common practice, no source).
  roughLength: 10,
  // Of a rail-guided saw: 12 to 18 teeth to rip, 42 to 56 for clean panels (common practice, no source).
  blades: { rip: { teeth: 18 }, crosscut: { teeth: 48 } },
  cutOrder: null,
  minutes: { perSetting: 2, perCut: 1.5, perSheet: 6 },
  late: NOTHING_LATE,
}

const METRIC: Preset = {
  grid: 50,
  wall: { length: 3600, height: 2400 },
  newCabinets: {
    base: { width: 600, height: 868, depth: 580, bottom: 0 },
    upper: { width: 600, height: 720, depth: 330, bottom: 1432 },
    tall: { width: 600, height: 2152, depth: 580, bottom: 0 },
  },
  plinth: 100,
  stretcher: 75,
  dado: 6,
  nailer: 90,
  grooveInset: 10,
  grooveClearance: 1.5,
  slideStep: 50,
  boards: [
    { id: CARCASS, name: '18 mm birch ply', nominal: 18, thickness: 18, price: 68 },
    { id: BACK, name: '6 mm birch ply', nominal: 6, thickness: 6, price: 31 },
    { id: FRONT, name: '18 mm front ply', nominal: 18, thickness: 18, price: 84 },
    { id: DRAWER, name: '12 mm birch ply', nominal: 12, thickness: 12, price: 52 },
  ],
  sheet: { length: 2440, width: 1220 },
  shop: SHOP,
}

const INCH: Preset = {
  grid: inch(3),
  wall: { length: inch(144), height: inch(96) },
  newCabinets: {
    base: { width: inch(24), height: inch(34.5), depth: inch(23.25), bottom: 0 },
    upper: { width: inch(24), height: inch(30), depth: inch(12), bottom: inch(54) },
    tall: { width: inch(24), height: inch(84), depth: inch(23.25), bottom: 0 },
  },
  // 34 1/2 less 4 1/4 leaves sides of 30 1/4 in.
  plinth: inch(4.25),
  stretcher: inch(3),
  dado: inch(0.25),
  nailer: inch(3.5),
  grooveInset: inch(3 / 8),
  grooveClearance: inch(1 / 16),
  slideStep: inch(2),
  boards: [
    // Nominal 3/4 in ply commonly measures 23/32 in. Source: woodworking.about.com, Cabinets 101, page 3.
    { id: CARCASS, name: '3/4 in birch ply', nominal: inch(0.75), thickness: inch(23 / 32), price: 72 },
    // Commonly about 0.205 in (common practice, no source).
    { id: BACK, name: '1/4 in birch ply', nominal: inch(0.25), thickness: 5.2, price: 34 },
    { id: FRONT, name: '3/4 in front ply', nominal: inch(0.75), thickness: inch(23 / 32), price: 89 },
    { id: DRAWER, name: '1/2 in birch ply', nominal: inch(0.5), thickness: inch(15 / 32), price: 55 },
  ],
  sheet: { length: inch(96), width: inch(48) },
  shop: {
    ...SHOP,
    trim: inch(3 / 8),
    currency: '$',
    offcutLeast: { length: inch(12), width: inch(6) },
    guides: { least: inch(7.5), greatest: inch(26) },
    narrowRips: { least: 0, greatest: inch(9) },
    roughLength: inch(3 / 8),
    railLength: inch(106),
    benchCrosscut: inch(26),
    stopReach: inch(60),
  },
}

function shopStandard(preset: Preset): BuildMethod {
  return {
    id: STANDARD,
    name: 'Shop standard',
    cornerJoint: { kind: 'dado', depth: { rule: 'depth', depth: preset.dado } },
    bottom: 'between',
    top: 'between',
    baseTop: { kind: 'stretchersFlat', width: preset.stretcher },
    back: { kind: 'groove', inset: preset.grooveInset, depth: preset.dado, clearance: preset.grooveClearance },
    floor: { kind: 'plinth', height: preset.plinth, setback: 60 },
    nailers: { where: 'inside', top: true, bottom: false, width: preset.nailer },
    fixedShelf: 'dado',
    frontMount: 'fullOverlay',
    ...NO_FRAMES,
    // Half an inch each side: what side-mounted slides ask for (common practice, no source).
    slide: { kind: 'side', clearance: 12.7 },
    fixing: { kind: 'none' },
    doorPull: { kind: 'none' },
    drawerPull: { kind: 'none' },
    carcassMaterial: CARCASS,
    backMaterial: BACK,
    frontMaterial: FRONT,
    drawerMaterial: DRAWER,
    drawerBottomMaterial: BACK,
    frameMaterial: FRONT,
    panelMaterial: BACK,
    // 5 mm holes at 32 mm, 37 mm from the front edge. Source: dalrun.com, '32mm Cabinetmaking'.
    shelves: { sideClearance: 3, setback: 10, pinDiameter: 5, pinDepth: 11, pitch: 32, rowSetback: 37, firstHole: 128 },
    banding: { carcass: 1, fronts: 1, isInFinishedSize: true },
    fronts: { gap: 3, endReveal: 1.5, topReveal: 3, bottomReveal: 0 },
    drawers: {
      bottomClearance: 16,
      topClearance: 16,
      lengthStep: preset.slideStep,
      rearClearance: 10,
      grooveDepth: 6,
      grooveUp: 10,
      bottomPlay: 1.6,
    },
    hinge: USUAL_HINGE,
    // The drawers of a base of the usual width weigh more with what is in them than the lightest class carries.
    slides: { ...USUAL_SLIDES, loadClass: SLIDE_CLASSES[1] },
    legs: USUAL_LEGS,
  }
}

function notchedSides(preset: Preset): BuildMethod {
  return {
    ...shopStandard(preset),
    id: NOTCHED,
    name: 'Notched sides, back in a rabbet',
    cornerJoint: { kind: 'dado', depth: { rule: 'residual', residual: 10 } },
    back: { kind: 'rabbet', depth: 9 },
    floor: { kind: 'notched', height: preset.plinth, setback: 75 },
    baseTop: { kind: 'stretchersOnEdge', width: preset.stretcher },
    // The opening less 1 5/8 in, as undermount slides ask for (common practice, no source).
    slide: { kind: 'undermount', insideDeduction: 41.3, longerBy: UNDERMOUNT_LONGER_BY },
    fixedShelf: 'pinned',
  }
}

function framedInset(preset: Preset): BuildMethod {
  return {
    ...shopStandard(preset),
    id: FRAMED,
    name: 'Face frame, inset doors',
    floor: { kind: 'notched', height: preset.plinth, setback: 75 },
    faceFrame: USUAL_FRAME,
    frontBuild: USUAL_FIVE_PART,
  }
}

/**
 * Birch ply weighs 685 kg/m3. Source: a birch plywood datasheet (18 mm: 36.7 kg for 1220 x 2440). Its stiffness in bending
 * along the grain is from memory, on the safe side of what datasheets say for 18 mm.
 */
function materialsOf({ boards }: Preset): Material[] {
  return boards.map(({ id, name, nominal, thickness }) => {
    return { id, name, nominal, thickness, hasGrain: true, density: 685, stiffness: 9000 }
  })
}

function stockOf({ boards, sheet }: Preset): Stock[] {
  return boards.map(({ id, price }, at) => {
    return {
      id: `s${at + 1}` as StockId,
      material: id,
      ...sheet,
      price,
      quantity: null,
      isOffcut: false,
      isExcluded: false,
    }
  })
}

function byId<Thing extends { readonly id: string }>(things: readonly Thing[]): Record<string, Thing> {
  return Object.fromEntries(things.map((thing) => [thing.id, thing]))
}
