import type { JobPart, JobStock, SheetJob } from '../../../engine/sheets/job'

/** A sheet of 2440 x 1220 with nothing trimmed, and a kerf of 3, unless a test says otherwise. */
export function aSheet(more: Partial<JobStock> = {}): JobStock {
  return { id: 'sheet', material: 'ply', length: 2440, width: 1220, ...more }
}

/** `720 x 560 x 4`: four boards of that size; `turning` may be turned. */
export function boards(text: string, more: Partial<JobPart> = {}): JobPart {
  const [length, width, quantity] = text.split(' x ').map(Number) as [number, number, number]
  return { id: text, material: 'ply', length, width, quantity, ...more }
}

export function aJob(parts: readonly JobPart[], more: Partial<SheetJob> = {}): SheetJob {
  return { kerf: 3, effort: 'quick', stock: [aSheet()], parts, ...more }
}
