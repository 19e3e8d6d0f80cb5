import type { CabinetId, MaterialId, MethodId, WallId } from '../../engine/basics/id'
import type { Board, BoardRole } from '../../engine/cabinets/board'
import type { Rules } from '../../engine/cabinets/build'
import { buildCabinet } from '../../engine/cabinets/buildCabinet'
import { type Carcass, carcassOf } from '../../engine/cabinets/carcass'
import { reportOn } from '../../engine/cabinets/report'
import { type Cabinet, type CabinetKind, type Material, NOTHING_BESIDE } from '../../engine/project/document'
import { USUAL_LEGS } from '../../engine/project/fixing'
import { NO_FRAMES } from '../../engine/project/frames'
import { USUAL_HINGE, USUAL_SLIDES } from '../../engine/project/machining'
import type { BuildMethod } from '../../engine/project/method'

/** Thicknesses by which a test names its boards; they differ from one another. */
export const BOARDS = { carcass: 18, back: 6, front: 19, drawer: 12, drawerBottom: 5, frame: 20, panel: 7 }

/** A plain method: butted boards, an applied back, no floor, nothing banded. A test says what it needs besides. */
export const PLAIN: BuildMethod = {
  id: 'm1' as MethodId,
  name: 'Plain',
  cornerJoint: { kind: 'butt' },
  bottom: 'between',
  top: 'between',
  baseTop: { kind: 'full' },
  back: { kind: 'none' },
  floor: { kind: 'none' },
  nailers: { where: 'inside', top: false, bottom: false, width: 80 },
  fixedShelf: 'dado',
  frontMount: 'fullOverlay',
  ...NO_FRAMES,
  slide: { kind: 'side', clearance: 12.7 },
  fixing: { kind: 'none' },
  doorPull: { kind: 'none' },
  drawerPull: { kind: 'none' },
  carcassMaterial: 'carcass' as MaterialId,
  backMaterial: 'back' as MaterialId,
  frontMaterial: 'front' as MaterialId,
  drawerMaterial: 'drawer' as MaterialId,
  drawerBottomMaterial: 'drawerBottom' as MaterialId,
  frameMaterial: 'frame' as MaterialId,
  panelMaterial: 'panel' as MaterialId,
  shelves: { sideClearance: 3, setback: 0, pinDiameter: 5, pinDepth: 11, pitch: 32, rowSetback: 37, firstHole: 96 },
  banding: { carcass: 0, fronts: 0, isInFinishedSize: false },
  fronts: { gap: 3, endReveal: 1.5, topReveal: 3, bottomReveal: 0 },
  drawers: {
    bottomClearance: 16,
    topClearance: 14,
    lengthStep: 50,
    rearClearance: 10,
    grooveDepth: 6,
    grooveUp: 10,
    bottomPlay: 1.6,
  },
  hinge: USUAL_HINGE,
  slides: USUAL_SLIDES,
  legs: USUAL_LEGS,
}

export type MethodChanges = Partial<Omit<BuildMethod, 'id' | 'name'>>

export function rulesWith(changes: MethodChanges = {}, thicknesses: Partial<typeof BOARDS> = {}): Rules {
  const materials = Object.entries({ ...BOARDS, ...thicknesses }).map(([id, thickness]): Material => {
    return {
      id: id as MaterialId,
      name: `${thickness} mm board`,
      nominal: thickness,
      thickness,
      hasGrain: true,
      density: 685,
      stiffness: 9000,
    }
  })
  return { method: { ...PLAIN, ...changes }, materials: Object.fromEntries(materials.map((one) => [one.id, one])) }
}

export function aCabinet(kind: CabinetKind, changes: Partial<Omit<Cabinet, 'kind'>> = {}): Cabinet {
  return {
    id: 'k1' as CabinetId,
    kind,
    number: 1,
    wall: 'w1' as WallId,
    left: 0,
    bottom: kind === 'upper' ? 1400 : 0,
    width: 600,
    height: kind === 'tall' ? 2100 : 720,
    depth: kind === 'upper' ? 330 : 580,
    front: { kind: 'open' },
    interior: { fixedShelves: 0, adjustableShelves: 0, partition: null },
    method: null,
    overrides: {},
    isGrainRunning: false,
    pins: {},
    beside: NOTHING_BESIDE,
    cutout: null,
    corner: null,
    ...changes,
  }
}

/** The carcass of a cabinet that has nothing wrong with it. */
export function carcassFrom(cabinet: Cabinet, rules: Rules): Carcass {
  const report = reportOn(cabinet.id, 'B1')
  const carcass = carcassOf(cabinet, rules, report)
  if (!carcass || report.problems.length > 0) throw new Error(JSON.stringify(report.problems))
  return carcass
}

export function boardsOf(cabinet: Cabinet, rules: Rules): readonly Board[] {
  return buildCabinet(cabinet, rules).boards
}

/** The only board of a role, or the one with a number. */
export function boardIn(boards: readonly Board[], role: BoardRole, number = 1): Board {
  const board = boards.find((one) => one.role === role && one.number === number)
  if (!board) throw new Error(`no ${role} ${number} among ${boards.map((one) => one.role).join(', ')}`)
  return board
}

/** Length by width, as a cut list says it. */
export function sizeOf({ length, width }: Board): string {
  return `${length} x ${width}`
}
