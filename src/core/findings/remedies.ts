import type { ProtectionFigures } from "../circuit/protection/types.js";
import type { Edit } from "../plan/edits/edit.js";
import type { Facts } from "./facts.js";

/** For gear with too much drop: let the tool choose the runs of its circuit that the owner fixed. */
export function sizeRemedies(facts: Facts, gear: string): Edit[] {
  const circuit = facts.plan.circuitOf.get(gear);
  if (circuit === undefined) return [];
  const at = new Set<string>();
  for (const choice of facts.sizes.choices) {
    const run = facts.runs.get(choice.run);
    if (choice.fixedByOwner && run?.carries.includes(circuit)) at.add(run.group);
  }
  return [...at].map((name): Edit => ({ edit: "remove field", at: name, field: "size" }));
}

/** Put the best rating that holds everything into a device: the smallest one that carries the load. */
export function ratingRemedies(facts: Facts, { of, possibleA }: ProtectionFigures): Edit[] {
  const [rating] = possibleA;
  return rating === undefined ? [] : [setRating(facts, of, `${rating} A`)];
}

/** The edit that sets a device's rating, by what has the device: a battery or panel, a run, or a way. */
export function setRating({ batteries, panels, runs }: Facts, of: string, to: string): Edit {
  if (batteries.has(of) || panels.has(of)) return { edit: "set main fuse", at: of, to };
  const run = runs.get(of);
  if (run) return { edit: "set run fuse", at: run.group, to };
  return { edit: "set way fuse", at: of, to };
}
