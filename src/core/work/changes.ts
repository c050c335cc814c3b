import type { CornerFigures } from "../circuit/results.js";
import type { OutingFigures } from "../energy/types.js";
import type { Finding } from "../findings/finding.js";
import { groupedBy } from "./grouped.js";
import { workSteps } from "./steps.js";
import type { WorkInput } from "./work-input.js";

/** The tables two plans are compared by; all figures of a plan have them. */
export interface Comparable extends WorkInput {
  readonly corners: readonly CornerFigures[];
  readonly outings: readonly OutingFigures[];
  readonly findings: readonly Finding[];
}

export type FigureKind =
  | "conductor size"
  | "rating"
  | "voltage at gear"
  | "current at gear"
  | "current of way"
  | "hours to reserve"
  | "charge left";

/** One figure before and after. A side that is undefined: the thing was not there. */
export interface FigureChange {
  readonly kind: FigureKind;
  readonly at: string;
  /** Corner or outing. */
  readonly in?: string;
  readonly before?: number | string;
  readonly after?: number | string;
  readonly unit?: "V" | "A" | "h" | "";
}

export interface PartChange {
  readonly kind: "gear" | "run" | "panel" | "box" | "battery" | "charger" | "converter";
  readonly name: string;
  readonly change: "added" | "removed" | "changed";
  /** Fields that differ. */
  readonly fields: readonly string[];
}

export interface Changes {
  readonly figures: readonly FigureChange[];
  readonly findings: { readonly gone: readonly Finding[]; readonly come: readonly Finding[] };
  readonly parts: readonly PartChange[];
  /** Wire by size: metres more (or less) than before. */
  readonly wire: readonly { readonly size: string; readonly beforeM: number; readonly afterM: number }[];
  readonly work: {
    readonly come: readonly string[];
    readonly gone: readonly string[];
    readonly beforeMin: number;
    readonly afterMin: number;
  };
}

/** Figures nearer than this are the same: no meter shows it [share, or V, A, h]. */
const same = 1e-6;

/** What a change of plan does, in values: figures, findings, parts and work. Words are put to it elsewhere. */
export function changesBetween(before: Comparable, after: Comparable): Changes {
  const steps = [before, after].map((side) => workSteps(side).steps);
  const [old = [], young = []] = steps;
  const oldIds = new Set(old.map(({ id }) => id));
  const youngIds = new Set(young.map(({ id }) => id));
  const minutes = (list: typeof old) => list.reduce((sum, step) => sum + step.minutes, 0);
  return {
    figures: figureChanges(before, after),
    findings: {
      gone: before.findings.filter((finding) => !after.findings.some((other) => sameFinding(finding, other))),
      come: after.findings.filter((finding) => !before.findings.some((other) => sameFinding(finding, other))),
    },
    parts: partChanges(before, after),
    wire: wireChanges(before, after),
    work: {
      come: young.flatMap(({ id }) => (oldIds.has(id) ? [] : [id])),
      gone: old.flatMap(({ id }) => (youngIds.has(id) ? [] : [id])),
      beforeMin: minutes(old),
      afterMin: minutes(young),
    },
  };
}

const sameFinding = (a: Finding, b: Finding) =>
  a.rule === b.rule &&
  a.level === b.level &&
  a.at === b.at &&
  (a.with ?? []).join() === (b.with ?? []).join();

type Figure = Omit<FigureChange, "before" | "after"> & { readonly value: number | string };

function figureChanges(before: Comparable, after: Comparable): FigureChange[] {
  const key = ({ kind, at, in: where }: Figure) => `${kind}|${at}|${where ?? ""}`;
  const old = new Map(figuresOf(before).map((figure) => [key(figure), figure]));
  const young = new Map(figuresOf(after).map((figure) => [key(figure), figure]));
  return [...new Set([...old.keys(), ...young.keys()])].flatMap((name): FigureChange[] => {
    const a = old.get(name);
    const b = young.get(name);
    const { value: _value, ...about } = a ?? b ?? { value: "", kind: "rating" as const, at: "" };
    if (a && b && alike(a.value, b.value)) return [];
    return [{ ...about, ...(a && { before: a.value }), ...(b && { after: b.value }) }];
  });
}

function alike(a: number | string, b: number | string): boolean {
  if (typeof a !== "number" || typeof b !== "number") return a === b;
  return Object.is(a, b) || Math.abs(a - b) <= same * Math.max(1, Math.abs(a), Math.abs(b));
}

function figuresOf({ sizes, protection, corners, outings }: Comparable): Figure[] {
  return [
    ...sizes.choices.map(({ id, size }): Figure => ({ kind: "conductor size", at: id, value: size.key })),
    ...protection.map(({ id, ratingA }): Figure => ({ kind: "rating", at: id, value: ratingA, unit: "A" })),
    ...corners.flatMap((corner) => [
      ...corner.gear.flatMap(({ id, on, voltageV, currentA }): Figure[] =>
        on
          ? [
              { kind: "voltage at gear", at: id, in: corner.name, value: voltageV, unit: "V" },
              { kind: "current at gear", at: id, in: corner.name, value: currentA, unit: "A" },
            ]
          : [],
      ),
      ...corner.ways.map(
        ({ id, currentA }): Figure => ({
          kind: "current of way",
          at: id,
          in: corner.name,
          value: currentA,
          unit: "A",
        }),
      ),
    ]),
    ...outings.flatMap((outing) => [
      ...outing.hoursToReserve.map(
        ({ battery, hours }): Figure => ({
          kind: "hours to reserve",
          at: battery,
          in: outing.name,
          value: hours,
          unit: "h",
        }),
      ),
      ...outing.batteries.map(
        ({ battery, chargeLeft }): Figure => ({
          kind: "charge left",
          at: battery,
          in: outing.name,
          value: chargeLeft,
          unit: "",
        }),
      ),
    ]),
  ];
}

function partChanges({ plan: before }: Comparable, { plan: after }: Comparable): PartChange[] {
  const lists = [
    ["gear", before.gear, after.gear],
    ["run", before.runs, after.runs],
    ["panel", before.panels, after.panels],
    ["box", before.boxes, after.boxes],
    ["battery", before.batteries, after.batteries],
    ["charger", before.chargers, after.chargers],
    ["converter", before.converters, after.converters],
  ] as const;
  return lists.flatMap(([kind, olds, youngs]): PartChange[] => {
    const old = new Map<string, object>(olds.map((thing) => [thing.name, thing]));
    const young = new Map<string, object>(youngs.map((thing) => [thing.name, thing]));
    return [...new Set([...old.keys(), ...young.keys()])].flatMap((name): PartChange[] => {
      const a = old.get(name);
      const b = young.get(name);
      if (!a) return [{ kind, name, change: "added", fields: [] }];
      if (!b) return [{ kind, name, change: "removed", fields: [] }];
      const fields = fieldsThatDiffer(a, b);
      return fields.length > 0 ? [{ kind, name, change: "changed", fields }] : [];
    });
  });
}

function fieldsThatDiffer(a: object, b: object): string[] {
  const left = new Map<string, unknown>(Object.entries(a));
  const right = new Map<string, unknown>(Object.entries(b));
  return [...new Set([...left.keys(), ...right.keys()])].filter(
    (field) => JSON.stringify(left.get(field)) !== JSON.stringify(right.get(field)),
  );
}

function wireChanges(before: Comparable, after: Comparable): Changes["wire"] {
  const metres = ({ sizes }: Comparable) =>
    new Map(
      [...groupedBy(sizes.choices, ({ size }) => size.key)].map(([key, list]) => [
        key,
        list.reduce((sum, { lengthM, cores }) => sum + lengthM * cores, 0),
      ]),
    );
  const old = metres(before);
  const young = metres(after);
  return [...new Set([...old.keys(), ...young.keys()])].flatMap((size) => {
    const beforeM = old.get(size) ?? 0;
    const afterM = young.get(size) ?? 0;
    return Math.abs(beforeM - afterM) > same ? [{ size, beforeM, afterM }] : [];
  });
}
