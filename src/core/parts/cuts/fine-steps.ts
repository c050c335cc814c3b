import { usualMinUsefulMm } from "./cut-plan.js";
import type { CutAim, CutAnswer, CutPlan, CutProblem, CutRequest } from "./types.js";

/**
 * A foot is 304.8 mm, and the solver compares whole numbers: where wire is sold by the foot, everything is asked in fifths
 * of a millimetre and told in millimetres again, so that eleven feet in the shop are eleven feet on the list.
 */
const perMm = 5;

/** The longest length in whole fifths of a millimetre that is no longer [mm]. */
export const wholeFifths = (lengthMm: number): number => Math.floor(lengthMm * perMm + 1e-6) / perMm;

/** The request in fifths of a millimetre. */
export function inFifths(request: CutRequest): CutRequest {
  const { soldByLength, kerfMm, minUsefulMm = usualMinUsefulMm } = request;
  return {
    ...request,
    pieces: request.pieces.map((piece) => ({ ...piece, lengthMm: finely(piece.lengthMm) })),
    stock: request.stock.map((stock) => ({ ...stock, lengthMm: finely(stock.lengthMm) })),
    ...(soldByLength === undefined
      ? {}
      : {
          soldByLength: {
            ...soldByLength,
            stepMm: finely(soldByLength.stepMm),
            ...(soldByLength.maxMm === undefined ? {} : { maxMm: finely(soldByLength.maxMm) }),
          },
        }),
    ...(kerfMm === undefined ? {} : { kerfMm: finely(kerfMm) }),
    minUsefulMm: finely(minUsefulMm),
  };
}

/** The answer to such a request in millimetres. */
export function inMillimetres(answer: CutAnswer): CutAnswer {
  if (!answer.ok) return { ...answer, problems: answer.problems.map(problemInMm) };
  return { ok: true, plan: planInMm(answer.plan) };
}

const finely = (lengthMm: number): number => Math.round(lengthMm * perMm);
const coarsely = (fifths: number): number => fifths / perMm;
const aimInMm = ({ priceMinor, openedMm }: CutAim): CutAim => ({ priceMinor, openedMm: coarsely(openedMm) });

function planInMm(plan: CutPlan): CutPlan {
  return {
    ...plan,
    lengths: plan.lengths.map((length) => ({
      ...length,
      lengthMm: coarsely(length.lengthMm),
      leftMm: coarsely(length.leftMm),
      cuts: length.cuts.map((cut) => ({
        ...cut,
        lengthMm: coarsely(cut.lengthMm),
        fromMm: coarsely(cut.fromMm),
        toMm: coarsely(cut.toMm),
      })),
    })),
    total: aimInMm(plan.total),
    bound: aimInMm(plan.bound),
    pieceMm: coarsely(plan.pieceMm),
    scrapMm: coarsely(plan.scrapMm),
    problems: plan.problems.map(problemInMm),
  };
}

function problemInMm(problem: CutProblem): CutProblem {
  switch (problem.problem) {
    case "longer-than-any-length":
      return { ...problem, lengthMm: coarsely(problem.lengthMm), longestMm: coarsely(problem.longestMm) };
    case "not-enough-stock":
    case "pieces-do-not-fit-stock":
      return { ...problem, neededMm: coarsely(problem.neededMm), onHandMm: coarsely(problem.onHandMm) };
    default:
      return problem;
  }
}
