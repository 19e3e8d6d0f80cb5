import { type MaterialId, materialsInOrder, type Project } from '../../engine/index'

/** The boards of a project to choose from, by the names that the maker gave them. */
export function boardOptions(materials: Project['materials']): (readonly [MaterialId, string])[] {
  return materialsInOrder(materials).map(({ id, name }) => [id, name])
}
