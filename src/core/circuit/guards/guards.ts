import { reals } from "../columns.js";
import type { FaultSource, Guard, GuardedConductor, MotorStart } from "../protection/guard.js";
import { ohmToSupply } from "../topology/tree.js";
import type { Device } from "../topology/types.js";
import { ConductorReader } from "./conductors.js";
import { type Downstream, downstreamOf } from "./downstream.js";
import { faultSource } from "./fault-source.js";
import type { GuardInput, GuardState } from "./input.js";
import { motorStarts } from "./motor-starts.js";
import { Places } from "./place.js";

/** A state with what all its guards share. */
interface OpenState extends Pick<GuardState, "chosen"> {
  readonly open: ReadonlySet<string>;
  /** From each node back to its supply: copper hot, the least there can be, and that of the way back alone [Ω]. */
  readonly hotToSupply: Float64Array;
  readonly coldToSupply: Float64Array;
  readonly coldBack: Float64Array;
  /** By device. */
  readonly loadA: readonly number[];
  readonly starts: readonly MotorStart[];
}

/** Reads the devices of a circuit as guards, at any state of sizes and loads; what no size changes is looked up once. */
export class GuardReader {
  readonly downstream: Downstream;
  private readonly conductors: ConductorReader;
  private readonly places: Places;
  private readonly sources = new Map<string, FaultSource>();
  /** Devices that another stands behind. */
  private readonly followed: ReadonlySet<number>;
  /** Fuses, breakers and switches: they stand in the way out and have no twin in the way back. */
  private readonly inOneLegOnly: readonly boolean[];

  constructor(private readonly input: GuardInput) {
    this.downstream = downstreamOf(input.topology, input.tree);
    this.conductors = new ConductorReader(input);
    this.places = new Places(input.plan);
    this.followed = new Set(this.downstream.nearer);
    this.inOneLegOnly = input.topology.branches.map(({ parts }) =>
      parts.every(({ kind }) => kind === "protection" || kind === "switch"),
    );
  }

  /**
   * One guard for each device of the circuit, in the topology's order.
   * @param open Groups whose conductors are left out of account: their sizes are still to be chosen.
   */
  guardsAt({ chosen, hotOhm, coldOhm, branchA, gearA }: GuardState, open: ReadonlySet<string>): Guard[] {
    const { topology, tree, pieces } = this.input;
    const { downstream } = this;
    const loadA = downstream.branchOf.map((branch) => Math.abs(branchA[branch] ?? 0));
    const coldBackOhm = reals(coldOhm, (ohm, branch) => (this.inOneLegOnly[branch] ? 0 : ohm));
    const state: OpenState = {
      chosen,
      open,
      hotToSupply: ohmToSupply(tree, hotOhm),
      coldToSupply: ohmToSupply(tree, coldOhm),
      coldBack: ohmToSupply(tree, coldBackOhm),
      loadA,
      starts: motorStarts(downstream, pieces, gearA, loadA),
    };
    const guards: Guard[] = [];
    for (const [index, device] of topology.devices.entries()) guards.push(this.guard(index, device, state));
    return guards;
  }

  private guard(index: number, device: Device, state: OpenState): Guard {
    const { plan, topology } = this.input;
    const { downstream } = this;
    const at = topology.branches[downstream.branchOf[index] ?? -1];
    const nearerDevice = topology.devices[downstream.nearer[index] ?? -1];
    const nearOhm = sumAt(at?.from, state.coldToSupply, state.coldBack);
    const supply = plan.circuits.get(at?.circuits[0] ?? "")?.supply ?? "";
    const { ratingA, interruptingA } = device.protection;
    const conductors: GuardedConductor[] = [];
    let isOpen = false;
    for (const each of downstream.branches[index] ?? []) {
      if (state.open.has(this.conductors.groupOf(each) ?? "")) isOpen = true;
      else {
        const conductor = this.conductors.read(each, state.chosen, state.hotToSupply);
        if (conductor) conductors.push(conductor);
      }
    }
    const gear: Guard["gear"][number][] = [];
    for (const each of downstream.gear[index] ?? []) gear.push(this.guardedGear(each));
    const feedsNothing = conductors.length === 0 && !isOpen && gear.length === 0 && !this.followed.has(index);
    return {
      id: device.id,
      of: device.of,
      device: device.protection.device,
      ...(ratingA !== undefined && { ratingA }),
      ...(interruptingA !== undefined && { interruptingA }),
      place: this.places.of(device, at, nearerDevice !== undefined),
      loadA: state.loadA[index] ?? 0,
      start: state.starts[index] ?? "none",
      conductors,
      gear,
      ...(device.at === "way" && ratingA === undefined && feedsNothing && { spare: true }),
      faults: {
        source: this.source(supply),
        // the way back is taken as long as the way out, less what stands in one leg only: the two lie in one cable
        ...(Number.isFinite(nearOhm) && { nearLoopOhm: nearOhm }),
      },
      ...(nearerDevice && { nearer: nearerOf(nearerDevice) }),
    };
  }

  private source(supply: string): FaultSource {
    const known = this.sources.get(supply);
    if (known) return known;
    const source = faultSource(supply, this.input.plan);
    this.sources.set(supply, source);
    return source;
  }

  private guardedGear(index: number): Guard["gear"][number] {
    const id = this.input.topology.gear[index]?.id ?? "";
    const maxFuseA = this.input.pieces[index]?.maxFuseA;
    return { id, ...(maxFuseA !== undefined && { maxFuseA }) };
  }
}

/** Way out and way back at a node [Ω]; Infinity where there is no such node. */
const sumAt = (node = -1, out: Float64Array, back: Float64Array): number =>
  (out[node] ?? Number.POSITIVE_INFINITY) + (back[node] ?? Number.POSITIVE_INFINITY);

function nearerOf({ id, protection }: Device): NonNullable<Guard["nearer"]> {
  return {
    id,
    device: protection.device,
    ...(protection.ratingA !== undefined && { ratingA: protection.ratingA }),
  };
}
