import type { ShelfDatabase } from "./database.js";
import { newStep } from "./history.js";
import {
  type Kept,
  keepStep,
  loadPlan,
  moveHead,
  nameMoment,
  newerSteps,
  noteSaved,
  type StoredPlan,
} from "./plans.js";
import type { MomentRecord, PlanRecord, StepAbout, StepRecord } from "./records.js";

export interface StepToKeep {
  /** State it is made on. */
  readonly head: number;
  readonly at: number;
  readonly about: StepAbout;
  readonly before: string;
  readonly after: string;
  /** Name of the plan after it. */
  readonly name: string;
  readonly beside?: boolean;
}

/** Where the states of one plan are kept. */
export interface Keeper {
  readonly lasting: boolean;
  load(): Promise<StoredPlan | undefined>;
  newer(after: number): Promise<StoredPlan | undefined>;
  keep(step: StepToKeep): Promise<Kept>;
  move(move: {
    readonly from: number;
    readonly to: number;
    readonly name: string;
    readonly at: number;
  }): Promise<Kept>;
  saved(saved: {
    readonly step: number;
    readonly at: number;
    readonly file: string;
  }): Promise<PlanRecord | undefined>;
  nameMoment(moment: MomentRecord): Promise<void>;
}

/** Keeps in the browser's database; each call is one transaction, and is over when that is complete. */
export function databaseKeeper(database: ShelfDatabase, id: string): Keeper {
  return {
    lasting: true,
    load: () => loadPlan(database, id),
    newer: (after) => newerSteps(database, id, after),
    keep: (step) => keepStep(database, id, step),
    move: (move) => moveHead(database, id, move),
    saved: (saved) => noteSaved(database, id, saved),
    nameMoment: (moment) => nameMoment(database, moment),
  };
}

/** Keeps in memory only: where the browser refuses to store, and for files that are only looked at. */
export function memoryKeeper(given: {
  readonly id: string;
  readonly name: string;
  readonly text: string;
  readonly about: StepAbout;
  readonly at: number;
}): Keeper {
  const { id, name, text, about, at } = given;
  const steps: StepRecord[] = [newStep({ plan: id, no: 1, parent: 0, at, about, before: "", after: text })];
  const moments = new Map<number, MomentRecord>();
  let record: PlanRecord = { id, name, madeAt: at, changedAt: at, head: 1, tip: 1, steps: 1 };
  const stored = (after: number): StoredPlan => ({
    record,
    steps: steps.filter(({ no }) => no > after),
    moments: [...moments.values()],
  });
  return {
    lasting: false,
    load: async () => stored(0),
    newer: async (after) => stored(after),
    keep: async (given) => {
      const no = record.steps + 1;
      const step = newStep({ ...given, plan: id, no, parent: given.head });
      steps.push(step);
      record = {
        ...record,
        steps: no,
        changedAt: given.at,
        ...(given.beside ? {} : { head: no, tip: no, name: given.name }),
      };
      return { is: "kept", record, step };
    },
    move: async ({ to, name: now, at: when }) => {
      record = { ...record, head: to, name: now, changedAt: when };
      return { is: "kept", record };
    },
    saved: async (saved) => {
      record = { ...record, saved };
      return record;
    },
    nameMoment: async (moment) => {
      if (moment.name === "") moments.delete(moment.step);
      else moments.set(moment.step, moment);
    },
  };
}
