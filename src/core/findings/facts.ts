import type { SizeChoice } from "../circuit/sizes/types.js";
import type {
  Circuit,
  CompleteBattery,
  CompleteBox,
  CompleteConverter,
  CompleteGear,
  CompletePanel,
  CompleteRun,
} from "../plan/completed.js";
import type { Run } from "../plan/model/runs.js";
import type { RecordCheck } from "../work/record-check.js";
import type { CheckInput } from "./check-input.js";
import { conductorsOf, runGroups, type SizedRun } from "./conductors.js";
import { type Currents, currentsOf } from "./currents.js";
import { type DeviceAt, devicesOf } from "./devices.js";
import { type JointFact, jointsOf } from "./joints.js";
import { type Load, loadsOf } from "./loads.js";
import { unlikeSupply, type WorstDrop, worstDrops } from "./voltages.js";

/** The input, looked up the ways the rules look at it. Built once for a check. */
export interface Facts extends CheckInput {
  readonly gear: ReadonlyMap<string, CompleteGear>;
  readonly batteries: ReadonlyMap<string, CompleteBattery>;
  readonly converters: ReadonlyMap<string, CompleteConverter>;
  readonly panels: ReadonlyMap<string, CompletePanel>;
  readonly boxes: ReadonlyMap<string, CompleteBox>;
  readonly runs: ReadonlyMap<string, CompleteRun>;
  /** Runs as written, by the name they were written under. */
  readonly written: ReadonlyMap<string, Run>;
  /** Runs with an end at a place. */
  readonly runsAt: ReadonlyMap<string, readonly CompleteRun[]>;
  /** Gear on each circuit, by the circuit's id. */
  readonly gearOn: ReadonlyMap<string, readonly CompleteGear[]>;
  /** Circuits that some run carries. */
  readonly carried: ReadonlySet<string>;
  /** By id: the run's name, or `run / return`. */
  readonly choices: ReadonlyMap<string, SizeChoice>;
  readonly currents: Currents;
  readonly joints: readonly JointFact[];
  /** One run of each entry the owner wrote: what is the same for all its cables is told once. */
  readonly groups: readonly CompleteRun[];
  /** Every run that has a size, chosen or given. */
  readonly conductors: readonly SizedRun[];
  /** Every set of conductors with its current. */
  readonly loads: readonly Load[];
  readonly devices: readonly DeviceAt[];
  /** Greatest drop of each piece of gear. */
  readonly drops: ReadonlyMap<string, WorstDrop>;
  /** Gear whose working range does not hold its supply's nominal voltage, with the circuit that feeds it. */
  readonly unlikeSupply: ReadonlyMap<string, Circuit>;
  /** What the record of work says against the plan. */
  readonly record: RecordCheck;
}

/** Looks the input up in every way the rules need. */
export function factsOf(input: CheckInput, record: RecordCheck): Facts {
  const { plan } = input;
  const byName = <T extends { readonly name: string }>(list: readonly T[]) =>
    new Map(list.map((thing) => [thing.name, thing]));
  const gear = byName(plan.gear);
  const written = byName(plan.source.runs);
  const boxes = byName(plan.boxes);
  const panels = byName(plan.panels);
  const batteries = byName(plan.batteries);
  const converters = byName(plan.converters);
  const runs = byName(plan.runs);
  const choices = new Map(input.sizes.choices.map((choice) => [choice.id, choice]));
  const currents = currentsOf(input);
  return {
    ...input,
    gear,
    written,
    boxes,
    panels,
    batteries,
    converters,
    runs,
    runsAt: gather(
      plan.runs.flatMap((run): [string, CompleteRun][] =>
        run.from.place === run.to.place
          ? [[run.from.place, run]]
          : [
              [run.from.place, run],
              [run.to.place, run],
            ],
      ),
    ),
    gearOn: gather(
      plan.gear.map((one): [string | undefined, CompleteGear] => [plan.circuitOf.get(one.name), one]),
    ),
    carried: new Set(plan.runs.flatMap(({ carries }) => carries)),
    choices,
    currents,
    record,
    joints: jointsOf(plan, { gear, written, places: [boxes, panels, batteries, converters] }),
    groups: runGroups(plan),
    conductors: conductorsOf(input, choices),
    loads: loadsOf({ sizes: input.sizes, runs, choices, currents }),
    devices: devicesOf(plan),
    drops: worstDrops(input),
    unlikeSupply: unlikeSupply(plan),
  };
}

function gather<T>(pairs: readonly (readonly [string | undefined, T])[]): Map<string, T[]> {
  const lists = new Map<string, T[]>();
  for (const [key, value] of pairs) {
    if (key === undefined) continue;
    const list = lists.get(key);
    if (list) list.push(value);
    else lists.set(key, [value]);
  }
  return lists;
}
