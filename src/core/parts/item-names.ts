import type { Protection, Switch } from "../plan/model/common.js";
import { writeInches } from "../quantity/write.js";
import type { Meeting } from "../terminations/meeting.js";
import type { EndFigures } from "../terminations/plan-terminations.js";

/**
 * Names of the parts as a shop knows them. They are the ids by which stock and prices in the plan are matched, so they
 * never change with the language of a face.
 */

const stud = ({ stud: hole, at }: EndFigures): string =>
  hole?.name ?? (at.studM === undefined ? "stud not told" : `${Math.round(at.studM * 1e4) / 10} mm stud`);

/** Terminal of one conductor end; undefined where its kind needs no part, or none is made for it. */
export function terminalName(end: EndFigures): string | undefined {
  const { kind, barrel } = end;
  switch (kind) {
    case "crimped ring":
      if (barrel === undefined) return undefined;
      return barrel.kind === "lug"
        ? `lug ${barrel.sizeKey}, ${stud(end)}`
        : `ring, ${barrel.colour}, ${stud(end)}`;
    case "crimped fork":
      return barrel?.kind === "insulated" ? `fork, ${barrel.colour}, ${stud(end)}` : undefined;
    case "push-on tab":
      return barrel?.kind === "insulated"
        ? `push-on, ${barrel.colour}, ${end.tab === undefined ? "tab not told" : `${end.tab} mm`}`
        : undefined;
    case "screw terminal":
      return `ferrule ${end.at.size.key}`;
    default:
      return undefined;
  }
}

/** What joins several conductors; undefined where solder or tape does it. */
export function jointName({ kind, sides }: Meeting, ends: readonly EndFigures[]): string | undefined {
  const count = sides.reduce((sum, side) => sum + side.length, 0);
  const barrels = [
    ...new Set(ends.flatMap(({ barrel }) => (barrel === undefined ? [] : [barrelName(barrel)]))),
  ];
  switch (kind) {
    case "crimped butt":
    case "sealed butt": {
      const steps = ends.flatMap(({ problems }) =>
        problems.flatMap((one) => (one.problem === "needs-step-down" ? [one.colours] : [])),
      );
      const both = steps[0] ?? barrels;
      return both.length === 0 ? undefined : `${kind}, ${[...both].sort().join(" to ")}`;
    }
    case "solder sleeve":
      return `solder sleeve ${thickest(ends)}`;
    case "lever clamp":
      return `lever clamp, ${count} ways`;
    case "pin plug":
      return "pin plug, pair";
    case "tap":
      return `tap ${thickest(ends)}`;
    case "twist-on cap":
      return "twist-on cap";
    default:
      return undefined;
  }
}

const barrelName = (barrel: NonNullable<EndFigures["barrel"]>): string =>
  barrel.kind === "lug" ? barrel.sizeKey : barrel.colour;

const thickest = (ends: readonly EndFigures[]): string =>
  ends.reduce<EndFigures | undefined>(
    (most, end) => (most === undefined || end.at.size.areaMm2 > most.at.size.areaMm2 ? end : most),
    undefined,
  )?.at.size.key ?? "";

/** Sleeve is sold by length: one count is a centimetre. */
export function sleeveName({ suppliedMm, recoveredMm, lined }: NonNullable<EndFigures["sleeve"]>): string {
  return `${lined ? "lined sleeve" : "sleeve"} ${suppliedMm} to ${recoveredMm} mm, by the cm`;
}

export const fuseName = (device: Protection["device"], ratingA: number): string => `${device} ${ratingA} A`;

export const holderName = (device: Protection["device"]): string | undefined =>
  device === "breaker" ? undefined : `${device} holder`;

/** An end at a fuse or breaker that sits in a lead: a ring or a butt, as its maker asks. */
export const deviceEndName = (device: Protection["device"]): string =>
  `end at a ${holderName(device) ?? device}`;

export const insidePanel = "wires inside a panel";

export const switchName = ({ ratingA }: Switch, master = false): string => {
  const kind = master ? "master switch" : "switch";
  return ratingA === undefined ? kind : `${kind} ${ratingA} A`;
};

/**
 * Grommet of a hole, in the plan's own unit; a plan that has stock or prices of it by the other unit keeps to that name.
 * @param known Items that the plan's stock and prices name.
 */
export function grommetName(
  diameterM: number,
  lengths: "inches" | "millimetres",
  known: ReadonlySet<string>,
): string {
  const metric = `grommet for a ${Math.round(diameterM * 1e4) / 10} mm hole`;
  const inch = `grommet for a ${writeInches(diameterM)} hole`;
  const [own, other] = lengths === "inches" ? [inch, metric] : [metric, inch];
  return known.has(other) && !known.has(own) ? other : own;
}
