import { loadLaw, type NetworkNumbers } from "./types.js";

type Numbers = Float64Array | Int32Array | Uint8Array;

/**
 * Refuses tables of unlike length and numbers that can't be, before any arithmetic is done on them.
 * @throws RangeError naming the table, the row, what was required and what came.
 */
export function checkNumbers({ branches, sources, loads, converters }: NetworkNumbers): void {
  const branchCount = branches.ohm.length;
  checkLength("branch from", branches.from, branchCount);
  checkLength("branch to", branches.to, branchCount);
  checkAbove("branch ohm", branches.ohm, branchCount);

  const sourceCount = sources.emfV.length;
  checkLength("source plus", sources.plus, sourceCount);
  checkLength("source minus", sources.minus, sourceCount);
  checkNotBelow("source emfV", sources.emfV, sourceCount);
  checkAbove("source ohm", sources.ohm, sourceCount);

  const loadCount = loads.value.length;
  checkLength("load plus", loads.plus, loadCount);
  checkLength("load minus", loads.minus, loadCount);
  checkColumn("load law", loads.law, loadCount, "0, 1 or 2", 0, loadLaw.resistance);
  checkNotBelow("load minV", loads.minV, loadCount);
  for (let row = 0; row < loadCount; row++) {
    const value = loads.value[row] as number;
    const holds = loads.law[row] === loadLaw.resistance ? value > 0 : value >= 0 && value < Infinity;
    if (!holds) throw mistake("load value", row, "≥ 0 W, ≥ 0 A or > 0 Ω, finite unless Ω", value);
  }

  const converterCount = converters.outputV.length;
  checkLength("converter inPlus", converters.inPlus, converterCount);
  checkLength("converter inMinus", converters.inMinus, converterCount);
  checkLength("converter outPlus", converters.outPlus, converterCount);
  checkLength("converter outMinus", converters.outMinus, converterCount);
  checkAbove("converter outputV", converters.outputV, converterCount);
  checkColumn("converter maxOutputA", converters.maxOutputA, converterCount, "≥ 0", 0, Infinity);
  const { efficiency } = converters;
  checkColumn("converter efficiency", efficiency, converterCount, "above 0, at most 1", Number.MIN_VALUE, 1);
  checkNotBelow("converter standbyW", converters.standbyW, converterCount);
  checkNotBelow("converter minInputV", converters.minInputV, converterCount);
}

/**
 * Refuses ends that are no nodes.
 * @throws RangeError as `checkNumbers`.
 */
export function checkJoins({ nodeCount, branches, sources, loads, converters }: NetworkNumbers): void {
  if (!(Number.isInteger(nodeCount) && nodeCount >= 0))
    throw new RangeError(`node count must be a whole number ≥ 0, got ${nodeCount}`);
  const required = `a node from 0 to ${nodeCount - 1}`;
  const columns = {
    "branch from": branches.from,
    "branch to": branches.to,
    "source plus": sources.plus,
    "source minus": sources.minus,
    "load plus": loads.plus,
    "load minus": loads.minus,
    "converter inPlus": converters.inPlus,
    "converter inMinus": converters.inMinus,
    "converter outPlus": converters.outPlus,
    "converter outMinus": converters.outMinus,
  };
  for (const [name, column] of Object.entries(columns))
    checkColumn(name, column, column.length, required, 0, nodeCount - 1);
}

function checkAbove(name: string, column: Float64Array, rows: number): void {
  checkColumn(name, column, rows, "above zero and finite", Number.MIN_VALUE, Number.MAX_VALUE);
}

function checkNotBelow(name: string, column: Float64Array, rows: number): void {
  checkColumn(name, column, rows, "≥ 0 and finite", 0, Number.MAX_VALUE);
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
  checkLength(name, column, rows);
  for (let row = 0; row < rows; row++) {
    const value = column[row] as number;
    if (!(value >= least && value <= most)) throw mistake(name, row, required, value);
  }
}

function checkLength(name: string, column: Numbers, rows: number): void {
  if (column.length !== rows) throw new RangeError(`${name} must have ${rows} rows, got ${column.length}`);
}

function mistake(name: string, row: number, required: string, value: number): RangeError {
  return new RangeError(`${name} of row ${row} must be ${required}, got ${value}`);
}
