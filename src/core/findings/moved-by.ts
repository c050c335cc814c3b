import type { CompletePlan } from "../plan/completed.js";

const sails = /sail|vela|velero/;
const rows = /\brow|\boar|paddle|kayak|canoe|remo|piragua|canoa/;
const powers = /motor|power|launch|runabout|lancha/;

/** What moves a boat under way, as far as the plan tells: its gear, its petrol, or what the owner calls it; undefined: it does not. */
export function movedBy({ gear, source: { craft } }: CompletePlan): "motor" | "sail" | "oars" | undefined {
  const kind = (craft.kind ?? "").toLowerCase();
  if (craft.petrolOnBoard === true || gear.some(({ role }) => role === "propulsion")) return "motor";
  if (sails.test(kind)) return "sail";
  if (rows.test(kind)) return "oars";
  return powers.test(kind) ? "motor" : undefined;
}
