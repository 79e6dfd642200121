/** A square matrix; see `entry`. */
export interface Matrix {
  /** Rows, and columns. */
  readonly size: number;
  /** By rows. */
  readonly values: Float64Array;
}

/** Square, of zeros. */
export function squareMatrix(size: number): Matrix {
  return { size, values: new Float64Array(size * size) };
}

/** @param row from 0 @param column from 0 */
export function entry({ size, values }: Matrix, row: number, column: number): number {
  return values[row * size + column] as number;
}

/** One number of several. @param index from 0, below their length */
export function at(values: Float64Array, index: number): number {
  return values[index] as number;
}

/** Adds to one number of several. @param index from 0, below their length */
export function add(values: Float64Array, index: number, amount: number): void {
  values[index] = (values[index] as number) + amount;
}

/** Σ one × other. @param other of the same length */
export function dot(one: Float64Array, other: Float64Array): number {
  let sum = 0;
  // Without at(): in the first calls of a formula a function called for each number costs more than the sum.
  for (let index = 0; index < one.length; index += 1) {
    sum += (one[index] as number) * (other[index] as number);
  }
  return sum;
}

/** A row of a matrix, as a view of it. */
export function rowOf({ size, values }: Matrix, row: number): Float64Array {
  return values.subarray(row * size, (row + 1) * size);
}

/** The sum of the diagonal. */
export function trace(matrix: Matrix): number {
  let sum = 0;
  for (let index = 0; index < matrix.size; index += 1) sum += entry(matrix, index, index);
  return sum;
}

/**
 * The inverse of a symmetric positive definite matrix.
 *
 * @param matrix only the lower half is read
 * @returns null when the matrix is not positive definite
 *
 * Method: Cholesky's square root, then forward and back substitution of the unit vectors.
 * Source: Golub, G. H., Van Loan, C. F. (1996). Matrix Computations, 3rd ed., sections 3.1 and 4.2
 *   (citation from memory).
 */
export function inverseOf(matrix: Matrix): Matrix | null {
  const { size } = matrix;
  const root = rootOf(matrix);
  if (root === null) return null;
  const inverse = squareMatrix(size);
  const solved = new Float64Array(size);
  for (let unit = 0; unit < size; unit += 1) {
    solved.fill(0);
    for (let row = unit; row < size; row += 1) {
      let sum = row === unit ? 1 : 0;
      for (let k = unit; k < row; k += 1) sum -= entry(root, row, k) * at(solved, k);
      solved[row] = sum / entry(root, row, row);
    }
    for (let row = size - 1; row >= unit; row -= 1) {
      let sum = at(solved, row);
      for (let k = row + 1; k < size; k += 1) sum -= entry(root, k, row) * entry(inverse, k, unit);
      const value = sum / entry(root, row, row);
      inverse.values[row * size + unit] = value;
      inverse.values[unit * size + row] = value;
    }
  }
  return inverse;
}

/** The solution of root × x = values. @param root lower half alone, as of rootOf */
export function solvedForward(root: Matrix, values: Float64Array): Float64Array {
  const solved = new Float64Array(root.size);
  for (let row = 0; row < root.size; row += 1) {
    let sum = at(values, row);
    for (let k = 0; k < row; k += 1) sum -= entry(root, row, k) * at(solved, k);
    solved[row] = sum / entry(root, row, row);
  }
  return solved;
}

/** The solution of root transposed × x = values. @param root lower half alone, as of rootOf */
export function solvedBackward(root: Matrix, values: Float64Array): Float64Array {
  const solved = new Float64Array(root.size);
  for (let row = root.size - 1; row >= 0; row -= 1) {
    let sum = at(values, row);
    for (let k = row + 1; k < root.size; k += 1) sum -= entry(root, k, row) * at(solved, k);
    solved[row] = sum / entry(root, row, row);
  }
  return solved;
}

/** Cholesky's square root, in the lower half; null when the matrix is not positive definite. */
export function rootOf({ size, values }: Matrix): Matrix | null {
  const root = { size, values: new Float64Array(values) };
  for (let column = 0; column < size; column += 1) {
    for (let row = column; row < size; row += 1) {
      let sum = entry(root, row, column);
      for (let k = 0; k < column; k += 1) sum -= entry(root, row, k) * entry(root, column, k);
      if (row > column) root.values[row * size + column] = sum / entry(root, column, column);
      else if (sum > 0) root.values[row * size + column] = Math.sqrt(sum);
      else return null;
    }
  }
  return root;
}
