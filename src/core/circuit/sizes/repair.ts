import type { Box } from "./paths.js";
import { costOf, type Program } from "./program.js";

/**
 * Turns any choice into one that keeps all rows: larger where a row is over, the step that buys most volts for its cost first; then
 * smaller again wherever nothing goes over. Not the best, but real.
 * @returns Undefined where not even the largest options of the box keep the rows.
 */
export function repair(
  program: Program,
  touching: Touching,
  box: Box,
  start: readonly number[],
): Real | undefined {
  const { options, rows } = program;
  const choice = [...start];
  const over: number[] = [];
  for (const { slackV, terms } of rows) {
    let overV = -slackV;
    for (const { group, ampereM } of terms) overV += ampereM * ohmAt(program, group, choice[group] ?? 0);
    over.push(overV);
  }
  const shift = (group: number, to: number) => {
    const change = ohmAt(program, group, to) - ohmAt(program, group, choice[group] ?? 0);
    for (const { row, ampereM } of touching[group] ?? []) over[row] = (over[row] ?? 0) + ampereM * change;
    choice[group] = to;
  };
  for (let row = 0; row < rows.length; row += 1) {
    while ((over[row] ?? 0) > 0) {
      let best = -1;
      let bestWorth = 0;
      for (const { group } of rows[row]?.terms ?? []) {
        const now = choice[group] ?? 0;
        if (now >= (box.high[group] ?? 0)) continue;
        const fallOhm = ohmAt(program, group, now) - ohmAt(program, group, now + 1);
        let worth = 0;
        for (const { row: other, ampereM } of touching[group] ?? [])
          worth += Math.min(Math.max(over[other] ?? 0, 0), ampereM * fallOhm);
        worth /= Math.max((options[group]?.cost[now + 1] ?? 0) - (options[group]?.cost[now] ?? 0), 1e-12);
        if (worth > bestWorth) {
          best = group;
          bestWorth = worth;
        }
      }
      if (best < 0) return undefined;
      shift(best, (choice[best] ?? 0) + 1);
    }
  }
  shrink(program, touching, box, choice, over, shift);
  return { choice, cost: costOf(options, choice) };
}

export interface Real {
  readonly choice: readonly number[];
  readonly cost: number;
}

/** For each group the rows it is in. */
export type Touching = readonly (readonly { readonly row: number; readonly ampereM: number }[])[];

export function touchingOf({ options, rows }: Program): Touching {
  const touching = options.map((): { row: number; ampereM: number }[] => []);
  rows.forEach(({ terms }, row) => {
    for (const { group, ampereM } of terms) touching[group]?.push({ row, ampereM });
  });
  return touching;
}

function ohmAt({ options }: Program, group: number, option: number): number {
  return options[group]?.ohmPerM[option] ?? 0;
}

/** One pass over the groups, the dearest step first. */
function shrink(
  program: Program,
  touching: Touching,
  box: Box,
  choice: readonly number[],
  over: readonly number[],
  shift: (group: number, to: number) => void,
): void {
  const saving = (group: number) => {
    const cost = program.options[group]?.cost ?? [];
    const now = choice[group] ?? 0;
    return now > (box.low[group] ?? 0) ? (cost[now] ?? 0) - (cost[now - 1] ?? 0) : 0;
  };
  const groups = choice.map((_, group) => group).sort((a, b) => saving(b) - saving(a));
  for (const group of groups) {
    while ((choice[group] ?? 0) > (box.low[group] ?? 0)) {
      const to = (choice[group] ?? 0) - 1;
      const rise = ohmAt(program, group, to) - ohmAt(program, group, to + 1);
      if ((touching[group] ?? []).some(({ row, ampereM }) => (over[row] ?? 0) + ampereM * rise > 0)) break;
      shift(group, to);
    }
  }
}
