import type { CabinetId, PartId, RunId, WallId } from '../basics/id'
import type { Problem } from '../basics/problem'
import type { Board } from '../cabinets/board'
import { boardOf, type Piece } from '../cabinets/piece'
import { ROLE_NAMES } from '../cabinets/role'
import { cutSize } from '../parts/cutSize'
import { ROLE_MARKS } from '../parts/marks'
import type { Part } from '../parts/part'
import type { Project, TrimKind } from '../project/document'
import { markOf } from '../project/mark'
import type { BandingRules } from '../project/method'
import type { Mm } from '../units/length'

/** Where something stands at its wall, and how large it is. */
export interface Place {
  readonly wall: WallId
  readonly left: Mm
  readonly bottom: Mm
  readonly width: Mm
  readonly height: Mm
  readonly depth: Mm
}

/** Boards over a run of cabinets. Their frame has its origin at the left end of the run, on the wall, at `bottom`. */
export interface BuiltRun {
  readonly id: RunId
  readonly kind: 'kick' | 'countertop' | TrimKind
  /** `BK3`: the kick before the run that begins with B3; `BT3`: the top over it. */
  readonly mark: string
  readonly place: Place
  readonly cabinets: readonly CabinetId[]
  /** Whether a countertop has anything otherwise than the project's; left out where it has not. */
  readonly isOwn?: true
  readonly parts: readonly Part[]
  readonly problems: readonly Problem[]
}

/** How a run is called. */
export interface RunName {
  readonly id: RunId
  readonly mark: string
}

/** A run is called by its first cabinet, so that it keeps its mark whatever becomes of the runs beside it. */
export function runNamed(
  kind: string,
  letter: string,
  first: CabinetId,
  { cabinets }: Pick<Project, 'cabinets'>,
): RunName {
  const mark = markOf(cabinets[first]!)
  return { id: `${kind}-${first}` as RunId, mark: `${mark[0]}${letter}${mark.slice(1)}` }
}

/** Whether the finished size includes the banding is settled by the method that the project is built by. */
export function bandingRules({ methods, method }: Pick<Project, 'methods' | 'method'>): BandingRules {
  return methods[method]!.banding
}

/** The boards of a run as parts: numbered from left to right within their role. */
export function partsOfRun({ id, mark }: RunName, boards: readonly Board[], project: Project): Part[] {
  return boards.map((board): Part => {
    const cut = cutSize(board, bandingRules(project))
    const part = `${id}/${ROLE_NAMES[board.role].replaceAll(' ', '-')}-${board.number}` as PartId
    const sheet = project.between.sheets?.[part]
    return {
      ...board,
      id: part,
      owner: id,
      mark: `${mark}-${ROLE_MARKS[board.role]}${board.number}`,
      name: ROLE_NAMES[board.role],
      cutLength: cut.length,
      cutWidth: cut.width,
      isGrainBound: project.materials[board.material]?.hasGrain ?? true,
      bank: null,
      from: project.between.pins[part] ?? null,
      ...(sheet === undefined ? {} : { sheet }),
    }
  })
}

export function boardsFrom(pieces: readonly Piece[]): Board[] {
  return pieces.map((piece) => boardOf(piece))
}
