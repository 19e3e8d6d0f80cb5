import { meshOf as bareMeshOf, type Part, shapeKey as shapeOf } from '../../engine/index'
import type { BoardMesh } from './merge'
import { withPulls } from './pulls'

/** More shapes than a large kitchen has; a long drag must not fill the memory with shapes it passed through. */
const MOST_KEPT = 600

/**
 * Meshes by shape: boards of one shape share one mesh, and a cabinet that is worked out anew finds the meshes of the
 * boards that came out alike. The shape unused for longest is dropped first.
 */
export function meshKeeper(
  shapeKey: (part: Part) => string,
  meshOf: (part: Part) => BoardMesh,
  mostKept = MOST_KEPT,
): (part: Part) => BoardMesh {
  const kept = new Map<string, BoardMesh>()
  return (part) => {
    const key = shapeKey(part)
    const mesh = kept.get(key) ?? meshOf(part)
    kept.delete(key)
    kept.set(key, mesh)
    // A map gives its keys in the order they were set: the first is the oldest.
    if (kept.size > mostKept) kept.delete(kept.keys().next().value!)
    return mesh
  }
}

/** A board with its pulls. */
export const meshFor = meshKeeper(shapeOf, (part) => withPulls(bareMeshOf(part), part))
