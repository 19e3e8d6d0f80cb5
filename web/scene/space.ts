import type { Vec3 } from '../../engine/index'

/** A box in space, in mm. */
export interface Box {
  readonly min: Vec3
  readonly max: Vec3
}

export function boxAround(a: Vec3, b: Vec3): Box {
  return {
    min: { x: Math.min(a.x, b.x), y: Math.min(a.y, b.y), z: Math.min(a.z, b.z) },
    max: { x: Math.max(a.x, b.x), y: Math.max(a.y, b.y), z: Math.max(a.z, b.z) },
  }
}

export function boxOfBoxes(boxes: readonly Box[]): Box {
  return boxes.reduce((whole, box) => ({
    min: {
      x: Math.min(whole.min.x, box.min.x),
      y: Math.min(whole.min.y, box.min.y),
      z: Math.min(whole.min.z, box.min.z),
    },
    max: {
      x: Math.max(whole.max.x, box.max.x),
      y: Math.max(whole.max.y, box.max.y),
      z: Math.max(whole.max.z, box.max.z),
    },
  }))
}

export function shifted(box: Box, by: Vec3): Box {
  return { min: plus(box.min, by), max: plus(box.max, by) }
}

export function middleOf({ min, max }: Box): Vec3 {
  return { x: (min.x + max.x) / 2, y: (min.y + max.y) / 2, z: (min.z + max.z) / 2 }
}

export function plus(a: Vec3, b: Vec3): Vec3 {
  return { x: a.x + b.x, y: a.y + b.y, z: a.z + b.z }
}

export function times(a: Vec3, factor: number): Vec3 {
  return { x: a.x * factor, y: a.y * factor, z: a.z * factor }
}

/** The answer for an object, kept as long as the object lives: what did not change is never worked out again. */
export function keptFor<Subject extends object, Answer>(
  work: (subject: Subject) => Answer,
): (subject: Subject) => Answer {
  const known = new WeakMap<Subject, { readonly answer: Answer }>()
  return (subject) => {
    let kept = known.get(subject)
    if (!kept) {
      kept = { answer: work(subject) }
      known.set(subject, kept)
    }
    return kept.answer
  }
}
