import { blindFindings } from './blind'
import { boringFindings } from './boring'
import { carryingFindings } from './carrying'
import { deepRecessFindings } from './deepRecess'
import { doorFindings } from './door'
import { drawerFindings } from './drawer'
import type { Checked, Finding } from './finding'
import { fixingFindings } from './fixing'
import { frameFindings } from './frame'
import { hangingFindings } from './hanging'
import { hingeFindings } from './hinge'
import { narrowFindings } from './narrow'
import { seatFindings } from './seat'
import { shelfFindings } from './shelf'
import { shelfWayFindings } from './shelfWay'

/** Whether a cabinet holds, opens, can be cut and can be brought in, wherever along its wall it stands. */
export function cabinetFindings(checked: Checked): Finding[] {
  if (checked.parts.length === 0) return []
  if (checked.cabinet.space) return narrowFindings(checked)
  return [
    ...shelfFindings(checked),
    ...seatFindings(checked),
    ...shelfWayFindings(checked),
    ...doorFindings(checked),
    ...blindFindings(checked),
    ...hingeFindings(checked),
    ...frameFindings(checked),
    ...drawerFindings(checked),
    ...hangingFindings(checked),
    ...boringFindings(checked),
    ...deepRecessFindings(checked),
    ...fixingFindings(checked),
    ...narrowFindings(checked),
    ...carryingFindings(checked),
  ]
}
