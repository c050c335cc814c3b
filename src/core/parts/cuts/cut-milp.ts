import type { MilpProblem, SolveMilp } from "../milp.js";
import type { Asked } from "./ask.js";
import type { Filled, Packing } from "./question.js";
import { packingWeight } from "./question.js";

const maxColumns = 6000;

/**
 * The cutting question for a solver of mixed-integer programs: how many of each piece in each single length. Money first;
 * then, at that money, the least length opened.
 * @returns undefined where the question is too large for one call, or nothing was proven.
 */
export function cutsByMilp(asked: Asked, solve: SolveMilp): Packing | undefined {
  const { question, stock, perMinor } = asked;
  const { lengthsMm, demand, bins, metered } = question;
  const single = bins.flatMap((bin, b) => Array.from({ length: bin.count }, () => ({ ...bin, bin: b })));
  const n = lengthsMm.length;
  if ((single.length + 1) * (n + 1) > maxColumns) return undefined;
  const moneyOf = (weight: number): number => Math.floor(weight / perMinor);
  const columns: MilpProblem["columns"][number][] = [];
  const money: number[] = [];
  const opened: number[] = [];
  const add = (upper: number, minor: number, mm: number): number => {
    columns.push({ cost: 0, lower: 0, upper, integer: true });
    money.push(minor);
    opened.push(mm);
    return columns.length - 1;
  };
  const rows: MilpProblem["rows"][number][] = [];
  const inBin = single.map((one) => {
    const open = add(1, moneyOf(one.weight), stock[one.bin]?.lengthMm ?? one.lengthMm);
    const pieces = lengthsMm.map((length, i) =>
      add(Math.min(demand[i] ?? 0, Math.floor(one.lengthMm / length)), 0, 0),
    );
    rows.push({
      lower: Number.NEGATIVE_INFINITY,
      upper: 0,
      terms: [...pieces.map((column, i) => [column, lengthsMm[i] ?? 0] as const), [open, -one.lengthMm]],
    });
    return { ...one, open, pieces };
  });
  inBin.forEach((one, k) => {
    const before = inBin[k - 1];
    if (before?.bin === one.bin)
      rows.push({
        lower: 0,
        upper: 1,
        terms: [
          [before.open, 1],
          [one.open, -1],
        ],
      });
  });
  let bought: number[] | undefined;
  if (metered !== undefined) {
    const steps = add(metered.maxSteps, moneyOf(metered.weightPerStep), metered.stepMm);
    bought = demand.map((count) => add(count, 0, 0));
    rows.push({
      lower: Number.NEGATIVE_INFINITY,
      upper: 0,
      terms: [...bought.map((column, i) => [column, lengthsMm[i] ?? 0] as const), [steps, -metered.stepMm]],
    });
  }
  demand.forEach((count, i) => {
    const all = [
      ...inBin.map((one) => one.pieces[i] ?? 0),
      ...(bought === undefined ? [] : [bought[i] ?? 0]),
    ];
    rows.push({ lower: count, upper: count, terms: all.map((column) => [column, 1] as const) });
  });
  const priced = (costs: readonly number[]): MilpProblem["columns"] =>
    columns.map((column, k) => ({ ...column, cost: costs[k] ?? 0 }));
  let answer = solve({ columns: priced(money), rows });
  if (answer.status !== "optimal") return undefined;
  const least = Math.round(answer.objective);
  rows.push({
    lower: Number.NEGATIVE_INFINITY,
    upper: least,
    terms: money.flatMap((minor, k) => (minor > 0 ? [[k, minor] as const] : [])),
  });
  if (money.every((minor) => minor === 0)) rows.pop();
  answer = solve({ columns: priced(opened), rows });
  if (answer.status !== "optimal") return undefined;
  const count = (column: number): number => Math.round(answer.values[column] ?? 0);
  const filled: Filled[] = inBin.map((one) => ({
    bin: one.bin,
    capacityMm: one.lengthMm,
    pieces: one.pieces.map(count),
  }));
  if (bought !== undefined && metered !== undefined) {
    filled.push({ bin: -1, capacityMm: metered.maxSteps * metered.stepMm, pieces: bought.map(count) });
  }
  return { filled, weight: packingWeight(question, filled) };
}
