import { comparesExactly } from "./ask.js";
import type { CutAnswer, CutPlan, CutRequest } from "./types.js";

/**
 * Solves a request whose prices may be too large to be compared exactly beside its lengths: in tens, hundreds … of minor
 * units then, told in true money again and without a claim of proof.
 */
export function inComparableMoney(request: CutRequest, solve: (request: CutRequest) => CutAnswer): CutAnswer {
  let unitMinor = 1;
  let asked = request;
  while (!comparesExactly(asked)) {
    unitMinor *= 10;
    if (!Number.isSafeInteger(unitMinor)) throw new RangeError("lengths are too large to compare exactly");
    asked = coarser(request, unitMinor);
  }
  const answer = solve(asked);
  return unitMinor === 1 || !answer.ok ? answer : { ok: true, plan: inTrueMoney(answer.plan, request) };
}

function coarser({ stock, soldByLength, ...rest }: CutRequest, unitMinor: number): CutRequest {
  const coarse = (priceMinor: number): number => Math.ceil(priceMinor / unitMinor);
  return {
    ...rest,
    stock: stock.map((one) =>
      one.priceMinor === undefined ? one : { ...one, priceMinor: coarse(one.priceMinor) },
    ),
    ...(soldByLength === undefined
      ? {}
      : { soldByLength: { ...soldByLength, pricePerStepMinor: coarse(soldByLength.pricePerStepMinor) } }),
  };
}

function inTrueMoney(plan: CutPlan, { stock, soldByLength }: CutRequest): CutPlan {
  const prices = new Map(
    stock.map(({ id, priceMinor = 0, source }) => [id, source === "new" ? priceMinor : 0]),
  );
  const lengths = plan.lengths.map((length) => {
    const steps = soldByLength === undefined ? 0 : Math.round(length.lengthMm / soldByLength.stepMm);
    const priceMinor =
      length.source === "by length"
        ? steps * (soldByLength?.pricePerStepMinor ?? 0)
        : (prices.get(length.stock) ?? 0);
    return { ...length, priceMinor };
  });
  const priceMinor = lengths.reduce((sum, one) => sum + one.priceMinor, 0);
  return {
    ...plan,
    lengths,
    total: { ...plan.total, priceMinor },
    proof: "bounded",
    priceProven: false,
    bound: { priceMinor: 0, openedMm: 0 },
  };
}
