import type { Board, BoardRole } from './board'

/** What the maker calls a kind of board, without its cabinet. */
export const ROLE_NAMES: Readonly<Record<BoardRole, string>> = {
  leftSide: 'left side',
  rightSide: 'right side',
  bottom: 'bottom',
  top: 'top',
  lid: 'lid',
  lidStrip: 'strip behind the lid',
  frontStretcher: 'front stretcher',
  backStretcher: 'back stretcher',
  back: 'back',
  topNailer: 'top nailer',
  bottomNailer: 'bottom nailer',
  middleNailer: 'middle nailer',
  fixedShelf: 'fixed shelf',
  adjustableShelf: 'adjustable shelf',
  partition: 'partition',
  divider: 'tray divider',
  kickBoard: 'kick board',
  plinthFront: 'plinth front',
  plinthBack: 'plinth back',
  plinthEnd: 'plinth end',
  longKick: 'long kick board',
  countertop: 'countertop',
  seatBoard: 'seat board',
  splash: 'splash',
  lightRail: 'light rail',
  lightRailReturn: 'light rail return',
  crown: 'crown',
  crownReturn: 'crown return',
  valance: 'valance',
  filler: 'filler',
  fillerReturn: 'filler return',
  leftEnd: 'left end',
  rightEnd: 'right end',
  stile: 'stile',
  topRail: 'top rail',
  bottomRail: 'bottom rail',
  midRail: 'mid rail',
  mullion: 'mullion',
  doorStile: 'door stile',
  doorRail: 'door rail',
  doorPanel: 'door panel',
  drawerStile: 'drawer front stile',
  drawerRail: 'drawer front rail',
  drawerPanel: 'drawer front panel',
  door: 'door',
  flap: 'flap',
  falseFront: 'false front',
  blindPanel: 'blind panel',
  cornerFiller: 'corner filler',
  cornerPost: 'corner post',
  drawerFront: 'drawer front',
  drawerSide: 'drawer side',
  drawerBoxFront: 'drawer box front',
  drawerBoxBack: 'drawer box back',
  drawerBottom: 'drawer bottom',
  insertEnd: 'insert end',
  insertDivider: 'insert divider',
}

/** What the maker calls one board: the sides of a drawer box mirror each other, and the left one of box n is numbered 2n - 1. */
export function boardName({ role, number }: Pick<Board, 'role' | 'number'>): string {
  if (role !== 'drawerSide') return ROLE_NAMES[role]
  return `${number % 2 === 1 ? 'left' : 'right'} ${ROLE_NAMES.drawerSide}`
}

/** The five boards of a drawer box, by what they are. */
export const DRAWER_BOX = [
  'drawerSide',
  'drawerBoxFront',
  'drawerBoxBack',
  'drawerBottom',
] as const satisfies readonly BoardRole[]

/** What lies in a drawer box to part it. */
export const INSERT = ['insertEnd', 'insertDivider'] as const satisfies readonly BoardRole[]

/** Fronts that are one board. */
export const SLAB_FRONTS = [
  'door',
  'flap',
  'falseFront',
  'blindPanel',
  'drawerFront',
] as const satisfies readonly BoardRole[]

/** The parts of five-part doors and drawer fronts. */
export const FIVE_PARTS = [
  'doorStile',
  'doorRail',
  'doorPanel',
  'drawerStile',
  'drawerRail',
  'drawerPanel',
] as const satisfies readonly BoardRole[]

/** The boards of tops over runs of bases, without their splash. */
export function isTopBoard(role: BoardRole): boolean {
  return role === 'countertop' || role === 'seatBoard'
}
