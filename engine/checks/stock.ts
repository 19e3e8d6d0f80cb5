import type { Project } from '../project/document'
import type { Outgrown } from '../sheets/jobOf'
import type { Finding } from './finding'
import { type Asked, hindered, sizeIn } from './leftOut'

/** Boards that no sheet can give, and kept sheets that the design has outgrown. */
export function stockFindings(asked: Asked, outgrown: readonly Outgrown[]): Finding[] {
  return [...hindered(asked), ...outgrown.map((sheet) => keptFinding(asked.project, sheet))]
}

function keptFinding({ kept, stock, materials, display }: Project, { id, board }: Outgrown): Finding {
  const { material } = stock[kept[id]!.stock]!
  const why = board
    ? `the design no longer asks for a board of ${sizeIn(board, display)} that is on it`
    : 'the sheet, its number, or the trim, kerf or directions of the shop are others now'
  const message = `A kept sheet of ${materials[material]!.name} is not held: ${why}.`
  return { weight: 'mind', about: { kind: 'kept', sheet: id }, message }
}
