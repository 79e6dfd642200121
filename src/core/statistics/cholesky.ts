/**
 * The inverse of a symmetric positive definite matrix.
 *
 * @param matrix size × size by rows; only the lower half is read
 * @returns size × size by rows; null when the matrix is not positive definite
 *
 * Method: Cholesky's square root, then forward and back substitution of the unit vectors.
 */
export function inverseOf(matrix: Float64Array, size: number): Float64Array | null {
  const root = new Float64Array(matrix);
  for (let column = 0; column < size; column += 1) {
    for (let row = column; row < size; row += 1) {
      let sum = root[row * size + column] as number;
      for (let k = 0; k < column; k += 1) {
        sum -= (root[row * size + k] as number) * (root[column * size + k] as number);
      }
      if (row > column) {
        root[row * size + column] = sum / (root[column * size + column] as number);
      } else if (sum > 0) root[row * size + column] = Math.sqrt(sum);
      else return null;
    }
  }
  const inverse = new Float64Array(size * size);
  const solved = new Float64Array(size);
  for (let unit = 0; unit < size; unit += 1) {
    solved.fill(0);
    for (let row = unit; row < size; row += 1) {
      let sum = row === unit ? 1 : 0;
      for (let k = unit; k < row; k += 1) {
        sum -= (root[row * size + k] as number) * (solved[k] as number);
      }
      solved[row] = sum / (root[row * size + row] as number);
    }
    for (let row = size - 1; row >= unit; row -= 1) {
      let sum = solved[row] as number;
      for (let k = row + 1; k < size; k += 1) {
        sum -= (root[k * size + row] as number) * (inverse[k * size + unit] as number);
      }
      const value = sum / (root[row * size + row] as number);
      inverse[row * size + unit] = value;
      inverse[unit * size + row] = value;
    }
  }
  return inverse;
}
