import type { Nailers } from '../../engine/index'
import type { ChoiceOf } from './choiceOf'

/** Where a cabinet is screwed to its wall: which strips it has, and how they stand to its back. */
export const nailers: ChoiceOf<Nailers> = {
  label: 'Nailers',
  ways: [
    ['none', 'none'],
    ['inside top', 'top, inside'],
    ['behind top', 'top, behind the back'],
    ['inside both', 'top and bottom, inside'],
    ['behind both', 'top and bottom, behind'],
    ['inside bottom', 'bottom, inside'],
    ['behind bottom', 'bottom, behind the back'],
    ['inside three', 'top, bottom, middle if high: inside'],
    ['behind three', 'top, bottom, middle if high: behind'],
    ['let top', 'top, let into the sides'],
    ['let both', 'top and bottom, let into the sides'],
    ['let bottom', 'bottom, let into the sides'],
    ['let three', 'top, bottom, middle if high: let in'],
  ],
  wayOf({ where: at, top: up, bottom: low, middle, areLetIn }) {
    const where = areLetIn && at === 'behind' ? 'let' : at
    if (up && low) return `${where} ${middle ? 'three' : 'both'}`
    return up ? `${where} top` : low ? `${where} bottom` : 'none'
  },
  make(way, { where: before, width }) {
    const [where, which] = way.split(' ')
    if (way === 'none') return { where: before, width, top: false, bottom: false }
    return {
      where: where === 'inside' ? 'inside' : 'behind',
      width,
      top: which !== 'bottom',
      bottom: which !== 'top',
      ...(which === 'three' && { middle: true }),
      ...(where === 'let' && { areLetIn: true }),
    }
  },
  measures: (value) =>
    value.top || value.bottom
      ? [{ label: 'Nailer width', value: value.width, put: (length) => ({ ...value, width: length }) }]
      : [],
}
