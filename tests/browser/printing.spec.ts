import { button, expect, goTo, openTab, test } from './shop'

test.use({ looksOn: false, draws3D: false })

test.describe.configure({ timeout: 90_000 })

/** What is printed on A4 within its margins is so wide, in pixels. */
const PAPER = { width: 703, height: 1030 }

/** How many pages a file of paper has. */
function pagesOf(pdf: Buffer): number {
  return (pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? []).length
}

test('the cut list is printed from Design, with every word of its rows and nothing to press', async ({ shop }) => {
  await openTab(shop, 'Cut list')
  const rows = await shop.getByRole('grid', { name: 'Cut list' }).locator('tbody tr').count()
  expect(rows).toBeGreaterThan(60)
  await shop.emulateMedia({ media: 'print' })
  await shop.setViewportSize(PAPER)
  const list = shop.getByRole('grid', { name: 'Cut list' })
  await expect(list).toBeVisible()
  await expect(shop.getByRole('tab', { name: /^Cut list/ })).toBeVisible()
  await expect(shop.getByRole('tab', { name: /^Schedule/ })).toBeHidden()
  await expect(shop.getByRole('button', { name: 'Parts of A1' })).toBeHidden()
  // What is picked on the screen is not marked on paper.
  await shop.evaluate(() => document.querySelector<HTMLElement>('tr[data-row] td')!.click())
  const picked = list.locator('tr[aria-selected=true]').first()
  await expect(picked).toBeVisible()
  await expect(picked).toHaveCSS('box-shadow', 'none')
  const cut = await list
    .locator('td, th')
    .evaluateAll((cells) => cells.filter((one) => one.scrollWidth > one.clientWidth + 1).map((one) => one.textContent))
  expect(cut).toEqual([])
  const box = (await list.boundingBox())!
  expect(box.x + box.width).toBeLessThanOrEqual(PAPER.width)
  for (const format of ['A4', 'Letter']) {
    const pages = pagesOf(await shop.pdf({ format }))
    // A page takes some forty rows.
    expect(pages).toBeGreaterThan(1)
    expect(pages).toBeLessThan(4)
  }
})

test('every printed page has the name of the project at its foot', async ({ shop }) => {
  await goTo(shop, 'Cut')
  const name = await shop.getByLabel('Name of the project').inputValue()
  const feet = await shop.evaluate(() =>
    [...document.styleSheets]
      .flatMap((sheet) => [...sheet.cssRules].map((rule) => rule.cssText))
      .filter((text) => /@page/.test(text)),
  )
  expect(feet.join()).toContain(`content: "${name}"`)
})

test('labels are printed by themselves, one whole for every part of the plan, and steps again after them', async ({
  shop,
}) => {
  await goTo(shop, 'Cut')
  const labels = shop.getByRole('list', { name: 'Labels' }).getByRole('listitem')
  // Paper is closed by the browser, and here by hand.
  await shop.evaluate(() => Object.assign(window, { print: () => {} }))
  await button(shop, 'Print labels').click({ timeout: 30_000 })
  await shop.emulateMedia({ media: 'print' })
  await shop.setViewportSize(PAPER)
  const [, parts] = /(\d+)\s*parts/.exec((await shop.locator('main, body').first().textContent()) ?? '')!
  await expect(shop.getByRole('region', { name: 'Steps', exact: true })).toBeHidden()
  await expect(labels.first()).toContainText(/^[ABTU]\d+-\w+.*step \d+.*\d mm/)
  // The name of the part alone, where its row has those of several.
  await expect(labels.filter({ hasText: 'B3-PF' })).toContainText(/plinth front\d/)
  await expect(labels.filter({ hasText: 'B3-LS' })).toContainText(/banded: 1 long/)
  const marks = await labels.locator('strong').allTextContents()
  expect(new Set(marks).size).toBe(marks.length)
  expect(marks.length).toBe(Number(parts))
  const cut = await labels.evaluateAll((all) =>
    all.filter((one) => one.scrollWidth > one.clientWidth + 1).map((one) => one.textContent),
  )
  expect(cut).toEqual([])
  // Three beside one another, some nine rows of them on a page.
  expect(pagesOf(await shop.pdf({ format: 'A4' }))).toBeLessThan(8)
  await shop.evaluate(() => window.dispatchEvent(new Event('afterprint')))
  await expect(labels).toHaveCount(0)
  await expect(shop.getByRole('region', { name: 'Steps', exact: true })).toBeVisible()
})
