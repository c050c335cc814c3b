/**
 * The fullest a length can be cut from pieces at hand, exactly: which sums are reachable, kept as bits.
 * @param capacityMm Whole number ≥ 0.
 * @param lengthsMm Lengths of the pieces, each used at most once, whole numbers > 0.
 * @returns Indices of the pieces taken; among equal sums the last ones of the list are preferred.
 */
export function fullest(capacityMm: number, lengthsMm: readonly number[]): number[] {
  if (!(capacityMm >= 0)) throw new RangeError(`capacity must be ≥ 0 mm, got ${capacityMm}`);
  const fits: number[] = [];
  let sum = 0;
  for (let i = 0; i < lengthsMm.length; i += 1) {
    const length = lengthsMm[i] ?? 0;
    if (length <= capacityMm) {
      fits.push(i);
      sum += length;
    }
  }
  if (sum <= capacityMm) return fits;
  const words = (capacityMm >>> 5) + 1;
  const rows: Uint32Array[] = [];
  let reach = new Uint32Array(words);
  reach[0] = 1;
  rows.push(reach);
  for (const index of fits) {
    reach = withShifted(reach, lengthsMm[index] ?? 0, words);
    rows.push(reach);
  }
  let at = capacityMm;
  while (at > 0 && !bit(reach, at)) at -= 1;
  const taken: number[] = [];
  for (let k = fits.length; k > 0 && at > 0; k -= 1) {
    const index = fits[k - 1] ?? 0;
    const length = lengthsMm[index] ?? 0;
    const before = rows[k - 1];
    if (before !== undefined && at >= length && bit(before, at - length)) {
      taken.push(index);
      at -= length;
    }
  }
  return taken.reverse();
}

const bit = (bits: Uint32Array, at: number): boolean => (((bits[at >>> 5] ?? 0) >>> (at & 31)) & 1) === 1;

function withShifted(bits: Uint32Array, by: number, words: number): Uint32Array<ArrayBuffer> {
  const out = new Uint32Array(bits);
  const whole = by >>> 5;
  const part = by & 31;
  for (let w = words - 1; w >= whole; w -= 1) {
    const high = (bits[w - whole] ?? 0) << part;
    const low = part > 0 && w > whole ? (bits[w - whole - 1] ?? 0) >>> (32 - part) : 0;
    out[w] = (out[w] ?? 0) | high | low;
  }
  return out;
}
