import { apartness } from "./proving-apart.js";
import { boatNamed } from "./proving-boats.js";
import { type CaseKind, type FaultCase, faultCase } from "./proving-cases.js";
import { type Hunt, hunt } from "./proving-hunt.js";

export const boatNames = ["tender", "utility", "launch"] as const;

/** So many of each kind. The seeds are those of `firstSeed` on. */
export function manyCases(counts: readonly (readonly [CaseKind, number])[], firstSeed: number): FaultCase[] {
  const boats = boatNames.map(boatNamed);
  return counts.flatMap(([kind, count], k) =>
    boats.flatMap((boat, b) =>
      Array.from({ length: Math.floor((count + b) / boats.length) }, (_, i) =>
        faultCase(boat, kind, firstSeed + 100_000 * k + 10_000 * b + i),
      ),
    ),
  );
}

export interface Score {
  readonly kind: string;
  readonly cases: number;
  readonly first: number;
  readonly withinThree: number;
  /** Not first, said not to be told apart from the first, and so it is by ngspice. */
  readonly rightlySaid: number;
  /** Said, and yet ngspice tells them apart. */
  readonly wronglySaid: number;
  /** First, or within three, or rightly said. */
  readonly good: number;
  readonly readingsEach: number;
}

export interface Outcome {
  readonly scores: readonly Score[];
  readonly missed: readonly string[];
}

/** Hunts all faults and judges every answer. @param boats Boats drawn for each doubtful "not separable". */
export function score(cases: readonly FaultCase[], boats: number): Outcome {
  const hunts = hunt(cases).map((one) => ({
    one,
    apart: one.said ? apartness(one, boats) : undefined,
  }));
  const kinds = [...new Set(cases.map(({ fault }) => fault.kind))];
  return {
    scores: kinds.map((kind) => {
      const own = hunts.filter(({ one }) => one.about.fault.kind === kind);
      const count = (holds: (one: (typeof own)[number]) => boolean) => own.filter(holds).length;
      const near = ({ one: { place } }: (typeof own)[number]) => place >= 0 && place < 3;
      const right = ({ apart }: (typeof own)[number]) => apart?.apart === false;
      return {
        kind,
        cases: own.length,
        first: count(({ one }) => one.place === 0),
        withinThree: count(near),
        rightlySaid: count(right),
        wronglySaid: count(({ apart }) => apart?.apart === true),
        good: count((one) => near(one) || right(one)),
        readingsEach: own.reduce((sum, { one }) => sum + one.readings.length, 0) / own.length,
      };
    }),
    missed: hunts.flatMap(({ one, apart }) => (one.place === 0 ? [] : [missedLine(one, apart)])),
  };
}

function missedLine(
  { about, place, readings, report }: Hunt,
  apart: ReturnType<typeof apartness> | undefined,
): string {
  const said = apart
    ? `, said not apart: ${apart.exactBoat.toFixed(1)} σ in this boat, ${apart.drawnBoats?.toFixed(1) ?? "-"} over boats`
    : "";
  const best = report.suspects
    .slice(0, 3)
    .map((s) => `${s.kind} ${s.at.join("+")} ${s.probability.toFixed(3)}`);
  return `${about.name} at ${about.fault.at.join("+")}: place ${place}${said}, ${readings.length} readings; ${best.join("; ")}`;
}

/** All kinds of an outcome together; `shown` says what was missed. */
export function sumOf({ scores, missed }: Outcome) {
  const sum = (of: (one: Score) => number) => scores.reduce((total, one) => total + of(one), 0);
  return {
    all: sum(({ cases }) => cases),
    first: sum(({ first }) => first),
    good: sum(({ good }) => good),
    shown: [...scores.map((one) => JSON.stringify(one)), ...missed].join("\n"),
  };
}
