import type { BoardRole } from './board'

/** What the maker calls a board, without its cabinet. */
export const ROLE_NAMES: Readonly<Record<BoardRole, string>> = {
  leftSide: 'left side',
  rightSide: 'right side',
  bottom: 'bottom',
  top: 'top',
  frontStretcher: 'front stretcher',
  backStretcher: 'back stretcher',
  back: 'back',
  topNailer: 'top nailer',
  bottomNailer: 'bottom nailer',
  fixedShelf: 'fixed shelf',
  adjustableShelf: 'adjustable shelf',
  partition: 'partition',
  kickBoard: 'kick board',
  plinthFront: 'plinth front',
  plinthBack: 'plinth back',
  plinthEnd: 'plinth end',
  door: 'door',
  flap: 'flap',
  falseFront: 'false front',
  drawerFront: 'drawer front',
  drawerSide: 'drawer side',
  drawerBoxFront: 'drawer box front',
  drawerBoxBack: 'drawer box back',
  drawerBottom: 'drawer bottom',
}
