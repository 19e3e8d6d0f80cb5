import type { CabinetId, MethodId } from '../basics/id'
import { entriesOf, valuesOf } from '../basics/id'
import { isHung } from '../project/builtBy'
import type { Cabinet, CabinetKind, Project } from '../project/document'
import type { Edit } from '../project/edit'
import { baysOf } from '../project/interior'
import type { BuildMethod } from '../project/method'
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

/** What a build method says of the boards of its cabinets. */
type Rule = 'setback' | 'stretcher' | 'nailer' | 'kick'

type DimensionOf =
  | { readonly kind: 'depth' | 'height'; readonly ids: readonly CabinetId[] }
  | { readonly kind: 'rule'; readonly rule: Rule; readonly method: MethodId }

/** A dimension that the maker leaves open, and by how much it may change at most, in mm. */
export interface Freedom {
  readonly dimension: Dimension
  readonly most: Mm
}

const PLURALS: Readonly<Record<CabinetKind, string>> = { base: 'bases', upper: 'uppers', tall: 'talls' }

/**
 * What may be left open: the depth of all cabinets of a kind that are equally deep, the height of uppers and of talls
 * that are equally high, and of the build methods in use how far loose shelves stand back, how wide stretchers and nailers
 * are and how high the kick is. The height of bases is that of the worktop, and the width of a cabinet that of the wall:
 * neither is offered.
 */
export function dimensionsOf(project: Project): Dimension[] {
  const cabinets = valuesOf<Cabinet>(project.cabinets)
  const depths = (['base', 'upper', 'tall'] as const).flatMap((kind) => alike(cabinets, kind, 'depth'))
  const heights = (['upper', 'tall'] as const).flatMap((kind) => alike(cabinets, kind, 'height'))
  return [...depths, ...heights, ...rulesOf(project, cabinets)]
}

function alike(cabinets: readonly Cabinet[], kind: CabinetKind, field: 'depth' | 'height'): Dimension[] {
  const bySize = new Map<Mm, CabinetId[]>()
  for (const cabinet of cabinets) {
    // An appliance is as high as it is; its space is as deep as the cabinets beside it, for the kick to go on.
    if (cabinet.space && field === 'height') continue
    if (cabinet.kind === kind) bySize.set(cabinet[field], [...(bySize.get(cabinet[field]) ?? []), cabinet.id])
  }
  return [...bySize]
    .sort(([a], [b]) => a - b)
    .map(([size, ids]) => ({
      ...{ key: `${kind} ${field} ${size}`, name: `${field} of the ${PLURALS[kind]}`, size, way: 'less' as const },
      of: { kind: field, ids },
    }))
}

/** What the methods say of the boards of some cabinet that is built by them. */
function rulesOf({ methods, method: usual }: Project, cabinets: readonly Cabinet[]): Dimension[] {
  return entriesOf(methods).flatMap(([id, method]): Dimension[] => {
    const built = cabinets.filter((cabinet) => (cabinet.method ?? usual) === id)
    const { shelves, baseTop, nailers, floor, name } = method
    const rule = (kind: Rule, words: string, size: Mm, way: Dimension['way']) => {
      return {
        key: `${kind} ${id}`,
        name: `${words} (${name})`,
        size,
        way,
        of: { kind: 'rule', rule: kind, method: id } as const,
      }
    }
    const hasShelves = built.some(({ interior }) =>
      [interior, ...baysOf(interior).map(({ shelves }) => shelves)].some((one) => (one?.adjustableShelves ?? 0) > 0),
    )
    const hasBases = built.some(({ kind }) => kind === 'base')
    const stands = built.some((cabinet) => !isHung(cabinet))
    return [
      ...(hasShelves ? [rule('setback', 'setback of the shelves', shelves.setback, 'more')] : []),
      ...(hasBases && baseTop.kind !== 'full'
        ? [rule('stretcher', 'width of the stretchers', baseTop.width, 'less')]
        : []),
      ...(built.length > 0 && (nailers.top || nailers.bottom)
        ? [rule('nailer', 'width of the nailers', nailers.width, 'less')]
        : []),
      ...(stands && floor.kind !== 'none' ? [rule('kick', 'height of the kick', floor.height, 'more')] : []),
    ]
  })
}

/** The edit that changes a dimension by so much, in the way in which boards get smaller. */
export function editFor(project: Project, { of, size, way }: Dimension, change: Mm): Edit {
  const to = sizeAfter({ size, way }, change)
  if (of.kind !== 'rule') return { kind: 'shapeCabinets', shapes: of.ids.map((id) => ({ id, [of.kind]: to })) }
  return { kind: 'editMethod', id: of.method, change: ruleAt(project.methods[of.method]!, of.rule, to) }
}

function ruleAt(method: BuildMethod, rule: Rule, to: Mm): Partial<BuildMethod> {
  const { shelves, baseTop, nailers, floor } = method
  switch (rule) {
    case 'setback':
      return { shelves: { ...shelves, setback: to } }
    case 'stretcher':
      return baseTop.kind === 'full' ? {} : { baseTop: { ...baseTop, width: to } }
    case 'nailer':
      return { nailers: { ...nailers, width: to } }
    case 'kick':
      return floor.kind === 'none' ? {} : { floor: { ...floor, height: to } }
  }
}

export function sizeAfter({ size, way }: Pick<Dimension, 'size' | 'way'>, change: Mm): Mm {
  return settle(way === 'less' ? size - change : size + change)
}
