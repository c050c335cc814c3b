import type { Figures } from "../../../core/figures-types.js";
import type { WorkOutHeld } from "../../../core/held-figures.js";
import type { Edit } from "../../../core/plan/edits/edit.js";
import type { Plan } from "../../../core/plan/model/plan.js";
import { FullYamlMissing } from "../../../core/plan/source/full.js";
import type { SettleAnswer, SettleRequest } from "../../state/figures/messages.js";
import { startFiguresWorker } from "../../state/figures/start-worker.js";
import { bringReader } from "../../state/full-reader.js";
import { figuresShown } from "../../state/plan-state.js";
import type { PlanStore } from "../../state/plan-store.js";

/** Where things are at one step of a drag: the edits that would write it, and the plan it would give, where that is known without them. */
export interface Step {
  readonly edits: () => readonly Edit[];
  readonly plan: () => Plan | undefined;
}

/** Where figures take longer than this in a frame, nothing is settled before the hand rests: what is settled brings its own work into a frame [ms]. */
const lightMs = 8;
/** Figures that take longer than this are too heavy for a frame: they wait until the hand rests [ms]. */
const heavyMs = 45;
/** Before the first is measured: a guess, for each piece of gear and each run [ms]. */
const guessMs = 0.05;
const warmRuns = 6;
/** A hand that is still for so long rests [ms]. */
const restMs = 120;
/** While the hand moves nothing is settled anew sooner than this after the last time: the worker and its answer take from the frames meanwhile [ms]. */
const paceMs = 1000;

/**
 * Figures follow what is in the hand. Lengths, drops, currents, heat and findings are worked out at each step, in the frame itself, with sizes, ratings and
 * outings held; these are settled anew beside the page, as often as it has room for them and at the latest when the hand rests. In a very large boat
 * all figures wait for that, so that the hand does not wait for them.
 */
export class Preview {
  private worker: Worker | undefined;
  private workOutHeld: WorkOutHeld | undefined;
  /** Figures whose sizes, ratings and outings are held. */
  private held: Figures | undefined;
  private step: Step | undefined;
  private underWay: { readonly no: number; readonly text: string; readonly step: Step } | undefined;
  private count = 0;
  /** What a step in the frame takes lately, and at its best [ms]; 0: not known yet. */
  private usualMs = 0;
  private bestMs = 0;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private answeredAt = Number.NEGATIVE_INFINITY;
  /** What the worker need not send again. */
  private holds: "last answer" | "plan" | "nothing" = "nothing";
  /** The plan of the step looked at last. */
  private planned: { readonly step: Step; readonly plan: Plan } | undefined;
  /** The text in which the thing was taken into the hand. */
  private begunOn = "";
  private movedAt = 0;

  private closed = false;
  private ready: Promise<void> | undefined;

  constructor(private readonly store: PlanStore) {}

  /** Fetches what is needed in the frame before the first thing is taken in the hand, or at the latest then. */
  getReady(): Promise<void> {
    this.ready ??= this.fetchFigures();
    return this.ready;
  }

  private async fetchFigures(): Promise<void> {
    const { rememberingWorkOutHeld } = await import("../../../core/held-figures.js");
    this.workOutHeld = rememberingWorkOutHeld();
    this.warmUp(warmRuns);
  }

  /** The first runs of any code are slow: better before the first drag than in it. */
  private warmUp(runs: number): void {
    const held = figuresShown(this.store.get());
    if (runs === 0 || !held || guessOf(held) > heavyMs) return;
    setTimeout(() => {
      if (this.closed || this.step) return;
      this.workOutHeld?.(held.plan.source, held);
      this.warmUp(runs - 1);
    }, 60);
  }

  follow(step: Step): void {
    void this.getReady();
    if (this.step === undefined) this.begin();
    this.step = step;
    this.inFrame(step);
    this.movedAt = performance.now();
    if (this.usualMs <= lightMs && this.movedAt - this.answeredAt > paceMs) this.next();
    this.nextAtRest();
  }

  private begin(): void {
    const { text, fresh } = this.store.get();
    this.begunOn = text;
    this.holds = fresh ? "plan" : "nothing";
  }

  /** One timer for a whole drag: setting one at every step costs more than looking at the time when it is over. */
  private nextAtRest(inMs = restMs): void {
    this.timer ??= setTimeout(() => {
      this.timer = undefined;
      const leftMs = this.movedAt + restMs - performance.now();
      if (leftMs > 0) this.nextAtRest(leftMs);
      else this.next();
    }, inMs);
  }

  private noTimer(): void {
    clearTimeout(this.timer);
    this.timer = undefined;
  }

  /** What is under way is no longer wanted; the plan's own figures show again. */
  stop(): void {
    this.noTimer();
    this.step = undefined;
    this.planned = undefined;
    this.held = undefined;
    // a moment in which the machine was busy does not count for the next drag
    this.usualMs = Math.min(this.usualMs, this.bestMs);
    this.count += 1;
    if (this.store.get().triedOut) this.store.tryOut(undefined);
  }

  close(): void {
    this.closed = true;
    this.stop();
    this.worker?.terminate();
    this.worker = undefined;
    this.underWay = undefined;
  }

  private inFrame(step: Step, moving = true): void {
    const held = this.held ?? figuresShown(this.store.get());
    if (!this.workOutHeld || !held) return;
    if (this.usualMs === 0) this.usualMs = this.bestMs = guessOf(held);
    if (moving && this.usualMs > heavyMs) return;
    const begun = performance.now();
    const plan = this.planOf(step);
    const figures = plan && this.workOutHeld(plan, held);
    if (!figures) return;
    this.held ??= held;
    this.store.tryOut(figures);
    const tookMs = performance.now() - begun;
    this.bestMs = Math.min(this.bestMs, tookMs);
    this.usualMs = 0.95 * this.usualMs + 0.05 * Math.min(tookMs, 2 * heavyMs);
  }

  private planOf(step: Step): Plan | undefined {
    if (this.planned?.step === step) return this.planned.plan;
    const plan = step.plan() ?? this.writtenPlan(step.edits());
    this.planned = plan && { step, plan };
    return plan;
  }

  private writtenPlan(edits: readonly Edit[]): Plan | undefined {
    try {
      const edited = this.store.wouldGiveNow(edits);
      return edited?.ok ? edited.plan : undefined;
    } catch (error) {
      if (!(error instanceof FullYamlMissing)) throw error;
      void bringReader().then(
        () => this.step && this.nextAtRest(),
        () => undefined,
      );
      return undefined;
    }
  }

  private next(): void {
    const { step } = this;
    if (this.underWay || !step) return;
    const plan = step.edits().length > 0 && this.planOf(step);
    if (!plan) return;
    this.count += 1;
    const { text } = this.store.get();
    const request: SettleRequest = { no: this.count, plan, holds: this.holdsNow() };
    this.underWay = { no: this.count, text, step };
    this.started().postMessage(request);
  }

  private holdsNow(): SettleRequest["holds"] {
    if (this.holds !== "plan") return this.holds;
    const { text, reading } = this.store.get();
    // another tab may have changed the plan meanwhile
    return reading.ok && text === this.begunOn ? { text, plan: reading.plan } : "nothing";
  }

  private started(): Worker {
    if (this.worker) return this.worker;
    const worker = startFiguresWorker();
    worker.onmessage = ({ data }: MessageEvent<SettleAnswer>) => this.answered(data);
    worker.onerror = (event) => {
      // the figures shown stay those held; the fault itself is told when the edit is made
      event.preventDefault();
      this.worker?.terminate();
      this.worker = undefined;
      this.underWay = undefined;
    };
    this.worker = worker;
    return worker;
  }

  private answered({ no, settled }: SettleAnswer): void {
    const { underWay, step } = this;
    this.underWay = undefined;
    this.answeredAt = performance.now();
    const held = this.held ?? figuresShown(this.store.get());
    if (!underWay || !step || underWay.no !== no || no !== this.count) return;
    if (underWay.text !== this.store.get().text || !held) {
      this.holds = "nothing";
      return;
    }
    this.held = { ...held, ...settled };
    this.holds = "last answer";
    if (step === underWay.step) {
      this.noTimer();
      this.inFrame(step, false);
    }
    // the hand is elsewhere by now: its next step takes these sizes, and when it rests it is asked for anew
    else this.nextAtRest();
  }
}

function guessOf({ plan }: Figures): number {
  return guessMs * (plan.gear.length + plan.runs.length);
}
