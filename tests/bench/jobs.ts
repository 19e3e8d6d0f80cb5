/** Jobs to measure the packer by, made from a seed: kitchens, and the ten standard classes of two-dimensional packing. */
import { randomFrom } from '../../engine/basics/random'
import type { JobPart, SheetJob } from '../../engine/sheets/job'

interface Board {
  readonly length: number
  readonly width: number
  readonly turns: boolean
}

const WIDTHS = [300, 350, 400, 450, 500, 600, 800, 1000]
const SIDE_THICKNESS = 18

/** The boards of base cabinets, drawers, uppers and a few talls until there are enough. Sizes are common practice. */
export function kitchenJob(parts: number, seed: number): SheetJob {
  const random = randomFrom(seed)
  const pick = <T>(from: readonly T[]): T => from[Math.floor(random() * from.length)]!
  const depths = { base: pick([560, 580]), upper: pick([300, 330]), upperHeight: pick([720, 900]) }
  const boards: Board[] = []
  while (boards.length < parts) {
    const inside = pick(WIDTHS) - 2 * SIDE_THICKNESS
    const kind = random()
    if (kind < 0.5) boards.push(...baseBoards(inside, depths.base, pick, random))
    else if (kind < 0.92) boards.push(...upperBoards(inside, depths.upper, depths.upperHeight, random))
    else boards.push(...tallBoards(inside, depths.base, random))
    if (random() < 0.12) boards.push(fixed(pick([1200, 1350, 1450, 1600, 1700]), 100))
    if (random() < 0.06) boards.push(free(depths.upper, depths.upperHeight))
  }
  return sheetsFor(boards.slice(0, parts), { kerf: pick([2.2, 2.4, 2.8]), trim: 10, length: 2440, width: 1220 })
}

type Picker = <T>(from: readonly T[]) => T

function baseBoards(inside: number, depth: number, pick: Picker, random: () => number): Board[] {
  const rail = pick([75, 80, 100])
  const boards = [fixed(760, depth), fixed(760, depth), fixed(inside, depth), free(inside, rail), free(inside, rail)]
  if (random() < 0.25) {
    const height = pick([140, 200, 250])
    const box = inside - 50
    return [...boards, fixed(500, height), fixed(500, height), free(box, height), free(box, height)]
  }
  return random() < 0.7 ? [...boards, fixed(inside - 2, depth - 20)] : boards
}

function upperBoards(inside: number, depth: number, height: number, random: () => number): Board[] {
  const shelves = Array.from({ length: Math.floor(random() * 3) }, () => fixed(inside - 2, depth - 15))
  return [fixed(height, depth), fixed(height, depth), fixed(inside, depth), fixed(inside, depth), ...shelves]
}

function tallBoards(inside: number, depth: number, random: () => number): Board[] {
  const shelves = Array.from({ length: 2 + Math.floor(random() * 3) }, () => fixed(inside - 2, depth - 20))
  return [fixed(2100, depth), fixed(2100, depth), fixed(inside, depth), fixed(inside, depth), ...shelves]
}

function fixed(length: number, width: number): Board {
  return { length, width, turns: false }
}

function free(length: number, width: number): Board {
  return { length, width, turns: true }
}

interface Sheet {
  readonly kerf: number
  readonly trim: number
  readonly length: number
  readonly width: number
}

/** Equal boards are one part. */
function sheetsFor(boards: readonly Board[], { kerf, trim, length, width }: Sheet): SheetJob {
  const parts = new Map<string, JobPart>()
  for (const board of boards) {
    const id = `${board.length}x${board.width}${board.turns ? ' free' : ''}`
    const known = parts.get(id)
    const size = { length: board.length, width: board.width, rotate: board.turns }
    parts.set(id, { id, material: 'board', ...size, quantity: (known?.quantity ?? 0) + 1 })
  }
  const stock = [{ id: 'sheet', material: 'board', length, width, trim: { length: trim, width: trim } }]
  return { kerf, stock, parts: [...parts.values()] }
}

/** How often each kind of part comes in classes 7 to 10; the kind that gives a class its name comes most. */
const MOSTLY = 0.7

/**
 * One job of a standard class, without kerf or trim and with grain kept. Classes 1 to 6 after Berkey and Wang, Journal of
 * the Operational Research Society 38 (1987); classes 7 to 10 after Martello and Vigo, Management Science 44 (1998). The
 * recipes are from memory.
 */
export function classJob(which: number, parts: number, seed: number): SheetJob {
  const random = randomFrom(1000 * seed + which)
  const between = (least: number, most: number) => least + Math.floor(random() * (most - least + 1))
  const uniform = [10, 10, 35, 35, 100, 100]
  const bins = [10, 30, 40, 100, 100, 300, 100, 100, 100, 100]
  const bin = bins[which - 1]!
  const boards = Array.from({ length: parts }, (): Board => {
    if (which <= 6) return fixed(between(1, uniform[which - 1]!), between(1, uniform[which - 1]!))
    const kind = kindOf(which - 7, random())
    const half = bin / 2
    const twoThirds = Math.ceil((2 * bin) / 3)
    if (kind === 0) return fixed(between(twoThirds, bin), between(1, half))
    if (kind === 1) return fixed(between(1, half), between(twoThirds, bin))
    if (kind === 2) return fixed(between(half, bin), between(half, bin))
    return fixed(between(1, half), between(1, half))
  })
  return sheetsFor(boards, { kerf: 0, trim: 0, length: bin, width: bin })
}

/** The class's own kind in seven of ten, each of the others in one of ten. */
function kindOf(own: number, drawn: number): number {
  if (drawn < MOSTLY) return own
  const other = Math.min(2, Math.floor((drawn - MOSTLY) / ((1 - MOSTLY) / 3)))
  return other < own ? other : other + 1
}
