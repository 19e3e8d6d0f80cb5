import { type MaterialId, materialsInOrder, type Project } from '../../engine/index'

/** The boards of a project to choose from, by the names that the maker gave them. */
export function boardOptions(materials: Project['materials']): (readonly [MaterialId, string])[] {
  return materialsInOrder(materials).map(({ id, name }) => [id, name])
}

export const NO_BOARD = 'none'

/** The same for what need not be made at all. */
export function optionalBoards(materials: Project['materials']): (readonly [string, string])[] {
  return [[NO_BOARD, 'none is made'], ...boardOptions(materials)]
}
