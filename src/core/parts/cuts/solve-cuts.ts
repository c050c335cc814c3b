import { ask, checkRequest, plainProblems, usableMm } from "./ask.js";
import { cutPlan, usualMinUsefulMm } from "./cut-plan.js";
import { searchCuts } from "./search.js";
import { tidied } from "./tidy.js";
import type { CutAnswer, CutOptions, CutProblem, CutRequest, StockLength } from "./types.js";

/**
 * What to cut from what, for one kind of wire: least money first, then least length opened, so that offcuts go before
 * spools and whole spools stay whole. Proven, or with the bound no plan goes under. Of the ways to cut the lengths chosen, the one that
 * leaves least scrap.
 * @throws RangeError on figures that are not whole numbers in range.
 */
export function solveCuts(request: CutRequest, options: CutOptions = {}): CutAnswer {
  const effort = options.effort ?? 10;
  if (!(effort > 0)) throw new RangeError(`effort must be > 0, got ${effort}`);
  checkRequest(request);
  const problems = plainProblems(request);
  if (problems.length > 0) return { ok: false, kind: request.kind, problems };

  const usable = request.stock.filter((stock) => stock.count === "any" || stock.count > 0);
  const unpriced = usable.filter((stock) => stock.source === "new" && stock.priceMinor === undefined);
  const known = usable.filter((stock) => !unpriced.includes(stock));
  const priceOf = (stock: StockLength): number => (stock.source === "new" ? (stock.priceMinor ?? 0) : 0);
  const withKnown =
    unpriced.length > 0 && plainProblems({ ...request, stock: known }).length > 0 ? undefined : known;
  if (withKnown !== undefined) {
    const answer = attempt(request, withKnown, priceOf, effort);
    if (answer.ok || unpriced.length === 0) return answer;
  }
  // Nothing known serves: unpriced stock counts as dearer than any known one, so that as little of it as may be is taken.
  const dearest = 1 + 2 * Math.max(0, ...known.map(priceOf));
  return attempt(request, usable, (stock) => (unpriced.includes(stock) ? dearest : priceOf(stock)), effort);
}

function attempt(
  request: CutRequest,
  stock: readonly StockLength[],
  priceOf: (stock: StockLength) => number,
  effort: number,
): CutAnswer {
  const asked = ask(request, stock, priceOf);
  const { kind, pieces } = request;
  if (pieces.length === 0) return { ok: true, plan: cutPlan(request, asked, { filled: [], weight: 0 }, 0) };
  const { best, lowerBound } = searchCuts(asked.question, effort);
  if (best === undefined) {
    const neededMm = pieces.reduce((sum, piece) => sum + piece.lengthMm, 0);
    const onHandMm = stock.reduce(
      (sum, one) => sum + usableMm(one) * (one.count === "any" ? 0 : one.count),
      0,
    );
    const problem: CutProblem = { problem: "pieces-do-not-fit-stock", neededMm, onHandMm };
    return { ok: false, kind, problems: [problem] };
  }
  const tidy = tidied(asked.question, best, {
    minUsefulMm: request.minUsefulMm ?? usualMinUsefulMm,
    kerfMm: request.kerfMm ?? 0,
    budget: effort * 2000,
  });
  return { ok: true, plan: cutPlan(request, asked, tidy, lowerBound) };
}
