import { memo } from 'react'
import { wallsOf } from '../../engine/index'
import { useStore } from '../store/store'
import { useWallInSight } from '../store/wall'
import { Button } from '../ui/Button'
import fields from '../ui/Fields.module.css'

/** The walls by name, where there are several: the one that is pressed is in sight. */
export const WallTabs = memo(function WallTabs() {
  const inSight = useWallInSight()
  const walls = useStore((state) => state.shown.walls)
  const actions = useStore((state) => state.actions)
  const inOrder = wallsOf({ walls })
  if (inOrder.length < 2) return null
  return (
    <fieldset className={fields.together} aria-label="Walls" data-nohand>
      {inOrder.map(({ id, name }) => (
        <Button key={id} aria-pressed={id === inSight?.id} onClick={() => actions.lookAt(id)}>
          {name}
        </Button>
      ))}
    </fieldset>
  )
})
