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
import { type PullRow, pullRows } from "../words/pull-words.js";
import { harmless, paint, type Terminal, wrap } from "./terminal.js";

/** The holes of a face (of all where none is asked for), and the order in which wires are pulled to them. */
export function holeTables(
  hull: HullFigures,
  shows: Shows,
  face: string | undefined,
  screen: Terminal,
): string[] {
  const holes = hull.holes.filter((one) => face === undefined || one.face === face);
  if (holes.length === 0) return [];
  const groups = [...new Set(holes.map((one) => `${one.face}\n${one.group}`))].map((key) =>
    holes.filter((one) => `${one.face}\n${one.group}` === key),
  );
  const pulls = face === undefined ? pullRows(hull, shows) : [];
  const sealant = sealantWords(holes);
  return [
    paint("Holes", "strong", screen),
    ...groups.flatMap((group) => holeLines(group, shows, screen)),
    ...(sealant === "" ? [] : [`  ${sealant}`]),
    ...(pulls.length === 0
      ? []
      : [
          "",
          paint("Pulling the wires, in this order", "strong", screen),
          ...pulls.flatMap((one, index) => [
            `${String(index + 1).padStart(3)}  ${harmless(one.cable)}   ${paint(harmless(pullWords(one)), "quiet", screen)}`,
            ...wrap(one.through, screen.width - 5).map((line) => `     ${line}`),
          ]),
        ]),
  ];
}

const pullWords = ({ line, mustPass, tightest }: PullRow) =>
  `line ${line}; ${mustPass} must pass${tightest === "" ? "" : `, tightest at ${tightest}`}`;

function holeLines(group: readonly HoleFigures[], shows: Shows, screen: Terminal): string[] {
  const [first] = group;
  if (first === undefined) return [];
  const name = group.length > 1 ? `${first.group}, ${group.length} of them` : first.name;
  const mind = first.there ? "" : mindWords(first.tool);
  const lines = [
    first.there && first.cut !== undefined
      ? `there already, ${boreWords(first.cut.holeMm)}`
      : toolWords(first),
    sealWords(first),
    ...(behindWords(first, shows) === "" ? [] : [`behind: ${behindWords(first, shows)}`]),
    ...(mind === "" ? [] : [`mind: ${mind}`]),
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
