import type { Gear } from "../model/gear.js";

/** Names of the single pieces of gear written as one entry: the name itself, or `name 1` … `name n`. */
export function piecesOf(gear: Gear): string[] {
  return gear.count === 1
    ? [gear.name]
    : Array.from({ length: gear.count }, (_, index) => `${gear.name} ${index + 1}`);
}
