/** Words at the foot of every printed page, beside its number, so that a loose page is known by them. */
export function PageFoot({ words }: { readonly words: string }) {
  return <style>{`@page { @bottom-left { content: ${textOf(words)}; font: 9pt sans-serif; } }`}</style>
}

/** A text as a style sheet has it: nothing in it ends the text, or the sheet. */
function textOf(words: string): string {
  return `"${words.replace(/[\\"<]/g, (sign) => `\\${sign.charCodeAt(0).toString(16)} `).replace(/\s/g, ' ')}"`
}
