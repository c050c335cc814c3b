import type { HoleFigures, HullFigures } from "../core/hull/figures.js";
import type { Shows } from "../core/plan/model/plan.js";
import {
  behindWords,
  boreWords,
  mindWords,
  sealantWords,
  sealWords,
  toolWords,
} from "../words/hull-words.js";
import { pullRows } from "../words/pull-words.js";
import type { Screen } from "./language.js";
import { harmless, paint, wrap } from "./terminal.js";

/** The holes of a face (of all where none is asked for), and the order in which wires are pulled to them. */
export function holeTables(
  hull: HullFigures,
  shows: Shows,
  face: string | undefined,
  screen: Screen,
): string[] {
  const holes = hull.holes.filter((one) => face === undefined || one.face === face);
  if (holes.length === 0) return [];
  const groups = [...new Set(holes.map((one) => `${one.face}\n${one.group}`))].map((key) =>
    holes.filter((one) => `${one.face}\n${one.group}` === key),
  );
  const { hull: words, layout } = screen.paper.of;
  const say = screen.told.hull.holes;
  const pulls = face === undefined ? pullRows(hull, shows, layout) : [];
  const sealant = sealantWords(holes, words);
  return [
    paint(say.title, "strong", screen),
    ...groups.flatMap((group) => holeLines(group, shows, screen)),
    ...(sealant === "" ? [] : wrap(sealant, screen.width - 2).map((line) => `  ${line}`)),
    ...(pulls.length === 0
      ? []
      : [
          "",
          paint(say.pulling, "strong", screen),
          ...pulls.flatMap((one, index) => [
            `${String(index + 1).padStart(3)}  ${harmless(one.cable)}   ${paint(harmless(say.pull(one.line, one.mustPass, one.tightest)), "quiet", screen)}`,
            ...wrap(one.through, screen.width - 5).map((line) => `     ${line}`),
          ]),
        ]),
  ];
}

function holeLines(group: readonly HoleFigures[], shows: Shows, screen: Screen): string[] {
  const [first] = group;
  if (first === undefined) return [];
  const { hull: words } = screen.paper.of;
  const say = screen.told.hull.holes;
  const behind = behindWords(first, shows, words);
  const name = group.length > 1 ? say.group(first.group, group.length) : first.name;
  const mind = first.there ? "" : mindWords(first.tool, words);
  const lines = [
    first.there && first.cut !== undefined ? say.there(boreWords(first.cut.holeMm)) : toolWords(first, words),
    sealWords(first, words),
    ...(behind === "" ? [] : [say.behind(behind)]),
    ...(mind === "" ? [] : [say.mind(mind)]),
  ];
  return [
    `  ${harmless(name)}   ${paint(harmless(first.face), "quiet", screen)}`,
    ...lines.flatMap((line) => wrap(line, screen.width - 5)).map((line) => `     ${line}`),
  ];
}

/** The same as data: cut, tool, sealing, what is behind, reach, clearances; and the pulls in order. */
export function holesJson({ holes, pulling }: HullFigures, face: string | undefined) {
  return {
    holes: holes
      .filter((one) => face === undefined || one.face === face)
      .map(({ plan, afloat: _afloat, clearance, problems, ...rest }) => ({
        ...rest,
        water: plan.water ?? null,
        ...(clearance === undefined ? {} : { clearance }),
        problems,
      })),
    pulling: { order: pulling.order, passings: pulling.passings, unknown: pulling.unknown },
  };
}
