import type { Beside, Side } from '../project/document'
import { type Mm, settle } from '../units/length'
import { sideways, WAYS } from './apart'
import type { Banding } from './board'
import type { Rules } from './build'
import { type Carcass, insideFront, outerFront } from './carcass'
import { pastLeft, pastRight } from './past'
import { bandedOn, type Piece, room, UNBANDED } from './piece'
import type { Report } from './report'

type Filler = Extract<Beside, { kind: 'filler' }>

/** How deep the strip is that a filler is screwed to. Common practice, no source. */
const RETURN: Mm = 60

/** A filler is as high as the carcass above its kick: the kick recess runs on under it. */
export function fillerLength({ height, floorHeight }: Carcass): Mm {
  return settle(height - floorHeight)
}

/** The rear face of a filler: flush with a face frame or with overlay fronts, within the carcass with inset ones or where it is open. */
export function fillerRear(carcass: Carcass, thickness: Mm): Mm {
  if (carcass.frame) return settle(outerFront(carcass) - thickness)
  if (carcass.frontThickness === 0 || carcass.isInset) return settle(carcass.depth - thickness)
  return insideFront(carcass)
}

/**
 * A strip of front board over the whole gap, and behind it a return of carcass board on the side that it is screwed to.
 *
 *      wall |scribe| filler  | door
 *           |------==========|=========
 *                        |R| |side
 */
export function fillerOf(
  filler: Filler,
  side: Side,
  carcass: Carcass,
  materials: Rules['materials'],
  report: Report,
): Piece[] {
  const { width } = filler
  const thickness = materials[carcass.method.frontMaterial]?.thickness
  if (thickness === undefined || width <= 0) return []
  if (width < thickness) {
    report.mind(
      `the filler at its ${side} is ${report.say(width)} wide; its board is ${report.say(thickness)} thick.`,
      { is: width, limit: thickness },
    )
  }
  const number = side === 'left' ? 1 : 2
  const away = sideways(side === 'left' ? -1 : 1, WAYS.beside)
  const rear = fillerRear(carcass, thickness)
  const y = [carcass.floorHeight, carcass.floorHeight + fillerLength(carcass)] as const
  const along = (from: Mm, to: Mm) =>
    side === 'left' ? span(-pastLeft(carcass), -to, -from) : span(carcass.width + pastRight(carcass), from, to)
  const strip: Piece = {
    role: 'filler',
    number,
    material: carcass.method.frontMaterial,
    box: room(along(0, width), y, [rear, rear + thickness]),
    lie: 'uprightLookingIn',
    banded: bandedOn(seenEdges(filler, side), carcass.method.banding.fronts, width),
    scribe: filler.scribe,
    explode: away,
  }
  // Beside a face frame it is screwed to the stile.
  if (carcass.frame || width < carcass.thickness || rear < RETURN) return [strip]
  const back: Piece = {
    role: 'fillerReturn',
    number,
    material: carcass.method.carcassMaterial,
    box: room(along(0, carcass.thickness), y, [rear - RETURN, rear]),
    lie: side === 'left' ? 'uprightLookingRight' : 'uprightLookingLeft',
    banded: UNBANDED,
    explode: away,
  }
  return [strip, back]
}

/** Banded as fronts are; the edge that is scribed to the wall is planed there and stays bare. Common practice, no source. */
function seenEdges({ scribe }: Filler, side: Side): readonly (keyof Banding)[] {
  const atWall = side === 'left' ? 'low' : 'high'
  return (['low', 'high', 'start', 'end'] as const).filter((edge) => scribe === 0 || edge !== atWall)
}

function span(width: Mm, from: Mm, to: Mm): readonly [Mm, Mm] {
  return [width + from, width + to]
}
