import type { CabinetId, MethodId } from '../basics/id'
import { entriesOf, valuesOf } from '../basics/id'
import type { Cabinet, CabinetKind, Project } from '../project/document'
import type { Edit } from '../project/edit'
import type { Mm } from '../units/length'
import { settle } from '../units/length'

/** A dimension of a project that may be made a little less, so that boards get smaller. */
export interface Dimension {
  /** Names it within the project as long as its size is the same. */
  readonly key: string
  /** `depth of the bases`. */
  readonly name: string
  readonly size: Mm
  /** In which way the boards get smaller. */
  readonly way: 'less' | 'more'
  readonly of: DimensionOf
}

type DimensionOf =
  | { readonly kind: 'depth' | 'height'; readonly ids: readonly CabinetId[] }
  | { readonly kind: 'setback'; readonly method: MethodId }

/** A dimension that the maker leaves open, and by how much it may change at most, in mm. */
export interface Freedom {
  readonly dimension: Dimension
  readonly most: Mm
}

const PLURALS: Readonly<Record<CabinetKind, string>> = { base: 'bases', upper: 'uppers', tall: 'talls' }

/**
 * What may be left open: the depth of all cabinets of a kind that are equally deep, the height of uppers and of talls
 * that are equally high, and how far loose shelves stand back. The height of bases is that of the worktop, and the width
 * of a cabinet that of the wall: neither is offered.
 */
export function dimensionsOf(project: Project): Dimension[] {
  const cabinets = valuesOf<Cabinet>(project.cabinets)
  const depths = (['base', 'upper', 'tall'] as const).flatMap((kind) => alike(cabinets, kind, 'depth'))
  const heights = (['upper', 'tall'] as const).flatMap((kind) => alike(cabinets, kind, 'height'))
  return [...depths, ...heights, ...setbacks(project, cabinets)]
}

function alike(cabinets: readonly Cabinet[], kind: CabinetKind, field: 'depth' | 'height'): Dimension[] {
  const bySize = new Map<Mm, CabinetId[]>()
  for (const cabinet of cabinets) {
    if (cabinet.kind === kind) bySize.set(cabinet[field], [...(bySize.get(cabinet[field]) ?? []), cabinet.id])
  }
  return [...bySize]
    .sort(([a], [b]) => a - b)
    .map(([size, ids]) => ({
      ...{ key: `${kind} ${field} ${size}`, name: `${field} of the ${PLURALS[kind]}`, size, way: 'less' as const },
      of: { kind: field, ids },
    }))
}

/** Of the methods by which some cabinet with loose shelves is built. */
function setbacks({ methods, method: usual }: Project, cabinets: readonly Cabinet[]): Dimension[] {
  const used = new Set(
    cabinets.filter(({ interior }) => interior.adjustableShelves > 0).map(({ method }) => method ?? usual),
  )
  return entriesOf(methods)
    .filter(([id]) => used.has(id))
    .map(([id, { name, shelves }]) => ({
      ...{
        key: `setback ${id}`,
        name: `setback of the shelves (${name})`,
        size: shelves.setback,
        way: 'more' as const,
      },
      of: { kind: 'setback', method: id },
    }))
}

/** The edit that changes a dimension by so much, in the way in which boards get smaller. */
export function editFor(project: Project, { of, size, way }: Dimension, change: Mm): Edit {
  const to = sizeAfter({ size, way }, change)
  if (of.kind !== 'setback') return { kind: 'shapeCabinets', shapes: of.ids.map((id) => ({ id, [of.kind]: to })) }
  const { shelves } = project.methods[of.method]!
  return { kind: 'editMethod', id: of.method, change: { shelves: { ...shelves, setback: to } } }
}

export function sizeAfter({ size, way }: Pick<Dimension, 'size' | 'way'>, change: Mm): Mm {
  return settle(way === 'less' ? size - change : size + change)
}
