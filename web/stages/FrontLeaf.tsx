import type { Front, LengthDisplay, Mm } from '../../engine/index'
import { LengthField } from '../ui/LengthField'

type Measured = Extract<Front, { kind: 'appliance' | 'blind' | 'pullOut' }>

interface LeafRowsProps {
  readonly front: Measured
  readonly display: LengthDisplay
  readonly name: string
  readonly onFront: (front: Front) => void
}

interface LeafField {
  readonly label: string
  readonly value: Mm
  readonly field: 'small' | 'frontSize'
  readonly put: (length: Mm) => Front
}

export function isMeasured(front: Front): front is Measured {
  return front.kind === 'appliance' || front.kind === 'blind' || front.kind === 'pullOut'
}

/** What the maker of an appliance asks for, what stands before a corner, how high a low box is. */
export function LeafRows({ front, display, name, onFront }: LeafRowsProps) {
  return fieldsOf(front).map(({ label, value, field, put }) => (
    <LengthField
      key={label}
      label={`· ${name} ${label}`}
      value={value}
      display={display}
      field={field}
      onLength={(length) => {
        onFront(put(length))
        return null
      }}
    />
  ))
}

function fieldsOf(front: Measured): readonly LeafField[] {
  switch (front.kind) {
    case 'appliance':
      return [
        {
          label: 'cut-out width',
          value: front.width,
          field: 'frontSize',
          put: (width) => ({ ...front, width }),
        },
        {
          label: 'cut-out height',
          value: front.height,
          field: 'frontSize',
          put: (height) => ({ ...front, height }),
        },
        {
          label: 'depth before the air',
          value: front.depth ?? 0,
          field: 'small',
          put: (depth) => (depth > 0 ? { ...front, depth } : withoutDepth(front)),
        },
        { label: 'air behind', value: front.air, field: 'small', put: (air) => ({ ...front, air }) },
      ]
    case 'blind':
      return [
        {
          label: 'depth of the other run',
          value: front.neighbour,
          field: 'small',
          put: (neighbour) => ({ ...front, neighbour }),
        },
        { label: 'filler', value: front.filler, field: 'small', put: (filler) => ({ ...front, filler }) },
        { label: 'for the pulls', value: front.pull, field: 'small', put: (pull) => ({ ...front, pull }) },
      ]
    case 'pullOut':
      return [{ label: 'height of the box', value: front.box, field: 'frontSize', put: (box) => ({ ...front, box }) }]
  }
}

/** A depth of nothing is one that is not said. */
function withoutDepth({ depth: _, ...front }: Extract<Front, { kind: 'appliance' }>): Front {
  return front
}
