import { describe, expect, it } from 'vitest'
import { checkJob } from '../../../engine/sheets/pack'
import { aJob, aSheet, boards } from './yard'

const good = aJob([boards('720 x 560 x 4')])
const withPart = (more: object) => ({ ...good, parts: [{ ...good.parts[0]!, ...more }] })
const withSheet = (more: object) => ({ ...good, stock: [{ ...good.stock[0]!, ...more }] })

describe('the check of a sheet job', () => {
  it('lets a good job through as it is', () => {
    expect(checkJob(good)).toEqual({ ok: true, value: good })
  })

  it.each([
    [null, 'the job is not an object'],
    [{ ...good, kerf: -3 }, 'kerf is -3;'],
    [{ ...good, kerf: Number.NaN }, 'kerf is NaN;'],
    [{ ...good, kerf: undefined }, 'kerf is missing;'],
    [{ ...good, stages: 4 }, 'stages is 4;'],
    [{ ...good, firstCut: 'saw' }, 'firstCut is "saw";'],
    [{ ...good, effort: 'great' }, 'effort is "great";'],
    [{ ...good, seconds: -1 }, 'seconds is -1;'],
    [{ ...good, seed: 1.5 }, 'seed is 1.5;'],
    [{ ...good, offcutLeast: { length: 300, width: -2 } }, 'offcutLeast.width is -2;'],
    [{ ...good, isCountFirst: 'yes' }, 'isCountFirst is "yes";'],
    [{ ...good, goals: 'settings' }, 'goals is "settings";'],
    [{ ...good, goals: ['settings', 'speed'] }, 'goals[1] is "speed";'],
    [{ ...good, goals: ['settings', 'settings'] }, 'goals[1] is "settings";'],
    [{ ...good, parts: undefined }, 'parts is missing;'],
    [{ ...good, stock: 'many' }, 'stock is "many";'],
    [withPart({ length: 0 }), 'parts[0].length is 0; it must be a number from 0.01 to 100000'],
    [withPart({ length: -720 }), 'parts[0].length is -720; it must be a number from 0.01 to 100000'],
    [withPart({ width: Number.NaN }), 'parts[0].width is NaN;'],
    [withPart({ width: 1e300 }), 'parts[0].width is 1e+300;'],
    [withPart({ quantity: 2.5 }), 'parts[0].quantity is 2.5;'],
    [withPart({ quantity: 0 }), 'parts[0].quantity is 0;'],
    [withPart({ quantity: 1_000_000 }), 'parts[0].quantity is 1000000;'],
    [withPart({ rotate: 'yes' }), 'parts[0].rotate is "yes";'],
    [withPart({ material: undefined }), 'parts[0].material is missing;'],
    [withSheet({ length: '2440' }), 'stock[0].length is "2440";'],
    [withSheet({ trim: { length: -1, width: 0 } }), 'stock[0].trim.length is -1;'],
    [withSheet({ quantity: -1 }), 'stock[0].quantity is -1;'],
    [withSheet({ price: 'dear' }), 'stock[0].price is "dear";'],
    [withSheet({ offcut: 1 }), 'stock[0].offcut is 1;'],
    [{ ...good, parts: [good.parts[0], good.parts[0]] }, 'parts[1].id is "720 x 560 x 4", which another has'],
  ])('names the field and the value of %j', (job, message) => {
    const checked = checkJob(job)
    expect(checked.ok ? 'good' : checked.message).toContain(message)
  })

  it('names the number of boards when there are too many in all', () => {
    const parts = [boards('720 x 560 x 30000'), boards('560 x 500 x 30000')]
    expect(checkJob({ ...good, stock: [aSheet()], parts })).toMatchObject({
      message: 'parts asks for 60000 boards in all; 50000 is the most',
    })
  })
})
