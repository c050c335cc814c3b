import type { Band } from "../core/proving/bands.js";
import type { NextReading } from "../core/proving/next-reading.js";
import type { Probe } from "../core/proving/probe.js";
import type { FaultKind, Suspect } from "../core/proving/suspect.js";
import type { Unplaced } from "../core/proving/taken/adapt.js";
import type { Change } from "../core/proving/taken/aged.js";
import type { JudgedReading, Verdict } from "../core/proving/taken/judge.js";
import { readingEffort } from "../core/reference/reading-effort.js";
import { amps, decimals, marked, noFigure, percent, threeDigits } from "./numbers.js";

const tie = "\u00a0";

/** A point of the circuit as one would point at it: `helm / lamps +` is the plus terminal of that way. */
export function pointWords(name: string): string {
  return name
    .replace(/ at joint ([+-])$/, " $1 (at its joint)")
    .replace(/ fused ([+-])$/, " $1 (behind its fuse)")
    .replace(/ main ([+-])$/, " $1 (behind its main)")
    .replace(/ master ([+-])$/, " $1 (behind its master switch)")
    .replace(/ bus ([+-])$/, " $1 (bus)")
    .replace(" | ", ", ")
    .replace(/ -( |$)/, " −$1");
}

/** A stretch of the circuit: a wire, a fuse, a switch. */
export function branchWords(id: string): string {
  const lead = /^(.*) \/ lead \/ (out|return)$/.exec(id);
  if (lead) return `${lead[1]}, its own ${lead[2] === "out" ? "positive" : "negative"} lead`;
  const device = /^(.*) \/ (fuse|switch|main|master)$/.exec(id);
  if (device) return `${device[1]}, its ${device[2]}`;
  const back = /^(.*?) \/ (?:.* \/ )?return$/.exec(id);
  if (back) return `${back[1]}, its negative wire`;
  const out = /^(.*?) \/ (.*) \/ out$/.exec(id);
  return out ? `${out[1]}, its positive wire (${out[2]})` : id;
}

/** What gear is on, short: all of a group under one name. */
export function onWords(on: readonly string[]): string {
  if (on.length === 0) return "everything off";
  const groups = new Map<string, string[]>();
  for (const name of on) {
    const group = name.replace(/ \d+$/, "");
    groups.set(group, [...(groups.get(group) ?? []), name]);
  }
  const names = [...groups].map(([group, pieces]) =>
    pieces.length > 1 ? `${group} (${pieces.length})` : pieces[0],
  );
  return `${names.join(", ")} on`;
}

/** A reading to take, in a few words. */
export function probeWords(probe: Probe): string {
  const on = onWords(probe.on);
  switch (probe.kind) {
    case "voltage":
      return `volts from ${pointWords(probe.at)} to ${pointWords(probe.against)}, ${on}`;
    case "current":
      return `amperes in ${branchWords(probe.at)}, ${on}`;
    case "ohm":
      return `ohms from ${pointWords(probe.at)} to ${pointWords(probe.against)}, batteries apart${probe.on.length > 0 ? `, switch of ${onWords(probe.on)}` : ""}${liftedWords(probe.lifted ?? [])}`;
    case "marking":
      return `what is printed on ${branchWords(probe.at)}`;
    default:
      return probe satisfies never;
  }
}

const liftedWords = (lifted: readonly string[]) =>
  lifted.length === 0 ? "" : `, ${lifted.map(branchWords).join(" and ")} taken off towards the supply`;

/** A reading worth taking, and what must be taken apart for it. */
export function nextWords({ probe, opens }: NextReading): string {
  const loose = readingEffort.loosens.some((kind) => kind === opens);
  const apart =
    opens === undefined || loose ? "" : ` (cut its ${opens} and make it anew: when nothing else helps)`;
  return `${probeWords(probe)}${apart}`;
}

/** A reading with its unit, in the digits a meter would show. */
export function readingWords(kind: Probe["kind"], value: number): string {
  if (kind === "marking") return marked(value, "A");
  if (kind === "current") return amps(value);
  if (kind === "ohm") return ohmWords(value);
  return voltageWords(value, Math.abs(value) < millivoltsBelowV);
}

/** Below this a meter is on its range of millivolts [V]. */
const millivoltsBelowV = 0.2;

function voltageWords(value: number, inMillivolts: boolean): string {
  const mV = value * 1000;
  if (inMillivolts) return `${decimals(mV, Math.abs(mV) < 20 ? 1 : 0)}${tie}mV`;
  return `${decimals(value, Math.abs(value) < 2 ? 3 : 2)}${tie}V`;
}

export function ohmWords(ohm: number): string {
  if (ohm === Number.POSITIVE_INFINITY || ohm > 9.5e7) return "open";
  if (ohm >= 1e6) return `${threeDigits(ohm / 1e6)}${tie}MΩ`;
  if (ohm >= 1e3) return `${threeDigits(ohm / 1e3)}${tie}kΩ`;
  return Number.isFinite(ohm) ? `${threeDigits(ohm)}${tie}Ω` : noFigure;
}

/** `12.1 to 12.9 V`: both ends in the unit of the greater; a current that may be too little for the clamp has no least. */
export function bandWords(kind: Probe["kind"], { expected, low, high }: Band): string {
  if (kind === "marking") return marked(expected, "A");
  if (kind === "current" && low <= 0) return `at most ${readingWords(kind, high)}`;
  const inMillivolts = Math.max(Math.abs(low), Math.abs(high)) < millivoltsBelowV;
  const [from, to] = [low, high].map((value) =>
    kind === "voltage" ? voltageWords(value, inMillivolts) : readingWords(kind, value),
  ) as [string, string];
  const unit = to.slice(to.lastIndexOf(tie));
  return from.endsWith(unit) ? `${from.slice(0, from.length - unit.length)} to ${to}` : `${from} to ${to}`;
}

const verdictWords: Readonly<Record<Verdict, string>> = {
  within: "as expected",
  low: "too low",
  high: "too high",
  impossible: "cannot be",
  unchecked: "not checked",
};

export const faultWords: Readonly<Record<FaultKind, string>> = {
  well: "Nothing wrong",
  resistance: "A bad joint or contact",
  "two resistances": "Two bad joints or contacts",
  open: "A break",
  "fuse blown": "A blown fuse, or no contact in its holder",
  short: "A short between positive and negative",
  reversed: "Positive and negative swapped",
  "wrong fuse": "A fuse of another rating",
  "gear dead": "The gear itself is dead",
  "battery low": "The battery is low",
  "battery worn": "The battery is worn",
};

/** Suspects worth a line: three at least, and who is likelier than one in fifty. */
export const suspectsShown = (suspects: readonly Suspect[]): readonly Suspect[] =>
  suspects.filter(({ probability }, at) => at < 3 || probability > 0.02).slice(0, 8);

/** One suspect in a sentence: what, where, how much, which part first. */
export function suspectSentence({ kind, at, parts, extraOhm, figure }: Suspect): string {
  if (kind === "well")
    return "Nothing wrong in what was read: a sound boat may show it. What was not read is not known.";
  const places = at.map((id) => (kind === "gear dead" || kind.startsWith("battery") ? id : branchWords(id)));
  const where =
    kind === "short" || kind === "reversed"
      ? `at the far end of ${cableOf(at[0] ?? "")}`
      : places.join(" and ");
  const much =
    extraOhm.length > 0 ? `, ${extraOhm.map(ohmWords).join(" and ")} more than it should have` : "";
  const lacks =
    kind === "battery low" && figure !== undefined
      ? `, ${decimals(-figure, 2)}${tie}V under the plan's`
      : kind === "wrong fuse" && figure !== undefined
        ? `, it looks like ${marked(figure, "A")}`
        : "";
  const first = parts.length > 1 ? ` Look first at ${partWords(parts[0] ?? "")}.` : "";
  return `${faultWords[kind]}: ${where}${much}${lacks}.${first}`;
}

/** `start: crimped ring` → `the crimped ring at its start`. */
function partWords(part: string): string {
  const joint = /^(start|end): (.*)$/.exec(part);
  if (joint) return `the ${joint[2]} at its ${joint[1]}`;
  const names: Readonly<Record<string, string>> = {
    conductor: "the wire itself",
    lead: "the lead itself",
    protection: "the fuse and its holder",
    switch: "its contacts",
    hull: "the hull",
  };
  return names[part] ?? `the ${part}`;
}

function cableOf(branch: string): string {
  return branch.replace(/ \/ lead \/ out$/, "’s own leads").replace(/ \/ .* \/ out$/, "");
}

export function probabilityWords(probability: number): string {
  if (probability > 0.995) return "> 99\u00a0%";
  return probability < 0.005 ? "< 1\u00a0%" : percent(probability, 0);
}

/** What was read: in the circuit's own terms, or as it stands on record where it has no place there. */
export function takenWords({ taken, reading }: JudgedReading): string {
  if (reading) return probeWords(reading.probe);
  return [taken.at, taken.against].filter((point) => point !== undefined).join(" to ");
}

/** Verdict on a reading, and what speaks against it. */
export function verdictSentence({ verdict, unplaced, wouldFitTimes, differsFrom }: JudgedReading): string {
  return [
    verdictWords[verdict],
    ...(unplaced ? [unplacedWords(unplaced)] : []),
    ...(wouldFitTimes === undefined
      ? []
      : [`${wouldFitTimes > 1 ? "a thousand times as much" : "a thousandth"} would fit: look at the range`]),
    ...(differsFrom.length > 0
      ? [`differs from reading ${differsFrom.map((row) => row + 1).join(", ")}`]
      : []),
  ].join("; ");
}

/** A reading beside the same one of a finished project. */
export function changeSentence({ reading, before, now, project }: Change): string {
  const [was, is] = [before, now].map(({ value }) => readingWords(now.kind, value));
  return `${probeWords(reading.probe)}: ${was} when ${project} was finished, ${is} now.`;
}

/** Why a reading could not be compared. */
function unplacedWords(unplaced: Unplaced): string {
  switch (unplaced.why) {
    case "no such point":
      return `the plan has no point ${unplaced.name} now`;
    case "no such branch":
      return `the plan has no fuse, switch or wire ${unplaced.name} now`;
    case "no such gear":
    case "no such way":
      return `the plan has no gear ${unplaced.name} now`;
    case "second point missing":
      return "the point of the other probe is missing";
    case "same point twice":
      return "both probes are on one point of the circuit";
    default:
      return unplaced satisfies never;
  }
}
