import type { ById, CabinetId, PartId, RowKey } from './basics/id'
import type { Problem } from './basics/problem'
import type { FrontFace } from './cabinets/board'
import type { CutList } from './cutlist/row'
import type { Part } from './parts/part'
import type { Cabinet, Project } from './project/document'
import type { SheetJob } from './sheets/job'

/** A cabinet with everything that was worked out for it alone. The same object as long as nothing it depends on changed. */
export interface DerivedCabinet {
  readonly cabinet: Cabinet
  readonly mark: string
  readonly parts: readonly Part[]
  readonly fronts: readonly FrontFace[]
  readonly problems: readonly Problem[]
}

/** Everything that follows from a project at once. Sheets and steps follow later, from the sheet job. */
export interface Derived {
  readonly project: Project
  /** In shop order: bases, uppers, talls by number. */
  readonly cabinets: readonly DerivedCabinet[]
  readonly cabinetOf: ById<CabinetId, DerivedCabinet>
  readonly partOf: ReadonlyMap<PartId, Part>
  readonly rowOf: ReadonlyMap<PartId, RowKey>
  readonly cutList: CutList
  /** The same object as before while equal boards are asked of equal stock. Its parts are rows: id is the row's key. */
  readonly sheetJob: SheetJob
  readonly problems: readonly Problem[]
}
