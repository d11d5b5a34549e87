/** What least squares leaves: the coefficients, R of the QR decomposition (upper triangle), and the rest. */
export interface Solved {
  coefficients: number[];
  /** Rows of R, each as long as there are coefficients. */
  r: number[][];
  /** The sum of squared residuals. */
  residual: number;
}

/**
 * Least squares by Householder's QR decomposition (Golub and Van Loan, Matrix Computations, ch. 5): no normal equations,
 * whose rounding errors are the square of these.
 * @param rows the design matrix, at least as many rows as columns, of full rank
 * @param y as many as rows
 * @returns null where the columns depend on each other
 */
export function leastSquares(rows: readonly (readonly number[])[], y: readonly number[]): Solved | null {
  const [m, n] = [rows.length, rows[0]?.length ?? 0];
  const columns = Array.from({ length: n }, (_, j) => Float64Array.from(rows, (row) => row[j]!));
  const right = Float64Array.from(y);
  for (let k = 0; k < n; k++) {
    const column = columns[k]!;
    const whole = lengthFrom(column, 0);
    const norm = lengthFrom(column, k);
    if (!(norm > DEPENDENT * whole)) return null;
    const alpha = column[k]! > 0 ? -norm : norm;
    // The reflection's vector stands where the zeros would come; R's diagonal element is put in after its use.
    column[k]! -= alpha;
    const square = lengthFrom(column, k) ** 2;
    for (let j = k + 1; j < n; j++) reflect(column, columns[j]!, k, square);
    reflect(column, right, k, square);
    column.fill(0, k + 1);
    column[k] = alpha;
  }
  const r = Array.from({ length: n }, (_, i) => columns.map((column) => column[i]!));
  return { coefficients: backwards(r, right), r, residual: m > n ? lengthFrom(right, n) ** 2 : 0 };
}

/** A column of which less than this share is left depends on those before it. */
const DEPENDENT = 1e-13;

/** The length of a vector from one element on, scaled so that it never overflows. */
function lengthFrom(values: Float64Array, from: number): number {
  let most = 0;
  for (let i = from; i < values.length; i++) most = Math.max(most, Math.abs(values[i]!));
  if (most === 0) return 0;
  let sum = 0;
  for (let i = from; i < values.length; i++) sum += (values[i]! / most) ** 2;
  return most * Math.sqrt(sum);
}

function reflect(v: Float64Array, target: Float64Array, from: number, square: number): void {
  let dot = 0;
  for (let i = from; i < v.length; i++) dot += v[i]! * target[i]!;
  const factor = (2 * dot) / square;
  for (let i = from; i < v.length; i++) target[i]! -= factor * v[i]!;
}

/** R x = b, from the last row up. */
function backwards(r: readonly number[][], b: ArrayLike<number>): number[] {
  const x = new Array<number>(r.length).fill(0);
  for (let i = r.length - 1; i >= 0; i--) {
    let sum = b[i]!;
    for (let j = i + 1; j < r.length; j++) sum -= r[i]![j]! * x[j]!;
    x[i] = sum / r[i]![i]!;
  }
  return x;
}

/** The solution of R' z = x, from the first row down. */
function forwards(r: readonly number[][], x: readonly number[]): number[] {
  const z = new Array<number>(r.length).fill(0);
  for (let i = 0; i < r.length; i++) {
    let sum = x[i]!;
    for (let j = 0; j < i; j++) sum -= r[j]![i]! * z[j]!;
    z[i] = sum / r[i]![i]!;
  }
  return z;
}

/** x' (R'R)^-1 x, the leverage of a row x. */
export function leverage(r: readonly number[][], x: readonly number[]): number {
  return forwards(r, x).reduce((sum, value) => sum + value * value, 0);
}

/** (R'R)^-1 x: which way the coefficients go where y grows at the row x. */
export function solveTwice(r: readonly number[][], x: readonly number[]): number[] {
  return backwards(r, forwards(r, x));
}
