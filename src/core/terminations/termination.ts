import type { ConductorSize, JointKind, Surroundings } from "../plan/model/common.js";
import { jointKinds } from "../plan/model/common.js";
import { type JointFacts, joints } from "../reference/joints.js";
import { barrelDepths, jointTools, studHoles, tabSizes } from "../reference/terminations.js";
import { type Barrel, type BarrelProblem, barrelFor } from "./barrel.js";
import { type PullTestValue, pullTest } from "./pull-test.js";
import { type SleeveAnswer, sleeveFor } from "./sleeve.js";
import { checkTap, type TapAnswer } from "./tap.js";

/** One conductor end and what it meets. */
export interface ConductorEnd {
  /** `lamp trunk / lamps / out / end`. */
  readonly id: string;
  readonly size: ConductorSize;
  /** Over its insulation. */
  readonly outsideMm: number;
  readonly conductor: "stranded" | "solid";
  readonly kind: JointKind;
  readonly surroundings: Surroundings;
  /** Conductors crimped or clamped into the same barrel or terminal with it. */
  readonly together?: readonly ConductorSize[];
  /** The conductor it is joined to, end to end or as the through conductor of a tap, and that one's outside [mm]. */
  readonly meets?: {
    readonly size: ConductorSize;
    readonly outsideMm: number;
    /** Others in the same barrel as that one. */
    readonly together?: readonly ConductorSize[];
  };
  /** Stud a ring or fork goes on [mm]. */
  readonly studMm?: number;
  /** Width of the male tab [mm]. */
  readonly tabMm?: number;
  readonly currentA?: number;
}

export type TerminationProblem =
  | BarrelProblem
  | {
      readonly problem: "not-for-this-place";
      readonly kind: JointKind;
      readonly surroundings: Surroundings;
      readonly instead: readonly JointKind[];
    }
  | { readonly problem: "never"; readonly kind: JointKind; readonly instead: readonly JointKind[] }
  | { readonly problem: "solid-crimped"; readonly kind: JointKind }
  | { readonly problem: "needs-step-down"; readonly colours: readonly [string, string] }
  | { readonly problem: "stud-not-made"; readonly studMm: number; readonly studsMm: readonly number[] }
  | { readonly problem: "tab-not-made"; readonly tabMm: number; readonly tabsMm: readonly number[] }
  | {
      readonly problem: "tab-too-small";
      readonly tabMm: number;
      readonly areaMm2: number;
      readonly maxAreaMm2: number;
    }
  | {
      readonly problem: "over-current";
      readonly kind: JointKind;
      readonly currentA: number;
      readonly maxA: number;
    }
  | (TapAnswer & { readonly ok: false })
  | (SleeveAnswer & { readonly ok: false });

type Unchecked = "stud" | "tab" | "current" | "meets";

export interface Termination {
  readonly end: string;
  readonly kind: JointKind;
  readonly barrel?: Barrel;
  /** Clearance hole of a ring or fork, with the stud it is sold for. */
  readonly stud?: { readonly name: string; readonly holeMm: number };
  readonly tab?: string;
  readonly stripMm: number;
  readonly tool: string;
  readonly sleeve?: SleeveAnswer & { readonly ok: true };
  /** Undefined where nothing is crimped, or no value is known. */
  readonly pull?: PullTestValue;
  /** What the plan does not tell, so that it could not be judged. */
  readonly unchecked: readonly Unchecked[];
  readonly problems: readonly TerminationProblem[];
}

const crimped: readonly JointKind[] = [
  "crimped butt",
  "sealed butt",
  "crimped ring",
  "crimped fork",
  "push-on tab",
  "pin plug",
];
const barrelled: readonly JointKind[] = [
  "crimped butt",
  "sealed butt",
  "crimped ring",
  "crimped fork",
  "push-on tab",
];

/** Everything one needs at the bench for one conductor end, and what is wrong with it. */
export function termination(end: ConductorEnd): Termination {
  if (!(end.outsideMm > 0)) throw new RangeError(`outside of ${end.id} must be > 0 mm, got ${end.outsideMm}`);
  const problems: TerminationProblem[] = [...placeProblems(end)];
  const unchecked: Unchecked[] = [];
  const { kind } = end;
  let barrel: Barrel | undefined;
  if (barrelled.includes(kind)) {
    const answer = barrelFor([end.size, ...(end.together ?? [])], acrossButt(end));
    if (answer.ok) barrel = answer.barrel;
    else problems.push(answer.problem);
    problems.push(...stepDown(end, barrel));
  }
  if (end.conductor === "solid" && crimped.includes(kind)) problems.push({ problem: "solid-crimped", kind });
  const stud =
    kind === "crimped ring" || kind === "crimped fork" ? studFor(end, problems, unchecked) : undefined;
  const tab = kind === "push-on tab" ? tabFor(end, problems, unchecked) : undefined;
  if (kind === "tap") {
    if (end.currentA === undefined) unchecked.push("current");
    if (end.meets === undefined) unchecked.push("meets");
    else {
      const answer = checkTap(end.meets.size.areaMm2, end.size.areaMm2, end.currentA ?? 0);
      if (!answer.ok) problems.push(answer);
    }
  }
  const { maxA }: JointFacts = joints[kind];
  if (maxA !== undefined && kind !== "tap") {
    if (end.currentA === undefined) unchecked.push("current");
    else if (end.currentA > maxA)
      problems.push({ problem: "over-current", kind, currentA: end.currentA, maxA });
  }
  const sleeve = sleeveOf(end, barrel);
  if (sleeve !== undefined && !sleeve.ok) problems.push(sleeve);
  const pull = crimped.includes(kind) ? pullTest(end.size) : undefined;
  return {
    end: end.id,
    kind,
    stripMm: stripMm(kind, barrel),
    tool: barrel?.kind === "lug" ? jointTools.lug : jointTools.rows[kind],
    unchecked,
    problems,
    ...(barrel === undefined ? {} : { barrel }),
    ...(stud === undefined ? {} : { stud }),
    ...(tab === undefined ? {} : { tab }),
    ...(sleeve?.ok === true ? { sleeve } : {}),
    ...(pull === undefined ? {} : { pull }),
  };
}

function placeProblems({ kind, surroundings }: ConductorEnd): TerminationProblem[] {
  const fits = (one: JointKind): boolean => {
    const facts: JointFacts = joints[one];
    return !facts.never && facts.fitFor.includes(surroundings);
  };
  const instead = jointKinds.filter((one) => one !== kind && fits(one) && sameTask(one, kind));
  if (joints[kind].never) return [{ problem: "never", kind, instead }];
  return fits(kind) ? [] : [{ problem: "not-for-this-place", kind, surroundings, instead }];
}

/** Kinds that end a conductor on a stud, tab or clamp; the others join conductors. */
const onTerminal: readonly JointKind[] = [
  "crimped ring",
  "crimped fork",
  "push-on tab",
  "screw terminal",
  "lever clamp",
];
const sameTask = (a: JointKind, b: JointKind): boolean => onTerminal.includes(a) === onTerminal.includes(b);

/** What lies in the other end of its butt. */
const acrossButt = ({ kind, meets }: ConductorEnd): readonly ConductorSize[] =>
  (kind === "crimped butt" || kind === "sealed butt") && meets !== undefined
    ? [meets.size, ...(meets.together ?? [])]
    : [];

/** A butt takes one conductor at each end: both in one colour, or a step-down butt. */
function stepDown(end: ConductorEnd, barrel: Barrel | undefined): TerminationProblem[] {
  const across = acrossButt(end);
  if (across.length === 0) return [];
  const other = barrelFor(across, [end.size, ...(end.together ?? [])]);
  if (!other.ok) return [other.problem];
  const name = (one: Barrel): string => (one.kind === "lug" ? one.sizeKey : one.colour);
  if (barrel === undefined || name(barrel) === name(other.barrel)) return [];
  return [{ problem: "needs-step-down", colours: [name(barrel), name(other.barrel)] }];
}

function studFor(
  end: ConductorEnd,
  problems: TerminationProblem[],
  unchecked: Unchecked[],
): Termination["stud"] {
  const { studMm } = end;
  if (studMm === undefined) {
    unchecked.push("stud");
    return undefined;
  }
  // The hole just over the stud, inch studs too: a ring for the next stud up sits off centre and loosens.
  const row = studHoles.rows.find((one) => one.holeMm > studMm && one.holeMm - studMm < studHoles.maxPlayMm);
  if (row === undefined) {
    problems.push({ problem: "stud-not-made", studMm, studsMm: studHoles.rows.map((one) => one.studMm) });
    return undefined;
  }
  return { name: row.stud, holeMm: row.holeMm };
}

function tabFor(
  end: ConductorEnd,
  problems: TerminationProblem[],
  unchecked: Unchecked[],
): string | undefined {
  const { tabMm } = end;
  if (tabMm === undefined) {
    unchecked.push("tab");
    return undefined;
  }
  const row = tabSizes.rows.find((one) => Math.abs(one.widthMm - tabMm) < 0.1);
  if (row === undefined) {
    problems.push({ problem: "tab-not-made", tabMm, tabsMm: tabSizes.rows.map((one) => one.widthMm) });
    return undefined;
  }
  const { areaMm2 } = end.size;
  if (areaMm2 > row.maxAreaMm2) {
    problems.push({ problem: "tab-too-small", tabMm, areaMm2, maxAreaMm2: row.maxAreaMm2 });
  }
  return row.series;
}

/** Bare lugs and soldered joints are sleeved; sealed in wet places, plain in dry ones. */
function sleeveOf(end: ConductorEnd, barrel: Barrel | undefined): SleeveAnswer | undefined {
  const { kind, outsideMm, surroundings, meets } = end;
  const lined = surroundings !== "dry";
  if (barrel?.kind === "lug") {
    // The barrel is about as thick as the insulation that goes into its mouth.
    return sleeveFor({ thickestMm: outsideMm * 1.15, thinnestMm: outsideMm, jointMm: barrel.stripMm, lined });
  }
  if (kind !== "soldered and sleeved") return undefined;
  const other = meets?.outsideMm ?? outsideMm;
  const thickestMm = Math.max(outsideMm, other, (outsideMm + other) * 0.6);
  return sleeveFor({
    thickestMm,
    thinnestMm: Math.min(outsideMm, other),
    jointMm: barrelDepths.lapMm,
    lined,
  });
}

function stripMm(kind: JointKind, barrel: Barrel | undefined): number {
  if (barrel !== undefined) return barrel.stripMm;
  switch (kind) {
    case "screw terminal":
      return barrelDepths.screwMm;
    case "lever clamp":
      return barrelDepths.leverMm;
    case "pin plug":
      return barrelDepths.pinMm;
    case "solder sleeve":
      return barrelDepths.solderSleeveMm;
    case "tap":
      return 0;
    default:
      return barrelDepths.lapMm;
  }
}
