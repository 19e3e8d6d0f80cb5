import type { Goals } from '../../engine/index'
import { Button } from '../ui/Button'
import fields from '../ui/Fields.module.css'
import styles from './Panels.module.css'

const OFFCUT = ['isOffcutLarge', 'Leave one large offcut rather than many small ones'] as const
const SETTINGS = ['areSettingsFew', 'Set guide and stop as seldom as can be'] as const

interface GoalRowsProps {
  readonly goals: Goals
  readonly onGoals: (goals: Goals) => void
}

/** What is looked for in a layout, in its order. */
export function GoalRows({ goals, onGoals }: GoalRowsProps) {
  const isFirst = goals.areSettingsFirst === true
  const isOrdered = goals.isOffcutLarge && goals.areSettingsFew
  return (
    <>
      <label className={fields.check}>
        <input
          type="checkbox"
          checked={!goals.isCountFirst}
          onChange={(event) => onGoals({ ...goals, isCountFirst: !event.currentTarget.checked })}
        />
        Pay as little as can be for sheets
      </label>
      <p className={styles.note}>
        {goals.isCountFirst
          ? 'As few sheets as can be come first, whatever they cost. Then'
          : 'That comes first; where all sheets of a board cost the same, it is the fewest. Then'}
        {isOrdered ? ', in this order, and without a sheet more' : ', without a sheet more'}:
      </p>
      {(isFirst ? [SETTINGS, OFFCUT] : [OFFCUT, SETTINGS]).map(([goal, words]) => (
        <label key={goal} className={fields.check}>
          <input
            type="checkbox"
            checked={goals[goal]}
            onChange={(event) => onGoals({ ...goals, [goal]: event.currentTarget.checked })}
          />
          {words}
        </label>
      ))}
      {isOrdered && !isFirst && (
        <p className={styles.note}>
          Up to three tenths of that offcut are given up where it saves settings; where a material has a hundred parts
          or more, up to six tenths of a narrow one.
        </p>
      )}
      {isOrdered && (
        <p className={styles.actions}>
          <Button onClick={() => onGoals({ ...goals, areSettingsFirst: !isFirst })}>
            {isFirst ? 'Put the large offcut first' : 'Put few settings first'}
          </Button>
        </p>
      )}
    </>
  )
}
