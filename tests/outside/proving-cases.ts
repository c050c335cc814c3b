import { deviceKinds } from "../../src/core/circuit/protection/devices.js";
import { seededNumbers } from "../../src/core/parts/cuts/seeded.js";
import type { FaultKind } from "../../src/core/proving/suspect.js";
import { type Boat, currentOn, onTheWay, type TrueBoat, trueBoat } from "./proving-boats.js";
import { type Fault, type FaultyBoat, faulty } from "./proving-faulty.js";

export type CaseKind = Exclude<FaultKind, "well" | "fuse blown">;

/** A boat as it really is: every figure a little off its plan, and something wrong in it. */
export interface FaultCase {
  readonly name: string;
  readonly faulty: FaultyBoat;
  readonly sound: TrueBoat;
  readonly seed: number;
  readonly fault: Fault & { readonly kind: CaseKind };
  /** Gear that is on, and the piece of it that fails, by row. */
  readonly on: readonly string[];
  readonly gear: number;
  readonly random: () => number;
}

export function faultCase(boat: Boat, kind: CaseKind, seed: number): FaultCase {
  const { bench } = boat;
  const random = seededNumbers(seed);
  const { topology } = bench;
  const fed = topology.gear.filter(({ plus, minus }) => plus !== minus);
  const piece = pick(random, fed);
  const gear = topology.gear.indexOf(piece);
  const on = topology.gear.filter(({ circuit }) => circuit === piece.circuit).map(({ id }) => id);
  const sound = trueBoat(boat, random);
  const fault = { ...faultOn(boat, kind, gear, random), kind };
  const name = `${boat.name}, ${kind}, seed ${seed}`;
  return { name, seed, fault, on, gear, random, sound, faulty: faulty(boat, sound, fault) };
}

function pick<T>(random: () => number, list: readonly T[]): T {
  const one = list[Math.floor(random() * list.length)];
  if (one === undefined) throw new Error("nothing to pick from");
  return one;
}

/** A fault of one kind on the way of a piece of gear. */
function faultOn(
  { bench, pairs }: Boat,
  kind: CaseKind,
  gear: number,
  random: () => number,
): Omit<Fault, "kind"> {
  const { topology, plan } = bench;
  const piece = topology.gear[gear];
  if (!piece) throw new Error(`no gear ${gear}`);
  const way = onTheWay(bench, gear);
  const amp = currentOn(bench, piece.circuit);
  const id = (row: number) => topology.branches[row]?.id ?? "";
  const battery = plan.circuits.get(piece.circuit)?.battery ?? "";
  // what an owner notices: 0.4 to 3.2 V lost at the way's usual current; with more a driver shuts down, which is an open
  const bad = () => (0.4 * 8 ** random()) / amp;
  switch (kind) {
    case "resistance":
      return { at: [id(pick(random, way))], size: [bad()] };
    case "open":
      return { at: [id(pick(random, way))], size: [] };
    case "two resistances": {
      const first = pick(random, way);
      const second = pick(
        random,
        way.filter((row) => row !== first),
      );
      return { at: [id(first), id(second)], size: [bad() / 2, bad() / 2] };
    }
    case "short":
    case "reversed": {
      const pair = pick(
        random,
        pairs.filter(({ out, back }) => way.includes(out) && way.includes(back)),
      );
      return { at: [id(pair.out)], size: [] };
    }
    case "gear dead":
      return { at: [piece.id], size: [] };
    case "wrong fuse": {
      const devices = topology.devices.filter(({ id: device }) =>
        way.includes(bench.branchOf.get(device) ?? -1),
      );
      const { id: at, protection } = pick(random, devices);
      const part = bench.parts[bench.branchOf.get(at) ?? 0]?.[0];
      const own = part?.kind === "protection" ? part.ratingA : 0;
      const others = deviceKinds[protection.device].ratingsA.filter((a) => a > own / 4 && a < own * 4);
      const ratingA = pick(
        random,
        others.filter((a) => a !== own),
      );
      return { at: [at], size: [ratingA] };
    }
    case "battery low":
      return { at: [battery], size: [-(0.8 + 1.5 * random())] };
    case "battery worn":
      return { at: [battery], size: [0.1 * 10 ** random()] };
    default:
      return kind satisfies never;
  }
}
