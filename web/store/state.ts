import type {
  BreakdownInput,
  CabinetId,
  Derived,
  Edit,
  Guide,
  History,
  LengthDisplay,
  NewKind,
  OwnerId,
  PartId,
  Project,
  ProjectId,
  RowKey,
  SheetAnswer,
  SheetJob,
  StockId,
  WallId,
} from '../../engine/index'

/** One selection everywhere: cabinets, or one part of a cabinet, or one row of the cut list (with all its parts). */
export type Selection =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'cabinets'; readonly ids: readonly CabinetId[] }
  | { readonly kind: 'part'; readonly owner: OwnerId; readonly part: PartId }
  | { readonly kind: 'row'; readonly row: RowKey }

/** The answer of the packer, and the job it answers. It is current when that job is the job of the shown project. */
export interface Layout {
  readonly job: SheetJob
  readonly answer: SheetAnswer
  /** Whether the search is over; a layout that is not settled may still get better. */
  readonly isSettled: boolean
  /** The first answer to the job, so that a first answer can be compared with a first answer. */
  readonly first?: SheetAnswer
  /** Laid out under the hand, near what was in sight; at rest the design gets a layout of its own. */
  readonly isPassing?: boolean
  /** The layout from before a sheet was kept or let go, until the design has its own. */
  readonly isHeld?: boolean
  /** The maker has stopped the search for a better one; it counts as settled. */
  readonly isStopped?: boolean
}

/** What a running gesture says about itself: 'fits, 20 left to the wall end'. */
export interface GestureWords {
  readonly fits: boolean
  readonly text: string
  /** The lines that something was snapped to. */
  readonly guides?: readonly Guide[]
  /** What is under the hand. */
  readonly about?: readonly CabinetId[]
}

/** What is about to be put down by a click on a free place: a new cabinet, or one that stands elsewhere now. */
export type Placing =
  | { readonly kind: 'new'; readonly cabinet: NewKind }
  | { readonly kind: 'move'; readonly id: CabinetId }

/**
 * What has been taken to the saw: the layouts and the cut list as they were then, so that a change of the design changes
 * no step under the hand.
 */
export interface Cutting {
  readonly project: ProjectId
  readonly input: BreakdownInput
  /** The steps that are done, by id. */
  readonly done: readonly string[]
  /** How many steps were done before the plan was last made anew. */
  readonly stepsBefore?: number
  /** Parts that were cut before the plan was last made anew. */
  readonly cutBefore: readonly PartId[]
  /** What changed when the plan was last made anew, in plain words. */
  readonly told: readonly string[]
  /** What was there before the last entry of a mishap. */
  readonly before?: CuttingBefore
  /** The stock that its offcuts were kept as when all was cut. */
  readonly offcuts?: readonly StockId[]
  /** Whether it was left at the bench, to be found there again when the page is opened anew. */
  readonly isAtBench?: boolean
}

/** Where an entry of a mishap leads back to, while nothing is cut by the plan that was made after it. */
export interface CuttingBefore {
  readonly cutting: Cutting
  /** What the design took over with the entry, and what takes that back. */
  readonly edit?: { readonly made: MaterialEdit; readonly back: MaterialEdit }
}

/** The only edit that a mishap makes: a batch measures otherwise. */
export type MaterialEdit = Extract<Edit, { kind: 'editMaterial' }>

export type StageName = 'site' | 'design' | 'show' | 'cut' | 'build'
export type TableName = 'cutList' | 'sheets' | 'steps' | 'hardware' | 'schedule' | 'findings'

export interface State {
  readonly history: History
  /** The edit that a running gesture would make; null when nothing is under the hand. */
  readonly preview: Edit | null
  /** The present project, or the present one with the preview applied. */
  readonly shown: Project
  readonly derived: Derived
  /** Derived of the present project while a preview is shown: what the consequences compare with. */
  readonly before: Derived | null
  readonly gesture: GestureWords | null
  /** The wall in sight; null for the first. */
  readonly wall: WallId | null
  readonly selection: Selection
  /** The last answer there is. Ask `currentLayout` whether it belongs to what is shown. */
  readonly layout: Layout | null
  /** The layout of the present project when the gesture began. */
  readonly layoutBefore: Layout | null
  readonly packing: 'idle' | 'thinking' | 'failed'
  readonly stage: StageName
  readonly table: TableName
  /** 0 closed to 1 fully apart. */
  readonly explode: number
  readonly areFrontsHidden: boolean
  readonly saving: {
    readonly state: 'saved' | 'saving' | 'failed'
    readonly at: string | null
    readonly why: string | null
  }
  /** One short message about something that just happened, such as a file that could not be opened. */
  readonly notice: { readonly tone: 'know' | 'stop'; readonly text: string } | null
  /** Free places on the wall are offered for this; null when nothing is being placed. */
  readonly placing: Placing | null
  /** Null while nothing of this project is being cut. */
  readonly cutting: Cutting | null
  /** The steps fill the window, one at a time. */
  readonly isAtBench: boolean
  /** Another tab has this project open: nothing is changed or saved here. */
  readonly isElsewhere: boolean
  readonly actions: Actions
}

export interface Actions {
  preview(edit: Edit | null, words?: GestureWords | null): void
  /** Makes an edit as one named undo step, and ends any preview. */
  commit(edit: Edit, label?: string): void
  undo(): void
  redo(): void
  select(selection: Selection): void
  lookAt(wall: WallId): void
  toggleCabinet(id: CabinetId): void
  place(placing: Placing | null): void
  setStage(stage: StageName): void
  setTable(table: TableName): void
  setExplode(explode: number): void
  hideFronts(hidden: boolean): void
  setDisplay(display: LengthDisplay): void
  open(project: Project): void
  say(tone: 'know' | 'stop', text: string): void
  hush(): void
}

/** The layout if it answers the job of the shown project, and nothing otherwise: an old answer is never shown as current. */
export function currentLayout(state: Pick<State, 'layout' | 'derived'>): Layout | null {
  return state.layout && state.layout.job === state.derived.sheetJob ? state.layout : null
}
