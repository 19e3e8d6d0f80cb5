export { boxOf } from './cabinets/boardBox'
export { FIVE_PARTS, SLAB_FRONTS } from './cabinets/role'
/** The front door: every public name of the engine, one by one. */

export { ASSEMBLY_CAUTIONS, assemblyOfCabinet } from './assembly/assemblyOf'
export { assemblyOfRun } from './assembly/assemblyOfRun'
export type { AssemblyStep } from './assembly/step'
export { counted } from './basics/counted'
export type {
  CabinetId,
  KeptId,
  MaterialId,
  MethodId,
  OpeningId,
  OwnerId,
  PartId,
  ProjectId,
  RowKey,
  RunId,
  SequenceId,
  StockId,
  WallId,
} from './basics/id'
export { entriesOf, freeId, isRunId, valuesOf } from './basics/id'
export type { About, Problem } from './basics/problem'
export { once, remember } from './basics/remember'
export type { Result } from './basics/result'
export { differenceOf } from './between/inSequence'
export type { BuiltRun, Place } from './between/run'
export { assignParts, type PlacedPart } from './breakdown/assign'
export type { PieceAtHand } from './breakdown/atHand'
export { usableOf } from './breakdown/cutAway'
export { type CutNumbers, cutNumbersOf } from './breakdown/cutNumbers'
export { refusedExtent } from './breakdown/damage'
export type { Progress } from './breakdown/floor'
export { goOnAfter } from './breakdown/goOn'
export { type Label, labelsOf } from './breakdown/labels'
export { type LayoutNow, layoutsNow } from './breakdown/layoutsNow'
export { measuredRows } from './breakdown/measured'
export { settingsOf } from './breakdown/minutes'
export { atHandNow, type LyingNow, type Replan, replanAfter } from './breakdown/mishap'
export type { Mishap } from './breakdown/mishapKinds'
export { isSheetName } from './breakdown/names'
export { stepsNeeding } from './breakdown/needing'
export { oddsWords } from './breakdown/odds'
export { type OffcutLeft, offcutsLeft } from './breakdown/offcutsLeft'
export { relaid } from './breakdown/relaid'
export { freedIn, type SawnOut, sawnOutOf } from './breakdown/sawnOut'
export type { Breakdown, Effort, Sketch, SketchPiece, Step, StepPiece } from './breakdown/step'
export { type BreakdownInput, breakdownOf } from './breakdown/steps'
export { sheetNumbers } from './breakdown/walks'
export { numberList } from './breakdown/wording'
export { MOST_OFF } from './cabinets/asBuilt'
export { type BayPlace, bayPlaces, cornerShelfPlaces, LEAST_BAY, type ShelfPlace } from './cabinets/bayPlaces'
export { type Banding, type BoardRole, type Explode, explodedBy, type FrontFace, type Leg } from './cabinets/board'
export type { FrontOpening } from './cabinets/frontOpening'
export { type FrontPlace, frontPlaces, linedUpWith } from './cabinets/frontPlaces'
export { isMitre, type Operation } from './cabinets/operation'
export { pullsIn } from './cabinets/pull'
export type { Pull } from './cabinets/pullBolt'
export { type AlikeFindings, alikeFindings, type Called } from './checks/alike'
export { onOtherSheets, sheetsBefore } from './checks/askedSheet'
export type { Finding, Remedy } from './checks/finding'
export { type InstallCaution, installCautions } from './checks/installation'
export { leftOut } from './checks/leftOut'
export { type CutList, type CutRow, type MaterialTotal, rowName } from './cutlist/row'
export type { Drawing, DrawingMark } from './drawings/drawing'
export { partDrawing } from './drawings/part'
export { pieceDrawing } from './drawings/piece'
export { sheetDrawing } from './drawings/sheet'
export { buyList, costOfLines, inOrderOf, onHandList, sheetCost, type TakenLine, yieldOfSheet } from './estimate/price'
export { cutListCsv } from './export/csv'
export { svgOf } from './export/svg'
export { type Placement, toCabinet, turned } from './geometry/placement'
export { type Rect, rectsOverlap, rightOf, topOf } from './geometry/rect'
export { type Axis, unit, type Vec3 } from './geometry/vector'
export { type HardwareTotal, hardwareList } from './hardware/hardwareList'
export { boughtFor } from './hardware/seamBolts'
export { alikeParts } from './parts/alike'
export { type Effect, effectOf, effectWords } from './parts/effect'
export { isCutLate } from './parts/late'
export type { Part } from './parts/part'
export { type Derived, type DerivedCabinet, derive } from './pipeline'
export { applyEdit } from './project/apply'
export { hasOpening, openingKey } from './project/asBuilt'
export { type SeamBolts, USUAL_SEAM_BOLTS } from './project/between'
export { isMaterialFree } from './project/boards'
export { type BroughtIn, broughtIn } from './project/bringIn'
export { isHung, methodOf, standsFree } from './project/builtBy'
export type { Corner } from './project/corner'
export { fromLeftOf, LEAST_CUTOUT, movedFromLeft, usualCutout, withAside } from './project/cutout'
export { type DadoFront, USUAL_DADO_FRONTS } from './project/dadoFront'
export { newProject } from './project/defaults'
export {
  type Beside,
  type Between,
  type Cabinet,
  type CabinetKind,
  type ColumnShelves,
  type Countertop,
  type CutOrder,
  type Cutout,
  type Front,
  type FrontColumn,
  type FrontRow,
  type Goals,
  type House,
  type Interior,
  type InteriorBay,
  type KeptSheet,
  type Material,
  type NewCabinet,
  NOTHING_BESIDE,
  type Opening,
  type OwnTop,
  type PipeWindow,
  type Project,
  type RollOuts,
  type Shop,
  type Side,
  STOP_REACH,
  type Stock,
  type TopHere,
  type Trim,
  type TrimKind,
  type Wall,
} from './project/document'
export { DOORS, USUAL_WIDEST_DOOR } from './project/doors'
export type { CabinetShape, Edit, SequenceHead } from './project/edit'
export {
  type BiscuitSize,
  biscuits,
  type DoorPull,
  type DrawerPull,
  type Fixing,
  type FrameFixing,
  type FrontScrews,
  pocketsOf,
  USUAL_DOOR_PULLS,
  USUAL_DRAWER_PULLS,
  USUAL_FIXINGS,
  USUAL_FRAME_FIXINGS,
  USUAL_FRONT_SCREWS,
} from './project/fixing'
export { USUAL_FIVE_PART, USUAL_FRAME, USUAL_MOISTURE, USUAL_OVERLAY, USUAL_TENON, WOODS } from './project/frames'
export {
  bankOf,
  childrenOf,
  dividedInto,
  type FrontPath,
  frontAt,
  placeWords,
  stepOf,
  withFrontAt,
  withSizeAt,
} from './project/frontTree'
export { chartOf, HEAVIEST_DOOR, hingesOfRow, withRowAdded, withRowRemoved } from './project/hingeChart'
export type { HingeChart, HingeRow } from './project/hingeRules'
export { begin, type History, make, redo, redoLabel, undo, undoLabel } from './project/history'
export {
  baysOf,
  withBayShelves,
  withBayWidth,
  withFixedAt,
  withFixedShelves,
  withPartitions,
} from './project/interior'
export { labelOf } from './project/label'
export type { CutLate } from './project/late'
export { checkLength, type Limits } from './project/limits'
export { LEFT_INSIDE, SLIDE_CLASSES, UNDERMOUNT_LONGER_BY, USUAL_FOLD } from './project/machining'
export { freeNumber, markOf, stretchesOf } from './project/mark'
export { freshBoard, materialsInOrder, stockOf } from './project/materials'
export type { AsBuilt, MeasuredOpening } from './project/measured'
export type {
  Back,
  BaseTop,
  BuildMethod,
  CornerJoint,
  FaceFrame,
  Floor,
  FrontBuild,
  JointDepth,
  MethodChoices,
  Nailers,
  PanelWood,
  SlideFit,
} from './project/method'
export { type MethodFile, readMethod, writeMethod } from './project/methodFile'
export { freeMethodId, isMethodFree, namersOf } from './project/methods'
export { cleanName, LONGEST_NAME } from './project/name'
export { type Overrides, ownNames, type RuleSet, withOwn } from './project/overrides'
export { startOf } from './project/ready'
export { type NewKind, newKindName, READY, type ReadyName, SPACES, type SpaceName } from './project/readyKinds'
export { readProject, writeProject } from './project/schema'
export { MOST_IN_SEQUENCE, type Sequence } from './project/sequence'
export { sequenceOf } from './project/sequences'
export { APPLIANCES, type Appliance, type ApplianceSpace, applianceName, cabinetWords } from './project/space'
export {
  areTopsMade,
  countertopOver,
  eachTop,
  hasTopOver,
  type OwnTopChange,
  ownTopEdit,
  ownTopNames,
  USUAL_TOP,
} from './project/topOver'
export { hasLid, isSeatHigh, isUnderTop, isWorktopHigh } from './project/underTop'
export { usualSpace } from './project/usualSpace'
export { gapFilled } from './runs/fill'
export { type Fit, fitOf } from './runs/fit'
export { footprintOf, roomBeside } from './runs/footprint'
export { rightEdge } from './runs/lane'
export { freeStretches, gapsBeside, inLanesOf } from './runs/neighbours'
export { newCabinetAt, placesFor } from './runs/place'
export { pushNeighbours, roomMade } from './runs/push'
export { type Body, meetingsOf, reachingIn } from './runs/reach'
export { type Guide, handStep, snapEdge, snapMove } from './runs/snap'
export { demonstrationKitchen } from './samples/kitchen'
export { fortyCabinets } from './samples/workshop'
export { heldBy, isSameButLocked, lockedIn } from './sheets/held'
export { stockFor } from './sheets/hindrance'
export type { JobPart, JobStock, SheetJob } from './sheets/job'
export { type Piece, placementsIn, type SheetAnswer, type SheetLayout } from './sheets/layout'
export { standing } from './sheets/standing'
export { priceIn, sheetCount, type Taken, takenBy, tallyOf } from './sheets/tally'
export { canClose, cornersOf, freshWall, rowsOfWalls, wallAt, wallsOf } from './site/wall'
export { type Hole, holesOf } from './solids/bores'
export { meshOf, shapeKey } from './solids/mesh'
export { type Dimension, dimensionsOf, type Freedom } from './thrift/freedom'
export { type Saving, savingsOf, type Thrift, type ThriftProgress } from './thrift/savings'
export { formatBetween } from './units/apart'
export { formatLength, formatMeasure, formatWithUnit } from './units/format'
export { inch, type LengthDisplay, type Mm, settle } from './units/length'
export { formatMoney, isSignBefore } from './units/money'
export { parseLength } from './units/parse'
export { densityUnit, formatWeight, slideClass, stiffnessUnit, weightUnit } from './units/weight'
