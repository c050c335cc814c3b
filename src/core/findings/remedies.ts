import type { ProtectionFigures } from "../circuit/protection/types.js";
import type { CompleteRun } from "../plan/completed.js";
import type { Edit } from "../plan/edits/edit.js";
import { cartridgeFuses } from "../reference/fuses.js";
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

/** Where no rating suits a device, or the main before it: let the tool choose the runs that are too thin for one and that the owner fixed. */
export function thickerRemedies(facts: Facts, device: ProtectionFigures): Edit[] {
  const nearer = device.conditions.find(({ condition }) => condition === "before-main")?.binds;
  const thin = [device, ...facts.protection.filter(({ id }) => id === nearer)].flatMap(
    ({ withThicker }) => withThicker?.harms ?? [],
  );
  const runOf = new Map(facts.corners[0]?.branches.map(({ id, of }) => [id, of]));
  const at = new Set<string>();
  for (const { branch } of thin) {
    const run = facts.runs.get(runOf.get(branch) ?? "");
    if (run?.size !== undefined) at.add(run.group);
  }
  return [...at].map((name): Edit => ({ edit: "remove field", at: name, field: "size" }));
}

/** Steps that ratings of switches are told in here: our own, no source [A]. */
const switchStepA = 10;

/** A master switch that carries what the fuses behind it let through: the battery's main, else those of the runs that leave it. */
export function masterRemedies(facts: Facts, battery: string, runs: readonly CompleteRun[]): Edit[] {
  const ratings = (names: readonly string[]) =>
    facts.protection.filter(({ of }) => names.includes(of)).map(({ ratingA }) => ratingA);
  const main = ratings([battery]);
  const all = main.length > 0 ? main : ratings(runs.map(({ name }) => name));
  const sumA = all.reduce((sum, ratingA) => sum + ratingA, 0);
  if (!(sumA > 0 && Number.isFinite(sumA))) return [];
  const ratingA = Math.ceil(sumA / switchStepA) * switchStepA;
  return [{ edit: "set field", at: battery, field: "master", to: `{rating: ${ratingA} A}` }];
}

/** Put the best rating that holds everything into a device: the smallest one that carries the load. */
export function ratingRemedies(facts: Facts, { of, possibleA }: ProtectionFigures): Edit[] {
  const [rating] = possibleA;
  return rating === undefined ? [] : [setRating(facts, of, `${rating} A`)];
}

/** Another kind of fuse of the same rating at a battery or on a run; what a blade fuse in a panel cannot break is for the main to break. */
export function kindRemedies(facts: Facts, { of, device, ratingA }: ProtectionFigures): Edit[] {
  const made: readonly number[] = cartridgeFuses.ratingsA;
  const now = facts.batteries.get(of)?.main ?? facts.runs.get(of)?.protection;
  if (now === undefined || now === "none" || device === "cartridge fuse" || !made.includes(ratingA))
    return [];
  const place = now.fromSourceM === undefined ? "" : `, from source: ${lengthOf(facts, now.fromSourceM)}`;
  return [setRating(facts, of, `{device: cartridge fuse, rating: ${ratingA} A${place}}`)];
}

/** Move a device to the farthest place allowed. */
export function placeRemedies(facts: Facts, { of }: ProtectionFigures, limitM: number | undefined): Edit[] {
  if (limitM === undefined) return [];
  const run = facts.runs.get(of);
  const field = `${run ? "fuse" : facts.batteries.has(of) || facts.panels.has(of) ? "main" : "fuse"} / from source`;
  return [{ edit: "set field", at: run?.group ?? of, field, to: lengthOf(facts, limitM) }];
}

/** A length no longer than that, as the owner's tape has it. */
function lengthOf({ plan }: Facts, lengthM: number): string {
  const inches = plan.source.shows.lengths === "inches";
  // a hair more, so that 0.127 m stays 5 in
  return inches ? `${Math.floor(lengthM / 0.0254 + 1e-9)} in` : `${Math.floor(lengthM * 1000 + 1e-9)} mm`;
}

/** The edit that sets a device's rating, by what has the device: a battery or panel, a run, or a way. */
function setRating({ batteries, panels, runs }: Facts, of: string, to: string): Edit {
  if (batteries.has(of) || panels.has(of)) return { edit: "set main fuse", at: of, to };
  const run = runs.get(of);
  if (run) return { edit: "set run fuse", at: run.group, to };
  return { edit: "set way fuse", at: of, to };
}
