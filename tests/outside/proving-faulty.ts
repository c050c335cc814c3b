import type { NetworkNumbers } from "../../src/core/circuit/solve/types.js";
import type { FaultKind } from "../../src/core/proving/suspect.js";
import type { Boat } from "./proving-boats.js";
import type { Added } from "./proving-deck.js";

/** Something wrong, in the names of the circuit. Nothing of the tool's own way to reckon with it is used. */
export interface Fault {
  readonly kind: FaultKind;
  /** Branches, gear or battery. */
  readonly at: readonly string[];
  /** Extra resistance by place, resistance of a wrong fuse [Ω]; for a low battery what it lacks, below zero [V]. */
  readonly size: readonly number[];
}

export interface FaultyBoat {
  readonly network: NetworkNumbers;
  readonly added: readonly Added[];
}

const brokenOhm = 1e9;

/** Puts a fault into a boat. A short has blown the fuse before it. */
export function faulty({ bench, pairs }: Boat, sound: NetworkNumbers, { kind, at, size }: Fault): FaultyBoat {
  const { topology } = bench;
  const rows = at.map((id) => bench.branchOf.get(id) ?? -1);
  const withOhm = (change: (ohm: Float64Array) => void): NetworkNumbers => {
    const ohm = sound.branches.ohm.slice();
    change(ohm);
    return { ...sound, branches: { ...sound.branches, ohm } };
  };
  const [row = -1] = rows;
  const source = topology.sources.findIndex(({ battery }) => battery === at[0]);
  const pair = pairs.find(({ out }) => out === row);
  switch (kind) {
    case "well":
      return { network: sound, added: [] };
    case "resistance":
    case "two resistances":
      return {
        network: withOhm((ohm) => {
          rows.forEach((r, k) => {
            ohm[r] = (ohm[r] ?? 0) + (size[k] ?? 0);
          });
        }),
        added: [],
      };
    case "open":
    case "fuse blown":
    case "wrong fuse":
      return {
        network: withOhm((ohm) => {
          ohm[row] = kind === "wrong fuse" ? (size[0] ?? 0) : brokenOhm;
        }),
        added: [],
      };
    case "short": {
      if (!pair) throw new Error(`no pair of poles at ${at[0]}`);
      const network = withOhm((ohm) => {
        if (pair.guard >= 0) ohm[pair.guard] = brokenOhm;
      });
      return { network, added: [{ from: pair.plus, to: pair.minus, ohm: 0.02 }] };
    }
    case "reversed": {
      if (!pair) throw new Error(`no pair of poles at ${at[0]}`);
      const network = withOhm((ohm) => {
        ohm[pair.out] = brokenOhm;
        ohm[pair.back] = brokenOhm;
      });
      const own = (branch: number) => sound.branches.ohm[branch] ?? 1;
      const added = [
        { from: topology.branches[pair.out]?.from ?? 0, to: pair.minus, ohm: own(pair.out) },
        { from: pair.plus, to: topology.branches[pair.back]?.to ?? 0, ohm: own(pair.back) },
      ];
      return { network, added };
    }
    case "gear dead": {
      const value = sound.loads.value.slice();
      value[topology.gear.findIndex(({ id }) => id === at[0])] = 0;
      return { network: { ...sound, loads: { ...sound.loads, value } }, added: [] };
    }
    case "battery low":
    case "battery worn": {
      const column = kind === "battery low" ? "emfV" : "ohm";
      const values = sound.sources[column].slice();
      values[source] = (values[source] ?? 0) + (size[0] ?? 0);
      return { network: { ...sound, sources: { ...sound.sources, [column]: values } }, added: [] };
    }
    default:
      return kind satisfies never;
  }
}
