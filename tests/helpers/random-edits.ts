import {
  type CabinetId,
  type KeptId,
  type MaterialId,
  type MethodId,
  type OpeningId,
  type PartId,
  type SequenceId,
  type StockId,
  valuesOf,
  type WallId,
} from '../../engine/basics/id'
import type { Random } from '../../engine/basics/random'
import type {
  Beside,
  Between,
  Cabinet,
  CabinetKind,
  Front,
  Material,
  Project,
  Wall,
} from '../../engine/project/document'
import type { Edit } from '../../engine/project/edit'
import { freshBoard } from '../../engine/project/materials'
import type { BuildMethod, MethodChoices } from '../../engine/project/method'
import { newCabinetAt } from '../../engine/runs/place'
import { freshWall } from '../../engine/site/wall'
import { length, pick, whole } from './dice'
import { keepSheet, putStock } from './random-sheets'

/**
 * Some edit of a project: mostly of what is there, now and then of nothing, or one that changes nothing. Cabinets may
 * come to overlap; an edit does what it is asked.
 */
export function randomEdit(project: Project, random: Random): Edit {
  return pick(MAKERS, random)(project, random)
}

type Maker = (project: Project, random: Random) => Edit

const KINDS: readonly CabinetKind[] = ['base', 'upper', 'tall']
const FRONTS: readonly Front[] = [
  { kind: 'open' },
  { kind: 'door', hinge: 'left' },
  { kind: 'pair' },
  { kind: 'door', hinge: 'top' },
  {
    kind: 'columns',
    columns: [
      { size: { kind: 'fixed', width: 250 }, front: { kind: 'drawer' }, shelves: null },
      { size: { kind: 'share', share: 1 }, front: { kind: 'pair' }, shelves: null },
    ],
  },
  {
    kind: 'rows',
    rows: [
      { size: { kind: 'fixed', height: 150 }, front: { kind: 'falseFront' } },
      { size: { kind: 'share', share: 1 }, front: { kind: 'pair' } },
    ],
  },
  {
    kind: 'rows',
    rows: [
      { size: { kind: 'fixed', height: 140 }, front: { kind: 'drawer' } },
      { size: { kind: 'share', share: 0.7 }, front: { kind: 'pair' } },
    ],
  },
]
const BESIDE: readonly Beside[] = [
  { kind: 'none' },
  { kind: 'filler', width: 33.3, scribe: 10 },
  { kind: 'skin', material: 'back' as MaterialId },
  { kind: 'panel', material: 'front' as MaterialId, foot: 'notched' },
]
const CHOICES: readonly Partial<MethodChoices>[] = [
  { bottom: 'under' },
  { bottom: undefined, top: undefined },
  { top: 'over', back: { kind: 'rabbet', depth: 9.1 } },
  { cornerJoint: { kind: 'butt' }, baseTop: { kind: 'full' } },
  { frontMount: 'inset', floor: { kind: 'legs', height: 101.3, setback: 50 } },
  { carcassMaterial: 'front' as MaterialId },
]

const MAKERS: readonly Maker[] = [
  add,
  add,
  reshape,
  reshape,
  reshape,
  (project, random) => ({ kind: 'removeCabinets', ids: [anyId(project, random)] }),
  (project, random) => ({ kind: 'setFront', ids: [anyId(project, random)], front: pick(FRONTS, random) }),
  (project, random) => ({ kind: 'override', ids: [anyId(project, random)], choices: pick(CHOICES, random) }),
  (project, random) => ({
    kind: 'setInterior',
    ids: [anyId(project, random)],
    interior: {
      fixedShelves: whole(0, 2, random),
      adjustableShelves: whole(0, 4, random),
      partition: random() < 0.3 ? { at: 0.25 + random() / 2 } : null,
    },
  }),
  (project, random) => ({
    kind: 'setCabinetMethod',
    ids: [anyId(project, random)],
    method: random() < 0.3 ? null : anyMethod(project, random),
  }),
  (project, random) => ({ kind: 'editWall', id: wallIn(project).id, change: { length: length(2000, 6000, random) } }),
  putOpening,
  (project, random) => ({ kind: 'removeOpening', wall: wallIn(project).id, id: openingId(random) }),
  (_, random) => ({
    kind: 'editMaterial',
    id: pick(['carcass', 'back', 'front', 'drawer'], random) as MaterialId,
    change: { thickness: length(5, 20, random) },
  }),
  (_, random) => ({
    kind: 'editMethod',
    id: pick(['m1', 'm2'], random) as MethodId,
    change: {
      bottom: pick(['between', 'under'], random),
      fronts: { gap: 3, endReveal: 1.5, topReveal: 3, bottomReveal: 0 },
    },
  }),
  (project, random) => ({ kind: 'copyMethod', id: anyMethod(project, random) }),
  (project, random) => ({ kind: 'removeMethod', id: anyMethod(project, random) }),
  (project, random) => ({ kind: 'useMethod', id: anyMethod(project, random) }),
  putMethod,
  editBetween,
  (project, random) => ({
    kind: 'setTop',
    ids: [anyId(project, random)],
    top: random() < 0.3 ? {} : { own: { material: pick(['carcass', 'front', 'b1'], random) as MaterialId } },
  }),
  (project, random) => ({
    kind: 'measureOpening',
    id: anyId(project, random),
    at: pick(['whole', '0', '1', '1-0'], random),
    measured: random() < 0.2 ? null : { width: length(300, 700, random), height: null },
  }),
  (project, random) => ({
    kind: 'setCorner',
    ids: [anyId(project, random)],
    corner: random() < 0.5 ? null : { kind: 'L', hand: 'left', other: length(600, 1100, random), otherDepth: 560 },
  }),
  (project) => ({ kind: 'addWall', wall: freshWall(project) }),
  (project, random) => ({
    kind: 'editWall',
    id: pick(Object.keys(project.walls), random) as WallId,
    change: { meets: random() < 0.7 },
  }),
  (project, random) => ({ kind: 'removeWall', id: pick(Object.keys(project.walls), random) as WallId }),
  (project) => ({ kind: 'addMaterial', ...freshBoard(project) }),
  (project, random) => ({ kind: 'removeMaterial', id: pick(Object.keys(project.materials), random) as MaterialId }),
  putStock,
  (_, random) => ({ kind: 'removeStock', id: `s${whole(4, 8, random)}` as StockId }),
  (project, random) => ({
    kind: 'letGrainRun',
    ids: [anyId(project, random)],
    way: random() < 0.7 ? (random() < 0.5 ? 'running' : 'across') : 'none',
  }),
  (project, random) => ({
    kind: 'pin',
    parts: [`${anyId(project, random)}/${pick(['left-side', 'bottom', 'door-1'], random)}` as PartId],
    stock: pick([null, 's1', 's5', 's99'], random) as StockId | null,
  }),
  (project, random) => ({
    kind: 'pinSheet',
    parts: [`${anyId(project, random)}/${pick(['right-side', 'bottom', 'door-1'], random)}` as PartId],
    sheet: pick([null, 1, 2, 40, 0.5], random),
  }),
  (project, random) => ({
    kind: 'putInSequence',
    parts: ['left-side', 'right-side', 'bottom'].map((board) => `${anyId(project, random)}/${board}` as PartId),
    sequence:
      random() < 0.3 ? null : { id: `g${whole(1, 3, random)}` as SequenceId, along: pick(['length', 'width'], random) },
  }),
  keepSheet,
  (project, random) => ({
    kind: 'setBeside',
    ids: [anyId(project, random)],
    side: random() < 0.5 ? 'left' : 'right',
    beside: pick(BESIDE, random),
  }),
  (_, random) => ({ kind: 'releaseSheet', id: `q${whole(1, 3, random)}` as KeptId }),
  (_, random) => ({ kind: 'editShop', change: { kerf: length(1, 4, random) } }),
  (_, random) => ({
    kind: 'editNewCabinet',
    cabinet: pick(KINDS, random),
    change: { width: length(300, 900, random) },
  }),
  (_, random) => ({
    kind: 'setDisplay',
    display: random() < 0.5 ? { unit: 'mm', step: 0.1 } : { unit: 'in', step: 32 },
  }),
  (_, random) => ({
    kind: 'rename',
    name: pick(['Ferry Cottage', 'A \u202Eturned\u0007 name', 'x'.repeat(100)], random),
  }),
  (project, random) => ({ kind: 'several', edits: [reshape(project, random), reshape(project, random)] }),
]

function add(project: Project, random: Random): Edit {
  const kind = random() < 0.1 ? 'dishwasherSpace' : pick(KINDS, random)
  const cabinet = newCabinetAt(project, kind, length(0, 3000, random), length(150, 900, random))!
  return { kind: 'addCabinet', cabinet: { ...cabinet, front: pick(FRONTS, random) } }
}

function reshape(project: Project, random: Random): Edit {
  const left = length(0, 3000, random)
  const change = pick(
    [
      { left },
      { left, width: length(150, 900, random) },
      { height: length(300, 2000, random) },
      { depth: length(200, 600, random), bottom: undefined },
      { bottom: length(0, 1500, random) },
      {},
    ],
    random,
  )
  return { kind: 'shapeCabinets', shapes: [{ id: anyId(project, random), ...change }] }
}

function putOpening(project: Project, random: Random): Edit {
  const place = { left: length(0, 2000, random), bottom: 900, width: 700, height: length(600, 1200, random) }
  return { kind: 'putOpening', wall: wallIn(project).id, opening: { id: openingId(random), kind: 'window', ...place } }
}

/** One of the methods, or sometimes one that is not there. */
function anyMethod(project: Project, random: Random): MethodId {
  return pick([...Object.keys(project.methods), 'gone'], random) as MethodId
}

/** A method from elsewhere, now and then with a board of its own, or of a board that is nowhere. */
function putMethod(project: Project, random: Random): Edit {
  const [like] = valuesOf<BuildMethod>(project.methods)
  const board = valuesOf<Material>(project.materials)[0]!
  const own = { ...board, id: 'own' as MaterialId, thickness: length(5, 25, random) }
  return {
    kind: 'putMethod',
    method: {
      ...like!,
      id: pick(['m1', 'm7', 'm8'], random) as MethodId,
      nailers: { where: 'behind', top: true, bottom: true, width: length(60, 120, random) },
      backMaterial: pick(['own', 'back', 'nowhere'], random) as MaterialId,
    },
    materials: random() < 0.5 ? [own] : [],
  }
}

function editBetween(_: Project, random: Random): Edit {
  const material = pick(['carcass', 'front', 'b1', 'nowhere'], random) as MaterialId
  const trim = random() < 0.3 ? null : { material, height: length(30, 120, random), forward: length(-30, 30, random) }
  const countertop = { material, overhang: 20, ends: 15, splash: length(0, 90, random), banding: 2 }
  return {
    kind: 'editBetween',
    change: pick<Partial<Between>>(
      [{ kick: 'inLengths' }, { countertop }, { lightRail: trim }, { crown: trim }],
      random,
    ),
  }
}

/** One of the cabinets, or sometimes one that is not there. */
function anyId(project: Project, random: Random): CabinetId {
  const ids = valuesOf<Cabinet>(project.cabinets).map(({ id }) => id)
  return ids.length === 0 || random() < 0.05 ? ('gone' as CabinetId) : pick(ids, random)
}

function openingId(random: Random): OpeningId {
  return `o${whole(1, 3, random)}` as OpeningId
}

function wallIn(project: Project): Wall {
  return valuesOf<Wall>(project.walls)[0]!
}
