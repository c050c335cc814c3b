import { loadLaw, type NetworkNumbers } from "../circuit/solve/types.js";
import { type Bench, loadsWith } from "./bench-network.js";
import { brokenOhm } from "./change.js";

/** The circuit with this gear on. */
export function onBench(bench: Bench, on: readonly string[]): NetworkNumbers {
  for (const name of on) rowNamed(bench.gearOf, name, "piece of gear");
  return { ...bench.numbers, loads: loadsWith(bench, on) };
}

/** Batteries apart, converters silent, gear as an ohmmeter sees it; what is behind an open switch is not there. */
export function deadBench(bench: Bench, on: readonly string[]): NetworkNumbers {
  const { numbers, restingOhm } = bench;
  const reached = new Set(on.map((name) => rowNamed(bench.gearOf, name, "piece of gear")));
  const none = new Int32Array(0);
  const nothing = new Float64Array(0);
  return {
    ...numbers,
    sources: {
      ...numbers.sources,
      emfV: numbers.sources.emfV.map(() => 0),
      ohm: numbers.sources.ohm.map(() => brokenOhm),
    },
    loads: {
      ...numbers.loads,
      law: numbers.loads.law.map(() => loadLaw.resistance),
      value: restingOhm.map((ohm, row) => (reached.has(row) ? ohm : Number.POSITIVE_INFINITY)),
    },
    converters: {
      inPlus: none,
      inMinus: none,
      outPlus: none,
      outMinus: none,
      outputV: nothing,
      maxOutputA: nothing,
      efficiency: nothing,
      standbyW: nothing,
      minInputV: nothing,
    },
  };
}

/** @throws RangeError if nothing has that name. */
export function rowNamed(rows: ReadonlyMap<string, number>, name: string, what: string): number {
  const row = rows.get(name);
  if (row === undefined) throw new RangeError(`a ${what} of the circuit is required, got ${name}`);
  return row;
}
