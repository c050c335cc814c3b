import { usualInsulation, usualRunLength } from "../../reference/assumed.js";
import { slackOf } from "../../way/slack.js";
import type { CompleteRun } from "../completed.js";
import type { Endpoint, JointKind, Surroundings } from "../model/common.js";
import type { Plan } from "../model/plan.js";
import type { Run } from "../model/runs.js";
import type { SingleRun } from "./expand.js";
import { celsius, lengthsIn, type Notes } from "./notes.js";

/** What completing a run needs to know of the places at its ends. */
export interface PlacesAround {
  /** Usual joint at a place; undefined where the place is unknown. */
  readonly jointAt: (end: Endpoint) => JointKind | undefined;
  readonly surroundingsAt: (place: string) => Surroundings;
  /** Length along the legs, of a run that is led so [m]; loaded conductors of others beside it. */
  readonly wayM: (run: string) => number | undefined;
  readonly beside: (run: string) => number;
  readonly endsOf: (single: SingleRun) => CompleteRun["ends"];
}

/** One cable with its defaults. `carries` are the circuits traced to it. */
export function completeRun(
  single: SingleRun,
  plan: Plan,
  carries: readonly string[],
  places: PlacesAround,
  notes: Notes,
): CompleteRun {
  const { run } = single;
  const at = run.name;
  const first = single.name === run.name || single.name === `${run.name} 1`;
  const note = first ? notes : notes.silent;
  const boat = plan.craft.lengthM;
  const length = lengthsIn(plan.shows);
  const usual =
    boat === undefined
      ? usualRunLength.withoutBoatM
      : boat * usualRunLength.perBoatLength + usualRunLength.plusM;
  const wayM = places.wayM(single.name);
  const lengthM =
    wayM === undefined
      ? note.take(single.lengthM, usual, at, "length", "length-by-boat", length)
      : notes.take(single.lengthM, wayM, single.name, "length", "length-along-legs", length);
  const ends = places.endsOf(single);
  const feedOnly = carries.length > 0 && carries.every((circuit) => circuit.endsWith(" / feed"));
  const { reaches: _reaches, lengthsM: _lengthsM, carries: _carries, ...rest } = run;
  return {
    ...rest,
    name: single.name,
    group: run.name,
    from: single.from,
    to: single.to,
    ...measured(run, lengthM, ends),
    ends,
    bundledWith: Math.max(run.bundledWith, places.beside(single.name)),
    carries: run.legs === "return" && carries.length === 0 ? run.carries : carries,
    return: run.return ?? "own",
    sheathed: note.take(
      run.sheathed,
      !feedOnly,
      at,
      "sheathed",
      feedOnly ? "feeds-single" : "cable-sheathed",
    ),
    insulationC: note.take(
      run.insulationC ?? plan.conductors.insulationC,
      usualInsulation[plan.rules],
      at,
      "insulation",
      "usual-insulation",
      celsius,
    ),
    tinned:
      run.tinned ??
      plan.conductors.tinned ??
      note.take<boolean>(undefined, true, at, "tinned", "tinned-afloat"),
    jointAtStart: note.take(
      // the joint written at the start of a chain is the one at its first cable; the others start at gear
      single.from === run.from ? run.jointAtStart : places.jointAt(single.from),
      places.jointAt(single.from) ?? "crimped ring",
      at,
      "joint at start",
      "joint-by-place",
    ),
    jointAtEnd: note.take(
      run.jointAtEnd,
      places.jointAt(single.to) ?? "crimped ring",
      at,
      "joint at end",
      "joint-by-place",
    ),
    surroundings: note.take(
      run.surroundings,
      wetter(places.surroundingsAt(single.from.place), places.surroundingsAt(single.to.place)),
      at,
      "surroundings",
      "wetter-end",
    ),
  };
}

/** All lengths of a run, from the one along its way [m]. */
export function measured(
  run: Run,
  lengthM: number,
  { start, end }: CompleteRun["ends"],
): Pick<CompleteRun, "lengthM" | "returnLengthM" | "pulledM" | "returnPulledM"> {
  const returnLengthM = run.returnLengthM ?? lengthM;
  const slackM = slackOf(start, end);
  return { lengthM, returnLengthM, pulledM: lengthM + slackM, returnPulledM: returnLengthM + slackM };
}

const byWetness: readonly Surroundings[] = ["dry", "engine space", "splash", "wet", "bilge"];

function wetter(a: Surroundings, b: Surroundings): Surroundings {
  return byWetness.indexOf(a) > byWetness.indexOf(b) ? a : b;
}
