/** A sentence in which no line ends between the inches and their fraction, nor between a figure and its unit. */
export function unbroken(sentence: string): string {
  return sentence.replace(/(\d) (?=\d+\/\d|(?:mm|in|lb|kg|m|ft|psi|MPa)\b)/g, '$1\u00a0')
}
