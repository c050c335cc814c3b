import type { Figures } from "../figures-types.js";
import type { Finding } from "../findings/finding.js";
import { type Ledger, ledgerOf } from "../ledger.js";
import type { FigureRef } from "./figure-ref.js";

/** A figure that is another in the two; one that is missing is not there. */
export interface FigureChange {
  readonly figure: FigureRef;
  /** Thing it is a figure of. */
  readonly at: string;
  readonly before?: number | string;
  readonly after?: number | string;
  readonly unit?: string;
}

/** What differs between two states of one plan, as far as it was worked out. */
export interface Comparison {
  readonly ledger: { readonly before: Ledger; readonly after: Ledger };
  readonly changes: readonly FigureChange[];
  /** Findings of `before` that `after` has not, and the other way round. */
  readonly gone: readonly Finding[];
  readonly appeared: readonly Finding[];
}

/** Smaller changes are not told, as a share of the figure. */
const leastChange = 0.0005;

type Entry = readonly [key: string, figure: FigureRef, at: string, value: number | string, unit?: string];

/** Compares all that a person would notice: hours, sizes, ratings, the worst drop of each piece of gear, findings. */
export function compareFigures(before: Figures, after: Figures): Comparison {
  return {
    ledger: { before: ledgerOf(before), after: ledgerOf(after) },
    changes: changesOf(entriesOf(before), entriesOf(after)),
    gone: missingFrom(before.findings, after.findings),
    appeared: missingFrom(after.findings, before.findings),
  };
}

function entriesOf(figures: Figures): Map<string, Entry> {
  const entries: Entry[] = [
    ...figures.outings.flatMap(({ name: outing, hoursToReserve, batteries }): Entry[] => [
      ...hoursToReserve.map(
        ({ battery, hours }): Entry => [
          `hours ${outing} ${battery}`,
          { of: "hours to reserve", outing, battery },
          battery,
          hours,
          "h",
        ],
      ),
      ...batteries.map(
        ({ battery, chargeLeft }): Entry => [
          `left ${outing} ${battery}`,
          { of: "charge left", outing, battery },
          battery,
          chargeLeft * 100,
          "%",
        ],
      ),
    ]),
    ...figures.sizes.choices.map(
      ({ id, size }): Entry => [`size ${id}`, { of: "run size", choice: id }, id, size.key],
    ),
    ...figures.protection.map(
      ({ id, ratingA }): Entry => [`rating ${id}`, { of: "rating", device: id }, id, ratingA, "A"],
    ),
    ...dropEntries(figures),
  ];
  return new Map(entries.map((entry) => [entry[0], entry]));
}

function dropEntries({ corners }: Figures): Entry[] {
  const worst = new Map<string, { corner: string; share: number }>();
  for (const { name: corner, gear } of corners) {
    for (const { id, on, dropShare } of gear) {
      if (
        !on ||
        !Number.isFinite(dropShare) ||
        dropShare <= (worst.get(id)?.share ?? Number.NEGATIVE_INFINITY)
      )
        continue;
      worst.set(id, { corner, share: dropShare });
    }
  }
  return [...worst].map(([gear, { corner, share }]) => [
    `drop ${gear}`,
    { of: "gear drop", gear, corner },
    gear,
    share * 100,
    "%",
  ]);
}

function changesOf(before: ReadonlyMap<string, Entry>, after: ReadonlyMap<string, Entry>): FigureChange[] {
  const changes: FigureChange[] = [];
  for (const key of new Set([...before.keys(), ...after.keys()])) {
    const [was, is] = [before.get(key), after.get(key)];
    if (was && is && alike(was[3], is[3])) continue;
    const [, figure, at, , unit] = is ?? was ?? [];
    if (!figure || at === undefined) continue;
    changes.push({
      figure,
      at,
      ...(was ? { before: was[3] } : {}),
      ...(is ? { after: is[3] } : {}),
      ...(unit === undefined ? {} : { unit }),
    });
  }
  return changes;
}

function alike(one: number | string, other: number | string): boolean {
  if (typeof one === "string" || typeof other === "string") return one === other;
  return one === other || Math.abs(one - other) <= leastChange * Math.max(Math.abs(one), Math.abs(other));
}

const identity = ({ rule, level, at }: Finding) => `${rule}\n${level}\n${at}`;

function missingFrom(findings: readonly Finding[], others: readonly Finding[]): Finding[] {
  const there = new Set(others.map(identity));
  return findings.filter((finding) => !there.has(identity(finding)));
}
