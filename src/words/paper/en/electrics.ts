import type { Figures } from "../../../core/figures-types.js";
import type { GearRole } from "../../../core/plan/model/gear.js";
import { counted } from "../../numbers.js";

const roles: Readonly<Record<GearRole, string>> = {
  lighting: "lighting",
  "navigation light": "navigation light",
  "bilge pump": "bilge pump",
  blower: "blower",
  pump: "pump",
  electronics: "electronics",
  socket: "socket",
  gauge: "gauge",
  "sound signal": "sound signal",
  propulsion: "propulsion",
  heating: "heating",
  other: "",
};
const aims: Readonly<Record<Figures["sizes"]["aim"], string>> = {
  cheapest: "cheapest",
  lightest: "lightest",
};

/** Loads, conductors, protection, the diagram and outings. */
export const electrics = {
  loads: {
    title: "Load list",
    count: (count: number): string => counted(count, "piece of gear", "pieces of gear"),
    explanation:
      "Usual: battery well charged, air as it usually is. Worst: battery at its reserve, copper hot, everything on that may be on together, or a corner of the plan's own where that is worse. Drop is counted from the supply to the terminals and back.",
    heads: {
      gear: "Gear",
      count: "Count",
      draws: "Draws, each",
      together: "Together,\u00a0A",
      circuit: "Circuit",
      usual: "Usual, V at terminals",
      worst: "Worst, V at terminals",
      down: "Works down to,\u00a0V",
      drop: "Worst drop",
      limit: "Limit",
      against: "Against limits",
    },
    roles,
    notFed: "not fed",
    notChecked: "not checked",
    verdicts: {
      both: "over limit, too low",
      over: "over limit",
      low: "voltage too low",
      within: "within",
    },
    atNumber: (number: number): string => `at no. ${number}`,
  },
  conductors: {
    title: "Conductor schedule",
    count: (count: number): string => counted(count, "run"),
    heads: {
      run: "Run",
      length: "Length",
      size: "Size",
      cores: "Cores",
      colours: "Colours",
      carries: "Carries,\u00a0A",
      may: "May carry,\u00a0A",
      drop: "Drop, V",
      why: "Why this size",
    },
    itsReturn: (run: string): string => `${run}, its return`,
    fromTo: (from: string, to: string): string => `${from} to ${to}`,
    carries: (ways: string): string => `, carries ${ways}`,
    notWorkedOut: "not worked out",
    asGiven: "as given",
    notGiven: "not given",
    noCurrent: "no current was worked out for it",
    legs: { out: "out", return: "return" },
    smaller: (size: string, why: string): string => `${size} would not do: ${why}.`,
    aim: (aim: Figures["sizes"]["aim"]): string =>
      `Sizes are the ${aims[aim]} set for the whole boat that keeps every limit`,
    proven: "; proven: no other set does better.",
    bounded: "; the best found, though a better one could exist.",
    none: (unmet: string): string =>
      ` — but none does: ${unmet === "" ? "some gear" : unmet} cannot be served by any size allowed.`,
    lengths: (inches: boolean): string =>
      ` Drop is that of the run alone, out and back, in the worst corner. Lengths are ${inches ? "to 1/16 in" : "in millimetres"} of the cable as it is pulled: the way, and the slack at both ends, which stays in the circuit.`,
    slack: (length: string): string => `${length} slack`,
    basis: {
      model:
        " Your plan prices no wire: what is cheapest, and that nothing is cheaper, is reckoned by the amount of copper.",
      both: " Not every size weighed has a price in your plan: those without one stand beside the others by the amount of copper, and what is cheapest rests on that too.",
    },
  },
  sizes: {
    owner: "the owner's choice",
    drop: (drop: string, gear: string, limit: string): string =>
      `drop of ${drop} at ${gear}, ${limit} allowed`,
    ampacity: (current: string, allowed: string): string => `${current} to carry, ${allowed} allowed`,
    protection: (rating: string, allowed: string): string => `${rating} fuse or breaker, ${allowed} allowed`,
    least: (clause: string): string => `least size allowed here (${clause})`,
    suitsFuse: (device: string): string =>
      `thinner, and no rating of ${device} would carry the load and spare the conductor in a short`,
    price: "the next smaller is no cheaper",
    smallest: "the smallest on the list",
  },
  protection: {
    title: "Protection schedule",
    count: (count: number): string => counted(count, "fuse or breaker", "fuses and breakers"),
    explanation:
      "A fuse protects the conductor, not the gear. Fit no larger rating than the one given, whatever is on hand. A condition that could not be checked for want of a figure is called not checked; it is not held. Usual: what devices of this kind can break; read yours.",
    heads: {
      device: "Device",
      rating: "Rating",
      kind: "Kind",
      load: "Load, A",
      weakest: "Weakest conductor it guards",
      short: "Short, A, here / far end",
      breaks: "Breaks up to,\u00a0A",
      conditions: "Conditions",
      others: "Other ratings that would do",
    },
    noneYet: "none yet",
    spare: "spare: nothing hangs on it",
    fitLater: "Fit a fuse when something does; then it is judged.",
    asGiven: "as given",
    start: (current: string): string => `start ${current}`,
    notKnown: "not known",
    allows: (size: string, current: string): string => `${size}, allows ${current}`,
    itsLead: ", its lead",
    return: ", return",
    usual: "usual",
    all: (count: number): string => `All ${count} held.`,
    some: (held: number, count: number): string => `${held} of ${count} held.`,
    nothing: "None could be checked.",
    against: (figure: string, limit: string): string => `, ${figure} against ${limit}`,
    conflict: (one: string, other: string): string => `None: “${one}” against “${other}”.`,
    none: "None would do.",
    only: "this one only",
  },
  diagram: {
    title: "One-line diagram",
    subtitle: "from the battery outward",
    key: "One line stands for out and return. Over a run: its name and usual current; under it: size, the length to cut of it (the way and the slack at both ends), and its own fuse. At gear: usual current, usual and worst voltage at its terminals.",
  },
  outing: {
    title: (name: string): string => `Outing: ${name}`,
    lasts: (hours: string): string => `lasts ${hours}`,
    battery: (name: string, verdict: string): string => `Battery ${name}: ${verdict}`,
    alsoOn: (names: string): string => `Also on: ${names}`,
    stops: (hours: string): string => `stops after ${hours}, before the outing ends.`,
    reserve: (hours: string): string => `reaches its reserve after ${hours}.`,
    home: (charge: string): string => `comes home with ${charge}.`,
    fromFull: (hours: string): string => ` From full, the same use would take ${hours} to reach the reserve.`,
    uses: (used: string, usable: string): string =>
      `Uses ${used} of ${usable} that it can give at this temperature and age.`,
    to: (charge: string, gear: string): string => `${charge} to ${gear}`,
    ofThat: (uses: string): string => ` Of that goes ${uses}.`,
    tooCold: (charger: string): string => `${charger}: too cold to charge`,
    notChecked: (charger: string): string => `${charger}: not checked`,
    sun: (charger: string, days: string): string => `${charger}: ${days} days of sun`,
    charge: (chargers: string): string => ` To charge again after the longest outing: ${chargers}.`,
    brownOut: (number: number, gear: string, hours: string, voltage: string, needs: string): string =>
      `${number} ${gear} after ${hours} (${voltage}, needs ${needs})`,
    tooLow: (list: string): string => `Too little voltage: ${list}.`,
    more: (count: number): string => `; and ${count} more`,
  },
};
