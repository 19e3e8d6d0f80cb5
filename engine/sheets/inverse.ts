/**
 * Sets `inverse` to the inverse of a matrix with so many rows, row after row, which is used up: Gauss and Jordan, with the
 * largest pivot of each column.
 */
export function invert(matrix: Float64Array, inverse: Float64Array, size: number): void {
  inverse.fill(0)
  for (let at = 0; at < size; at++) inverse[at * size + at] = 1
  for (let column = 0; column < size; column++) {
    let largest = column
    for (let row = column + 1; row < size; row++) {
      if (Math.abs(matrix[row * size + column]!) > Math.abs(matrix[largest * size + column]!)) largest = row
    }
    for (const numbers of [matrix, inverse]) exchange(numbers, column * size, largest * size, size)
    const pivot = matrix[column * size + column]!
    for (let at = 0; at < size; at++) {
      matrix[column * size + at]! /= pivot
      inverse[column * size + at]! /= pivot
    }
    for (let row = 0; row < size; row++) {
      const share = matrix[row * size + column]!
      if (row === column || share === 0) continue
      for (let at = 0; at < size; at++) {
        matrix[row * size + at]! -= share * matrix[column * size + at]!
        inverse[row * size + at]! -= share * inverse[column * size + at]!
      }
    }
  }
}

function exchange(numbers: Float64Array, a: number, b: number, size: number): void {
  if (a === b) return
  for (let at = 0; at < size; at++) {
    const held = numbers[a + at]!
    numbers[a + at] = numbers[b + at]!
    numbers[b + at] = held
  }
}
