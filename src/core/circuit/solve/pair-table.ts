/** Open-addressed table from an unordered pair of nodes to a whole number, on typed arrays: no objects per entry. */
export class PairTable {
  readonly #mask: number;
  readonly #low: Int32Array;
  readonly #high: Int32Array;
  readonly #value: Int32Array;

  /** @param capacity Greatest number of different pairs that will be set. */
  constructor(capacity: number) {
    let size = 8;
    while (size < 2 * capacity) size *= 2;
    this.#mask = size - 1;
    this.#low = new Int32Array(size).fill(-1);
    this.#high = new Int32Array(size);
    this.#value = new Int32Array(size);
  }

  /** The number held for the pair, or -1. */
  get(a: number, b: number): number {
    const at = this.#find(a, b);
    return this.#low[at] === -1 ? -1 : (this.#value[at] as number);
  }

  set(a: number, b: number, value: number): void {
    const at = this.#find(a, b);
    this.#low[at] = Math.min(a, b);
    this.#high[at] = Math.max(a, b);
    this.#value[at] = value;
  }

  #find(a: number, b: number): number {
    const low = Math.min(a, b);
    const high = Math.max(a, b);
    let at = (Math.imul(low, 0x9e3779b1) ^ Math.imul(high, 0x85ebca6b)) >>> 0;
    at = (at ^ (at >>> 15)) & this.#mask;
    while (this.#low[at] !== -1 && (this.#low[at] !== low || this.#high[at] !== high))
      at = (at + 1) & this.#mask;
    return at;
  }
}
