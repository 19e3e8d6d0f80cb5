import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { DamagePicture } from '../../../web/sheets/DamagePicture'
import { roughWords } from '../../../web/sheets/words'

function drawn(left: number, bottom: number, width: number, height: number): string | undefined {
  const damage = { left, bottom, width, height }
  const markup = renderToStaticMarkup(<DamagePicture name="1a" length={2440} width={579} damage={damage} />)
  return /data-damage="([^"]*)"/.exec(markup)?.[1]
}

describe('the drawing of a damage', () => {
  it('lies where it was measured, from the first end and the first edge', () => {
    expect(drawn(100, 50, 1800, 300)).toBe('100 50 1800 300')
  })

  it('ends where the piece ends, and is nothing off it', () => {
    expect(drawn(2000, 400, 1800, 300)).toBe(`2000 400 ${2440 - 2000} ${579 - 400}`)
    expect(drawn(2440, 0, 10, 10)).toBeUndefined()
  })
})

describe('the size of a piece', () => {
  const mm = { unit: 'mm', step: 0.1 } as const
  const rough = { width: 2440, height: 551.6 }

  it('is told clean too where it has factory edges, but not of a sheet as it came', () => {
    const clean = { length: 2420, width: 541.6 }
    expect(roughWords(rough, clean, false, mm)).toBe('2440 × 551.6 mm, clean 2420 × 541.6 mm')
    expect(roughWords(rough, { length: 2440, width: 551.6 }, false, mm)).toBe('2440 × 551.6 mm')
    expect(roughWords({ width: 2440, height: 1220 }, { length: 2420, width: 1200 }, true, mm)).toBe('2440 × 1220 mm')
  })
})
