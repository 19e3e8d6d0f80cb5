import { wallAt, wallsOf } from '../../engine/index'
import { useStore } from '../store/store'
import { Button } from '../ui/Button'
import fields from '../ui/Fields.module.css'

/** The walls by name, where there are several: the one that is pressed is in sight. */
export function WallTabs() {
  const project = useStore((state) => state.shown)
  const inSight = wallAt(
    project,
    useStore((state) => state.wall),
  )
  const actions = useStore((state) => state.actions)
  const walls = wallsOf(project)
  if (walls.length < 2) return null
  return (
    <fieldset className={fields.together} aria-label="Walls" data-nohand>
      {walls.map(({ id, name }) => (
        <Button key={id} aria-pressed={id === inSight?.id} onClick={() => actions.lookAt(id)}>
          {name}
        </Button>
      ))}
    </fieldset>
  )
}
