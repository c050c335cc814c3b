import { usualMinUsefulMm } from "./cut-plan.js";
import type { CutAim, CutAnswer, CutPlan, CutProblem, CutRequest } from "./types.js";

/**
 * The unit cutting is reckoned in [mm], so that the solver compares whole numbers and few of them: what lengths to cut are
 * rounded up to (an inch, 10 mm), where the shop's step holds it a whole number of times; else fifths of a millimetre, of
 * which a foot has 1524.
 */
export function cuttingUnitMm(tape: "inches" | "millimetres", stepMm: number | undefined): number {
  const roundedToMm = tape === "inches" ? 25.4 : 10;
  const steps = (stepMm ?? roundedToMm) / roundedToMm;
  return Math.abs(steps - Math.round(steps)) < 1e-9 ? roundedToMm : 0.2;
}

/** The request in such units. Pieces are a whole number of them; of what they are cut from only whole units can be used. */
export function inUnits(request: CutRequest, unitMm: number): CutRequest {
  const whole = (lengthMm: number): number => Math.round(lengthMm / unitMm);
  const inside = (lengthMm: number): number => Math.floor(lengthMm / unitMm + 1e-6);
  const lost = (lengthMm: number): number => Math.ceil(lengthMm / unitMm - 1e-6);
  const { soldByLength, kerfMm, minUsefulMm = usualMinUsefulMm } = request;
  return {
    ...request,
    pieces: request.pieces.map((piece) => ({ ...piece, lengthMm: whole(piece.lengthMm) })),
    stock: request.stock
      .map((stock) => ({
        ...stock,
        lengthMm: inside(stock.lengthMm),
        ...(stock.trimMm === undefined ? {} : { trimMm: lost(stock.trimMm) }),
      }))
      .filter(({ lengthMm, trimMm = 0 }) => lengthMm > trimMm),
    ...(soldByLength === undefined
      ? {}
      : {
          soldByLength: {
            ...soldByLength,
            stepMm: whole(soldByLength.stepMm),
            ...(soldByLength.maxMm === undefined
              ? {}
              : { maxMm: Math.max(whole(soldByLength.stepMm), inside(soldByLength.maxMm)) }),
          },
        }),
    ...(kerfMm === undefined ? {} : { kerfMm: lost(kerfMm) }),
    minUsefulMm: lost(minUsefulMm),
  };
}

/** The answer to such a request in millimetres. */
export function inMillimetres(answer: CutAnswer, unitMm: number): CutAnswer {
  // Off the last digits of binary fractions: 1200 inches are 30 480 mm.
  const mm = (units: number): number => Math.round(units * unitMm * 1e6) / 1e6;
  if (!answer.ok) return { ...answer, problems: answer.problems.map((one) => problemInMm(one, mm)) };
  return { ok: true, plan: planInMm(answer.plan, mm) };
}

type ToMm = (units: number) => number;

const aimInMm = ({ priceMinor, openedMm }: CutAim, mm: ToMm): CutAim => ({
  priceMinor,
  openedMm: mm(openedMm),
});

function planInMm(plan: CutPlan, mm: ToMm): CutPlan {
  return {
    ...plan,
    lengths: plan.lengths.map((length) => ({
      ...length,
      lengthMm: mm(length.lengthMm),
      leftMm: mm(length.leftMm),
      cuts: length.cuts.map((cut) => ({
        ...cut,
        lengthMm: mm(cut.lengthMm),
        fromMm: mm(cut.fromMm),
        toMm: mm(cut.toMm),
      })),
    })),
    total: aimInMm(plan.total, mm),
    bound: aimInMm(plan.bound, mm),
    pieceMm: mm(plan.pieceMm),
    scrapMm: mm(plan.scrapMm),
    problems: plan.problems.map((one) => problemInMm(one, mm)),
  };
}

function problemInMm(problem: CutProblem, mm: ToMm): CutProblem {
  switch (problem.problem) {
    case "longer-than-any-length":
      return { ...problem, lengthMm: mm(problem.lengthMm), longestMm: mm(problem.longestMm) };
    case "not-enough-stock":
    case "pieces-do-not-fit-stock":
      return { ...problem, neededMm: mm(problem.neededMm), onHandMm: mm(problem.onHandMm) };
    default:
      return problem;
  }
}
