import type { CompletePlan } from "../../plan/completed.js";
import type { TakenReading } from "../../plan/model/work.js";
import type { Bench } from "../bench-network.js";
import type { Probe } from "../probe.js";
import type { Reading } from "../reading-model.js";

/** Why a reading on record cannot be compared with the boat as it is now. It stays on record. */
export type Unplaced =
  | {
      readonly why: "no such point" | "no such branch" | "no such gear" | "no such way";
      readonly name: string;
    }
  | { readonly why: "second point missing" | "same point twice" };

/** A reading on record in the terms of the circuit. */
export type Placed = { readonly reading: Reading } | { readonly unplaced: Unplaced };

/** Puts a reading on record into the circuit: its points, and the gear that was on, by piece, group or way. */
export function placeReading(bench: Bench, plan: CompletePlan, taken: TakenReading): Placed {
  const on: string[] = [];
  for (const name of taken.withOn) {
    const pieces = plan.gear.filter(
      (piece) => piece.name === name || piece.group === name || plan.circuitOf.get(piece.name) === name,
    );
    if (pieces.length === 0) return { unplaced: { why: "no such gear", name } };
    on.push(...pieces.map((piece) => piece.name).filter((piece) => bench.gearOf.has(piece)));
  }
  const probe = probeOf(bench, taken, [...new Set(on)]);
  if ("why" in probe) return { unplaced: probe };
  const { value, meter } = taken;
  return { reading: meter === undefined ? { probe, value } : { probe, value, meter } };
}

function probeOf(
  bench: Bench,
  { kind, at, against, lifted = [] }: TakenReading,
  on: readonly string[],
): Probe | Unplaced {
  if (kind === "marking") {
    const device = [at, `${at} / fuse`, `${at} / main`].find(
      (id) => bench.parts[bench.branchOf.get(id) ?? -1]?.[0]?.kind === "protection",
    );
    return device === undefined ? { why: "no such branch", name: at } : { kind, at: device, on: [] };
  }
  if (kind === "current") {
    const branch = [at, `${at} / fuse`, `${at} / switch`].find((id) => bench.branchOf.has(id));
    return branch === undefined ? { why: "no such branch", name: at } : { kind, at: branch, on };
  }
  if (against === undefined) return { why: "second point missing" };
  for (const name of [at, against]) if (!bench.nodeOf.has(name)) return { why: "no such point", name };
  if (at === against) return { why: "same point twice" };
  if (kind === "voltage") return { kind, at, against, on };
  const unknown = lifted.find((id) => !bench.branchOf.has(id));
  if (unknown !== undefined) return { why: "no such branch", name: unknown };
  return lifted.length === 0 ? { kind, at, against, on } : { kind, at, against, on, lifted };
}
