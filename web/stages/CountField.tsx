import { NumberField } from '../ui/NumberField'

/** In one cabinet, or in one bay of it. */
const MOST = 20

interface CountFieldProps {
  readonly label: string
  /** Null where several cabinets differ. */
  readonly count: number | null
  readonly onCount: (count: number) => void
}

/** How many of a kind stand in a cabinet, or in a bay of it. */
export function CountField({ label, count, onCount }: CountFieldProps) {
  return <NumberField label={label} value={count} least={0} most={MOST} isWhole onNumber={onCount} />
}
