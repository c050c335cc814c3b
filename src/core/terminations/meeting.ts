import { conductorDiameterMm } from "../circuit/conductor/make.js";
import type { CompletePlan } from "../plan/completed.js";
import type { ConductorSize, JointKind } from "../plan/model/common.js";
import { inOneButt } from "../reference/terminations.js";
import { barrelFor } from "./barrel.js";
import type { PlacedEnd } from "./plan-ends.js";

/** A conductor in a joint: an end of a run, or a lead of the gear. */
export interface JointMember {
  /** Undefined: the gear's own lead. */
  readonly end?: PlacedEnd;
  readonly size: ConductorSize;
  readonly outsideMm: number;
}

/** Conductors that one joint joins. */
export interface Meeting {
  /** `fore box / helm / lamps / out`. */
  readonly id: string;
  readonly place: string;
  readonly kind: JointKind;
  /** The two sides of a butt; of other joints all on one. */
  readonly sides: readonly (readonly JointMember[])[];
}

/** Kinds that join conductors to each other; all others end one conductor on a terminal. */
const joining: ReadonlySet<JointKind> = new Set([
  "crimped butt",
  "sealed butt",
  "solder sleeve",
  "soldered and sleeved",
  "lever clamp",
  "pin plug",
  "tap",
  "twist-on cap",
  "twisted and taped",
]);
const butts: ReadonlySet<JointKind> = new Set(["crimped butt", "sealed butt"]);

/**
 * Ends that share a joint: what meets in a box by circuit and leg, what meets at a piece of gear with its leads.
 * Ends on terminals stand alone.
 */
export function meetings(plan: CompletePlan, ends: readonly PlacedEnd[]): Meeting[] {
  const joinedReturns = new Set(
    plan.boxes.filter(({ returns }) => returns === "joined").map(({ name }) => name),
  );
  const leads = new Map(plan.gear.map(({ name, leads: own }) => [name, own]));
  const groups = new Map<string, JointMember[]>();
  const about = new Map<string, { place: string; kind: JointKind }>();
  for (const end of ends) {
    if (!joining.has(end.kind)) continue;
    const atGear = leads.has(end.place);
    const shared = end.leg === "return" && joinedReturns.has(end.place);
    const circuit = atGear || shared ? "" : ` / ${end.circuits.join(", ")}`;
    // Two kinds at one place are two joints: the plan says so.
    const id = `${end.place}${circuit} / ${end.leg}`;
    const key = `${id}\n${end.kind}`;
    const member: JointMember = { end, size: end.size, outsideMm: end.outsideMm };
    const list = groups.get(key);
    if (list) list.push(member);
    else {
      const lead = leads.get(end.place);
      const own = lead === undefined ? [] : [{ size: lead.size, outsideMm: conductorDiameterMm(lead.size) }];
      groups.set(key, [member, ...own]);
      about.set(key, { place: end.place, kind: end.kind });
    }
  }
  return [...groups].flatMap(([key, members]): Meeting[] => {
    const at = about.get(key);
    if (at === undefined) return [];
    const id = key.slice(0, key.indexOf("\n"));
    return [{ id, ...at, sides: butts.has(at.kind) ? sidesOf(members) : [members] }];
  });
}

/**
 * Which conductors go into which end of a butt: both ends of one colour if that can be, else each in some barrel, else as
 * even as can be by area. Of equal ways the one with fewer together.
 */
function sidesOf(members: readonly JointMember[]): readonly (readonly JointMember[])[] {
  if (members.length < 2) return [members];
  // too many for any butt: all but one are put on one side, and the barrel says so
  if (members.length > inOneButt.most) return [members.slice(0, 1), members.slice(1)];
  let best: (readonly JointMember[])[] = [members.slice(0, 1), members.slice(1)];
  let least = Number.POSITIVE_INFINITY;
  // The first stays on the first side: the mirror image is the same joint.
  for (let mask = 0; mask < 2 ** (members.length - 1) - 1; mask += 1) {
    const onFirst = (index: number) => index === 0 || (mask & (1 << (index - 1))) !== 0;
    const sides = [members.filter((_, at) => onFirst(at)), members.filter((_, at) => !onFirst(at))];
    const cost = costOf(sides);
    if (cost < least) [best, least] = [sides, cost];
  }
  return best;
}

function costOf(sides: readonly (readonly JointMember[])[]): number {
  const [one = [], other = []] = sides.map((side) => side.map(({ size }) => size));
  const barrels = [barrelFor(one, other), barrelFor(other, one)];
  const names = barrels.map((one) => (one.ok ? nameOf(one.barrel) : ""));
  const unfit = names.filter((name) => name === "").length;
  const unlike = names[0] === names[1] ? 0 : 1;
  const together = Math.max(...sides.map((side) => side.length));
  return unfit * 100 + unlike * 10 + together;
}

const nameOf = (barrel: { kind: "insulated"; colour: string } | { kind: "lug"; sizeKey: string }): string =>
  barrel.kind === "lug" ? barrel.sizeKey : barrel.colour;
