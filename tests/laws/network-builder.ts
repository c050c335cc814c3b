import { loadLaw, type NetworkNumbers } from "../../src/core/circuit/solve/types.js";

export interface ConverterRow {
  readonly inPlus: number;
  readonly inMinus: number;
  readonly outPlus: number;
  readonly outMinus: number;
  readonly outputV: number;
  readonly maxOutputA?: number;
  readonly efficiency?: number;
  readonly standbyW?: number;
  readonly minInputV?: number;
}

/** Writes a network down piece by piece; each call returns the index of what it added. */
export class NetworkBuilder {
  nodeCount = 0;
  readonly #branches: [number, number, number][] = [];
  readonly #sources: [number, number, number, number][] = [];
  readonly #loads: [number, number, number, number, number][] = [];
  readonly #converters: ConverterRow[] = [];

  node(): number {
    return this.nodeCount++;
  }

  /** A new node at the far end of a new branch. */
  along(from: number, ohm: number): number {
    const to = this.node();
    this.branch(from, to, ohm);
    return to;
  }

  branch(from: number, to: number, ohm: number): number {
    return this.#branches.push([from, to, ohm]) - 1;
  }

  source(plus: number, minus: number, emfV: number, ohm: number): number {
    return this.#sources.push([plus, minus, emfV, ohm]) - 1;
  }

  load(plus: number, minus: number, law: keyof typeof loadLaw, value: number, minV = 0): number {
    return this.#loads.push([plus, minus, loadLaw[law], value, minV]) - 1;
  }

  converter(row: ConverterRow): number {
    return this.#converters.push(row) - 1;
  }

  build(): NetworkNumbers {
    const int = <T>(rows: readonly T[], pick: (row: T) => number): Int32Array => Int32Array.from(rows, pick);
    const real = <T>(rows: readonly T[], pick: (row: T) => number): Float64Array =>
      Float64Array.from(rows, pick);
    const converters = this.#converters;
    return {
      nodeCount: this.nodeCount,
      branches: {
        from: int(this.#branches, (row) => row[0]),
        to: int(this.#branches, (row) => row[1]),
        ohm: real(this.#branches, (row) => row[2]),
      },
      sources: {
        plus: int(this.#sources, (row) => row[0]),
        minus: int(this.#sources, (row) => row[1]),
        emfV: real(this.#sources, (row) => row[2]),
        ohm: real(this.#sources, (row) => row[3]),
      },
      loads: {
        plus: int(this.#loads, (row) => row[0]),
        minus: int(this.#loads, (row) => row[1]),
        law: Uint8Array.from(this.#loads, (row) => row[2]),
        value: real(this.#loads, (row) => row[3]),
        minV: real(this.#loads, (row) => row[4]),
      },
      converters: {
        inPlus: int(converters, (row) => row.inPlus),
        inMinus: int(converters, (row) => row.inMinus),
        outPlus: int(converters, (row) => row.outPlus),
        outMinus: int(converters, (row) => row.outMinus),
        outputV: real(converters, (row) => row.outputV),
        maxOutputA: real(converters, (row) => row.maxOutputA ?? Infinity),
        efficiency: real(converters, (row) => row.efficiency ?? 0.9),
        standbyW: real(converters, (row) => row.standbyW ?? 0),
        minInputV: real(converters, (row) => row.minInputV ?? 0),
      },
    };
  }
}
