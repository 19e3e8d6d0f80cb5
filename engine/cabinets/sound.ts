import { METHOD, PRACTICE } from '../basics/source'
import type { BoardRole } from './board'
import { backFront, type Carcass, clearBottom, clearTop, clearWidth, insideFront } from './carcass'
import { boardOf, LIES, type Piece } from './piece'
import type { Report } from './report'
import { ROLE_NAMES } from './role'
import { sideWidth } from './side'

/** Says where a carcass has no room inside. */
export function tellTightness(carcass: Carcass, report: Report): void {
  if (clearWidth(carcass) <= 0) {
    report.stop(
      `two sides of ${report.say(carcass.thickness)} leave nothing clear in a width of ${report.say(carcass.width)}.`,
      { is: carcass.width, limit: `over ${report.say(2 * carcass.thickness)}` },
    )
  }
  if (clearTop(carcass) <= clearBottom(carcass)) {
    const clear = report.left(clearTop(carcass) - clearBottom(carcass))
    report.stop(
      `between its bottom and its top there would be ${clear} clear in a height of ${report.say(carcass.height)}.`,
      report.room(clearTop(carcass) - clearBottom(carcass)),
    )
  }
  const { floor } = carcass.method
  if (carcass.floorHeight > 0 && floor.kind !== 'none' && floor.setback >= sideWidth(carcass)) {
    report.stop(
      `its kick is set back ${report.say(floor.setback)}; its sides are ${report.say(sideWidth(carcass))} wide.`,
      { is: floor.setback, limit: sideWidth(carcass), source: METHOD },
    )
  }
  const { dadoFront } = carcass.method
  if (dadoFront?.kind === 'stopped' && 2 * dadoFront.behind > sideWidth(carcass)) {
    report.stop(
      `its dados stop ${report.say(dadoFront.behind)} behind the front edges; half of the ${report.say(sideWidth(carcass))} of its sides is the most.`,
      { is: dadoFront.behind, limit: sideWidth(carcass) / 2, source: PRACTICE },
    )
  }
  if (backFront(carcass) >= insideFront(carcass)) {
    const front = report.say(insideFront(carcass))
    report.stop(
      `the front of the back would be ${report.say(backFront(carcass))} from the wall; the inside ends at ${front}.`,
      { is: backFront(carcass), limit: front, source: METHOD },
    )
  }
}

/** The narrowest panel that is cut at a rail. Common practice, no source. */
const LEAST_WIDTH = 60
const PANELS: readonly BoardRole[] = ['leftSide', 'rightSide', 'bottom', 'top', 'fixedShelf', 'adjustableShelf', 'door']

/** Whether a board has a size; one that is too small to be cut safely is told. */
export function canBeCut(piece: Piece, report: Report): boolean {
  const { length, width, thickness } = boardOf(piece)
  const words = sizeWords(piece)
  const name = `the ${ROLE_NAMES[piece.role]}`
  const sizes = [
    [length, words.length],
    [width, words.width],
    [thickness, 'thick'],
  ] as const
  const missing = sizes.find(([size]) => !(size > 0 && Number.isFinite(size)))
  if (missing) {
    report.stop(`${name} would be ${report.left(missing[0])} ${missing[1]}; it is left out.`, report.room(missing[0]))
    return false
  }
  if (thickness > width) {
    report.stop(`${name} would be ${report.say(width)} ${words.width}; its sheet is ${report.say(thickness)} thick.`, {
      is: width,
      limit: thickness,
    })
  } else if (PANELS.includes(piece.role) && width < LEAST_WIDTH) {
    report.stop(
      `${name} would be ${report.say(width)} ${words.width}; ${report.say(LEAST_WIDTH)} is the least that can be cut.`,
      { is: width, limit: LEAST_WIDTH, source: PRACTICE },
    )
  }
  return true
}

/** What length and width of a board are to one who stands before the cabinet: that of a drawer front is its height. */
function sizeWords({ lie, role }: Piece): { readonly length: string; readonly width: string } {
  const axes = LIES[lie]
  if (axes.length === '+y') return { length: 'high', width: 'wide' }
  if (axes.width !== '+y') return { length: 'long', width: 'wide' }
  return { length: role === 'drawerFront' || role === 'falseFront' ? 'wide' : 'long', width: 'high' }
}
