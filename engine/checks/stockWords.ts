import type { MaterialId, StockId } from '../basics/id'
import type { Project } from '../project/document'
import type { Size } from '../sheets/hindrance'
import type { JobStock } from '../sheets/job'
import { formatWithUnit } from '../units/format'
import type { LengthDisplay } from '../units/length'
import { sayIn } from './say'

/** `the offcut of 18 mm birch ply (1220 mm x 610 mm)`. */
export function stockName(stock: JobStock | Project['stock'][StockId], { materials, display }: Project): string {
  const isOffcut = 'isOffcut' in stock ? stock.isOffcut : stock.offcut
  const { name } = materials[stock.material as MaterialId]!
  return `the ${isOffcut ? 'offcut' : 'sheet'} of ${name} (${sizeIn(stock, display)})`
}

/** What is told apart by less than the display shows is told finer. */
export function sizes(a: Size, b: Size, display: LengthDisplay): readonly [string, string] {
  const shown = [sizeIn(a, display), sizeIn(b, display)] as const
  if (shown[0] !== shown[1]) return shown
  const { length } = sayIn(display)
  return [`${length(a.length)} x ${length(a.width)}`, `${length(b.length)} x ${length(b.width)}`]
}

export function sizeIn({ length, width }: Size, display: LengthDisplay): string {
  return `${formatWithUnit(length, display)} x ${formatWithUnit(width, display)}`
}
