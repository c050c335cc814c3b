import type { Program } from "./program.js";

/**
 * The rows of a program as paths through the groups in the order these are decided. Rows with the same rest of the way share
 * it: in a branching circuit this is the circuit itself, from the gear inwards. Step 0 is the end of every path.
 */
export interface Paths {
  /** Groups, those that concern least gear first. */
  readonly order: readonly number[];
  readonly groupOf: readonly number[];
  readonly ampereMOf: readonly number[];
  /** Step that follows, by step; always a smaller number. */
  readonly nextOf: readonly number[];
  /** First step of each row. */
  readonly startOf: readonly number[];
  /** Steps of each group. */
  readonly stepsOf: readonly (readonly number[])[];
}

/** Sums of one conductor's currents taken in another order differ by this share and no more. */
const roundingShare = 5e-12;

export function pathsOf({ options, rows }: Program): Paths {
  const touched = new Array<number>(options.length).fill(0);
  for (const { terms } of rows) for (const { group } of terms) touched[group] = (touched[group] ?? 0) + 1;
  const order = touched
    .map((_, group) => group)
    .sort((a, b) => (touched[a] ?? 0) - (touched[b] ?? 0) || a - b);
  const position = new Array<number>(options.length).fill(0);
  order.forEach((group, at) => {
    position[group] = at;
  });

  const groupOf = [-1];
  const ampereMOf = [0];
  const nextOf = [0];
  const stepsOf = options.map((): number[] => []);
  /** Steps by the one that follows and the group. */
  const known = new Map<number, number[]>();
  const stepFor = (group: number, ampereM: number, next: number): number => {
    const key = next * options.length + group;
    const alike = known.get(key) ?? [];
    if (alike.length === 0) known.set(key, alike);
    // what was computed twice for two pieces of gear is still one conductor
    const isSame = (step: number) => Math.abs((ampereMOf[step] ?? 0) - ampereM) <= roundingShare * ampereM;
    const found = alike.find(isSame);
    if (found !== undefined) return found;
    const made = groupOf.length;
    alike.push(made);
    groupOf.push(group);
    ampereMOf.push(ampereM);
    nextOf.push(next);
    stepsOf[group]?.push(made);
    return made;
  };
  const startOf = rows.map(({ terms }) => {
    const inward = [...terms].sort((a, b) => (position[b.group] ?? 0) - (position[a.group] ?? 0));
    let step = 0;
    for (const { group, ampereM } of inward) step = stepFor(group, ampereM, step);
    return step;
  });
  return { order, groupOf, ampereMOf, nextOf, startOf, stepsOf };
}

/** Least and greatest option of each group: the part of all choices that is looked at. */
export interface Box {
  readonly low: readonly number[];
  readonly high: readonly number[];
}

/** What the rest of the way from each step will take at least and at most, within the box [V]. */
export function restOf(
  { options }: Program,
  paths: Paths,
  box: Box,
): { readonly least: Float64Array; readonly most: Float64Array } {
  const count = paths.groupOf.length;
  const least = new Float64Array(count);
  const most = new Float64Array(count);
  for (let step = 1; step < count; step += 1) {
    const group = paths.groupOf[step] ?? 0;
    const next = paths.nextOf[step] ?? 0;
    const ampereM = paths.ampereMOf[step] ?? 0;
    const ohmPerM = options[group]?.ohmPerM ?? [];
    least[step] = (least[next] ?? 0) + ampereM * (ohmPerM[box.high[group] ?? 0] ?? 0);
    most[step] = (most[next] ?? 0) + ampereM * (ohmPerM[box.low[group] ?? 0] ?? 0);
  }
  return { least, most };
}
