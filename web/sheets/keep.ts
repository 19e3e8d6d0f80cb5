import { type Edit, freeId, type KeptId, type Piece, type Project, type StockId } from '../../engine/index'
import type { Fold } from './folds'

/** A file is nested no deeper than this allows; no saw goes so far. */
const DEEPEST = 24

/** Keeps sheets as they are laid out, or lets kept ones go; null when they are cut too finely to be kept. */
export function keepingOf({ layout, first, ofMaterial, kept }: Fold, project: Project): Edit | null {
  if (kept) return { kind: 'releaseSheet', id: kept }
  if (depthOf(layout.root) > DEEPEST) return null
  const id = freeId<KeptId>('q', project.kept)
  const { copies, root } = layout
  const stock = layout.stock as StockId
  return { kind: 'keepSheet', sheet: { id, order: first - 1, sheet: ofMaterial, stock, copies, root } }
}

function depthOf(piece: Piece): number {
  return piece.kind === 'cut' ? 1 + piece.pieces.reduce((most, inner) => Math.max(most, depthOf(inner)), 0) : 0
}
