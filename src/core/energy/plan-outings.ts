import { copied, wholes } from "../circuit/columns.js";
import type { CornerState } from "../circuit/corners.js";
import type { CircuitNetwork } from "../circuit/network.js";
import { gearNamed } from "../circuit/selection.js";
import type { SettledCircuit } from "../circuit/settle.js";
import type { NetworkNumbers } from "../circuit/solve/types.js";
import type { CompletePlan } from "../plan/completed.js";
import type { Outing } from "../plan/model/outing.js";
import { chargingTime } from "./charging.js";
import { followOuting } from "./follow.js";
import type { CircuitAnswer, CircuitState, GearPeriod, OutingInput } from "./outing.js";
import type { ChargingFigures, OutingFigures } from "./types.js";

/** Resistance that stands for a battery taken out of the circuit [Ω]: the network stays the same shape. */
const takenOutOhm = 1e9;

/** Every outing of the plan followed. */
export function followOutings(plan: CompletePlan, circuit: SettledCircuit): OutingFigures[] {
  return plan.outings.map((outing) => followOuting(outingInput(outing, plan, circuit)));
}

/** Time to charge from what the hardest outing leaves; a plan without outings starts from the reserve. */
export function chargingTimes(plan: CompletePlan, outings: readonly OutingFigures[]): ChargingFigures[] {
  return plan.chargers.flatMap((charger): ChargingFigures[] => {
    const battery = plan.batteries.find(({ name }) => name === charger.charges);
    if (!battery) return [];
    const traces = outings.flatMap((outing) =>
      outing.batteries.filter((trace) => trace.battery === battery.name),
    );
    const hardest = traces.reduce(
      (low, trace) => (trace.chargeLeft < (low?.chargeLeft ?? 2) ? trace : low),
      traces[0],
    );
    const { outputA, outputW, sunHoursPerDay, stopsBelowC } = charger;
    return [
      chargingTime({
        charger: charger.name,
        kind: charger.kind,
        battery: battery.name,
        chemistry: battery.chemistry,
        nominalV: battery.nominalV,
        capacityAh: hardest?.usableAh ?? battery.capacityAh,
        fromCharge: Math.min(1, Math.max(0, hardest?.chargeLeft ?? battery.reserveShare)),
        absorptionV: charger.absorptionV,
        temperatureC: plan.ambient.airC,
        ...(outputA !== undefined && { outputA }),
        ...(outputW !== undefined && { outputW }),
        ...(sunHoursPerDay !== undefined && { sunHoursPerDay }),
        ...(stopsBelowC !== undefined && { stopsBelowC }),
      }),
    ];
  });
}

function outingInput(outing: Outing, plan: CompletePlan, circuit: SettledCircuit): OutingInput {
  const airC = outing.airC ?? plan.ambient.airC;
  const pieces = new Map(plan.gear.map((piece) => [piece.name, piece]));
  const periods = periodsByGear(outing, plan);
  const converters = new Set(plan.converters.map(({ name }) => name));
  const drawn = new OutingCircuit(plan, circuit, airC);
  return {
    name: outing.name,
    lastsH: outing.lastsH,
    ...(outing.startClockH !== undefined && { startClockH: outing.startClockH }),
    batteries: circuit.topology.sources.flatMap(({ battery: id }) => {
      const battery = plan.batteries.find(({ name }) => name === id);
      return battery ? [{ ...battery, id, startCharge: outing.startCharge ?? 1, temperatureC: airC }] : [];
    }),
    gear: circuit.topology.gear.map(({ id, circuit: fedBy }) => {
      const feed = plan.circuits.get(fedBy);
      return {
        id,
        battery: feed?.battery ?? "",
        regulated: converters.has(feed?.supply ?? ""),
        minV: pieces.get(id)?.minV ?? 0,
        periods: periods.get(id) ?? [],
      };
    }),
    draw: (state) => drawn.answer(state),
  };
}

function periodsByGear(outing: Outing, plan: CompletePlan): ReadonlyMap<string, readonly GearPeriod[]> {
  const byGear = new Map<string, GearPeriod[]>();
  for (const { what, fromH, toH, duty, level } of outing.on) {
    for (const name of gearNamed(plan, what)) {
      const list = byGear.get(name) ?? [];
      list.push({ fromH, toH: Math.min(toH, outing.lastsH), duty, level });
      byGear.set(name, list);
    }
  }
  return byGear;
}

/** The network as the outing asks for it: built once, only sources and loads change from question to question. */
class OutingCircuit {
  private readonly network: CircuitNetwork;
  private readonly numbers: NetworkNumbers;
  /** Converter that feeds each piece of gear; −1: none. */
  private readonly converterOf: Int32Array;

  constructor(plan: CompletePlan, { topology, network, chosen }: SettledCircuit, airC: number) {
    const state: CornerState = {
      name: "outing",
      copperC: airC,
      engineSpaceCopperC: Math.max(airC, plan.ambient.engineSpaceC),
      emfV: new Map(),
      internalOhm: new Map(),
      on: new Map(),
    };
    this.network = network;
    this.numbers = network.numbersAt(chosen, state);
    const converterAt = new Map(topology.converters.map(({ id }, index) => [id, index]));
    this.converterOf = wholes(
      topology.gear,
      ({ circuit: fedBy }) => converterAt.get(plan.circuits.get(fedBy)?.supply ?? "") ?? -1,
    );
  }

  answer({ batteries, levels }: CircuitState): CircuitAnswer {
    const { network, numbers, converterOf } = this;
    for (const [index, { emfV, ohm, connected }] of batteries.entries()) {
      numbers.sources.emfV[index] = connected ? emfV : 0;
      numbers.sources.ohm[index] = connected ? ohm : takenOutOhm;
    }
    network.gear.set(numbers.loads, levels);
    const { loadA, loadV, sourceA, converterInA, converterOutA } = network.solve(numbers);
    const gearA = copied(loadA);
    for (let gear = 0; gear < gearA.length; gear += 1) {
      const converter = converterOf[gear] ?? -1;
      if (converter < 0) continue;
      const outputA = converterOutA[converter] ?? 0;
      gearA[gear] = outputA > 0 ? ((loadA[gear] ?? 0) / outputA) * (converterInA[converter] ?? 0) : 0;
    }
    return { batteryA: sourceA, gearA, gearV: loadV };
  }
}
