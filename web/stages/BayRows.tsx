import type { Interior, LengthDisplay, PipeWindow, RollOuts } from '../../engine/index'
import { Choice } from '../ui/Choice'
import { LengthField } from '../ui/LengthField'
import { CountField } from './CountField'

/** Undefined where several cabinets differ or there is none. */
export interface BayParts {
  readonly rollOuts?: RollOuts | undefined
  readonly dividers?: number | undefined
}

interface BayRowsProps {
  /** Of the column, before each label; nothing where the cabinet is one bay. */
  readonly name: string
  readonly bay: BayParts
  readonly display: LengthDisplay
  readonly onBay: (part: Pick<Interior, 'rollOuts' | 'dividers'>) => void
}

/** A low box that things stand in and are seen from above (common practice, no source). */
const ROLL_OUT_HEIGHT = 100

/** Boxes behind the doors, and uprights for trays. */
export function BayRows({ name, bay, display, onBay }: BayRowsProps) {
  const { count, height } = bay.rollOuts ?? { count: 0, height: ROLL_OUT_HEIGHT }
  return (
    <>
      <CountField
        label={labelled(name, 'roll-outs')}
        count={count}
        onCount={(next) => onBay({ rollOuts: { count: next, height } })}
      />
      {count > 0 && (
        <LengthField
          label={name ? `${name}roll-out height` : '· Box height'}
          value={height}
          display={display}
          field="frontSize"
          onLength={(next) => {
            onBay({ rollOuts: { count, height: next } })
            return null
          }}
        />
      )}
      <CountField
        label={labelled(name, 'tray dividers')}
        count={bay.dividers ?? 0}
        onCount={(dividers) => onBay({ dividers })}
      />
    </>
  )
}

function labelled(name: string, word: string): string {
  return name ? name + word : word.charAt(0).toUpperCase() + word.slice(1)
}

interface PipeRowsProps {
  readonly pipes: PipeWindow | undefined
  readonly display: LengthDisplay
  readonly onPipes: (pipes: PipeWindow | null) => void
}

/** Room for a trap and two valves (common practice, no source). */
const USUAL_PIPES: PipeWindow = { width: 300, height: 250, bottom: 300 }
const PIPE_FIELDS = [
  ['width', '· Window width'],
  ['height', '· Window height'],
  ['bottom', '· Above the floor'],
] as const

/** The window in the back for pipes. */
export function PipeRows({ pipes, display, onPipes }: PipeRowsProps) {
  return (
    <>
      <Choice
        label="Pipes"
        value={pipes ? 'window' : 'none'}
        options={[
          ['none', 'none'],
          ['window', 'a window in the back'],
        ]}
        onChoice={(choice) => onPipes(choice === 'none' ? null : USUAL_PIPES)}
      />
      {pipes &&
        PIPE_FIELDS.map(([field, label]) => (
          <LengthField
            key={field}
            label={label}
            value={pipes[field]}
            display={display}
            field="frontSize"
            onLength={(length) => {
              onPipes({ ...pipes, [field]: length })
              return null
            }}
          />
        ))}
    </>
  )
}
