import { counted } from '../basics/counted'
import type { Project } from '../project/document'
import type { Outgrown } from '../sheets/jobOf'
import { turnedRows } from '../sheets/turned'
import { type Finding, PRACTICE } from './finding'
import { type Asked, hindered, STOCK } from './leftOut'
import { strayWishes } from './runWish'
import { sizeIn } from './stockWords'

/** Boards that no sheet can give, or that come from another kind than was chosen, and kept sheets that the design has outgrown. */
export function stockFindings(asked: Asked, outgrown: readonly Outgrown[]): Finding[] {
  return [
    ...hindered(asked),
    ...strayWishes(asked),
    ...turnedFindings(asked),
    ...outgrown.map((sheet) => keptFinding(asked.project, sheet)),
  ]
}

/** Backs that are wider than their sheets across the grain, and lie along it instead. */
function turnedFindings({ project, rows, job }: Asked): Finding[] {
  return turnedRows(job, rows).map((row): Finding => {
    const size = sizeIn(row, project.display)
    const boards = `${counted(row.quantity, 'board')} of ${row.mark} (${row.name}) ${row.quantity === 1 ? 'is' : 'are'}`
    const message = `${boards} cut with the grain running across the cabinet, not up: ${size} is on no sheet of ${project.materials[row.material]!.name} upright, and a back is hidden.`
    return {
      weight: 'know',
      about: { kind: 'material', material: row.material },
      message,
      measure: size,
      limit: 'on no sheet upright',
      source: PRACTICE,
    }
  })
}

function keptFinding({ kept, stock, materials, display }: Project, { id, board }: Outgrown): Finding {
  const { material } = stock[kept[id]!.stock]!
  const why = board
    ? `the design no longer asks for a board of ${sizeIn(board, display)} that is on it`
    : 'the sheet, its number, or the trim, kerf or directions of the shop are others now'
  const message = `A kept sheet of ${materials[material]!.name} is not held: ${why}.`
  const told = {
    measure: board ? sizeIn(board, display) : 'as it was kept',
    limit: 'as the design is now',
    source: STOCK,
  }
  return { weight: 'mind', about: { kind: 'kept', sheet: id }, message, ...told }
}
