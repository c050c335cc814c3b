import { type SettledCircuit, settleCircuit } from "./circuit/settle.js";
import { gearPaths } from "./circuit/topology/gear-paths.js";
import { chargingTimes, followOutings } from "./energy/plan-outings.js";
import type { Figures } from "./figures-types.js";
import { checkPlan } from "./findings/check.js";
import { completePlan } from "./plan/complete.js";
import type { CompletePlan } from "./plan/completed.js";
import type { Plan } from "./plan/model/plan.js";
import { benchOf } from "./proving/bench-network.js";
import { judgeReadings } from "./proving/taken/judge.js";
import { ruleSet } from "./reference/rule-sets.js";

/** All figures of a plan, and the circuit they were worked out on (for a netlist, or to look closer). */
export interface WorkedOut {
  readonly figures: Figures;
  readonly circuit: SettledCircuit;
}

/** The one front door: a plan that was read goes in, every figure and every finding comes out. Faults of the boat are findings, never a throw. */
export function workOut(plan: Plan): WorkedOut {
  const complete = completePlan(plan);
  const rules = ruleSet(plan.rules);
  const circuit = settleCircuit(complete, rules);
  const { sizes, protection, corners } = circuit;
  const outings = followOutings(complete, circuit);
  const charging = chargingTimes(complete, outings);
  const readings = judged(complete, circuit);
  const findings = checkPlan({
    plan: complete,
    ruleSet: rules,
    sizes,
    protection,
    corners,
    outings,
    charging,
    ...readings,
  });
  return {
    figures: {
      plan: complete,
      assumptions: complete.assumptions,
      sizes,
      protection,
      corners,
      paths: gearPaths(circuit.topology, (id) => complete.circuits.get(id)?.supply),
      outings,
      charging,
      ...readings,
      findings,
    },
    circuit,
  };
}

/** Readings of the plan compared with a sound boat; nothing where it has none. */
function judged(plan: CompletePlan, circuit: SettledCircuit): Pick<Figures, "readings"> {
  const { readings } = plan.source.work;
  return readings.length === 0
    ? {}
    : { readings: judgeReadings(benchOf(plan, circuit), plan, circuit, readings) };
}
