import type { Hand } from './packer'

/** A fresh worker of the browser's that packs sheets. */
export function hirePacker(): Hand {
  return new Worker(new URL('./packing.worker.ts', import.meta.url), { type: 'module' }) as unknown as Hand
}
