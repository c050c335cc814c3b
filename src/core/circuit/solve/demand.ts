import { type ConverterStates, converterState } from "./converter-state.js";
import { type Islands, isFed } from "./islands.js";
import type { LinearNetwork } from "./linear-network.js";
import { loadLaw, type NetworkNumbers } from "./types.js";

/** The loads and converters that ask for something now, by law. What is off, cut out or in a dead island is in no list. */
export interface Demand {
  readonly powerLoads: readonly number[];
  readonly currentLoads: readonly number[];
  /** Converters with a fed input; those that are `on` also give current. */
  readonly inputs: readonly number[];
  readonly outputs: readonly number[];
}

/** Writes 1 for each load that is on, in a fed island and not cut out; 0 for the others. */
export function markLoadsOn(
  network: NetworkNumbers,
  islands: Islands,
  cut: Uint8Array,
  loaded: Uint8Array,
): void {
  const { plus, minus, law, value } = network.loads;
  for (let i = 0; i < loaded.length; i++) {
    const asks = law[i] === loadLaw.resistance ? (value[i] as number) < Infinity : (value[i] as number) > 0;
    loaded[i] = asks && cut[i] === 0 && isFed(islands, plus[i] as number, minus[i] as number) ? 1 : 0;
  }
}

/**
 * Lists what asks, and leaves out what cannot be fed at all: loads and converters across which there is no voltage even with
 * every constant power and current off. `linear` holds that state when this is called.
 * @param leastV Voltage that counts as none [V].
 */
export function listDemand(
  network: NetworkNumbers,
  states: ConverterStates,
  loaded: Uint8Array,
  linear: LinearNetwork,
  leastV: number,
): Demand {
  const { law } = network.loads;
  const powerLoads: number[] = [];
  const currentLoads: number[] = [];
  for (let i = 0; i < loaded.length; i++) {
    if (loaded[i] === 0 || !((linear.loadV[i] as number) > leastV)) continue;
    if (law[i] === loadLaw.power) powerLoads.push(i);
    else if (law[i] === loadLaw.current) currentLoads.push(i);
  }
  const inputs: number[] = [];
  const outputs: number[] = [];
  for (let i = 0; i < states.length; i++) {
    if (states[i] === converterState.off || !((linear.inV[i] as number) > leastV)) continue;
    inputs.push(i);
    if (states[i] === converterState.on) outputs.push(i);
  }
  return { powerLoads, currentLoads, inputs, outputs };
}

/** The same demand without one load, whose line is laid flat. */
export function withoutLoad(demand: Demand, linear: LinearNetwork, load: number): Demand {
  linear.loadS[load] = 0;
  linear.loadA[load] = 0;
  const others = (i: number): boolean => i !== load;
  return {
    ...demand,
    powerLoads: demand.powerLoads.filter(others),
    currentLoads: demand.currentLoads.filter(others),
  };
}

/** Lines of the resistive loads; all else at rest. */
export function setResistiveLines(network: NetworkNumbers, loaded: Uint8Array, linear: LinearNetwork): void {
  const { law, value } = network.loads;
  for (let i = 0; i < loaded.length; i++) {
    const conducts = loaded[i] === 1 && law[i] === loadLaw.resistance;
    linear.loadS[i] = conducts ? 1 / (value[i] as number) : 0;
    linear.loadA[i] = 0;
  }
  linear.inS.fill(0);
  linear.inShare.fill(0);
  linear.inA.fill(0);
}
