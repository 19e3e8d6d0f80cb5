import type { CutRow } from '../../engine/index'

/** `1 long, 2 ends`: which edges are banded; nothing where none of the outer ones is. */
export function bandWords({ long, ends }: CutRow['bandedEdges']): string {
  return [long > 0 && `${long} long`, ends > 0 && `${ends} end${ends > 1 ? 's' : ''}`].filter(Boolean).join(', ')
}
