import { inflateSync } from 'node:zlib'
import { cabinet, expect, goTo, test } from './shop'

test.use({ looksOn: false })

/** The pages of a document, and how many different bytes its pictures are made of. */
function printed(pdf: Buffer): { readonly pages: number; readonly shades: readonly number[] } {
  const text = pdf.toString('latin1')
  const images = [...text.matchAll(/\/Subtype \/Image\b((?:(?!endobj).)*?)>>\s*stream\r?\n/gs)]
  const shades = images.map((image) => {
    const length = Number(/\/Length (\d+)/.exec(image[1]!)![1])
    const from = image.index + image[0].length
    return new Set(inflateSync(pdf.subarray(from, from + length))).size
  })
  return { pages: text.match(/\/Type \/Page\b/g)!.length, shades }
}

test('what the client sees is printed on one page with its picture, and nothing of it is picked', async ({ shop }) => {
  await cabinet(shop, 'B3').click({ position: { x: 20, y: 40 } })
  await goTo(shop, 'Show')
  await expect(shop.getByRole('main')).toContainText('10 cabinets on Window wall.')
  await expect(shop.locator('div[data-chosen=""]')).toHaveCount(1)
  await expect(async () => {
    const { pages, shades } = printed(await shop.pdf({ format: 'A4', landscape: true }))
    expect(pages).toBe(1)
    // An empty canvas is of one shade.
    expect(Math.max(0, ...shades)).toBeGreaterThan(100)
  }).toPass()
})
