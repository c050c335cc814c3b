import { protectionOhm } from "../../src/core/circuit/conductor/contacts.js";
import type { FaultKind } from "../../src/core/proving/suspect.js";
import type { Boat, TrueBoat } from "./proving-boats.js";
import type { Added } from "./proving-deck.js";

/** Something wrong, in the names of the circuit. Nothing of the tool's own way to reckon with it is used. */
export interface Fault {
  readonly kind: FaultKind;
  /** Branches, gear or battery. */
  readonly at: readonly string[];
  /** Extra resistance by place [Ω]; rating of a wrong fuse [A]; for a low battery what it lacks, below zero [V]. */
  readonly size: readonly number[];
}

export interface FaultyBoat {
  readonly boat: Boat;
  readonly truth: TrueBoat;
  readonly added: readonly Added[];
  /** What is printed on a device, where it is not the plan's [A]. */
  readonly markedA: ReadonlyMap<string, number>;
}

export const brokenOhm = 1e12;

/** Puts a fault into a boat. A short has blown the fuse before it. */
export function faulty(boat: Boat, sound: TrueBoat, { kind, at, size }: Fault): FaultyBoat {
  const { bench, pairs } = boat;
  const { topology } = bench;
  const rows = at.map((id) => bench.branchOf.get(id) ?? -1);
  const as = (change: Partial<TrueBoat>, more: Partial<FaultyBoat> = {}): FaultyBoat => ({
    boat,
    truth: { ...sound, ...change },
    added: [],
    markedA: new Map(),
    ...more,
  });
  const withOhm = (change: (ohm: Float64Array) => void): Partial<TrueBoat> => {
    const branchOhm = sound.branchOhm.slice();
    change(branchOhm);
    return { branchOhm };
  };
  const [row = -1] = rows;
  const source = topology.sources.findIndex(({ battery }) => battery === at[0]);
  const pair = pairs.find(({ out }) => out === row);
  switch (kind) {
    case "well":
      return as({});
    case "resistance":
    case "two resistances":
      return as(
        withOhm((ohm) => {
          rows.forEach((r, k) => {
            ohm[r] = (ohm[r] ?? 0) + (size[k] ?? 0);
          });
        }),
      );
    case "open":
    case "fuse blown":
      return as(
        withOhm((ohm) => {
          ohm[row] = brokenOhm;
        }),
      );
    case "wrong fuse": {
      const device = topology.devices.find(({ id }) => id === at[0])?.protection.device ?? "blade fuse";
      const [ratingA = 0] = size;
      const other = withOhm((ohm) => {
        ohm[row] = protectionOhm(device, ratingA);
      });
      return as(other, { markedA: new Map([[at[0] ?? "", ratingA]]) });
    }
    case "short": {
      if (!pair) throw new Error(`no pair of poles at ${at[0]}`);
      const blown = withOhm((ohm) => {
        if (pair.guard >= 0) ohm[pair.guard] = brokenOhm;
      });
      return as(blown, { added: [{ from: pair.plus, to: pair.minus, ohm: 0.02 }] });
    }
    case "reversed": {
      if (!pair) throw new Error(`no pair of poles at ${at[0]}`);
      const crossed = withOhm((ohm) => {
        ohm[pair.out] = brokenOhm;
        ohm[pair.back] = brokenOhm;
      });
      const wire = (branch: number) => ({ ohm: sound.branchOhm[branch] ?? 1, wire: branch });
      const added = [
        { from: topology.branches[pair.out]?.from ?? 0, to: pair.minus, ...wire(pair.out) },
        { from: pair.plus, to: topology.branches[pair.back]?.to ?? 0, ...wire(pair.back) },
      ];
      return as(crossed, { added });
    }
    case "gear dead": {
      const loadFactor = sound.loadFactor.slice();
      loadFactor[topology.gear.findIndex(({ id }) => id === at[0])] = 0;
      return as({ loadFactor });
    }
    case "battery low":
    case "battery worn": {
      const column = kind === "battery low" ? "emfV" : "sourceOhm";
      const values = sound[column].slice();
      values[source] = (values[source] ?? 0) + (size[0] ?? 0);
      return as({ [column]: values });
    }
    default:
      return kind satisfies never;
  }
}
