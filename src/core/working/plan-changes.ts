import type { Whole } from "../layout-figures.js";
import { type Meaning, meaningOf } from "../plan/edits/meaning.js";
import type { PlanDocument } from "../plan/source/open.js";
import type { Difference } from "../work/differences.js";
import { planWork } from "../work/plan-work.js";
import type { Step } from "../work/step.js";
import { type Comparison, compareFigures } from "./compare.js";
import { entriesOf, meaningText, shortText } from "./meaning-text.js";

/** A plan with everything worked out, and the document it stands in. */
export interface WholePlan extends Whole {
  readonly document: PlanDocument;
}

/** One thing of the plan that is another, in the owner's own words. */
export interface ThingChange {
  /** Section of the plan it stands in: `gear`, `runs`; `craft`. */
  readonly section: string;
  /** Undefined: the section is one thing by itself. */
  readonly name?: string;
  readonly change: "added" | "removed" | "changed";
  /** Keys that differ, with what stood there and what stands there. */
  readonly fields: readonly { readonly key: string; readonly before?: string; readonly after?: string }[];
}

/** A line of the parts list: how many are needed, and how many are to be bought. Of wire: metres. */
export interface PartChange {
  readonly item: string;
  readonly unit: "" | "m";
  readonly neededBefore: number;
  readonly neededAfter: number;
  readonly toBuyBefore: number;
  readonly toBuyAfter: number;
}

/** A run that is cut to another length; undefined: there is no such run. Two lists may take the same metres and not cut the same [mm]. */
export interface CutChange {
  readonly run: string;
  readonly beforeMm?: number;
  readonly afterMm?: number;
}

/** What a change of plan does, in values. Words are put to it elsewhere. */
export interface PlanChanges extends Comparison {
  readonly things: readonly ThingChange[];
  readonly parts: readonly PartChange[];
  readonly cuts: readonly CutChange[];
  readonly work: {
    /** Steps left in the new plan that the old had not, and the other way round. */
    readonly come: readonly Step[];
    readonly gone: readonly Step[];
    readonly beforeMin: number;
    readonly afterMin: number;
    /** What was built and is no longer as the plan wants it. */
    readonly undone: readonly Difference[];
  };
}

/** Compares two plans, or two states of one: what was written, every figure, findings, parts and work. */
export function planChanges(before: WholePlan, after: WholePlan): PlanChanges {
  const [was, is] = [before, after].map((side) => planWork(side.figures, side)) as [WorkOf, WorkOf];
  const told = new Set(was.asBuilt.differences.map((one) => JSON.stringify(one)));
  return {
    ...compareFigures(before.figures, after.figures),
    things: thingChanges(before.document, after.document),
    parts: [...partChanges(before, after), ...wireChanges(before, after)],
    cuts: cutChanges(before, after),
    work: {
      come: stepsOnlyIn(is, was),
      gone: stepsOnlyIn(was, is),
      beforeMin: was.order.workMin,
      afterMin: is.order.workMin,
      undone: is.asBuilt.differences.filter((one) => !told.has(JSON.stringify(one))),
    },
  };
}

type WorkOf = ReturnType<typeof planWork>;

function stepsOnlyIn({ order, step }: WorkOf, other: WorkOf): Step[] {
  const there = new Set(other.order.steps.map((one) => one.step));
  return order.steps.flatMap((one) => (there.has(one.step) ? [] : (step.get(one.step) ?? [])));
}

/** Sections that hold things by name; the others are one thing each. */
const bynames = new Set([
  "batteries",
  "chargers",
  "converters",
  "panels",
  "boxes",
  "box catalogue",
  "gear",
  "runs",
  "waypoints",
  "legs",
  "references",
  "faces",
  "corners",
  "outings",
  "projects",
]);

function thingChanges(before: PlanDocument, after: PlanDocument): ThingChange[] {
  const [old, young] = [sectionsOf(before), sectionsOf(after)];
  return bothKeys(old, young).flatMap((section): ThingChange[] => {
    const [was, is] = [old.get(section), young.get(section)];
    if (!bynames.has(section)) return changed(section, undefined, was, is);
    const [names, others] = [entriesOf(was), entriesOf(is)];
    return bothKeys(names, others).flatMap((name) =>
      changed(section, name, names.get(name), others.get(name)),
    );
  });
}

function changed(section: string, name: string | undefined, was?: Meaning, is?: Meaning): ThingChange[] {
  const about = name === undefined ? { section } : { section, name };
  if (was === undefined || is === undefined) {
    if (was === is) return [];
    return [{ ...about, change: was === undefined ? "added" : "removed", fields: [] }];
  }
  if (meaningText(was) === meaningText(is)) return [];
  const [old, young] = [entriesOf(was), entriesOf(is)];
  const inside = old.size > 0 || young.size > 0;
  const fields = (inside ? bothKeys(old, young) : [""]).flatMap((key) => {
    const [one, other] = inside ? [old.get(key), young.get(key)] : [was, is];
    if (one !== undefined && other !== undefined && meaningText(one) === meaningText(other)) return [];
    return [
      {
        key,
        ...(one === undefined ? {} : { before: shortText(one) }),
        ...(other === undefined ? {} : { after: shortText(other) }),
      },
    ];
  });
  return [{ ...about, change: "changed", fields }];
}

const sectionsOf = ({ root }: PlanDocument): Map<string, Meaning> => entriesOf(meaningOf(root));

function bothKeys(a: ReadonlyMap<string, unknown>, b: ReadonlyMap<string, unknown>): string[] {
  return [...new Set([...a.keys(), ...b.keys()])];
}

function partChanges(before: Whole, after: Whole): PartChange[] {
  const [old, young] = [before, after].map(
    ({ layout }) => new Map(layout.parts.list.lines.map((line) => [line.item, line])),
  );
  if (old === undefined || young === undefined) return [];
  return bothKeys(old, young).flatMap((item): PartChange[] => {
    const [was, is] = [old.get(item), young.get(item)];
    const [neededBefore, neededAfter] = [was?.needed ?? 0, is?.needed ?? 0];
    const [toBuyBefore, toBuyAfter] = [was?.toBuy ?? 0, is?.toBuy ?? 0];
    if (neededBefore === neededAfter && toBuyBefore === toBuyAfter) return [];
    return [{ item, unit: "", neededBefore, neededAfter, toBuyBefore, toBuyAfter }];
  });
}

function cutChanges(before: Whole, after: Whole): CutChange[] {
  const cutMm = ({ layout }: Whole) => new Map(layout.routes.runs.map(({ run, cut }) => [run, cut.cutMm]));
  const [old, young] = [cutMm(before), cutMm(after)];
  return bothKeys(old, young).flatMap((run): CutChange[] => {
    const [beforeMm, afterMm] = [old.get(run), young.get(run)];
    if (beforeMm === afterMm) return [];
    return [
      {
        run,
        ...(beforeMm === undefined ? {} : { beforeMm }),
        ...(afterMm === undefined ? {} : { afterMm }),
      },
    ];
  });
}

function wireChanges(before: Whole, after: Whole): PartChange[] {
  const metres = ({ layout }: Whole) =>
    new Map(
      layout.parts.wire.map(({ item, neededMm, buy }) => [
        item,
        {
          needed: neededMm / 1000,
          toBuy: buy.reduce((sum, { lengthMm, times }) => sum + (lengthMm * times) / 1000, 0),
        },
      ]),
    );
  const [old, young] = [metres(before), metres(after)];
  return bothKeys(old, young).flatMap((item): PartChange[] => {
    const [was, is] = [old.get(item), young.get(item)];
    const line = {
      neededBefore: was?.needed ?? 0,
      neededAfter: is?.needed ?? 0,
      toBuyBefore: was?.toBuy ?? 0,
      toBuyAfter: is?.toBuy ?? 0,
    };
    const same =
      Math.abs(line.neededBefore - line.neededAfter) < 1e-6 &&
      Math.abs(line.toBuyBefore - line.toBuyAfter) < 1e-6;
    return same ? [] : [{ item, unit: "m", ...line }];
  });
}
