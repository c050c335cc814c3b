import type { CompletePlan } from "../plan/completed.js";
import { water } from "../reference/afloat.js";
import type { FloatFigures, FormFigures, Placed, WeightMove } from "./figures.js";
import { loadOf, type Weight } from "./float/equilibrium.js";
import { drowningTable } from "./float/holes-afloat.js";
import { type Rest, restOf, rightingCurve } from "./float/stability.js";
import { type CutHull, cutHull } from "./float/stations.js";

/** Heels the levers are worked out at, to either side [°]. */
const heelsDeg: readonly number[] = Array.from({ length: 25 }, (_, i) => 5 * (i - 12));

/** How she floats under what the plan puts aboard; undefined where it does not ask, or there is no form. */
export function planFloat(
  plan: CompletePlan,
  form: FormFigures | undefined,
  placed: readonly Placed[],
): FloatFigures | undefined {
  const float = plan.source.hull.float;
  if (float === undefined || form?.form === undefined) return undefined;
  const { weights, without } = weightsOf(plan, placed);
  const densityKgPerM3 = float.water === "sea" ? water.seaKgPerM3 : water.freshKgPerM3;
  return floatOf(cutHull(form.form, form.open), weights, without, densityKgPerM3);
}

function floatOf(
  hull: CutHull,
  weights: readonly Weight[],
  without: readonly string[],
  densityKgPerM3: number,
): FloatFigures {
  const about = { hull, weights, without, densityKgPerM3 };
  const empty = { curve: [], moves: [] };
  if (!weights.some(({ massKg }) => massKg > 0)) return { ...about, ...empty, problems: [] };
  const rest = restOf(hull, weights, densityKgPerM3);
  if ("problem" in rest) return { ...about, ...empty, problems: [rest] };
  const curve = rightingCurve(hull, loadOf(weights), heelsDeg, densityKgPerM3);
  return {
    ...about,
    rest,
    curve,
    ...(curve.length >= 3 ? { table: drowningTable(hull, rest.floating, curve) } : {}),
    moves: movesOf(hull, rest, weights),
    problems: rest.problems,
  };
}

/** Everything that weighs and has a place: the bare boat, people, what else, batteries, gear. */
function weightsOf(plan: CompletePlan, placed: readonly Placed[]): { weights: Weight[]; without: string[] } {
  const float = plan.source.hull.float;
  const places = new Map(placed.map(({ piece, at }) => [piece.name, at]));
  const weights: Weight[] = [];
  const without: string[] = [];
  if (float?.hull) weights.push({ name: "hull", massKg: float.hull.massKg, at: float.hull.atM });
  else without.push("hull");
  for (const { name, massKg, atM } of [...(float?.people ?? []), ...(float?.other ?? [])])
    weights.push({ name, massKg, at: atM });
  for (const { name, weightKg, standsAtM } of [...plan.batteries, ...plan.gear]) {
    if (weightKg === undefined) continue;
    const at = places.get(name) ?? standsAtM;
    if (at === undefined) without.push(name);
    else weights.push({ name, massKg: weightKg, at });
  }
  return { weights, without };
}

/** Moved by a metre forward a weight turns the boat by its moment over that of a degree: W·1 m / (Δ·GM along). */
function movesOf(hull: CutHull, rest: Rest, weights: readonly Weight[]): WeightMove[] {
  const massKg = weights.reduce((sum, weight) => sum + weight.massKg, 0);
  const { planeCentreXM } = rest.floating.immersed;
  const [aft, fore] = [hull.xM[0] ?? 0, hull.xM.at(-1) ?? 0];
  return weights.map((weight): WeightMove => {
    const radians = weight.massKg / (massKg * rest.gmAlongM);
    return {
      name: weight.name,
      massKg: weight.massKg,
      trimDegPerM: (radians * 180) / Math.PI,
      draftForePerM: radians * (fore - planeCentreXM),
      draftAftPerM: -radians * (planeCentreXM - aft),
    };
  });
}
