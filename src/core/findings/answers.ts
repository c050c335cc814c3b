import type { CompletePlan } from "../plan/completed.js";
import type { ThingKey } from "../plan/schema/thing-keys.js";
import type { Finding } from "./finding.js";

/** A key of the plan that would let a rule judge what it could not, and the things whose key that is. */
export interface Asked {
  /** As edits name it; `main / interrupts` reaches into a section. */
  readonly field: string;
  readonly takes: ThingKey["takes"];
  /** Names of the plan, each once; of several pieces alike the name they were written under. */
  readonly of: readonly string[];
}

type Whose = (finding: Finding, plan: CompletePlan) => readonly string[];

const those: Whose = ({ at, with: others = [] }) => [at, ...others];
const binding: Whose = ({ terms }) => (terms?.binds === undefined ? [] : [terms.binds]);
/** Motors behind a device that do not say what they take at the start. */
const motorsBehind: Whose = ({ at }, { gear, circuitOf, circuits, runs }) => {
  const ends = new Set(
    runs.filter(({ name, group }) => name === at || group === at).map(({ to }) => to.place),
  );
  return gear
    .filter(({ behaviour, startA }) => behaviour === "motor" && startA === undefined)
    .filter(({ name, group }) => {
      const circuit = circuitOf.get(name) ?? "";
      return circuit === at || circuits.get(circuit)?.battery === at || ends.has(name) || ends.has(group);
    })
    .map(({ name }) => name);
};

const ofSize: Whose = (finding, plan) =>
  finding.terms?.what === "the size of the hole" ? those(finding, plan) : [];
const ofThickness: Whose = ({ terms }, { source }) =>
  source.hull.faces
    .filter(({ name }) => terms?.what === `the thickness of ${name}`)
    .map(({ name }) => `faces / ${name}`);

const flag = { as: "flag" } as const;
const quantity = (kind: "length" | "current") => ({ as: "quantity", kind }) as const;
const text = { as: "text" } as const;

const questions: Readonly<
  Record<
    string,
    readonly { readonly field: string; readonly takes: ThingKey["takes"]; readonly whose: Whose }[]
  >
> = {
  "bare-live-posts": [{ field: "covered", takes: flag, whose: those }],
  "battery-current": [{ field: "most current", takes: quantity("current"), whose: those }],
  "battery-loose": [
    { field: "fixed", takes: { as: "choice", of: ["strap", "bracket", "tray", "loose"] }, whose: those },
  ],
  "battery-near-fuel": [{ field: "nearest fuel part", takes: quantity("length"), whose: those }],
  "battery-vent": [{ field: "vented", takes: flag, whose: those }],
  chafe: [{ field: "protected from chafe", takes: flag, whose: those }],
  "conductor-colour": [
    { field: "colours / out", takes: text, whose: those },
    { field: "colours / return", takes: text, whose: those },
  ],
  "hole-unknown": [
    { field: "hole / size", takes: quantity("length"), whose: ofSize },
    { field: "thickness", takes: quantity("length"), whose: ofThickness },
  ],
  "run-length": [{ field: "length", takes: quantity("length"), whose: those }],
  "protection-gear-limit": [{ field: "largest fuse", takes: quantity("current"), whose: binding }],
  "protection-rides-start": [{ field: "starts", takes: quantity("current"), whose: motorsBehind }],
  "stud-fit": [{ field: "stud", takes: quantity("length"), whose: those }],
};

/** What one may say so that a rule can judge; nothing where it was judged, or where a single key would not do. */
export function answersTo(finding: Finding, plan: CompletePlan): readonly Asked[] {
  if (finding.level !== "unchecked") return [];
  const groups = new Map([...plan.gear, ...plan.runs].map(({ name, group }) => [name, group]));
  const asked = (questions[finding.rule] ?? []).map(({ field, takes, whose }) => ({
    field,
    takes,
    of: [...new Set(whose(finding, plan).map((name) => groups.get(name) ?? name))],
  }));
  return [...asked, ...breaking(finding, plan)].filter(({ of }) => of.length > 0);
}

/** What a fuse can break stands inside the section of that fuse: of a battery or a panel its main, else the fuse of the way or run. */
function breaking({ rule, at }: Finding, { batteries, panels }: CompletePlan): Asked[] {
  if (rule !== "protection-interrupts") return [];
  const main = batteries.some(({ name }) => name === at) || panels.some(({ name }) => name === at);
  return [{ field: `${main ? "main" : "fuse"} / interrupts`, takes: quantity("current"), of: [at] }];
}
