import type { FacePlan } from "../../core/plan/model/hull.js";
import type { Side } from "../../core/plan/model/placing.js";
import type { Charger } from "../../core/plan/model/supply.js";
import { layoutInEnglish } from "../layout/english.js";
import { type Joining, joinedInEnglish } from "../listed.js";
import { templateWords } from "../template-words.js";

type Looks = Extract<FacePlan["shape"], { kind: "flat" }>["looks"];

const chargers: Readonly<Record<Charger["kind"], string>> = {
  mains: "mains charger",
  solar: "solar charger",
  engine: "engine charger",
  converter: "converter charger",
};
const sides: Readonly<Record<Side, string>> = { port: "port", starboard: "starboard" };
const joining: Joining = joinedInEnglish;

/** Words that stand in drawings and under them, in English. */
export const drawnInEnglish = {
  joining,
  range: (from: number, to: number): string => `${from} to ${to}`,
  template: templateWords,
  /** What an entry of a box is called: a spare one has a number only. */
  entry: layoutInEnglish.entry,
  sided: layoutInEnglish.sided,
  inside: (size: string, depth: string): string => `${size} inside, ${depth} deep`,
  step: {
    trueScale: "true scale",
    lidOff: (box: string, scale: string, contents: string): string =>
      `${box} with its lid off, ${scale}: ${contents}.`,
    looks: (towards: Looks | undefined): string =>
      `as one looks at it, ${towards === undefined ? "" : `from ${towards}`}`,
    seen: (inside: boolean, bowRight: boolean): string =>
      `seen from ${inside ? "inside" : "outside"}; the bow is to the ${bowRight ? "right" : "left"}`,
    part: "A part of it, framed in the small figure; an arrow with a letter leads to a point beyond.",
    notByDrawing: "Set out by the readings, not by this drawing.",
    circuit: (run: string): string =>
      `The circuit of ${run} on one line, from the battery outward: one line stands for out and return.`,
    sides,
  },
  diagram: {
    noFuse: "none yet",
    sizeOpen: "size open",
    cut: (length: string): string => `cut\u00a0${length}`,
    notOn: "not on in these cases",
    worst: (voltage: string): string => `worst ${voltage}`,
    output: (voltage: string): string => `to ${voltage}`,
    chargers,
    open: "open",
    byItself: (name: string): string => `${name}, drawn by itself`,
    fedBy: (run: string): string => `fed by ${run}`,
    continued: "continued",
    refers: {
      battery: (to: string): string => `battery ${to}`,
      output: (to: string): string => `output of ${to}`,
      way: (to: string): string => `way ${to}`,
      "drawn elsewhere": (to: string): string => `${to}, drawn elsewhere`,
      "in run": (to: string): string => `in ${to}, drawn above`,
      unknown: (to: string): string => `${to}, unknown`,
    },
  },
  chart: {
    charge: "Charge",
    atPosts: "At the posts",
    on: "On",
    reserve: (share: string): string => `reserve ${share}`,
    stops: (voltage: string): string => `stops ${voltage}`,
    reserveAfter: (hours: string): string => `reserve after ${hours}`,
    stopsAfter: (hours: string): string => `stops after ${hours}`,
    ofTheTime: (share: string): string => `${share} of the time`,
    at: (share: string): string => `at ${share}`,
  },
};

export type DrawnWords = typeof drawnInEnglish;
