import type { Band } from "../core/proving/bands.js";
import type { NextReading } from "../core/proving/next-reading.js";
import type { Probe } from "../core/proving/probe.js";
import type { Suspect } from "../core/proving/suspect.js";
import type { Unplaced } from "../core/proving/taken/adapt.js";
import type { Change } from "../core/proving/taken/aged.js";
import type { JudgedReading } from "../core/proving/taken/judge.js";
import { readingEffort } from "../core/reference/reading-effort.js";
import { amps, decimals, marked, noFigure, percent, threeDigits } from "./numbers.js";
import { english } from "./proof/english.js";
import type { PartName, PointWords, ProofWords } from "./proof/proof-words.js";

const tie = "\u00a0";

/** A point of the circuit as one would point at it: `helm / lamps +` is the plus terminal of that way. */
export function pointWords(name: string, points: PointWords = english.proving.points): string {
  return name
    .replace(/ at joint ([+-])$/, ` $1${points.joint}`)
    .replace(/ fused ([+-])$/, ` $1${points.fused}`)
    .replace(/ main ([+-])$/, ` $1${points.main}`)
    .replace(/ master ([+-])$/, ` $1${points.master}`)
    .replace(/ bus ([+-])$/, ` $1${points.bus}`)
    .replace(/ out ([+-])$/, points.out)
    .replace(" | ", ", ")
    .replace(/ -( |$)/, " −$1");
}

/** A stretch of the circuit: a wire, a fuse, a switch. */
export function branchWords(id: string, { proving: { branches } }: ProofWords = english): string {
  const lead = /^(.*) \/ lead \/ (out|return)$/.exec(id);
  if (lead) return branches.lead[lead[2] === "out" ? "out" : "return"](lead[1] ?? "");
  for (const device of ["fuse", "switch", "main", "master"] as const)
    if (id.endsWith(` / ${device}`)) return branches.device[device](id.slice(0, -device.length - 3));
  const back = /^(.*?) \/ (?:.* \/ )?return$/.exec(id);
  if (back) return branches.return(back[1] ?? "");
  const out = /^(.*?) \/ (.*) \/ out$/.exec(id);
  return out ? branches.out(out[1] ?? "", out[2] ?? "") : id;
}

/** Gear short: all of a group under one name. */
function groupedNames(names: readonly string[]): string {
  const groups = new Map<string, string[]>();
  for (const name of names) {
    const group = name.replace(/ \d+$/, "");
    groups.set(group, [...(groups.get(group) ?? []), name]);
  }
  return [...groups]
    .map(([group, pieces]) => (pieces.length > 1 ? `${group} (${pieces.length})` : pieces[0]))
    .join(", ");
}

/** What gear is on. */
export const onWords = (on: readonly string[], { proving }: ProofWords = english): string =>
  on.length === 0 ? proving.allOff : proving.on(groupedNames(on));

/** A reading to take, in a few words. */
export function probeWords(probe: Probe, words: ProofWords = english): string {
  const { probes, points } = words.proving;
  switch (probe.kind) {
    case "voltage":
      return probes.voltage(
        pointWords(probe.at, points),
        pointWords(probe.against, points),
        onWords(probe.on, words),
      );
    case "current":
      return probes.current(branchWords(probe.at, words), onWords(probe.on, words));
    case "ohm":
      return probes.ohm(
        pointWords(probe.at, points),
        pointWords(probe.against, points),
        `${probe.on.length > 0 ? probes.switches(groupedNames(probe.on)) : ""}${liftedWords(probe.lifted ?? [], words)}`,
      );
    case "marking":
      return probes.marking(branchWords(probe.at, words));
    default:
      return probe satisfies never;
  }
}

function liftedWords(lifted: readonly string[], words: ProofWords): string {
  const { joined, probes } = words.proving;
  return lifted.length === 0 ? "" : probes.lifted(joined(lifted.map((id) => branchWords(id, words))));
}

/** A reading worth taking, and what must be taken apart for it. */
export function nextWords({ probe, opens }: NextReading, words: ProofWords = english): string {
  const loose = readingEffort.loosens.some((kind) => kind === opens);
  const apart = opens === undefined || loose ? "" : words.proving.cut(opens);
  return `${probeWords(probe, words)}${apart}`;
}

/** A reading with its unit, in the digits a meter would show. */
export function readingWords(kind: Probe["kind"], value: number, words: ProofWords = english): string {
  if (kind === "marking") return marked(value, "A");
  if (kind === "current") return amps(value);
  if (kind === "ohm") return ohmWords(value, words);
  return voltageWords(value, Math.abs(value) < millivoltsBelowV);
}

/** Below this a meter is on its range of millivolts [V]. */
const millivoltsBelowV = 0.2;

function voltageWords(value: number, inMillivolts: boolean): string {
  const mV = value * 1000;
  if (inMillivolts) return `${decimals(mV, Math.abs(mV) < 20 ? 1 : 0)}${tie}mV`;
  return `${decimals(value, Math.abs(value) < 2 ? 3 : 2)}${tie}V`;
}

export function ohmWords(ohm: number, { proving }: ProofWords = english): string {
  if (ohm === Number.POSITIVE_INFINITY || ohm > 9.5e7) return proving.open;
  if (ohm >= 1e6) return `${threeDigits(ohm / 1e6)}${tie}MΩ`;
  if (ohm >= 1e3) return `${threeDigits(ohm / 1e3)}${tie}kΩ`;
  return Number.isFinite(ohm) ? `${threeDigits(ohm)}${tie}Ω` : noFigure;
}

/** `12.1 to 12.9 V`: both ends in the unit of the greater; a current that may be too little for the clamp has no least. */
export function bandWords(
  kind: Probe["kind"],
  { expected, low, high }: Band,
  words: ProofWords = english,
): string {
  const { atMost, range } = words.proving;
  if (kind === "marking") return marked(expected, "A");
  if (kind === "current" && low <= 0) return atMost(readingWords(kind, high, words));
  const inMillivolts = Math.max(Math.abs(low), Math.abs(high)) < millivoltsBelowV;
  const [from, to] = [low, high].map((value) =>
    kind === "voltage" ? voltageWords(value, inMillivolts) : readingWords(kind, value, words),
  ) as [string, string];
  const unit = to.slice(to.lastIndexOf(tie));
  return range(from.endsWith(unit) ? from.slice(0, from.length - unit.length) : from, to);
}

/** Suspects worth a line: three at least, and who is likelier than one in fifty. */
export const suspectsShown = (suspects: readonly Suspect[]): readonly Suspect[] =>
  suspects.filter(({ probability }, at) => at < 3 || probability > 0.02).slice(0, 8);

/** One suspect in a sentence: what, where, how much, which part first. */
export function suspectSentence(
  { kind, at, parts, extraOhm, figure }: Suspect,
  words: ProofWords = english,
): string {
  const { faults, suspects, joined } = words.proving;
  if (kind === "well") return suspects.well;
  const places = at.map((id) =>
    kind === "gear dead" || kind.startsWith("battery") ? id : branchWords(id, words),
  );
  const where =
    kind === "short" || kind === "reversed" ? suspects.farEnd(cableOf(at[0] ?? "", words)) : joined(places);
  const much = extraOhm.length > 0 ? suspects.more(joined(extraOhm.map((ohm) => ohmWords(ohm, words)))) : "";
  const lacks =
    kind === "battery low" && figure !== undefined
      ? suspects.under(`${decimals(-figure, 2)}${tie}V`)
      : kind === "wrong fuse" && figure !== undefined
        ? suspects.looksLike(marked(figure, "A"))
        : "";
  const first = parts.length > 1 ? suspects.first(partWords(parts[0] ?? "", words)) : "";
  return `${faults[kind]}: ${where}${much}${lacks}.${first}`;
}

/** `start: crimped ring` → `the crimped ring at its start`. */
function partWords(part: string, { proving }: ProofWords): string {
  const joint = /^(start|end): (.*)$/.exec(part);
  if (joint) return proving.joint(joint[2] ?? "", joint[1] === "start" ? "start" : "end");
  return isPart(proving.parts, part) ? proving.parts[part] : proving.joint(part, undefined);
}

const isPart = (parts: ProofWords["proving"]["parts"], name: string): name is PartName =>
  Object.hasOwn(parts, name);

function cableOf(branch: string, { proving }: ProofWords): string {
  const gear = /^(.*) \/ lead \/ out$/.exec(branch)?.[1];
  return gear === undefined ? branch.replace(/ \/ .* \/ out$/, "") : proving.branches.ownLeads(gear);
}

export function probabilityWords(probability: number): string {
  if (probability > 0.995) return "> 99\u00a0%";
  return probability < 0.005 ? "< 1\u00a0%" : percent(probability, 0);
}

/** What was read: in the circuit's own terms, or as it stands on record where it has no place there. */
export function takenWords({ taken, reading }: JudgedReading, words: ProofWords = english): string {
  if (reading) return probeWords(reading.probe, words);
  const { at, against } = taken;
  return against === undefined ? at : words.proving.range(at, against);
}

/** Verdict on a reading, and what speaks against it. */
export function verdictSentence(
  { verdict, unplaced, mended, flipped, wouldFitTimes, differsFrom }: JudgedReading,
  words: ProofWords = english,
): string {
  const { proving } = words;
  return [
    mended
      ? `${proving.verdicts[verdict]} ${proving.mended(branchWords(mended.at, words))}`
      : proving.verdicts[verdict],
    ...(mended?.readAgain ? [proving.readAgain] : []),
    ...(unplaced ? [proving.unplaced[unplaced.why](nameOf(unplaced))] : []),
    ...(wouldFitTimes === undefined ? [] : [proving.wouldFit[wouldFitTimes > 1 ? "more" : "less"]]),
    ...(flipped === undefined ? [] : [proving.flipped[flipped]]),
    ...(differsFrom.length > 0
      ? [`${proving.differs(differsFrom.map((row) => row + 1).join(", "))}: ${proving.laterCounts}`]
      : []),
  ].join("; ");
}

const nameOf = (unplaced: Unplaced) => ("name" in unplaced ? unplaced.name : "");

/** What all full voltages being off alike means. */
export function meterWords(share: number, { proving }: ProofWords = english): string {
  return proving.meterOff[share > 0 ? "high" : "low"](percent(Math.abs(share), 0));
}

/** A reading beside the same one of a finished project. */
export function changeSentence(
  { reading, before, now, project }: Change,
  words: ProofWords = english,
): string {
  const [was, is] = [before, now].map(({ value }) => readingWords(now.kind, value, words)) as [
    string,
    string,
  ];
  return words.proving.changed(probeWords(reading.probe, words), was, project, is);
}
