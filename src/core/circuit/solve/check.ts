import { loadLaw, type NetworkNumbers } from "./types.js";

type Numbers = Float64Array | Int32Array | Uint8Array;

/**
 * Refuses a malformed question before any arithmetic is done on it.
 * @throws RangeError naming the table, the row, what was required and what came.
 */
export function checkNetwork(network: NetworkNumbers): void {
  const { nodeCount, branches, sources, loads, converters } = network;
  if (!(Number.isInteger(nodeCount) && nodeCount >= 0))
    throw new RangeError(`node count must be a whole number ≥ 0, got ${nodeCount}`);

  const nodes = (name: string, column: Int32Array, rows: number): void =>
    checkColumn(name, column, rows, `a node from 0 to ${nodeCount - 1}`, (x) => x >= 0 && x < nodeCount);
  const above = (name: string, column: Float64Array, rows: number): void =>
    checkColumn(name, column, rows, "above zero and finite", (x) => x > 0 && x < Infinity);
  const notBelow = (name: string, column: Float64Array, rows: number): void =>
    checkColumn(name, column, rows, "≥ 0 and finite", (x) => x >= 0 && x < Infinity);

  const branchCount = branches.ohm.length;
  nodes("branch from", branches.from, branchCount);
  nodes("branch to", branches.to, branchCount);
  above("branch ohm", branches.ohm, branchCount);

  const sourceCount = sources.emfV.length;
  nodes("source plus", sources.plus, sourceCount);
  nodes("source minus", sources.minus, sourceCount);
  notBelow("source emfV", sources.emfV, sourceCount);
  above("source ohm", sources.ohm, sourceCount);

  const loadCount = loads.value.length;
  nodes("load plus", loads.plus, loadCount);
  nodes("load minus", loads.minus, loadCount);
  checkColumn("load law", loads.law, loadCount, "0, 1 or 2", (x) => x <= loadLaw.resistance);
  notBelow("load minV", loads.minV, loadCount);
  checkColumn("load value", loads.value, loadCount, "≥ 0 W, ≥ 0 A or > 0 Ω, finite unless Ω", (x, row) =>
    loads.law[row] === loadLaw.resistance ? x > 0 : x >= 0 && x < Infinity,
  );

  const converterCount = converters.outputV.length;
  nodes("converter inPlus", converters.inPlus, converterCount);
  nodes("converter inMinus", converters.inMinus, converterCount);
  nodes("converter outPlus", converters.outPlus, converterCount);
  nodes("converter outMinus", converters.outMinus, converterCount);
  above("converter outputV", converters.outputV, converterCount);
  checkColumn("converter maxOutputA", converters.maxOutputA, converterCount, "≥ 0", (x) => x >= 0);
  checkColumn(
    "converter efficiency",
    converters.efficiency,
    converterCount,
    "above 0, at most 1",
    (x) => x > 0 && x <= 1,
  );
  notBelow("converter standbyW", converters.standbyW, converterCount);
  notBelow("converter minInputV", converters.minInputV, converterCount);
}

function checkColumn(
  name: string,
  column: Numbers,
  rows: number,
  required: string,
  holds: (value: number, row: number) => boolean,
): void {
  if (column.length !== rows) throw new RangeError(`${name} must have ${rows} rows, got ${column.length}`);
  for (let row = 0; row < rows; row++) {
    const value = column[row] as number;
    if (!holds(value, row)) throw new RangeError(`${name} of row ${row} must be ${required}, got ${value}`);
  }
}
