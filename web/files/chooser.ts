/** Lets the person choose a file of a kind; null when none is chosen. */
export function chooseFile(accept: string): Promise<File | null> {
  return new Promise((resolve) => {
    const input = document.createElement('input')
    input.type = 'file'
    input.accept = accept
    // It stays in the page until it is answered: one that nothing holds may be swept away while the dialog opens.
    input.hidden = true
    document.body.append(input)
    const answer = (file: File | null) => {
      input.remove()
      resolve(file)
    }
    input.addEventListener('change', () => answer(input.files?.[0] ?? null))
    input.addEventListener('cancel', () => answer(null))
    input.click()
  })
}

/** Hands a file to the browser to be downloaded. It is never opened in the window. */
export function download(name: string, text: string, kind: string): void {
  const url = URL.createObjectURL(new Blob([text], { type: kind }))
  const link = document.createElement('a')
  link.href = url
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(url), 10_000)
}

/** `Orchard Lane kitchen.casewright.json`, without what file systems refuse. */
export function fileNameOf(name: string, kind = 'casewright', otherwise = 'Project'): string {
  const plain = name
    .replace(/[\\/:*?"<>|\p{Cc}\p{Cf}]/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim()
  return `${plain || otherwise}.${kind}.json`
}
