import { type BinSet, binsOf, type CutQuestion, type Filled } from "./question.js";

export type FitAnswer =
  | { readonly answer: "fits"; readonly filled: readonly Filled[] }
  | { readonly answer: "does not fit" }
  | { readonly answer: "not decided" };

/**
 * Decides whether the pieces fit a set of bins by trying every way, longest piece first. Bins with equal room are one;
 * room too short for the shortest piece is lost, and too much of it ends a branch.
 * @param budget Branches looked at before giving up.
 */
export function fitsExactly(question: CutQuestion, set: BinSet, budget: number): FitAnswer {
  const bins = binsOf(question, set);
  const left = bins.map((bin) => bin.capacityMm);
  const pieces = bins.map(() => question.lengthsMm.map(() => 0));
  const order: number[] = [];
  question.demand.forEach((count, i) => {
    for (let copy = 0; copy < count; copy += 1) order.push(i);
  });
  const shortest = question.lengthsMm.at(-1) ?? 0;
  const slack = left.reduce((sum, room) => sum + room, 0) - question.totalMm;
  if (slack < 0) return { answer: "does not fit" };
  let steps = budget;

  const place = (at: number, lost: number, from: number): boolean | undefined => {
    const i = order[at];
    if (i === undefined) return true;
    steps -= 1;
    if (steps < 0) return undefined;
    const length = question.lengthsMm[i] ?? 0;
    const same = at > 0 && order[at - 1] === i;
    const seen = new Set<number>();
    // Alike pieces go into bins of rising number: any other order of them is the same cut list.
    for (let b = same ? from : 0; b < left.length; b += 1) {
      const room = left[b] ?? 0;
      const into = pieces[b];
      if (room < length || seen.has(room) || into === undefined) continue;
      if (!same) seen.add(room);
      const rest = room - length;
      const nowLost = lost + (rest < shortest ? rest : 0);
      if (nowLost > slack) continue;
      left[b] = rest;
      into[i] = (into[i] ?? 0) + 1;
      const found = place(at + 1, nowLost, b);
      if (found !== false) return found;
      left[b] = room;
      into[i] = (into[i] ?? 0) - 1;
    }
    return false;
  };

  const empty = left.reduce((sum, room) => sum + (room < shortest ? room : 0), 0);
  const found = place(0, empty, 0);
  if (found === undefined) return { answer: "not decided" };
  if (!found) return { answer: "does not fit" };
  return { answer: "fits", filled: bins.map((bin, b) => ({ ...bin, pieces: pieces[b] ?? [] })) };
}
