import { type CutQuestion, type Filled, type Packing, packingWeight, usedMm } from "./question.js";

/** What is left of the lengths opened: how much of it is scrap, and the longest rest that is of use. Less scrap first, then the longer rest. */
interface Left {
  readonly scrapMm: number;
  readonly longestMm: number;
}

const better = (a: Left, b: Left): boolean =>
  a.scrapMm < b.scrapMm || (a.scrapMm === b.scrapMm && a.longestMm > b.longestMm);

/**
 * Among the ways to cut the same pieces from the same lengths, which all cost and open the same, the one that leaves least scrap, and then
 * the longest rest. Every way is tried, longest piece first; where the budget ends before, the best so far.
 * @param minUsefulMm A rest shorter than this is scrap.
 * @param kerfMm Lost at each cut; the room of a length holds one more, since its last cut needs none.
 * @param budget Branches looked at.
 */
export function tidied(
  question: CutQuestion,
  packing: Packing,
  { minUsefulMm, kerfMm, budget }: { minUsefulMm: number; kerfMm: number; budget: number },
): Packing {
  const { lengthsMm, metered } = question;
  const bins = packing.filled.filter(({ pieces }) => usedMm(question, pieces) > 0);
  if (bins.length < 2) return packing;
  // wire bought by the step is no longer than its steps
  const rooms = bins.map(({ bin, capacityMm, pieces }) =>
    bin >= 0 || metered === undefined
      ? capacityMm
      : Math.ceil(usedMm(question, pieces) / metered.stepMm) * metered.stepMm,
  );
  const spare = bins.map(({ bin }) => (bin >= 0 ? kerfMm : 0));
  const leftOf = (left: readonly number[]): Left => {
    let [scrapMm, longestMm] = [0, 0];
    left.forEach((room, b) => {
      const rest = Math.max(0, room - (spare[b] ?? 0));
      if (rest < minUsefulMm) scrapMm += rest;
      else longestMm = Math.max(longestMm, rest);
    });
    return { scrapMm, longestMm };
  };
  const order = lengthsMm.flatMap((_, i) =>
    Array.from({ length: bins.reduce((sum, { pieces }) => sum + (pieces[i] ?? 0), 0) }, () => i),
  );
  const shortest = lengthsMm[order.at(-1) ?? 0] ?? 0;
  const left = [...rooms];
  const laid = bins.map(() => lengthsMm.map(() => 0));
  let best = leftOf(bins.map(({ pieces }, b) => (rooms[b] ?? 0) - usedMm(question, pieces)));
  let found: readonly (readonly number[])[] | undefined;
  let steps = budget;

  const place = (at: number, lostMm: number, from: number): void => {
    steps -= 1;
    if (steps < 0 || lostMm > best.scrapMm) return;
    const i = order[at];
    if (i === undefined) {
      const now = leftOf(left);
      if (!better(now, best)) return;
      best = now;
      found = laid.map((pieces) => [...pieces]);
      return;
    }
    const length = lengthsMm[i] ?? 0;
    const same = at > 0 && order[at - 1] === i;
    const seen = new Set<number>();
    // alike pieces go into lengths of rising number: any other order of them is the same cut list
    for (let b = same ? from : 0; b < left.length; b += 1) {
      const room = left[b] ?? 0;
      const into = laid[b];
      if (room < length || into === undefined || (!same && seen.has(room))) continue;
      seen.add(room);
      const rest = room - length;
      const scrapMm = Math.max(0, rest - (spare[b] ?? 0));
      // what holds no further piece and is no use is lost already
      const lost = rest < shortest && scrapMm < minUsefulMm ? scrapMm : 0;
      left[b] = rest;
      into[i] = (into[i] ?? 0) + 1;
      place(at + 1, lostMm + lost, b);
      left[b] = room;
      into[i] = (into[i] ?? 0) - 1;
    }
  };
  place(0, 0, 0);
  if (found === undefined) return packing;
  const filled = bins.map((bin, b): Filled => ({ ...bin, pieces: found?.[b] ?? bin.pieces }));
  return { filled, weight: packingWeight(question, filled) };
}
