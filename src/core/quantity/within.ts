/** Share by which a figure that was worked out may be off in its last digits: 10 A through a switch of 10 A is not too much. */
const lastDigits = 1e-9;

/** Is the figure no more than its limit? NaN is not. */
export function within(figure: number, limit: number): boolean {
  return figure <= limit + lastDigits * Math.abs(limit);
}

/** Is the figure no less than its limit? NaN is not. */
export function atLeast(figure: number, limit: number): boolean {
  return figure >= limit - lastDigits * Math.abs(limit);
}
