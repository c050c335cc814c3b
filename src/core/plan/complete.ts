import { usualAmbient } from "../reference/assumed.js";
import { ruleSet } from "../reference/rule-sets.js";
import { singleRuns } from "./complete/expand.js";
import { completeGear } from "./complete/gear.js";
import { completeMarks } from "./complete/marks.js";
import { celsius, Notes } from "./complete/notes.js";
import { piecesOf } from "./complete/pieces.js";
import { runEnds } from "./complete/run-ends.js";
import { completeRun, type PlacesAround } from "./complete/runs.js";
import {
  completeBattery,
  completeBox,
  completeCharger,
  completeConverter,
  completePanel,
} from "./complete/supply.js";
import { traceCircuits } from "./complete/trace.js";
import { besideOnWays, waysOf } from "./complete/ways.js";
import type { CompleteBox, CompletePlan } from "./completed.js";
import type { Endpoint, JointKind, Surroundings } from "./model/common.js";
import type { Plan } from "./model/plan.js";
import type { Run } from "./model/runs.js";
import type { Way } from "./model/supply.js";

/**
 * Decides every value the owner left out and follows the circuits from the batteries to the gear.
 * Ratings and sizes that are to be worked out stay open. Never throws on a plan that was read: what hangs in the air is a loose end.
 */
export function completePlan(plan: Plan): CompletePlan {
  const notes = new Notes();
  const rules = ruleSet(plan.rules);
  const ambient = {
    coldC: notes.take(plan.ambient.coldC, usualAmbient.coldC, "plan", "cold", "usual-air", celsius),
    airC: notes.take(plan.ambient.airC, usualAmbient.airC, "plan", "air", "usual-air", celsius),
    hotC: notes.take(plan.ambient.hotC, usualAmbient.hotC, "plan", "hot", "usual-air", celsius),
    engineSpaceC: notes.take(
      plan.ambient.engineSpaceC,
      usualAmbient.engineSpaceC,
      "plan",
      "engine space",
      "usual-air",
      celsius,
    ),
  };
  const batteries = plan.batteries.map((battery) => completeBattery(battery, notes));
  const nominalOf = new Map(batteries.map(({ name, nominalV }) => [name, nominalV]));
  for (const { name, outputV } of plan.converters) nominalOf.set(name, nominalOfOutput(outputV));
  const singles = singleRuns(plan, notes);
  const { circuits, circuitOf, carries, looseEnds } = traceCircuits(plan, singles, nominalOf);

  const nominalAt = (name: string) => circuits.get(circuitOf.get(name) ?? "")?.nominalV;
  const converters = plan.converters.map((converter) =>
    completeConverter(converter, nominalAt(converter.name) ?? 12, notes),
  );
  const panels = plan.panels.map((panel) => completePanel(panel, notes));
  const sharedEnds = new Set(
    plan.runs.filter((run) => run.return === "shared").flatMap((run) => [run.from.place, run.to.place]),
  );
  const boxes = plan.boxes.map((box) => completeBox(box, sharedEnds.has(box.name), notes));
  const ways = new Map<string, Way>(
    plan.panels.flatMap((panel) => panel.ways.map((way) => [`${panel.name} / ${way.name}`, way])),
  );
  const gear = plan.gear.flatMap((entry) => {
    const circuit = circuitOf.get(piecesOf(entry)[0] ?? "") ?? "";
    const supply = {
      nominalV: circuits.get(circuit)?.nominalV,
      wayDropShare: ways.get(circuit)?.maxDropShare,
      ruleDropShare: rules.dropShare,
    };
    return completeGear(entry, supply, notes);
  });
  const routes = waysOf(plan, singles);
  const runOf = new Map(singles.map(({ name, run }) => [name, run]));
  const beside = besideOnWays(routes, (name) =>
    loadedIn(carries.get(name)?.length ?? 0, runOf.get(name)?.legs, runOf.get(name)?.return),
  );
  const places: PlacesAround = {
    ...placesAround(plan, boxes, gear),
    wayM: (name) => {
      const way = routes.get(name);
      return way?.ok === true ? way.route.lengthM : undefined;
    },
    beside: (name) => beside.get(name) ?? 0,
    endsOf: runEnds({ boxes, panels, gear, batteries }),
  };
  const marks = completeMarks(plan, notes);
  return {
    source: plan,
    ambient,
    batteries,
    chargers: plan.chargers.map((charger) =>
      completeCharger(
        charger,
        plan.batteries.find(({ name }) => name === charger.charges),
        notes,
      ),
    ),
    converters,
    panels,
    boxes,
    gear,
    runs: singles.map((single) => completeRun(single, plan, carries.get(single.name) ?? [], places, notes)),
    corners: plan.corners,
    outings: plan.outings,
    oneAtATime: plan.oneAtATime.map((group) => group.map((name) => piecesNamed(plan, name))),
    ways: routes,
    circuits,
    circuitOf,
    looseEnds,
    marks,
    assumptions: notes.list,
  };
}

/** Nominal voltage of a converter's output: 12 and 24 V systems by their usual bands, else the output itself. */
function nominalOfOutput(outputV: number): number {
  if (outputV > 10 && outputV < 16) return 12;
  return outputV >= 20 && outputV < 31 ? 24 : outputV;
}

/** Single pieces of the gear written under a name, or the one piece of that name. */
function piecesNamed(plan: Plan, name: string): string[] {
  const entry = plan.gear.find((gear) => gear.name === name);
  return entry ? piecesOf(entry) : [name];
}

/** Conductors that carry current in a run: one for each way, and what comes back. */
function loadedIn(ways: number, legs: Run["legs"] = "both", back: Run["return"] = "own"): number {
  const each = Math.max(1, ways);
  const returns = back === "hull" ? 0 : back === "shared" ? 1 : each;
  return (legs === "return" ? 0 : each) + (legs === "out" ? 0 : returns);
}

function placesAround(
  plan: Plan,
  boxes: readonly CompleteBox[],
  gear: CompletePlan["gear"],
): Pick<PlacesAround, "jointAt" | "surroundingsAt"> {
  const joints = new Map<string, JointKind>();
  const surroundings = new Map<string, Surroundings>();
  for (const { name, surroundings: around = "splash" } of plan.panels) surroundings.set(name, around);
  for (const { name, surroundings: around = "dry" } of plan.batteries) surroundings.set(name, around);
  for (const box of boxes) {
    const wet = box.surroundings !== "dry";
    surroundings.set(box.name, box.surroundings);
    joints.set(
      box.name,
      box.joins === "bus"
        ? "crimped ring"
        : box.joins === "terminal strip"
          ? "screw terminal"
          : wet
            ? "sealed butt"
            : "crimped butt",
    );
  }
  for (const piece of gear) {
    joints.set(piece.name, piece.joint);
    surroundings.set(piece.name, piece.surroundings);
  }
  return {
    jointAt: ({ place }: Endpoint) => joints.get(place),
    surroundingsAt: (place) => surroundings.get(place) ?? "splash",
  };
}
