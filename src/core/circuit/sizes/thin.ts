import type { Label } from "./labels.js";

/**
 * What to do with a list that grows past `maxLabels`. `keep`: leave labels out; what remains is real, the result may cost too much.
 * `relax`: replace each stretch by one label with the least need and least cost of the stretch; the result may cost too little.
 */
export interface Thinning {
  readonly side: "keep" | "relax";
  readonly maxLabels: number;
}

/** The same list where it is short enough; otherwise one of `maxLabels` labels. */
export function thin(labels: Label[], { side, maxLabels }: Thinning): Label[] {
  if (labels.length <= maxLabels) return labels;
  const thinned: Label[] = [];
  for (let part = 0; part < maxLabels; part += 1) {
    const from = Math.floor((part * labels.length) / maxLabels);
    const to = Math.floor(((part + 1) * labels.length) / maxLabels);
    const stretch = labels.slice(from, to);
    const first = stretch[0];
    if (!first) continue;
    thinned.push(side === "relax" ? best(stretch, first) : first);
  }
  const last = labels.at(-1);
  if (side === "keep" && last) thinned.push(last);
  return thinned;
}

function best(stretch: readonly Label[], first: Label): Label {
  let cost = first.cost;
  const needs = [...first.needs];
  for (const label of stretch) {
    cost = Math.min(cost, label.cost);
    label.needs.forEach((need, at) => {
      needs[at] = Math.min(needs[at] ?? need, need);
    });
  }
  return { cost, needs, made: first.made };
}
