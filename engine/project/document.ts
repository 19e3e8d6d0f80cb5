import type {
  ById,
  CabinetId,
  KeptId,
  MaterialId,
  MethodId,
  OpeningId,
  ProjectId,
  SequenceId,
  StockId,
  WallId,
} from '../basics/id'
import type { LengthDisplay, Mm } from '../units/length'
import type { Beside, Side } from './beside'
import type { Between, Cutout, TopHere } from './between'
import type { Corner } from './corner'
import type { ColumnShelves, Interior } from './interior'
import type { KeptSheet } from './kept'
import type { CutLate } from './late'
import type { AsBuilt } from './measured'
import type { BuildMethod } from './method'
import type { Overrides } from './overrides'
import type { Sequence } from './sequence'
import type { ApplianceSpace } from './space'

export { type Beside, NOTHING_BESIDE, type Side } from './beside'
export type { Between, Countertop, Cutout, OwnTop, TopHere, Trim, TrimKind } from './between'
export type { ColumnShelves, Interior, InteriorBay, PipeWindow, RollOuts } from './interior'
export type { KeptSheet } from './kept'

/** What is saved, and nothing else: everything that can be worked out from it is left out. */
export interface Project {
  readonly version: typeof VERSION
  readonly id: ProjectId
  readonly name: string
  readonly display: LengthDisplay
  /** New widths come in steps of this. */
  readonly grid: Mm
  readonly walls: ById<WallId, Wall>
  readonly cabinets: ById<CabinetId, Cabinet>
  /** The size and height that a new box starts with. */
  readonly newCabinets: { readonly [kind in CabinetKind]: NewCabinet }
  readonly methods: ById<MethodId, BuildMethod>
  /** The method of every cabinet that names no other. */
  readonly method: MethodId
  readonly materials: ById<MaterialId, Material>
  readonly stock: ById<StockId, Stock>
  /** Sheets whose layout is settled: they are cut as they are, whatever is laid out anew. */
  readonly kept: ById<KeptId, KeptSheet>
  /** Boards that lie beside one another on one sheet, as the maker marked them; none where it is left out. */
  readonly sequences?: ById<SequenceId, Sequence>
  readonly shop: Shop
  readonly house: House
  readonly between: Between
}

export const VERSION = 7

/** Seen from the room: x from its left end, y up from the finished floor, z out into the room. */
export interface Wall {
  readonly id: WallId
  readonly name: string
  readonly order: number
  readonly length: Mm
  /** From the finished floor to the ceiling. */
  readonly height: Mm
  /** Whether its left end meets the right end of the wall before it, in an inside corner of 90 degrees. */
  readonly meets: boolean
  /**
   * Of the fourth wall of a row that meet: whether its right end meets the left end of the first, so that they are a closed
   * room. Not where it is left out, and without effect on any other wall.
   */
  readonly closes?: boolean
  readonly openings: ById<OpeningId, Opening>
}

export interface Opening {
  readonly id: OpeningId
  readonly kind: 'window' | 'door'
  readonly left: Mm
  readonly bottom: Mm
  readonly width: Mm
  readonly height: Mm
}

export type CabinetKind = 'base' | 'upper' | 'tall'

export interface NewCabinet {
  readonly width: Mm
  readonly height: Mm
  readonly depth: Mm
  readonly bottom: Mm
}

export interface Cabinet {
  readonly id: CabinetId
  readonly kind: CabinetKind
  /** The 3 of `B3`. Given once, so that a cabinet keeps its mark when it is moved. */
  readonly number: number
  readonly wall: WallId
  /** Left edge, measured along the wall from its left end: of the face frame where there is one. */
  readonly left: Mm
  /** Underside above the finished floor: 0 for what stands, the mounting height for what hangs. */
  readonly bottom: Mm
  /** Of the carcass, or of its face frame, which stands past the carcass: neighbours meet frame to frame. */
  readonly width: Mm
  /** Of what stands, from the floor to the top of the carcass, so with its kick or plinth; of what hangs, of the box. */
  readonly height: Mm
  /** From the wall to the front edge of the carcass, or to the face of its face frame: with the back, without the fronts. */
  readonly depth: Mm
  readonly front: Front
  readonly interior: Interior
  readonly method: MethodId | null
  readonly overrides: Overrides
  /** Whether the grain runs on from front to front: they are cut side by side from one sheet. */
  readonly isGrainRunning: boolean
  /** Whether it runs on sideways instead, from front to front and on to cabinets beside it that wish it too. */
  readonly isGrainAcross?: boolean
  /** Boards that must come from sheets of one kind, by the board's place in the cabinet: `left-side`. */
  readonly pins: Readonly<Record<string, StockId>>
  /**
   * Boards that must come from one sheet, by the board's place in the cabinet: the number of that sheet among the sheets of
   * its material, from 1. None where it is left out.
   */
  readonly sheets?: Readonly<Record<string, number>>
  /** What stands beside its carcass; it takes its own width of the wall there. */
  readonly beside: { readonly [side in Side]: Beside }
  /** What is let into the countertop over a base; null for nothing. */
  readonly cutout: Cutout | null
  /** How it goes on along the other wall of a corner; null for what stands along its own wall alone. */
  readonly corner: Corner | null
  /** Openings of its front as they were measured on the carcass that stands. None where it is left out. */
  readonly asBuilt?: AsBuilt
  /** Of a place that is left free for an appliance, which has no carcass; a cabinet where it is left out. */
  readonly space?: ApplianceSpace
  /** As the countertop is over the others where it is left out. */
  readonly top?: TopHere
}

/** The front of a cabinet: one opening, or openings on one another from the top down, or columns of them from the left. */
export type Front =
  | { readonly kind: 'open' }
  /**
   * Hinged at a side, or at its top to be lifted: a flap. One that is hinged at a side may be let be a pair wherever it would
   * be too wide, and one door again where it is not; it stays one where nothing of this is said.
   */
  | { readonly kind: 'door'; readonly hinge: 'left' | 'right' | 'top'; readonly orPair?: true }
  | { readonly kind: 'pair' }
  | {
      readonly kind: 'drawer' /** What parts it inside. Nothing where it is left out. */
      readonly insert?: DrawerInsert
    }
  /** A drawer front on a low box, as for bins: the box is as high as it is said to be. */
  | { readonly kind: 'pullOut'; readonly box: Mm }
  /** A board that closes the opening and does not move, as before a sink. */
  | { readonly kind: 'falseFront' }
  /**
   * The part of a corner cabinet that stands behind the run along the other wall: how deep that run is without its doors,
   * the strip at its visible edge that closes the corner (0 for none), and what the pulls need to pass.
   */
  | { readonly kind: 'blind'; readonly neighbour: Mm; readonly filler: Mm; readonly pull: Mm }
  /**
   * A niche that stays open for an appliance: the least clear width and height that its maker asks for, and what must be
   * free behind it for air. It stands between boards of its own. Where its depth is said, so much is clear before the air.
   */
  | { readonly kind: 'appliance'; readonly width: Mm; readonly height: Mm; readonly air: Mm; readonly depth?: Mm }
  | { readonly kind: 'rows'; readonly rows: readonly FrontRow[] }
  /** Parted by a board between each and the next. */
  | { readonly kind: 'columns'; readonly columns: readonly FrontColumn[] }

/** A loose insert in a drawer: how many divisions side by side, and how high at most. */
export interface DrawerInsert {
  readonly divisions: number
  readonly height: Mm
}

export interface FrontRow {
  /**
   * The height of the front itself, or a share of what the fixed ones leave. A share can be taller than that by `more`, in a
   * bank whose drawers grow towards the floor; what is more is taken off before the rest is shared. Nothing where it is left out.
   */
  readonly size:
    | { readonly kind: 'fixed'; readonly height: Mm }
    | { readonly kind: 'share'; readonly share: number; readonly more?: Mm }
  readonly front: Front
}

export interface FrontColumn {
  /** The width of the front itself, or a share of what the fixed ones leave. */
  readonly size: { readonly kind: 'fixed'; readonly width: Mm } | { readonly kind: 'share'; readonly share: number }
  readonly front: Front
  /** The shelves between its uprights; null for as many as the cabinet has. */
  readonly shelves: ColumnShelves | null
}

export interface Material {
  readonly id: MaterialId
  readonly name: string
  /** What the yard calls it. Never used in a sum. */
  readonly nominal: Mm
  /** What the calliper says, and what every formula uses. */
  readonly thickness: Mm
  /** Whether boards may not be turned on the sheet. */
  readonly hasGrain: boolean
  /** In kg per cubic metre. */
  readonly density: number
  /** Modulus of elasticity in bending along the grain, in newtons per square millimetre. */
  readonly stiffness: number
  /** The same across the grain; taken to be as along it where it is left out, and that is said. */
  readonly stiffnessAcross?: number
}

/** Sheets of one size that can be bought, or offcuts of one size that are there. */
export interface Stock {
  readonly id: StockId
  readonly material: MaterialId
  /** Along the grain. */
  readonly length: Mm
  readonly width: Mm
  readonly price: number
  /** How many there are; null when as many can be bought as are needed. */
  readonly quantity: number | null
  readonly isOffcut: boolean
  /** Set aside: there, but not to be cut for now. */
  readonly isExcluded: boolean
}

/** What the house and its people ask of the cabinets. */
export interface House {
  /** What shelves are to carry. */
  readonly shelfLoad: 'kitchen' | 'general' | 'books'
  /** The narrowest way that assembled cabinets are carried through, clear; null where it was not measured. */
  readonly doorway: { readonly width: Mm; readonly height: Mm } | null
  /** From stud to stud of a framed wall; null where the wall is of masonry. */
  readonly studSpacing: Mm | null
}

/** The sheets that cost least, then wishes that cost no sheet: a large offcut before few settings, unless turned round. */
export interface Goals {
  /** As few sheets as can be, whatever they cost; only then the cheapest. */
  readonly isCountFirst?: boolean
  readonly isOffcutLarge: boolean
  readonly areSettingsFew: boolean
  readonly areSettingsFirst?: boolean
}

export interface Shop {
  readonly kerf: Mm
  /** Taken off each of the four factory edges before anything is measured from it. */
  readonly trim: Mm
  readonly stages: 2 | 3 | null
  readonly firstCut: 'rip' | 'crosscut' | 'any'
  /** What is looked for in a layout. */
  readonly goals: Goals
  /** What is left over and at least this long and wide is kept as an offcut. */
  readonly offcutLeast: { readonly length: Mm; readonly width: Mm }
  readonly currency: string
  /** The longest straight cut of the rail in use. */
  readonly railLength: Mm
  /** Whether another of its length can be joined to it for a longer cut. */
  readonly canJoinRails: boolean
  /** The least and greatest rip that the parallel guides can be set to. */
  readonly guides: { readonly least: Mm; readonly greatest: Mm }
  /** The rips that the guides reach with their attachment for narrow ones; null when there is none. */
  readonly narrowRips: { readonly least: Mm; readonly greatest: Mm } | null
  /** The widest board that fits under the bench's crosscut rail. */
  readonly benchCrosscut: Mm
  /** The greatest length that the bench's stop can be set to; `STOP_REACH` where it is left out. */
  readonly stopReach?: Mm
  /** In kg. */
  readonly onePersonLift: number
  /** Left on each end of a piece that is crosscut before it is squared. */
  readonly roughLength: Mm
  readonly blades: { readonly rip: Blade; readonly crosscut: Blade }
  /** How full sheets are cut: null leaves it to the minutes. */
  readonly cutOrder: CutOrder | null
  readonly minutes: { readonly perSetting: number; readonly perCut: number; readonly perSheet: number }
  /** What is cut last, when the carcasses stand and their openings are measured. */
  readonly late: CutLate
}

/** How far along its fence the stop of a bench goes, in a shop that does not say (common practice, no source). */
export const STOP_REACH: Mm = 1500

/** Few teeth clear a long rip; many leave a clean edge across the grain. */
export interface Blade {
  readonly teeth: number
}

/** One full sheet after another, or all of them at one setting before the next. */
export type CutOrder = 'sheet by sheet' | 'setting by setting'
