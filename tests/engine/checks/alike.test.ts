import { describe, expect, it } from 'vitest'
import type { CabinetId } from '../../../engine/basics/id'
import { alikeFindings } from '../../../engine/checks/alike'
import type { Finding } from '../../../engine/checks/finding'
import { derive } from '../../../engine/pipeline'
import { applyEdit } from '../../../engine/project/apply'
import type { Project } from '../../../engine/project/document'
import { aWall, cabinet } from '../../helpers/wall'

const STRIP = /anchor strip at its bottom/

/** Three uppers alike, one wider, and one that hangs by a bottom nailer of its own already. */
function uppers(): Project {
  const hung = (id: string, left: number, width = 450) => cabinet(id, { left, width })
  const wall = aWall(hung('U1', 0), hung('U2', 500), hung('U3', 1000), hung('U4', 1500, 600), hung('U5', 2200))
  const nailers = { ...wall.methods[wall.method]!.nailers, bottom: true }
  return applyEdit(wall, { kind: 'override', ids: ['u5' as CabinetId], choices: { nailers } })
}

function linesOf(project: Project) {
  const { problems, cabinetOf } = derive(project)
  return alikeFindings(problems, (id) => cabinetOf[id]?.mark)
}

const aboutStrips = (project: Project) => linesOf(project).filter(({ finding }) => STRIP.test(finding.message))

describe('findings alike', () => {
  it('are told of several cabinets in one line, with each to jump to, and nothing else is lost or changed', () => {
    const project = uppers()
    const { problems } = derive(project)
    const [line, ...more] = aboutStrips(project)
    expect(more).toEqual([])
    expect(line!.cabinets.map(({ mark }) => mark)).toEqual(['U1', 'U2', 'U3', 'U4'])
    const single = problems.find(({ message }) => STRIP.test(message))!
    expect(line!.finding.message).toBe(single.message.replace('U1:', 'U1 to U4, each:'))
    expect(line!.finding).toMatchObject({ measure: '1 strip', limit: '2 strips', source: single.source })
    const told = linesOf(project).reduce((sum, { cabinets }) => sum + Math.max(1, cabinets.length), 0)
    expect(told).toBe(problems.length)
  })

  it('have one way out for all, which leaves nothing of them', () => {
    const project = uppers()
    const { remedy } = aboutStrips(project)[0]!.finding
    expect(remedy?.label).toBe('Put a bottom nailer into U1 to U4')
    const after = applyEdit(project, remedy!.edit)
    expect(aboutStrips(after)).toEqual([])
    const nailers = derive(after).cabinets.flatMap(({ parts }) => parts.filter(({ role }) => role === 'bottomNailer'))
    expect(nailers).toHaveLength(5)
    expect(derive(after).problems.length).toBe(derive(project).problems.length - 4)
  })

  it('are told apart where their figures differ', () => {
    const heights = [1600, 1600, 1700].map((height, at) =>
      cabinet(`T${at + 1}`, { left: at * 700, width: 600, height, bottom: 0, depth: 580 }),
    )
    const strips = linesOf(aWall(...heights)).filter(({ finding }) => /anchor strip/.test(finding.message))
    expect(strips.map(({ finding }) => finding.message.split(':')[0])).toEqual(['T1 and T2, each', 'T3'])
  })

  it('that move cabinets offer the first one alone, whose way out was tried by itself', () => {
    const against = (mark: string): Finding => ({
      weight: 'mind',
      about: { kind: 'cabinet', cabinet: mark as CabinetId },
      message: `${mark}: a door opens against the wall end.`,
      remedy: {
        label: `Put a filler at the left of ${mark}`,
        edit: { kind: 'shapeCabinets', shapes: [{ id: mark as CabinetId, left: 40 }] },
      },
    })
    const both = [against('B1'), against('B12')]
    const lines = alikeFindings(both, (id) => id)
    expect(lines.map(({ finding }) => finding.message)).toEqual([
      'B1 and B12, each: a door opens against the wall end.',
    ])
    expect(lines[0]!.finding.remedy).toEqual(both[0]!.remedy)
  })

  it('stay apart where one cabinet is told the same of two things in it', () => {
    const sags: Finding = {
      weight: 'mind',
      about: { kind: 'cabinet', cabinet: 'B1' as CabinetId },
      message: 'B1: sags.',
    }
    expect(alikeFindings([sags, { ...sags }], (id) => id)).toEqual([
      { finding: sags, cabinets: [] },
      { finding: sags, cabinets: [] },
    ])
  })
})
