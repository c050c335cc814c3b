import { usualWorkingRange } from "../../reference/assumed.js";
import { gearRoleFacts } from "../../reference/gear-roles.js";
import type { CompleteGear } from "../completed.js";
import type { JointKind, Surroundings } from "../model/common.js";
import type { PlanPoint } from "../model/form.js";
import type { Behaviour, Gear, GearRole } from "../model/gear.js";
import { type Notes, percent, volts } from "./notes.js";
import { piecesOf } from "./pieces.js";
import { piecePlaces } from "./placing.js";

function behaviourOf(gear: Gear, role: GearRole): Behaviour {
  if (gearRoleFacts.rows[role].motor) return "motor";
  if (gear.draw.kind === "resistance") return "resistance";
  return gear.draw.kind === "power" ? "power" : "current";
}

function jointFor(surroundings: Surroundings): JointKind {
  return surroundings === "dry" ? "crimped butt" : "sealed butt";
}

/** What completing gear needs to know of where it hangs. */
export interface GearSupply {
  /** Nominal voltage of the battery or converter that feeds it; undefined: nothing does. */
  readonly nominalV: number | undefined;
  /** Limit of the way, and of the rule-set for this role [share of nominal]. */
  readonly wayDropShare: number | undefined;
  readonly ruleDropShare: (role: GearRole) => number;
}

/** Where each piece of an entry stands: in a place of its own, or all in one. */
export function piecesStand(count: number, places: Gear["standsAtM"] = []): (PlanPoint | undefined)[] {
  return Array.from({ length: count }, (_, index) => places[places.length === 1 ? 0 : index]);
}

/** Every piece of one entry, with its defaults; assumptions are noted once, under the entry's name. */
export function completeGear(gear: Gear, supply: GearSupply, notes: Notes): CompleteGear[] {
  const at = gear.name;
  const role = notes.take(gear.role, "other", at, "role", "role-unknown");
  const behaviour = notes.take(
    gear.behaviour,
    behaviourOf(gear, role),
    at,
    "behaves as",
    "behaviour-by-role",
  );
  const atV = gear.draw.kind === "resistance" ? undefined : gear.draw.atV;
  const nominalV = atV !== undefined && atV > 18 ? 24 : atV !== undefined ? 12 : (supply.nominalV ?? 12);
  const range = usualWorkingRange;
  const minV = notes.take(gear.minV, nominalV * range.minShare, at, "works from", "working-range", volts);
  const maxV = notes.take(gear.maxV, nominalV * range.maxShare, at, "works to", "working-range", volts);
  const surroundings = notes.take<Surroundings>(
    gear.surroundings,
    gearRoleFacts.rows[role].sits,
    at,
    "surroundings",
    "open-boat",
  );
  const joint = notes.take(gear.joint, jointFor(surroundings), at, "joint", "joint-by-surroundings");
  const maxDropShare =
    gear.maxDropShare ??
    supply.wayDropShare ??
    notes.take<number>(undefined, supply.ruleDropShare(role), at, "drop", "drop-by-rule-set", percent);
  const { count: _count, name: _name, standsAtM, ...rest } = gear;
  const places = piecePlaces(gear);
  const stands = piecesStand(gear.count, standsAtM);
  return piecesOf(gear).map((name, index) => ({
    ...rest,
    ...(places[index] && { placed: places[index] }),
    ...(stands[index] && { standsAtM: stands[index] }),
    name,
    group: gear.name,
    role,
    behaviour,
    minV,
    maxV,
    surroundings,
    joint,
    maxDropShare,
  }));
}
