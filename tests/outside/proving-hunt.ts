/**
 * Hunts for faults in boats that live in ngspice (Debian package). Whoever measures begins with the battery and the gear that fails,
 * and then takes the reading proposed, until none tells any more, or the likeliest is 99 % sure, or twelve are taken.
 */
import { type FaultReport, findFaults } from "../../src/core/proving/faults.js";
import { sigmaOf } from "../../src/core/proving/meter-error.js";
import { nextReadings } from "../../src/core/proving/next-reading.js";
import type { Probe } from "../../src/core/proving/probe.js";
import type { Reading } from "../../src/core/proving/reading-model.js";
import { noise } from "./proving-boats.js";
import type { FaultCase } from "./proving-cases.js";
import { faulty } from "./proving-faulty.js";
import { exactReadings } from "./proving-readings.js";

export const mostReadings = 12;

export interface Hunt {
  readonly about: FaultCase;
  readonly readings: readonly Reading[];
  readonly report: FaultReport;
  /** Place of the truth in the report, 0 for the first; −1 where it is not there. */
  readonly place: number;
  /** Present, not first, and said not to be told apart from the first. */
  readonly said: boolean;
}

interface Running {
  readonly about: FaultCase;
  readonly readings: Reading[];
  report?: FaultReport;
  wanted: readonly Probe[];
}

/** All hunts at once, so that ngspice is started once a round. */
export function hunt(cases: readonly FaultCase[]): Hunt[] {
  const running = cases.map((about): Running => ({ about, readings: [], wanted: firstProbes(about) }));
  for (let round = 2; running.some(({ wanted }) => wanted.length > 0); round++) {
    const waiting = running.filter(({ wanted }) => wanted.length > 0);
    const shown = exactReadings(
      waiting.map(({ about, wanted }) => ({ faulty: about.faulty, probes: wanted })),
    );
    waiting.forEach((one, i) => {
      one.wanted.forEach((probe, k) => {
        one.readings.push({ probe, value: asMetered(one.about, probe, shown[i]?.[k] ?? Number.NaN) });
      });
      const { bench, spread } = one.about.faulty.boat;
      one.report = findFaults(bench, one.readings, spread);
      const sure = (one.report.suspects[0]?.probability ?? 0) > 0.99;
      const [next] = sure || round >= mostReadings ? [] : nextReadings(bench, one.report, spread);
      one.wanted = next ? [next.probe] : [];
    });
  }
  return running.map(({ about, readings, report }) => {
    if (!report) throw new Error(`${about.name} was not looked at`);
    const place = placeOf(about, report);
    return { about, readings, report, place, said: place > 0 && report.notApart.includes(place) };
  });
}

/** How a boat with two bad places is put right by someone who mends what is named and measures again. */
export type BothFound = "both at once" | "one after the other" | "what is left does not show" | "led astray";

/** One mend and one more hunt for each hunt that named one of two bad places. */
export function mendAndHunt(hunts: readonly Hunt[]): BothFound[] {
  const left = hunts.map(({ about, report, place }) => {
    const [named] = report.suspects;
    const row = about.fault.at.indexOf(named?.at[0] ?? "");
    return place === 0 || named?.kind !== "resistance" || row < 0 ? undefined : withOneMended(about, row);
  });
  const again = hunt(left.flatMap((one) => one ?? []));
  return hunts.map(({ place }, i): BothFound => {
    if (place === 0) return "both at once";
    const second = again.find(({ about }) => about === left[i]);
    if (!second) return "led astray";
    if (second.place === 0) return "one after the other";
    return second.report.suspects[0]?.kind === "well" ? "what is left does not show" : "led astray";
  });
}

function withOneMended(about: FaultCase, mended: number): FaultCase {
  const { at, size } = about.fault;
  const fault = { kind: "resistance", at: [at[1 - mended] ?? ""], size: [size[1 - mended] ?? 0] } as const;
  return { ...about, fault, faulty: faulty(about.faulty.boat, about.sound, fault) };
}

function firstProbes({ faulty, gear, on }: FaultCase): Probe[] {
  const { bench } = faulty.boat;
  const { topology } = bench;
  const piece = topology.gear[gear];
  const battery = bench.plan.circuits.get(piece?.circuit ?? "")?.battery;
  const source = topology.sources.find((one) => one.battery === battery);
  const name = (node: number | undefined) => topology.nodes[node ?? 0] ?? "";
  return [source, piece].map((poles) => ({
    kind: "voltage",
    at: name(poles?.plus),
    against: name(poles?.minus),
    on,
  }));
}

const asMetered = ({ random }: FaultCase, { kind }: Probe, value: number): number =>
  kind === "marking" ? value : value + noise(random) * sigmaOf(kind, value);

function placeOf({ fault }: FaultCase, { suspects }: FaultReport): number {
  const wanted = [...fault.at].sort().join("+");
  return suspects.findIndex(({ kind, at }) => {
    if ([...at].sort().join("+") !== wanted) return false;
    return kind === fault.kind || (fault.kind === "open" && kind === "fuse blown");
  });
}
