import type { CabinetId, KeptId, MaterialId, MethodId, OpeningId, PartId, StockId, WallId } from '../basics/id'
import type { LengthDisplay, Mm } from '../units/length'
import type { Corner } from './corner'
import type {
  Beside,
  Between,
  Cabinet,
  CabinetKind,
  Cutout,
  Front,
  House,
  Interior,
  KeptSheet,
  Material,
  NewCabinet,
  Opening,
  Shop,
  Side,
  Stock,
  TopHere,
  Wall,
} from './document'
import type { MeasuredOpening } from './measured'
import type { BuildMethod } from './method'
import type { Overrides } from './overrides'
import type { Sequence } from './sequence'
import type { ApplianceSpace } from './space'

/** A sequence without what is in it. */
export type SequenceHead = Omit<Sequence, 'boards'>

/** Everything that can be done to a project. What an edit asks is what it gets: whether it fits is asked beforehand. */
export type Edit =
  | { readonly kind: 'addCabinet'; readonly cabinet: Cabinet }
  | { readonly kind: 'removeCabinets'; readonly ids: readonly CabinetId[] }
  /** Places or sizes of one cabinet or several; what is left out stays. */
  | { readonly kind: 'shapeCabinets'; readonly shapes: readonly CabinetShape[] }
  | { readonly kind: 'setFront'; readonly ids: readonly CabinetId[]; readonly front: Front }
  | { readonly kind: 'setInterior'; readonly ids: readonly CabinetId[]; readonly interior: Interior }
  | { readonly kind: 'setCabinetMethod'; readonly ids: readonly CabinetId[]; readonly method: MethodId | null }
  /** A choice made differently from the method, or, with undefined, again as the method has it. */
  | { readonly kind: 'override'; readonly ids: readonly CabinetId[]; readonly choices: Overrides }
  /** Fronts are cut side by side from one sheet, each cabinet's or across cabinets, or else wherever they fit. */
  | { readonly kind: 'letGrainRun'; readonly ids: readonly CabinetId[]; readonly way: 'none' | 'running' | 'across' }
  /** Boards come from sheets of one kind; with null, from any of their material. */
  | { readonly kind: 'pin'; readonly parts: readonly PartId[]; readonly stock: StockId | null }
  /** Boards come from the sheet of a number among those of their material; with null, from any. */
  | { readonly kind: 'pinSheet'; readonly parts: readonly PartId[]; readonly sheet: number | null }
  /** Boards go to the end of a sequence, which may begin with them; with null they are cut by themselves. */
  | { readonly kind: 'putInSequence'; readonly parts: readonly PartId[]; readonly sequence: SequenceHead | null }
  /** A filler or a finished end at a side of cabinets. */
  | { readonly kind: 'setBeside'; readonly ids: readonly CabinetId[]; readonly side: Side; readonly beside: Beside }
  | { readonly kind: 'setCutout'; readonly ids: readonly CabinetId[]; readonly cutout: Cutout | null }
  /** How the countertop is over them. */
  | { readonly kind: 'setTop'; readonly ids: readonly CabinetId[]; readonly top: TopHere }
  /** What an appliance asks for. Nothing happens to a cabinet, which is no space for one. */
  | { readonly kind: 'setSpace'; readonly ids: readonly CabinetId[]; readonly space: ApplianceSpace }
  /** With null, along its own wall alone. */
  | { readonly kind: 'setCorner'; readonly ids: readonly CabinetId[]; readonly corner: Corner | null }
  /** The opening of a front as it was measured, or, with null, made to the drawing again. */
  | {
      readonly kind: 'measureOpening'
      readonly id: CabinetId
      readonly at: string
      readonly measured: MeasuredOpening | null
    }
  | { readonly kind: 'editBetween'; readonly change: Partial<Between> }
  | {
      readonly kind: 'editWall'
      readonly id: WallId
      readonly change: Partial<Pick<Wall, 'name' | 'length' | 'height' | 'meets' | 'closes'>>
    }
  | { readonly kind: 'addWall'; readonly wall: Wall }
  /** With all that stands on it. Nothing happens to the only wall. */
  | { readonly kind: 'removeWall'; readonly id: WallId }
  | { readonly kind: 'putOpening'; readonly wall: WallId; readonly opening: Opening }
  | { readonly kind: 'removeOpening'; readonly wall: WallId; readonly id: OpeningId }
  | { readonly kind: 'editMethod'; readonly id: MethodId; readonly change: Partial<Omit<BuildMethod, 'id'>> }
  /** Under a free id, with a name of its own. */
  | { readonly kind: 'copyMethod'; readonly id: MethodId }
  /** Nothing happens while the project or a cabinet is built by it. */
  | { readonly kind: 'removeMethod'; readonly id: MethodId }
  /** Every cabinet that names no other is built by it from now on. */
  | { readonly kind: 'useMethod'; readonly id: MethodId }
  /** A method with the boards that come with it, in place of the ones of their ids if there are such. */
  | { readonly kind: 'putMethod'; readonly method: BuildMethod; readonly materials: readonly Material[] }
  | { readonly kind: 'editMaterial'; readonly id: MaterialId; readonly change: Partial<Omit<Material, 'id'>> }
  /** A board and a first sheet of it. Nothing happens where there is one of its id. */
  | { readonly kind: 'addMaterial'; readonly material: Material; readonly stock: Stock }
  /** With its sheets. Nothing happens while anything is made of it. */
  | { readonly kind: 'removeMaterial'; readonly id: MaterialId }
  | { readonly kind: 'putStock'; readonly stock: Stock }
  | { readonly kind: 'removeStock'; readonly id: StockId }
  | { readonly kind: 'keepSheet'; readonly sheet: KeptSheet }
  | { readonly kind: 'releaseSheet'; readonly id: KeptId }
  | { readonly kind: 'editShop'; readonly change: Partial<Shop> }
  | { readonly kind: 'editHouse'; readonly change: Partial<House> }
  | { readonly kind: 'editNewCabinet'; readonly cabinet: CabinetKind; readonly change: Partial<NewCabinet> }
  | { readonly kind: 'setDisplay'; readonly display: LengthDisplay }
  | { readonly kind: 'rename'; readonly name: string }
  | { readonly kind: 'several'; readonly edits: readonly Edit[] }

export interface CabinetShape {
  readonly id: CabinetId
  /** Another wall that is there. */
  readonly wall?: WallId
  readonly left?: Mm
  readonly bottom?: Mm
  readonly width?: Mm
  readonly height?: Mm
  readonly depth?: Mm
}
