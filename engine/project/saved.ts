import { z } from 'zod'
import { VERSION } from './document'
import { cleanName, LONGEST_NAME } from './name'
import { savedBetween, savedCutout, savedTopHere } from './savedBetween'
import { savedCorner } from './savedCorner'
import { savedFixing, savedPockets } from './savedFixing'
import { savedFrames } from './savedFrames'
import { savedBays, savedFront, savedShelves } from './savedFront'
import { field, measure } from './savedNumber'
import { savedOwnRules, savedRules } from './savedRules'
import { savedSequence } from './savedSequence'
import { savedSpace } from './savedSpace'
import { flag, id, oneOf } from './savedWord'

const NAME_FORM = `it must be a text of ${LONGEST_NAME} signs at most`
const name = z
  .string({ error: NAME_FORM })
  .transform(cleanName)
  .pipe(z.string().max(LONGEST_NAME, { error: NAME_FORM }))

const rect = { left: field('left'), bottom: field('bottom'), width: field('width'), height: field('height') }
const opening = z.strictObject({ id, kind: oneOf('window', 'door'), ...rect })

const wall = z.strictObject({
  id,
  name,
  order: field('order'),
  length: field('length'),
  height: field('height'),
  meets: flag,
  closes: flag.optional(),
  openings: z.record(id, opening),
})

const jointDepth = z.discriminatedUnion('rule', [
  z.strictObject({ rule: z.literal('depth'), depth: measure }),
  z.strictObject({ rule: z.literal('residual'), residual: measure }),
])

/** A floor that stands on something of a height, set back from the front. */
const stand = <Kind extends string>(kind: Kind) =>
  z.strictObject({ kind: z.literal(kind), height: measure, setback: measure })

const choices = {
  cornerJoint: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('butt') }),
    z.strictObject({ kind: z.literal('rabbet'), depth: jointDepth }),
    z.strictObject({ kind: z.literal('dado'), depth: jointDepth }),
  ]),
  dadoFront: z
    .discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('through') }),
      z.strictObject({ kind: z.literal('covered') }),
      z.strictObject({ kind: z.literal('stopped'), behind: measure }),
    ])
    .optional(),
  bottom: oneOf('between', 'under'),
  top: oneOf('between', 'over'),
  baseTop: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('full') }),
    z.strictObject({ kind: z.literal('stretchersFlat'), width: measure }),
    z.strictObject({ kind: z.literal('stretchersOnEdge'), width: measure }),
    z.strictObject({ kind: z.literal('frontRail'), width: measure }),
    z.strictObject({ kind: z.literal('lid'), width: measure }),
  ]),
  back: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('groove'), inset: measure, depth: measure, clearance: measure }),
    z.strictObject({ kind: z.literal('rabbet'), depth: measure }),
    z.strictObject({ kind: z.literal('applied'), margin: measure }),
    z.strictObject({ kind: z.literal('none') }),
  ]),
  floor: z.discriminatedUnion('kind', [
    stand('notched'),
    stand('plinth'),
    stand('legs'),
    z.strictObject({ kind: z.literal('none') }),
  ]),
  nailers: z.strictObject({
    where: oneOf('inside', 'behind'),
    top: flag,
    bottom: flag,
    middle: flag.optional(),
    areLetIn: flag.optional(),
    width: measure,
  }),
  fixedShelf: oneOf('dado', 'pinned'),
  frontMount: oneOf('fullOverlay', 'halfOverlay', 'inset'),
  ...savedFrames,
  slide: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('side'), clearance: measure }),
    z.strictObject({ kind: z.literal('undermount'), insideDeduction: measure, longerBy: measure.optional() }),
  ]),
  ...savedFixing,
  carcassMaterial: id,
  backMaterial: id,
  frontMaterial: id,
  drawerMaterial: id,
  drawerBottomMaterial: id,
  frameMaterial: id,
  panelMaterial: id,
}

const method = z.strictObject({
  id,
  name,
  ...choices,
  ...savedRules,
  pockets: savedPockets.optional(),
})

const beside = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('none') }),
  z.strictObject({ kind: z.literal('filler'), width: field('filler'), scribe: field('scribe') }),
  z.strictObject({ kind: z.literal('skin'), material: id }),
  z.strictObject({ kind: z.literal('panel'), material: id, foot: oneOf('floor', 'notched') }),
])

const OPENING_FORM = 'it must be named by its place in the front: whole, or 1-0'
const openingPlace = z
  .string({ error: OPENING_FORM })
  .regex(/^(whole|\d{1,2}(-\d{1,2}){0,9})$/, { error: OPENING_FORM })

const cabinet = z.strictObject({
  id,
  kind: oneOf('base', 'upper', 'tall'),
  number: field('number'),
  wall: id,
  ...rect,
  depth: field('depth'),
  front: savedFront,
  interior: z.strictObject({
    ...savedShelves,
    partition: z.strictObject({ at: field('at') }).nullable(),
    bays: savedBays.optional(),
    pipes: z.strictObject({ width: measure, height: measure, bottom: measure }).optional(),
  }),
  method: id.nullable(),
  overrides: z.strictObject({ ...choices, ...savedOwnRules }).partial(),
  isGrainRunning: flag,
  isGrainAcross: flag.optional(),
  pins: z.record(id, id),
  sheets: z.record(id, field('sheet')).optional(),
  beside: z.strictObject({ left: beside, right: beside }),
  cutout: savedCutout.nullable(),
  corner: savedCorner,
  asBuilt: z.record(openingPlace, z.strictObject({ width: measure.nullable(), height: measure.nullable() })).optional(),
  space: savedSpace.optional(),
  top: savedTopHere.optional(),
})

const newCabinet = z.strictObject({
  width: field('width'),
  height: field('height'),
  depth: field('depth'),
  bottom: field('bottom'),
})

const material = z.strictObject({
  id,
  name,
  nominal: field('nominal'),
  thickness: field('thickness'),
  hasGrain: flag,
  density: field('density'),
  stiffness: field('stiffness'),
  stiffnessAcross: field('stiffnessAcross').optional(),
})

const stock = z.strictObject({
  id,
  material: id,
  length: field('length'),
  width: field('width'),
  price: field('price'),
  quantity: field('quantity').nullable(),
  isOffcut: flag,
  isExcluded: flag,
})

const MOST_PIECES = 1000
const ROW_FORM = 'it must be the key of a row, a text of 200 signs at most'
const rowKey = z.string({ error: ROW_FORM }).min(1, { error: ROW_FORM }).max(200, { error: ROW_FORM })
const place = { x: measure, y: measure, length: measure, width: measure }
const piece: z.ZodType = z.lazy(() =>
  z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('part'), part: rowKey, rotated: flag, ...place }),
    z.strictObject({ kind: z.literal('offcut'), ...place }),
    z.strictObject({ kind: z.literal('waste'), ...place }),
    z.strictObject({
      kind: z.literal('cut'),
      direction: oneOf('rip', 'crosscut'),
      pieces: z.array(piece).min(1).max(MOST_PIECES),
      ...place,
    }),
  ]),
)

const keptSheet = z.strictObject({
  id,
  order: field('order'),
  sheet: field('sheet').optional(),
  stock: id,
  copies: field('copies'),
  root: piece,
})

const reach = z.strictObject({ least: measure, greatest: measure })
const blade = z.strictObject({ teeth: field('teeth') })

const shop = z.strictObject({
  kerf: field('kerf'),
  trim: measure,
  stages: z.union([z.literal(2), z.literal(3), z.null()], { error: 'it must be 2, 3 or null' }),
  firstCut: oneOf('rip', 'crosscut', 'any'),
  goals: z.strictObject({
    isCountFirst: flag.optional(),
    isOffcutLarge: flag,
    areSettingsFew: flag,
    areSettingsFirst: flag.optional(),
  }),
  offcutLeast: z.strictObject({ length: measure, width: measure }),
  currency: name,
  railLength: measure,
  canJoinRails: flag,
  guides: reach,
  narrowRips: reach.nullable(),
  benchCrosscut: measure,
  stopReach: measure.optional(),
  onePersonLift: field('onePersonLift'),
  roughLength: measure,
  blades: z.strictObject({ rip: blade, crosscut: blade }),
  cutOrder: oneOf('sheet by sheet', 'setting by setting').nullable(),
  minutes: z.strictObject({ perSetting: field('perSetting'), perCut: field('perCut'), perSheet: field('perSheet') }),
  late: z.strictObject({ fronts: flag, drawerBoxes: flag, fitted: flag }),
})

const house = z.strictObject({
  shelfLoad: oneOf('kitchen', 'general', 'books'),
  doorway: z.strictObject({ width: measure, height: measure }).nullable(),
  studSpacing: measure.nullable(),
})

const display = z.discriminatedUnion('unit', [
  z.strictObject({ unit: z.literal('mm'), step: z.literal([1, 0.5, 0.1], { error: 'it must be 1, 0.5 or 0.1' }) }),
  z.strictObject({ unit: z.literal('in'), step: z.literal([16, 32, 64], { error: 'it must be 16, 32 or 64' }) }),
])

/** The document as a file has it, with nothing more and nothing less. */
export const savedProject = z.strictObject({
  version: z.literal(VERSION),
  id,
  name,
  display,
  grid: field('grid'),
  walls: z.record(id, wall),
  cabinets: z.record(id, cabinet),
  newCabinets: z.strictObject({ base: newCabinet, upper: newCabinet, tall: newCabinet }),
  methods: z.record(id, method),
  method: id,
  materials: z.record(id, material),
  stock: z.record(id, stock),
  kept: z.record(id, keptSheet),
  sequences: z.record(id, savedSequence).optional(),
  shop,
  house,
  between: savedBetween,
})

/** How the file of a build method calls itself, and the version of what it holds. */
export const METHOD_KIND = 'casewright-method'
export const METHOD_VERSION = 3

/** A build method as a file of its own has it, with the boards that it names. */
export const savedMethod = z.strictObject({
  kind: z.literal(METHOD_KIND),
  version: z.literal(METHOD_VERSION),
  method,
  materials: z.record(id, material),
})
