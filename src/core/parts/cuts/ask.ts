import type { BinKind, CutQuestion } from "./question.js";
import type { CutProblem, CutRequest, StockLength } from "./types.js";

export interface Asked {
  readonly question: CutQuestion;
  /** Stock behind each bin kind. */
  readonly stock: readonly StockLength[];
  /** Weight of one minor unit of money. */
  readonly perMinor: number;
  /** Pieces of each distinct length. */
  readonly pieceIds: readonly (readonly string[])[];
}

const whole = (what: string, value: number, least: number): void => {
  if (!(Number.isSafeInteger(value) && value >= least)) {
    throw new RangeError(`${what} must be a whole number ≥ ${least}, got ${value}`);
  }
};

/**
 * Checks a request's figures.
 * @throws RangeError on lengths or prices that are not whole numbers in range; a count below zero is a problem, not a throw.
 */
export function checkRequest(request: CutRequest): void {
  for (const piece of request.pieces) whole(`length of piece ${piece.id} in mm`, piece.lengthMm, 1);
  for (const stock of request.stock) {
    whole(`trim of stock ${stock.id} in mm`, stock.trimMm ?? 0, 0);
    whole(`length of stock ${stock.id} in mm`, stock.lengthMm, 1 + (stock.trimMm ?? 0));
    if (stock.priceMinor !== undefined) whole(`price of stock ${stock.id}`, stock.priceMinor, 0);
    if (stock.count !== "any" && !Number.isInteger(stock.count)) {
      throw new RangeError(`count of stock ${stock.id} must be a whole number or any, got ${stock.count}`);
    }
  }
  const { soldByLength } = request;
  if (soldByLength !== undefined) {
    whole("step of wire sold by length in mm", soldByLength.stepMm, 1);
    whole("price per step", soldByLength.pricePerStepMinor, 0);
    if (soldByLength.maxMm !== undefined)
      whole("longest unbroken length", soldByLength.maxMm, soldByLength.stepMm);
  }
  whole("kerf in mm", request.kerfMm ?? 0, 0);
  whole("least useful rest in mm", request.minUsefulMm ?? 0, 0);
}

/**
 * Whether lengths and prices of a request are small enough that every comparison of them is exact. `solveCuts` refuses what
 * is not; whoever asks for an owner reckons in coarser money then, and claims no proof.
 */
export function comparesExactly({ pieces, stock, soldByLength, kerfMm = 0 }: CutRequest): boolean {
  const totalMm = pieces.reduce((sum, { lengthMm }) => sum + lengthMm + kerfMm, 0);
  const longest = Math.max(0, ...stock.map(({ lengthMm }) => lengthMm), soldByLength?.maxMm ?? totalMm);
  const perMinor = pieces.length * longest + 1;
  // A price that is not known counts as twice the dearest.
  const dearest = 1 + 2 * Math.max(0, ...stock.map(({ priceMinor = 0 }) => priceMinor));
  const steps = soldByLength === undefined ? 0 : Math.ceil(totalMm / soldByLength.stepMm) + pieces.length;
  const metered = steps * ((soldByLength?.pricePerStepMinor ?? 0) * perMinor + (soldByLength?.stepMm ?? 0));
  return pieces.length * (dearest * perMinor + longest) + metered < Number.MAX_SAFE_INTEGER / 4;
}

/** What of a length can be cut into pieces. */
export const usableMm = ({ lengthMm, trimMm = 0 }: StockLength): number => lengthMm - trimMm;

/** A request as a question without names, with the stock given (a selection of the request's). */
export function ask(
  request: CutRequest,
  stock: readonly StockLength[],
  priceOf: (stock: StockLength) => number,
): Asked {
  const kerf = request.kerfMm ?? 0;
  const byLength = new Map<number, string[]>();
  for (const { id, lengthMm } of request.pieces) {
    const alike = byLength.get(lengthMm + kerf);
    if (alike === undefined) byLength.set(lengthMm + kerf, [id]);
    else alike.push(id);
  }
  const lengthsMm = [...byLength.keys()].sort((a, b) => b - a);
  const pieceIds = lengthsMm.map((length) => byLength.get(length) ?? []);
  const demand = pieceIds.map((ids) => ids.length);
  const totalMm = lengthsMm.reduce((sum, length, i) => sum + length * (demand[i] ?? 0), 0);
  const pieceCount = request.pieces.length;
  const metered = request.soldByLength;
  const longest = Math.max(0, ...stock.map((one) => one.lengthMm), metered?.maxMm ?? totalMm);
  const perMinor = pieceCount * longest + 1;
  const bins = stock.map((one): BinKind => {
    const weight = priceOf(one) * perMinor + one.lengthMm;
    return {
      lengthMm: usableMm(one) + kerf,
      weight,
      count: one.count === "any" ? pieceCount : Math.min(one.count, pieceCount),
    };
  });
  const heaviest = Math.max(0, ...bins.map((bin) => bin.weight)) * pieceCount;
  if (!(heaviest < Number.MAX_SAFE_INTEGER)) {
    throw new RangeError(`lengths and prices are too large to compare exactly: ${heaviest}`);
  }
  const question = { lengthsMm, demand, totalMm, pieceCount, bins };
  if (metered === undefined) return { question, stock, perMinor, pieceIds };
  const maxSteps = Math.floor(
    (metered.maxMm ?? Math.max(totalMm + metered.stepMm, metered.stepMm)) / metered.stepMm,
  );
  return {
    question: {
      ...question,
      metered: {
        stepMm: metered.stepMm,
        weightPerStep: metered.pricePerStepMinor * perMinor + metered.stepMm,
        maxSteps,
      },
    },
    stock,
    perMinor,
    pieceIds,
  };
}

/** What makes a request impossible from the start, with what would be right beside it. */
export function plainProblems(request: CutRequest): CutProblem[] {
  const problems: CutProblem[] = [];
  for (const { id, count } of request.stock) {
    if (count !== "any" && count < 0) problems.push({ problem: "negative-stock", stock: id, count });
  }
  const usable = request.stock.filter((stock) => stock.count === "any" || stock.count > 0);
  const { soldByLength } = request;
  const shopMm = soldByLength === undefined ? 0 : (soldByLength.maxMm ?? Number.POSITIVE_INFINITY);
  const longestMm = Math.max(0, shopMm, ...usable.map(usableMm));
  for (const { id, lengthMm } of request.pieces) {
    if (lengthMm > longestMm)
      problems.push({ problem: "longer-than-any-length", piece: id, lengthMm, longestMm });
  }
  const endless = soldByLength !== undefined || usable.some((stock) => stock.count === "any");
  const neededMm = request.pieces.reduce((sum, piece) => sum + piece.lengthMm, 0);
  const onHandMm = usable.reduce(
    (sum, stock) => sum + usableMm(stock) * (stock.count === "any" ? 0 : stock.count),
    0,
  );
  if (!endless && onHandMm < neededMm) problems.push({ problem: "not-enough-stock", neededMm, onHandMm });
  return problems;
}
