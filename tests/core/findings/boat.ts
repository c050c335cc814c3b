import type { ProtectionFigures } from "../../../src/core/circuit/protection/types.js";
import type { BranchFigures, CornerFigures, GearFigures } from "../../../src/core/circuit/results.js";
import type { SizeChoice } from "../../../src/core/circuit/sizes/types.js";
import type { CheckInput } from "../../../src/core/findings/check-input.js";
import type {
  CompleteBattery,
  CompleteBox,
  CompleteCharger,
  CompleteConverter,
  CompleteGear,
  CompletePanel,
  CompletePlan,
  CompleteRun,
} from "../../../src/core/plan/completed.js";
import type { Plan } from "../../../src/core/plan/model/plan.js";
import type { Run } from "../../../src/core/plan/model/runs.js";
import { ruleSet } from "../../../src/core/reference/rule-sets.js";
import { noHull, noWork } from "../plan/empty-sections.js";

/**
 * A small sound boat, invented: battery `house`, panel `helm` with the way `lamps`, one lamp, and the two runs between.
 * No rule has anything to say about it; a case changes one thing.
 */
export function boat(change: Partial<Parts> = {}): CheckInput {
  const parts: Parts = { ...sound(), ...change };
  const { source, ...plan } = parts.plan;
  const complete: CompletePlan = {
    source: { ...sourceOf(parts), ...source },
    ambient: { coldC: 5, airC: 15, hotC: 30, engineSpaceC: 50 },
    batteries: parts.batteries,
    chargers: parts.chargers,
    converters: parts.converters,
    panels: parts.panels,
    boxes: parts.boxes,
    gear: parts.gear,
    runs: parts.runs,
    corners: [],
    outings: [],
    oneAtATime: [],
    circuits: new Map([
      ["house / feed", { id: "house / feed", supply: "house", nominalV: 12, battery: "house" }],
      ["helm / lamps", { id: "helm / lamps", supply: "house", nominalV: 12, battery: "house" }],
    ]),
    circuitOf: new Map([
      ["helm", "house / feed"],
      ["lamp", "helm / lamps"],
    ]),
    looseEnds: [],
    marks: {
      lies: "on the surface",
      graduationM: 0.001,
      longestM: 5,
      side: "inside",
      method: "best",
      spreadM: 0.0008,
      toleranceM: 0.002,
      formSpreadM: 0.002,
    },
    ways: new Map(),
    assumptions: [],
    ...plan,
  };
  return {
    plan: complete,
    ruleSet: ruleSet(parts.rules),
    sizes: {
      choices: parts.choices,
      aim: "cheapest",
      total: 1,
      proof: "proven",
      lowerBound: 1,
      unmet: [],
      ...parts.sizes,
    },
    protection: parts.protection,
    corners: parts.corners,
    outings: parts.outings,
    charging: parts.charging,
  };
}

export interface Parts {
  rules: "us" | "iso";
  batteries: CompleteBattery[];
  chargers: CompleteCharger[];
  converters: CompleteConverter[];
  panels: CompletePanel[];
  boxes: CompleteBox[];
  gear: CompleteGear[];
  runs: CompleteRun[];
  choices: SizeChoice[];
  sizes: Partial<CheckInput["sizes"]>;
  protection: ProtectionFigures[];
  corners: CornerFigures[];
  outings: CheckInput["outings"];
  charging: CheckInput["charging"];
  plan: Partial<Omit<CompletePlan, "source">> & { source?: Partial<Plan> };
}

function sound(): Parts {
  return {
    rules: "us",
    batteries: [battery()],
    chargers: [charger()],
    converters: [],
    panels: [panel()],
    boxes: [],
    gear: [lamp()],
    runs: [feed(), lampRun()],
    choices: [choice("battery feed"), choice("lamp run")],
    sizes: {},
    protection: [protection()],
    corners: [corner()],
    outings: [],
    charging: [],
    plan: {},
  };
}

export function battery(change: Partial<CompleteBattery> = {}): CompleteBattery {
  return {
    name: "house",
    chemistry: "agm",
    nominalV: 12,
    capacityAh: 50,
    ratedHours: 20,
    ageYears: 0,
    internalOhm: 0.008,
    shortCircuitA: 1400,
    reserveShare: 0.5,
    peukertExponent: 1.1,
    cutOffV: 10.5,
    fixed: "strap",
    vented: true,
    covered: true,
    studsPerPost: 1,
    surroundings: "dry",
    parallelWith: [],
    main: { device: "bolted fuse", ratingA: 30 },
    master: { ratingA: 100 },
    ...change,
  };
}

export function charger(change: Partial<CompleteCharger> = {}): CompleteCharger {
  return {
    name: "shore",
    kind: "mains",
    charges: "house",
    outputA: 10,
    absorptionV: 14.4,
    selfLimiting: true,
    ...change,
  };
}

export function converter(change: Partial<CompleteConverter> = {}): CompleteConverter {
  return {
    name: "buck",
    outputV: 12.5,
    maxOutputA: 10,
    efficiency: 0.9,
    standbyW: 0.5,
    minInputV: 20,
    maxInputV: 32,
    isolated: false,
    surroundings: "dry",
    ...change,
  };
}

type Way = CompletePanel["ways"][number];
export function way(change: Partial<Way> = {}): Way {
  return {
    name: "lamps",
    switch: { ratingA: 10 },
    protection: { device: "blade fuse", ratingA: 5 },
    alwaysLive: false,
    ...change,
  };
}

export function panel(change: Partial<CompletePanel> = {}): CompletePanel {
  return { name: "helm", ways: [way()], studsPerBus: 8, covered: true, surroundings: "dry", ...change };
}

export function box(change: Partial<CompleteBox> = {}): CompleteBox {
  return { name: "fore box", joins: "tee", returns: "apart", covered: true, surroundings: "dry", ...change };
}

export function lamp(change: Partial<CompleteGear> = {}): CompleteGear {
  return {
    name: "lamp",
    group: "lamp",
    role: "lighting",
    draw: { kind: "power", powerW: 5 },
    behaviour: "power",
    minV: 10,
    maxV: 16,
    maxDropShare: 0.1,
    floatSwitch: false,
    surroundings: "dry",
    joint: "sealed butt",
    ...change,
  };
}

export function run(name: string, from: string, to: string, change: Partial<CompleteRun> = {}): CompleteRun {
  const [fromPlace = "", fromPort] = from.split(" / ");
  const [toPlace = "", toPort] = to.split(" / ");
  return {
    name,
    group: name,
    from: fromPort === undefined ? { place: fromPlace } : { place: fromPlace, port: fromPort },
    to: toPort === undefined ? { place: toPlace } : { place: toPlace, port: toPort },
    carries: [fromPort === undefined ? `${fromPlace} / feed` : from],
    lengthM: 2,
    returnLengthM: 2,
    ends: { start: { kind: "fixed" }, end: { kind: "fixed" } },
    pulledM: 2.06,
    returnPulledM: 2.06,
    legs: "both",
    return: "own",
    sheathed: true,
    insulationC: 105,
    conductor: "stranded",
    tinned: true,
    inEngineSpace: false,
    bundledWith: 0,
    beforeMain: false,
    beforeMaster: false,
    jointAtStart: "crimped ring",
    jointAtEnd: "crimped ring",
    surroundings: "dry",
    colours: { out: "red", return: "black" },
    protectedFromChafe: true,
    ...change,
  };
}

export const feed = (change: Partial<CompleteRun> = {}) => run("battery feed", "house", "helm", change);
export const lampRun = (change: Partial<CompleteRun> = {}) =>
  run("lamp run", "helm / lamps", "lamp", { jointAtEnd: "sealed butt", ...change });

export function choice(id: string, change: Partial<SizeChoice> = {}): SizeChoice {
  return {
    id,
    run: id.split(" / ")[0] ?? id,
    size: { series: "awg", key: "14 AWG", areaMm2: 2.08 },
    fixedByOwner: false,
    ampacityA: 35,
    currentA: 0.5,
    lengthM: 2,
    cores: 2,
    reason: { rule: "smallest made" },
    ...change,
  };
}

export function protection(change: Partial<ProtectionFigures> = {}): ProtectionFigures {
  return {
    id: "helm / lamps / fuse",
    of: "helm / lamps",
    device: "blade fuse",
    ratingA: 5,
    fixedByOwner: true,
    loadA: 0.5,
    startA: 0.5,
    shortAtDeviceA: 900,
    shortAtFarEndA: 300,
    conditions: [{ condition: "carries-load", state: "holds", figure: 5, limit: 0.6, unit: "A" }],
    possibleA: [3, 5],
    ...change,
  };
}

export function gearFigures(change: Partial<GearFigures> = {}): GearFigures {
  return {
    id: "lamp",
    on: true,
    currentA: 0.5,
    voltageV: 11.8,
    dropV: 0.1,
    dropShare: 0.1 / 12,
    source: "house",
    underVoltage: false,
    ...change,
  };
}

export function branch(id: string, of: string, currentA: number): BranchFigures {
  return { id, of, currentA, dropV: 0.05, heatW: 0.02, parts: [] };
}

export function corner(change: Partial<CornerFigures> = {}): CornerFigures {
  return {
    name: "worst drop",
    status: "solved",
    copperC: 50,
    cutOut: [],
    gear: [gearFigures()],
    branches: [
      branch("lamp run / lamps / out", "lamp run", 0.5),
      branch("lamp run / lamps / return", "lamp run", 0.5),
    ],
    ways: [{ id: "helm / lamps", currentA: 0.5 }],
    batteries: [{ id: "house", emfV: 12.2, currentA: 0.5, terminalV: 12.1 }],
    converters: [],
    ...change,
  };
}

/** The runs as the owner would have written them; a case gives its own where that matters. */
function sourceOf({ rules, runs }: Parts): Plan {
  return {
    name: "test boat",
    rules,
    shows: { lengths: "inches", conductors: "awg", paper: "letter" },
    craft: { hullMaterial: "wood", petrolOnBoard: false },
    ambient: {},
    conductors: { aim: "cheapest", sizes: [] },
    batteries: [],
    chargers: [],
    converters: [],
    panels: [],
    boxes: [],
    gear: [],
    runs: runs.map(writtenAs),
    hull: noHull,
    work: noWork,
    oneAtATime: [],
    corners: [],
    outings: [],
    catalogue: [],
    waypoints: [],
    legs: [],
    stockWire: [],
    stockParts: [],
    boughtWire: [],
    boughtParts: [],
    wireOffers: [],
    partOffers: [],
    wirePrices: [],
  };
}

export function writtenAs(complete: CompleteRun): Run {
  const {
    group: _group,
    lengthM,
    carries: _carries,
    returnLengthM: _back,
    jointAtStart: _start,
    jointAtEnd: _end,
    surroundings: _around,
    ...rest
  } = complete;
  return { ...rest, carries: [], lengthsM: [lengthM] };
}
