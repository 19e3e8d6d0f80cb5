import type { BoardRole } from '../cabinets/board'

/** What is written on a board after the mark of its cabinet. */
export const ROLE_MARKS: Readonly<Record<BoardRole, string>> = {
  leftSide: 'LS',
  rightSide: 'RS',
  bottom: 'BT',
  top: 'TP',
  frontStretcher: 'SF',
  backStretcher: 'SB',
  back: 'BK',
  topNailer: 'NT',
  bottomNailer: 'NB',
  fixedShelf: 'FS',
  adjustableShelf: 'AS',
  partition: 'PT',
  kickBoard: 'KB',
  plinthFront: 'PF',
  plinthBack: 'PB',
  plinthEnd: 'PE',
  filler: 'FR',
  fillerReturn: 'RT',
  leftEnd: 'LE',
  rightEnd: 'RE',
  door: 'DR',
  flap: 'FL',
  falseFront: 'FF',
  drawerFront: 'DF',
  drawerSide: 'DS',
  drawerBoxFront: 'BF',
  drawerBoxBack: 'BB',
  drawerBottom: 'DB',
}

/** Roles of which a cabinet may have several: their ids always carry a number, so that one more changes no other. */
export const SEVERAL: ReadonlySet<BoardRole> = new Set<BoardRole>([
  'fixedShelf',
  'adjustableShelf',
  'plinthEnd',
  'door',
  'flap',
  'falseFront',
  'drawerFront',
  'drawerSide',
  'drawerBoxFront',
  'drawerBoxBack',
  'drawerBottom',
])
