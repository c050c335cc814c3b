import type { Asked } from "./ask.js";
import { type Filled, type Packing, usedMm } from "./question.js";
import type { Cut, CutLength, CutPlan, CutProblem, CutRequest } from "./types.js";

/** A rest shorter than this is scrap, where the owner says nothing; common practice. */
export const usualMinUsefulMm = 500;

/** A packing as a cut list: names put back, longest first on each length, and what is left of it. */
export function cutPlan(request: CutRequest, asked: Asked, packing: Packing, lowerBound: number): CutPlan {
  const queues = asked.pieceIds.map((ids) => [...ids]);
  const copies = new Map<string, number>();
  const lengths = packing.filled
    .filter((filled) => usedMm(asked.question, filled.pieces) > 0)
    .toSorted((a, b) => rank(asked, a) - rank(asked, b) || a.bin - b.bin)
    .map((filled) => cutLength(request, asked, filled, queues, copies));
  const priceMinor = lengths.reduce((sum, one) => sum + one.priceMinor, 0);
  const openedMm = lengths.reduce((sum, one) => sum + one.lengthMm, 0);
  const proven = lowerBound >= packing.weight;
  const boundMinor = proven ? priceMinor : Math.max(0, Math.floor(lowerBound / asked.perMinor));
  const rest = Math.max(0, lowerBound - boundMinor * asked.perMinor);
  const missing = request.stock.filter(
    (stock) => stock.source === "new" && stock.priceMinor === undefined && stock.count !== 0,
  );
  return {
    kind: request.kind,
    lengths,
    total: { priceMinor, openedMm },
    pieceMm: request.pieces.reduce((sum, piece) => sum + piece.lengthMm, 0),
    scrapMm: lengths.reduce((sum, one) => sum + (one.leftIsUseful ? 0 : one.leftMm), 0),
    proof: proven ? "proven" : "bounded",
    priceProven:
      boundMinor >= priceMinor && !lengths.some((one) => missing.some((stock) => stock.id === one.stock)),
    bound: { priceMinor: boundMinor, openedMm: proven ? openedMm : Math.min(rest, asked.perMinor - 1) },
    problems: missing.map((stock): CutProblem => ({ problem: "missing-price", stock: stock.id })),
  };
}

/** One cuts what lies there first: a slip there can still be made good in the shop. */
const order = ["offcut", "spool", "new"] as const;
const rank = ({ stock }: Asked, { bin }: Filled): number => {
  const source = stock[bin]?.source;
  return source === undefined ? order.length : order.indexOf(source);
};

function cutLength(
  request: CutRequest,
  asked: Asked,
  filled: Filled,
  queues: readonly string[][],
  copies: Map<string, number>,
): CutLength {
  const kerf = request.kerfMm ?? 0;
  const stock = asked.stock[filled.bin];
  const sold = request.soldByLength;
  const id = stock?.id ?? sold?.id ?? "";
  const copy = (copies.get(id) ?? 0) + 1;
  copies.set(id, copy);
  const cuts: Cut[] = [];
  let at = stock?.trimMm ?? 0;
  filled.pieces.forEach((count, i) => {
    const lengthMm = (asked.question.lengthsMm[i] ?? 0) - kerf;
    for (let k = 0; k < count; k += 1) {
      cuts.push({ piece: queues[i]?.shift() ?? "", lengthMm, fromMm: at, toMm: at + lengthMm });
      at += lengthMm + kerf;
    }
  });
  // Wire sold by length counts the loss of its last cut too.
  const steps = stock === undefined && sold !== undefined ? Math.ceil(at / sold.stepMm) : 0;
  const lengthMm = stock?.lengthMm ?? steps * (sold?.stepMm ?? 0);
  const priceMinor =
    stock === undefined
      ? steps * (sold?.pricePerStepMinor ?? 0)
      : stock.source === "new"
        ? (stock.priceMinor ?? 0)
        : 0;
  const leftMm = Math.max(0, lengthMm - at);
  return {
    stock: id,
    copy,
    source: stock?.source ?? "by length",
    lengthMm,
    priceMinor,
    cuts,
    leftMm,
    leftIsUseful: leftMm >= (request.minUsefulMm ?? usualMinUsefulMm),
  };
}
