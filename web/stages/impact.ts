import type { Derived, DerivedCabinet, Part } from '../../engine/index'

/** What a change comes to, before it is made. */
export interface Impact {
  /** Marks of the cabinets whose boards change. */
  readonly cabinets: readonly string[]
  /** Boards of another size, with other work on them, or in another place. */
  readonly changed: number
  readonly added: number
  readonly gone: number
}

export function impactOf(before: Derived, after: Derived): Impact {
  const cabinets: string[] = []
  const sum = { changed: 0, added: 0, gone: 0 }
  for (const built of after.cabinets) {
    const was = before.cabinetOf[built.cabinet.id]
    if (!was || was.parts === built.parts) continue
    const own = partsApart(was, built)
    if (own.changed + own.added + own.gone === 0) continue
    cabinets.push(built.mark)
    sum.changed += own.changed
    sum.added += own.added
    sum.gone += own.gone
  }
  return { cabinets, ...sum }
}

function partsApart(was: DerivedCabinet, is: DerivedCabinet) {
  const known = new Map(was.parts.map((part) => [part.id, part]))
  const kept = is.parts.filter(({ id }) => known.has(id))
  return {
    changed: kept.filter((part) => textOf(part) !== textOf(known.get(part.id)!)).length,
    added: is.parts.length - kept.length,
    gone: was.parts.length - kept.length,
  }
}

/** All that is made or placed differently in the shop; how a board leaves an exploded carcass is not. */
function textOf({ explode: _, ...part }: Part): string {
  return JSON.stringify(part)
}

/** `B1, B2 and 3 more: 34 boards change, 6 are new, 2 go.` */
export function impactWords({ cabinets, changed, added, gone }: Impact): string {
  const shown = cabinets.slice(0, MARKS_SHOWN).join(', ')
  const more = cabinets.length > MARKS_SHOWN ? ` and ${cabinets.length - MARKS_SHOWN} more` : ''
  const counts = [
    ...(changed > 0 ? [`${changed} ${changed === 1 ? 'board changes' : 'boards change'}`] : []),
    ...(added > 0 ? [`${added} ${added === 1 ? 'is' : 'are'} new`] : []),
    ...(gone > 0 ? [`${gone} ${gone === 1 ? 'goes' : 'go'}`] : []),
  ]
  return `${shown}${more}: ${counts.join(', ')}.`
}

const MARKS_SHOWN = 6
