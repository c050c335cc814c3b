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
    checkColumn(name, column, rows, `a node from 0 to ${nodeCount - 1}`, 0, nodeCount - 1);
  const above = (name: string, column: Float64Array, rows: number): void =>
    checkColumn(name, column, rows, "above zero and finite", Number.MIN_VALUE, Number.MAX_VALUE);
  const notBelow = (name: string, column: Float64Array, rows: number): void =>
    checkColumn(name, column, rows, "≥ 0 and finite", 0, Number.MAX_VALUE);

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
  checkColumn("load law", loads.law, loadCount, "0, 1 or 2", 0, loadLaw.resistance);
  notBelow("load minV", loads.minV, loadCount);
  for (let row = 0; row < loadCount; row++) {
    const value = loads.value[row] as number;
    const holds = loads.law[row] === loadLaw.resistance ? value > 0 : value >= 0 && value < Infinity;
    if (!holds) throw mistake("load value", row, "≥ 0 W, ≥ 0 A or > 0 Ω, finite unless Ω", value);
  }

  const converterCount = converters.outputV.length;
  nodes("converter inPlus", converters.inPlus, converterCount);
  nodes("converter inMinus", converters.inMinus, converterCount);
  nodes("converter outPlus", converters.outPlus, converterCount);
  nodes("converter outMinus", converters.outMinus, converterCount);
  above("converter outputV", converters.outputV, converterCount);
  checkColumn("converter maxOutputA", converters.maxOutputA, converterCount, "≥ 0", 0, Infinity);
  const { efficiency } = converters;
  checkColumn("converter efficiency", efficiency, converterCount, "above 0, at most 1", Number.MIN_VALUE, 1);
  notBelow("converter standbyW", converters.standbyW, converterCount);
  notBelow("converter minInputV", converters.minInputV, converterCount);
}

/** Both bounds belong to what is allowed; what is not a number is not. */
function checkColumn(
  name: string,
  column: Numbers,
  rows: number,
  required: string,
  least: number,
  most: number,
): void {
  if (column.length !== rows) throw new RangeError(`${name} must have ${rows} rows, got ${column.length}`);
  for (let row = 0; row < rows; row++) {
    const value = column[row] as number;
    if (!(value >= least && value <= most)) throw mistake(name, row, required, value);
  }
}

function mistake(name: string, row: number, required: string, value: number): RangeError {
  return new RangeError(`${name} of row ${row} must be ${required}, got ${value}`);
}
