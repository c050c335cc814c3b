import type { CompletePlan } from "../plan/completed.js";
import type { Corner } from "../plan/model/outing.js";
import { onCharge, usualCopperRise, usualCorners } from "../reference/assumed.js";
import { resistanceFactor } from "./battery-resistance.js";
import { restingV } from "./battery-voltage.js";
import { nominalCurrentA } from "./loads.js";
import { gearNamed } from "./selection.js";

/** A condition to solve at, in full. */
export interface CornerState {
  readonly name: string;
  /** Temperature of the copper outside and inside engine spaces [°C]. */
  readonly copperC: number;
  readonly engineSpaceCopperC: number;
  /** By battery name. */
  readonly emfV: ReadonlyMap<string, number>;
  readonly internalOhm: ReadonlyMap<string, number>;
  /** Gear that is on, and at what share of its draw. */
  readonly on: ReadonlyMap<string, number>;
}

export const cornerNames = { nominal: "nominal", worst: "worst drop", highest: "highest voltage" } as const;

/** The three corners every plan gets, then its own. */
export function cornersOf(plan: CompletePlan): CornerState[] {
  const { airC, hotC, coldC, engineSpaceC } = plan.ambient;
  const together = onTogether(plan);
  const atCharge = (charge: (battery: CompletePlan["batteries"][number]) => number) =>
    new Map(
      plan.batteries.map((battery) => [
        battery.name,
        restingV(battery.chemistry, battery.nominalV, charge(battery)),
      ]),
    );
  const own = new Map(plan.batteries.map(({ name, internalOhm }) => [name, internalOhm]));
  const chargeV = new Map(plan.chargers.map((charger) => [charger.charges, charger.absorptionV]));
  const rise = usualCopperRise.riseK;
  const standard: CornerState[] = [
    {
      name: cornerNames.nominal,
      copperC: airC,
      engineSpaceCopperC: Math.max(airC, engineSpaceC),
      emfV: atCharge(() => usualCorners.nominalCharge),
      internalOhm: own,
      on: together,
    },
    {
      name: cornerNames.worst,
      copperC: hotC + rise,
      engineSpaceCopperC: Math.max(hotC, engineSpaceC) + rise,
      emfV: atCharge(({ reserveShare }) => reserveShare),
      // a worn battery near its end gives way: gear sees that as well as the copper
      internalOhm: new Map(
        plan.batteries.map(({ name, chemistry, internalOhm, reserveShare, ageYears }) => [
          name,
          internalOhm * resistanceFactor(chemistry, reserveShare, hotC, ageYears),
        ]),
      ),
      on: together,
    },
    {
      name: cornerNames.highest,
      copperC: coldC,
      engineSpaceCopperC: coldC,
      emfV: new Map(
        [...atCharge(() => 1)].map(([name, fullV]) => [name, Math.max(fullV, chargeV.get(name) ?? fullV)]),
      ),
      internalOhm: new Map(
        plan.batteries.map(({ name, internalOhm }) => [name, chargeV.has(name) ? onCharge.ohm : internalOhm]),
      ),
      on: together,
    },
  ];
  return [...standard, ...plan.corners.map((corner) => ownCorner(corner, plan, together))];
}

function ownCorner(corner: Corner, plan: CompletePlan, together: ReadonlyMap<string, number>): CornerState {
  const emf = (battery: CompletePlan["batteries"][number]) =>
    corner.batteryV ??
    restingV(battery.chemistry, battery.nominalV, corner.charge ?? usualCorners.nominalCharge);
  const copperC = corner.copperC ?? plan.ambient.airC;
  return {
    name: corner.name,
    copperC,
    engineSpaceCopperC: Math.max(copperC, plan.ambient.engineSpaceC),
    emfV: new Map(plan.batteries.map((battery) => [battery.name, emf(battery)])),
    internalOhm: new Map(plan.batteries.map(({ name, internalOhm }) => [name, internalOhm])),
    on:
      corner.on === undefined
        ? together
        : new Map(corner.on.flatMap((name) => gearNamed(plan, name)).map((name) => [name, 1])),
  };
}

/** Everything that may be on together: of each one-at-a-time group, the entry that draws most. */
function onTogether(plan: CompletePlan): Map<string, number> {
  const on = new Map(plan.gear.map(({ name }) => [name, 1]));
  const current = new Map(plan.gear.map((piece) => [piece.name, nominalCurrentA(piece, plan)]));
  const drawA = (pieces: readonly string[]) =>
    pieces.reduce((sum, name) => sum + (on.has(name) ? (current.get(name) ?? 0) : 0), 0);
  for (const entries of plan.oneAtATime) {
    const most = entries.reduce(
      (best, entry) => (drawA(entry) > drawA(best) ? entry : best),
      entries[0] ?? [],
    );
    const stays = new Set(most);
    for (const name of entries.flat()) if (!stays.has(name)) on.delete(name);
  }
  return on;
}

/** Gear that is off in a corner only because another of its one-at-a-time group draws more, and the corner with it on instead. */
export interface Turn {
  readonly gear: readonly string[];
  readonly state: CornerState;
}

/** A corner, and a turn for each entry that yields to another of its group there. */
export interface Stage {
  readonly state: CornerState;
  readonly turns: readonly Turn[];
}

/** Every corner of a plan with its turns. Corners with the same gear on share what says so. */
export function stagesOf(plan: CompletePlan): Stage[] {
  const known = new Map<CornerState["on"], readonly Yielding[]>();
  return cornersOf(plan).map((state) => {
    const yielding = known.get(state.on) ?? yieldingOf(plan, state.on);
    known.set(state.on, yielding);
    return { state, turns: yielding.map(({ gear, on }) => ({ gear, state: { ...state, on } })) };
  });
}

interface Yielding {
  readonly gear: readonly string[];
  /** What is on while it has its turn. */
  readonly on: CornerState["on"];
}

function yieldingOf({ oneAtATime }: CompletePlan, onNow: CornerState["on"]): Yielding[] {
  const groupsOf = new Map<string, Set<number>>();
  oneAtATime.forEach((entries, group) => {
    for (const name of entries.flat()) {
      const groups = groupsOf.get(name);
      if (groups) groups.add(group);
      else groupsOf.set(name, new Set([group]));
    }
  });
  const done = new Set<string>();
  return oneAtATime.flat().flatMap((entry): Yielding[] => {
    const gear = entry.filter((name) => !onNow.has(name) && !done.has(name));
    if (gear.length === 0) return [];
    for (const name of gear) done.add(name);
    const on = new Map(onNow);
    const groups = new Set(gear.flatMap((name) => [...(groupsOf.get(name) ?? [])]));
    for (const group of groups) for (const name of oneAtATime[group]?.flat() ?? []) on.delete(name);
    for (const name of gear) on.set(name, 1);
    return [{ gear, on }];
  });
}
