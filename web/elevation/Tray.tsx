import { memo } from 'react'
import { Menu, Button as MenuButton, MenuItem, MenuTrigger, Popover } from 'react-aria-components'
import { type CabinetKind, type NewKind, newKindName, READY, SPACES, type SpaceName } from '../../engine/index'
import type { Placing } from '../store/state'
import { useIsNarrow } from '../ui/wide'
import styles from './Elevation.module.css'

const THINGS: readonly { readonly kind: CabinetKind | SpaceName; readonly name: string; readonly outline: string }[] = [
  { kind: 'base', name: 'Base', outline: 'M4 10h26v16H4z' },
  { kind: 'upper', name: 'Upper', outline: 'M4 3h26v12H4z' },
  { kind: 'tall', name: 'Tall', outline: 'M10 2h14v25H10z' },
  { kind: 'dishwasherSpace', name: 'Appliance', outline: 'M7 5h20v21H7zM7 10h20M12 13h10' },
]

interface TrayProps {
  readonly placing: Placing | null
  readonly onPlace: (what: NewKind) => void
}

function titleOf(kind: NewKind, name: string): string {
  const pull = 'Pull onto the wall, or press and pick a free place'
  if (kind === 'dishwasherSpace') return `${pull}: a space for a dishwasher, or for what is chosen then`
  return `${pull} (${name[0]} puts one in the first free place)`
}

/** Pull a box out of it onto the wall, or press it and pick a free place. */
export const Tray = memo(function Tray({ placing, onPlace }: TrayProps) {
  return (
    <div className={styles.tray} role="toolbar" aria-label="New cabinets">
      {THINGS.map(({ kind, name, outline }) => (
        <button
          key={kind}
          type="button"
          data-tray={kind}
          aria-pressed={placing?.kind === 'new' && placing.cabinet === kind}
          title={titleOf(kind, name)}
          // A press with the mouse is a gesture of the hand; this is a press of a key.
          onClick={(event) => {
            if (event.detail === 0) onPlace(kind)
          }}
        >
          <svg viewBox="0 0 34 28" aria-hidden="true">
            <path d={outline} />
          </svg>
          {name}
        </button>
      ))}
      <Ready placing={placing} onPlace={onPlace} />
    </div>
  )
})

/** Cabinets that stand ready: one is picked, and then a free place for it. */
function Ready({ placing, onPlace }: TrayProps) {
  const isNarrow = useIsNarrow()
  const all = [...READY, ...SPACES]
  const isOfAnother = (name: NewKind) => THINGS.some(({ kind }) => kind === name)
  const isChosen = all.some(([name]) => placing?.kind === 'new' && placing.cabinet === name && !isOfAnother(name))
  return (
    <MenuTrigger>
      <MenuButton className={styles.more} data-nohand aria-pressed={isChosen}>
        <span aria-hidden="true">+</span>
        Ready kinds
      </MenuButton>
      <Popover placement={isNarrow ? 'top end' : 'right top'}>
        <Menu className={styles.ready} aria-label="Ready kinds" onAction={(key) => onPlace(key as NewKind)}>
          {all.map(([name]) => (
            <MenuItem key={name} id={name} className={styles.readyItem}>
              {newKindName(name)}
            </MenuItem>
          ))}
        </Menu>
      </Popover>
    </MenuTrigger>
  )
}
