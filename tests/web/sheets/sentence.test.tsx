import { renderToStaticMarkup } from 'react-dom/server'
import { expect, it } from 'vitest'
import { Sentence } from '../../../web/sheets/Sentence'

it('no line ends within the mark of a part or within a length', () => {
  const page = renderToStaticMarkup(<Sentence words="U1-TP and T1-AS1 are cut from 7b, 590 mm wide." />)
  expect(page).toMatch(/^<span[^>]*>U1-TP<\/span> and <span[^>]*>T1-AS1<\/span> are cut from 7b, 590\u00a0mm wide\.$/)
})
