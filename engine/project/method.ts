import type { MaterialId, MethodId } from '../basics/id'
import type { Mm } from '../units/length'
import type { DadoFront } from './dadoFront'
import type { DoorPull, DrawerPull, Fixing, FrameFixing, FrontScrews, LegRules, PocketRules } from './fixing'
import type { HingeRules } from './hingeRules'

/**
 * How a housed joint is measured. With `depth` the horizontal grows as the sheet gets thinner less than nominal; with
 * `residual` the wood left outside the joint is fixed, so the horizontal keeps its length whatever the sheet measures.
 */
export type JointDepth =
  | { readonly rule: 'depth' /** How far the tongue sinks into the side. */; readonly depth: Mm }
  | { readonly rule: 'residual' /** What the side keeps outside the joint. */; readonly residual: Mm }

/** How bottoms, full tops and housed shelves meet the sides. */
export type CornerJoint =
  | { readonly kind: 'butt' }
  | { readonly kind: 'rabbet'; readonly depth: JointDepth }
  | { readonly kind: 'dado'; readonly depth: JointDepth }

export type BaseTop =
  | { readonly kind: 'full' }
  | { readonly kind: 'stretchersFlat'; readonly width: Mm }
  | { readonly kind: 'stretchersOnEdge'; readonly width: Mm }
  /** One stretcher on edge at the front and nothing behind it, so that a sink finds room. */
  | { readonly kind: 'frontRail'; readonly width: Mm }
  /** Stretchers on edge, and a hinged board of the front material that lies on the carcass. */
  | { readonly kind: 'lid'; readonly width: Mm }

export type Back =
  | {
      readonly kind: 'groove'
      /** From the rear edge of the side to the rear face of the back. */
      readonly inset: Mm
      readonly depth: Mm
      /** Play in all across the back, and again in all up it. */
      readonly clearance: Mm
    }
  | { readonly kind: 'rabbet' /** How far the rabbet reaches across the thickness of the side. */; readonly depth: Mm }
  | { readonly kind: 'applied' /** Kept back all round so that it never shows. */; readonly margin: Mm }
  | { readonly kind: 'none' }

export type Floor =
  | { readonly kind: 'notched'; readonly height: Mm; readonly setback: Mm }
  | { readonly kind: 'plinth'; readonly height: Mm; readonly setback: Mm }
  | { readonly kind: 'legs'; readonly height: Mm; readonly setback: Mm }
  | { readonly kind: 'none' }

export type Nailers = {
  /** Before the back and seen from inside, or between the back and the wall. */
  readonly where: 'inside' | 'behind'
  readonly top: boolean
  readonly bottom: boolean
  /** Another between them in what is over 60 in high; none where it is left out. */
  readonly middle?: boolean
  /**
   * Those behind a back in a groove run across both sides, let into notches in their rear edges, and the back stands before
   * them; between the sides where it is left out, and behind other backs.
   */
  readonly areLetIn?: boolean
  readonly width: Mm
}

/** How a drawer box fits between the boards beside it. Slides differ, so the deduction is data. */
export type SlideFit =
  | { readonly kind: 'side' /** Between the box and the board, each side. */; readonly clearance: Mm }
  | {
      readonly kind: 'undermount' /** Opening width less the clear width inside the box. */
      readonly insideDeduction: Mm
      /** How much longer a slide is than it is called, which is as long as its box; more with brackets at the rear. 0 where it is left out. */
      readonly longerBy?: Mm
    }

/** The frame before a carcass. Stiles run its full height, rails stand between them, and what parts two openings between those. */
export interface FaceFrame {
  /** The widths of its members as they are seen. */
  readonly stile: Mm
  readonly topRail: Mm
  /** Of uppers, where it is another than the top rail of the rest. */
  readonly upperTopRail?: Mm
  readonly bottomRail: Mm
  /** Of mullions between columns of the front, and of mid rails between rows. */
  readonly mullion: Mm
  /** How far it stands past the carcass at each side, so that frames meet before carcasses do. */
  readonly pastLeft: Mm
  readonly pastRight: Mm
  /** How far the upper edge of the bottom rail stands above the floor of the carcass; 0 for flush. */
  readonly proud: Mm
  readonly joint:
    | { readonly kind: 'pocketScrews' }
    | { readonly kind: 'tenon' /** Beyond the shoulder, at each end of a member. */; readonly length: Mm }
  /** Fronts stand in its openings with the gap of fronts all round, or cover it round each opening by this much. */
  readonly fronts: { readonly kind: 'inset' } | { readonly kind: 'overlay'; readonly by: Mm }
}

/** What doors are made of: one board, or two stiles, two rails and a panel in grooves. */
export type FrontBuild =
  | { readonly kind: 'slab' }
  | {
      readonly kind: 'fivePart'
      readonly stile: Mm
      readonly rail: Mm
      /** How deep the groove for the panel is, and so how long the stub tenons of the rails are. */
      readonly groove: Mm
      /** Of the panel in its grooves, in all, each way; a panel of solid wood has more across its grain where it needs it. */
      readonly play: Mm
      /** Whether drawer fronts and false fronts are made so too. */
      readonly areDrawersToo: boolean
      /** A door that is higher than this has a third rail in the middle of its height; none has where it is left out, or 0. */
      readonly midRailFrom?: Mm
    }

/** How panels move with the air: sheet goods not at all, solid wood across its grain. */
export type PanelWood =
  | { readonly kind: 'sheet' }
  | {
      readonly kind: 'solid'
      /** What a width changes by for each percent of moisture, as a share of itself: 0.00369 for flat-sawn red oak. */
      readonly across: number
      /** By how many percent the moisture of the wood changes in a year. */
      readonly moisture: number
    }

/** The choices that a cabinet may make differently from its method, one by one. */
export interface MethodChoices {
  readonly cornerJoint: CornerJoint
  /** They run out through the band where it is left out. */
  readonly dadoFront?: DadoFront
  /** Between the sides, or under them and carrying them. */
  readonly bottom: 'between' | 'under'
  /** Of uppers and talls: between the sides, or over them. A full base top follows the same rule. */
  readonly top: 'between' | 'over'
  readonly baseTop: BaseTop
  readonly back: Back
  readonly floor: Floor
  readonly nailers: Nailers
  readonly fixedShelf: 'dado' | 'pinned'
  /** How fronts sit on a carcass without a face frame. */
  readonly frontMount: 'fullOverlay' | 'halfOverlay' | 'inset'
  /** Null for a carcass whose front edges are seen. */
  readonly faceFrame: FaceFrame | null
  /** Glued on alone where it is left out. */
  readonly frameFixing?: FrameFixing
  readonly frontBuild: FrontBuild
  /** Of five-part fronts. */
  readonly panelWood: PanelWood
  readonly slide: SlideFit
  readonly fixing: Fixing
  readonly doorPull: DoorPull
  readonly drawerPull: DrawerPull
  /** None where it is left out. */
  readonly frontScrews?: FrontScrews
  readonly carcassMaterial: MaterialId
  readonly backMaterial: MaterialId
  readonly frontMaterial: MaterialId
  readonly drawerMaterial: MaterialId
  readonly drawerBottomMaterial: MaterialId
  /** Of the members of a face frame. */
  readonly frameMaterial: MaterialId
  /** Of the panels of five-part fronts; their stiles and rails are of the front material. */
  readonly panelMaterial: MaterialId
}

export interface ShelfRules {
  /** Between the shelf and the boards beside it, in all. */
  readonly sideClearance: Mm
  /** From the front edge of the carcass to the front edge of the shelf. */
  readonly setback: Mm
  readonly pinDiameter: Mm
  readonly pinDepth: Mm
  readonly pitch: Mm
  /** From the front edge of the side to the front row, and from the rear edge (or the back) to the rear row. */
  readonly rowSetback: Mm
  /** From the top face of the bottom to the first hole, and from the underside of the top to the last at least. */
  readonly firstHole: Mm
  /** How the holes of a side share one grid. Where it is left out every opening has rows of its own, from its own floor. */
  readonly balance?: Balance
}

/** Panels that are bored alike from both ends, and from both edges. */
export interface Balance {
  /** How far the rows are apart: what the depth leaves between them, or a multiple of the pitch. */
  readonly rows: 'asLeft' | 'multiple'
  /** Whether the plates of hinges are screwed in holes of the grid. */
  readonly arePlatesOn: boolean
}

export interface BandingRules {
  /** Of the banding on front edges of the carcass; 0 for none. */
  readonly carcass: Mm
  /** Of the banding on all four edges of doors and drawer fronts, and on the seen edges of fillers and trims; 0 for none. */
  readonly fronts: Mm
  /** Whether the finished size includes the banding, so that the board is cut smaller by it. */
  readonly isInFinishedSize: boolean
  /**
   * Which ends of sides are banded besides their front edges, with the banding of the carcass: the bottom edges of uppers, and
   * the top edges of high talls that are open above. None where it is left out.
   */
  readonly ends?: 'uppers' | 'uppersAndTalls'
}

export interface FrontRules {
  /** Between two fronts that meet, and all round fronts that stand in a face frame. */
  readonly gap: Mm
  /** Left showing of the side (overlay), or the play beside an inset front. */
  readonly endReveal: Mm
  readonly topReveal: Mm
  readonly bottomReveal: Mm
  /** The widest single door: one that may be a pair is a pair where it would be wider. `USUAL_WIDEST_DOOR` where it is left out. */
  readonly widestDoor?: Mm
}

export interface DrawerRules {
  /** From the lower edge of the drawer's opening to the underside of the box. */
  readonly bottomClearance: Mm
  /** From the top of the box to the upper edge of the drawer's opening. */
  readonly topClearance: Mm
  /** Slides come in steps of this. */
  readonly lengthStep: Mm
  /** Free behind the box, at least. */
  readonly rearClearance: Mm
  readonly grooveDepth: Mm
  /** From the lower edge of the drawer side to the underside of the drawer bottom. */
  readonly grooveUp: Mm
  /** Play of the drawer bottom in its grooves, in all, each way. */
  readonly bottomPlay: Mm
}

/** How the slides of drawers are screwed to the boards beside them. */
export interface SlideRules {
  /** From the underside of the box up to the line of screws. */
  readonly lineUp: Mm
  /** From the front edge of the carcass, or from the back of an inset front, to the first screw. */
  readonly firstFromFront: Mm
  /** Screws stand apart by this, or by a multiple of it. */
  readonly pitch: Mm
  readonly holeDiameter: Mm
  readonly holeDepth: Mm
  /** Of undermount slides: from there to their front end. */
  readonly setback: Mm
  /** What a pair carries at rest, in pounds, as its class is called. */
  readonly loadClass: number
  /** How far they come out: standard ones leave part of the box inside. All the way where it is left out. */
  readonly extension?: 'standard'
}

/** A named set of rules that cabinets are built by. */
export interface BuildMethod extends MethodChoices {
  readonly id: MethodId
  readonly name: string
  readonly shelves: ShelfRules
  readonly banding: BandingRules
  readonly fronts: FrontRules
  readonly drawers: DrawerRules
  readonly hinge: HingeRules
  readonly slides: SlideRules
  readonly legs: LegRules
  /** The usual ones where they are left out. */
  readonly pockets?: PocketRules
}
