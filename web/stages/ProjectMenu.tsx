import { ChevronDown } from 'lucide-react'
import { useState } from 'react'
import { Menu, Button as MenuButton, MenuItem, MenuTrigger, Popover, Separator } from 'react-aria-components'
import { saveFile, startNew } from '../store/keeping'
import { Button } from '../ui/Button'
import { Dialog } from '../ui/Dialog'
import fields from '../ui/Fields.module.css'
import { chooseTheme, chosenTheme, type Theme } from '../ui/theme'
import styles from './Header.module.css'
import { openPickedFile } from './openFile'
import { ProjectList } from './ProjectList'

const THEMES: readonly (readonly [Theme, string])[] = [
  ['system', 'Light or dark as the system'],
  ['light', 'Light'],
  ['dark', 'Dark'],
]

/** What is done with projects as a whole. */
export function ProjectMenu() {
  const [dialog, setDialog] = useState<'none' | 'new' | 'list'>('none')
  const [theme, setTheme] = useState(chosenTheme)
  function onAction(key: string) {
    if (key === 'new' || key === 'list') setDialog(key)
    if (key === 'open') void openPickedFile()
    if (key === 'save') saveFile()
    if (key === 'print') window.print()
    const picked = THEMES.find(([name]) => name === key)?.[0]
    if (picked) {
      chooseTheme(picked)
      setTheme(picked)
    }
  }
  return (
    <>
      <MenuTrigger>
        <MenuButton className={`${fields.button} ${fields.plain} ${fields.square}`} aria-label="Project menu">
          <ChevronDown size={16} aria-hidden />
        </MenuButton>
        <Popover>
          <Menu className={styles.menu} onAction={(key) => onAction(String(key))} aria-label="Project">
            <Item id="new" words="New project" />
            <Item id="list" words="Projects in this browser" />
            <Item id="open" words="Open file" keys="Ctrl+O" />
            <Item id="save" words="Save as file" keys="Ctrl+S" />
            <Item id="print" words="Print" />
            <Separator className={styles.separator} />
            {THEMES.map(([name, words]) => (
              <Item key={name} id={name} words={words} keys={name === theme ? '✓' : ''} />
            ))}
          </Menu>
        </Popover>
      </MenuTrigger>
      {dialog === 'new' && <NewProject onClose={() => setDialog('none')} />}
      {dialog === 'list' && (
        <Dialog title="Projects in this browser" onClose={() => setDialog('none')}>
          <ProjectList onDone={() => setDialog('none')} />
        </Dialog>
      )}
    </>
  )
}

interface ItemProps {
  readonly id: string
  readonly words: string
  readonly keys?: string
}

function Item({ id, words, keys }: ItemProps) {
  return (
    <MenuItem id={id} className={styles.item} textValue={words}>
      <span>{words}</span>
      {keys && <kbd>{keys}</kbd>}
    </MenuItem>
  )
}

/** The one thing that is asked. */
function NewProject({ onClose }: { readonly onClose: () => void }) {
  const begin = (unit: 'mm' | 'in') => {
    onClose()
    void startNew(unit)
  }
  return (
    <Dialog title="New project: which unit do you measure in?" onClose={onClose}>
      <p>It can be shown in the other one later. The project that is open now stays in this browser.</p>
      <p style={{ display: 'flex', gap: 8, marginTop: 14 }}>
        <Button onClick={() => begin('mm')}>Millimetres</Button>
        <Button onClick={() => begin('in')}>Inches</Button>
        <Button look="plain" onClick={onClose} style={{ marginLeft: 'auto' }}>
          Leave it
        </Button>
      </p>
    </Dialog>
  )
}
