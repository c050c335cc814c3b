import { usualMotorStart } from "../../reference/assumed.js";
import type { Guard, MotorStart } from "../protection/guard.js";
import { ohmToSupply } from "../topology/tree.js";
import type { Device } from "../topology/types.js";
import { ConductorReader } from "./conductors.js";
import { downstreamOf } from "./downstream.js";
import { faultSource } from "./fault-source.js";
import type { GuardInput } from "./input.js";
import { placeOf } from "./place.js";

/** One guard for each device of the circuit, in the topology's order. */
export function guardsOf(input: GuardInput): Guard[] {
  const { topology, tree } = input;
  const downstream = downstreamOf(topology, tree);
  const hotToSupply = ohmToSupply(tree, input.hotOhm);
  const coldToSupply = ohmToSupply(tree, input.coldOhm);
  const reader = new ConductorReader(input, hotToSupply);
  const deviceBranch = new Map(
    topology.branches.flatMap((branch, index) => {
      const part = branch.parts[0];
      return part?.kind === "protection" ? [[part.device, index] as const] : [];
    }),
  );
  return topology.devices.map((device, index): Guard => {
    const branch = deviceBranch.get(device.id) ?? -1;
    const at = topology.branches[branch];
    const nearer = downstream.nearer[index] ?? -1;
    const nearerDevice = nearer >= 0 ? topology.devices[nearer] : undefined;
    const loadA = Math.abs(input.branchA[branch] ?? 0);
    const nearOhm = coldToSupply[at?.from ?? -1] ?? Number.POSITIVE_INFINITY;
    const supply = input.plan.circuits.get(at?.circuits[0] ?? "")?.supply ?? "";
    const { ratingA, interruptingA } = device.protection;
    return {
      id: device.id,
      of: device.of,
      device: device.protection.device,
      ...(ratingA !== undefined && { ratingA }),
      ...(interruptingA !== undefined && { interruptingA }),
      place: placeOf(device, at, input.plan, nearerDevice !== undefined),
      loadA,
      start: motorStart(input, downstream.allGear[index] ?? [], loadA),
      conductors: (downstream.branches[index] ?? []).flatMap((each) => reader.read(each)),
      gear: (downstream.gear[index] ?? []).map((each) => guardedGear(input, each)),
      faults: {
        source: faultSource(supply, input.plan),
        // the way back is taken as long as the way out: the two lie in one cable
        ...(Number.isFinite(nearOhm) && { nearLoopOhm: 2 * nearOhm }),
      },
      ...(nearerDevice && { nearer: nearerOf(nearerDevice) }),
    };
  });
}

function nearerOf({ id, protection }: Device): NonNullable<Guard["nearer"]> {
  return {
    id,
    device: protection.device,
    ...(protection.ratingA !== undefined && { ratingA: protection.ratingA }),
  };
}

function guardedGear({ plan, topology }: GuardInput, index: number): Guard["gear"][number] {
  const id = topology.gear[index]?.id ?? "";
  const maxFuseA = plan.gear.find(({ name }) => name === id)?.maxFuseA;
  return { id, ...(maxFuseA !== undefined && { maxFuseA }) };
}

/** The motor with the greatest surge starts while all else runs. */
function motorStart(
  { plan, topology, gearA }: GuardInput,
  behind: readonly number[],
  loadA: number,
): MotorStart {
  const pieces = new Map(plan.gear.map((piece) => [piece.name, piece]));
  let surgeA = 0;
  let motors = 0;
  let unknown = 0;
  for (const index of behind) {
    const piece = pieces.get(topology.gear[index]?.id ?? "");
    if (piece?.behaviour !== "motor") continue;
    motors += 1;
    if (piece.startA === undefined) unknown += 1;
    else surgeA = Math.max(surgeA, piece.startA - (gearA[index] ?? 0));
  }
  if (motors === 0) return "none";
  if (unknown > 0) return "unknown";
  return { currentA: loadA + surgeA, lastsS: usualMotorStart.lastsS };
}
