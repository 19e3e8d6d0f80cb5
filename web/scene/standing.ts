import { counted, type Derived } from '../../engine/index'

/** `3 cabinets and 1 appliance`: what stands in a space that was left for it is no cabinet. */
export function standingWords(standing: Derived['cabinets']): string {
  const appliances = standing.filter(({ cabinet }) => cabinet.space).length
  const cabinets = standing.length - appliances
  return [cabinets > 0 && counted(cabinets, 'cabinet'), appliances > 0 && counted(appliances, 'appliance')]
    .filter(Boolean)
    .join(' and ')
}
