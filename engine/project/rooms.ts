import type { ById } from '../basics/id'
import type { Project } from './document'
import { isSavable } from './ranges'
import { find, hasEverything } from './references'
import { isSame, settledField } from './settled'

/** The thing with some fields changed; the same object when every field is what it was. Lengths settle, names are cleaned. */
export function changed<Thing extends object>(thing: Thing, change: Partial<Thing>): Thing {
  const fields = Object.entries(change)
    .filter(([field, value]) => value !== undefined && isSavable(value, field))
    .map(([field, value]): [string, unknown] => [field, settledField(field, value)])
    .filter(([field, value]) => !isSame(thing[field as keyof Thing], value))
  return fields.length === 0 ? thing : { ...thing, ...Object.fromEntries(fields) }
}

/** The project with a map exchanged whose things are settled already. */
export function withRoom(
  project: Project,
  room: Partial<Pick<Project, 'walls' | 'cabinets' | 'stock' | 'kept' | 'methods' | 'materials'>>,
): Project {
  const isSameRoom = Object.entries(room).every(([name, things]) => project[name as keyof Project] === things)
  return isSameRoom ? project : { ...project, ...room }
}

/** A thing put into its map, in place of the one of its id if there is one. */
export function put<Id extends string, Thing extends { readonly id: Id }>(
  things: ById<Id, Thing>,
  thing: Thing,
): ById<Id, Thing> {
  if (!isSavable(thing)) return things
  return changed<ById<Id, Thing>>(things, { [thing.id]: thing } as Partial<ById<Id, Thing>>)
}

/** A thing of the project with some fields changed, if it is there and all materials it then names are. */
export function changeIn<Room extends 'walls' | 'methods' | 'materials' | 'cabinets'>(
  project: Project,
  room: Room,
  id: keyof Project[Room] & string,
  change: object,
): Project {
  const before = find<object>(project[room], id)
  if (!before || !hasEverything(change, project.materials)) return project
  const after = changed(before, change)
  return after === before ? project : { ...project, [room]: { ...project[room], [id]: after } }
}

/** A map without some of its things; the same map when it had none of them. */
export function without<Id extends string, Thing>(things: ById<Id, Thing>, ids: readonly Id[]): ById<Id, Thing> {
  if (!ids.some((id) => Object.hasOwn(things, id))) return things
  const left = Object.entries(things).filter(([id]) => !ids.includes(id as Id))
  return Object.fromEntries(left) as ById<Id, Thing>
}
