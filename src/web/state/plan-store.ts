import type { Edit } from "../../core/plan/edits/edit.js";
import { type Edited, editSound } from "../../core/plan/edits/edit-sound.js";
import type { EditProblem } from "../../core/plan/edits/problem.js";
import { type ReadPlan, readPlan } from "../../core/plan/read-text.js";
import type { ReadProblem } from "../../core/plan/source/problem.js";
import type { FigureMaker } from "./figures/figure-maker.js";
import type { FiguresOutcome, ReadText } from "./figures/messages.js";
import { withReader } from "./full-reader.js";
import type { History, LoggedStep } from "./keep/history.js";
import type { Keeper } from "./keep/keeper.js";
import type { OpenedPlan } from "./keep/open-kept.js";
import { Queue, type QueueChange } from "./keep/queue.js";
import type { PlanRecord, StepAbout } from "./keep/records.js";
import type { Keeping, Notice, PlanState, ReadOnly } from "./plan-state.js";
import { isMarked, markOf, type TextMark } from "./text/sum.js";
import { Turns } from "./turns.js";

/** Edits are taken, or why they are not. */
export type Taken =
  | { readonly ok: true }
  | Extract<Edited, { readonly ok: false }>
  | { readonly ok: false; readonly readOnly: ReadOnly };

/** A text being typed, and the one it is made of. */
export interface Draft {
  readonly base: string;
  readonly typed: string;
}

/** By plan, so that one who looks at another plan and comes back finds it. */
const drafts = new Map<string, Draft>();

export interface PlanStoreParts {
  readonly keeper: Keeper;
  readonly figures: FigureMaker;
  readonly tellTabs: () => void;
  readonly now: () => number;
}

/**
 * The plan that is open. Its text is the truth; everything else follows from it. A change shows at once, is kept at once, and its
 * figures follow from beside the page. Views read `state` through `usePlan` and change it through `edit` and nothing else.
 */
export class PlanStore {
  private readonly listeners = new Set<() => void>();
  private readonly queue: Queue;
  private readonly history: History;
  private readonly turns = new Turns(() => this.set({ keeping: this.keepingShown() }));
  /** How far the queue has got. */
  private keeping: Keeping;
  private current: PlanState;
  /** The text as it also lies outside the browser, as far as is known. */
  private elsewhere: TextMark | undefined;
  /** How the plan came here. */
  readonly made: StepAbout | undefined;

  /** @throws FullYamlMissing where the text shown wants the full reader; nothing has begun then. */
  constructor(
    opened: OpenedPlan,
    private readonly parts: PlanStoreParts,
    readOnly?: ReadOnly,
    notice?: Notice,
  ) {
    const { text, record, moments, ways, brokenAfter } = opened;
    this.history = opened.history;
    this.made = opened.made;
    this.elsewhere = opened.elsewhere;
    this.keeping = { is: parts.keeper.lasting ? "kept" : "unkept" };
    this.current = {
      text,
      reading: readPlan(text),
      outcome: undefined,
      fresh: false,
      record,
      moments,
      keeping: this.keeping,
      readOnly: brokenAfter === undefined ? readOnly : { because: "broken history", step: brokenAfter },
      ...ways,
      notice,
      triedOut: undefined,
    };
    this.queue = new Queue({
      keeper: parts.keeper,
      history: this.history,
      now: parts.now,
      record,
      text,
      ways,
      changed: (change) => this.queueChanged(change),
    });
    void this.workOut();
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  readonly get = (): PlanState => this.current;

  /** What is being typed in the view of the text and not taken over yet. */
  get draft(): Draft | undefined {
    return drafts.get(this.current.record.id);
  }

  set draft(draft: Draft | undefined) {
    if (draft) drafts.set(this.current.record.id, draft);
    else drafts.delete(this.current.record.id);
  }

  /** So many states of the history, the last one first. */
  newestSteps(record: PlanRecord, count: number): Promise<readonly LoggedStep[]> {
    return this.history.newest(record, count);
  }

  /**
   * Makes edits and keeps them; all or none. What is wrong with them is answered at once, and then nothing has changed. Edits that want
   * the full YAML reader while it is on its way are taken, and made once it is here; what is wrong with them is a notice then.
   */
  edit(edits: readonly Edit[]): Taken {
    const { readOnly } = this.current;
    if (readOnly) return { ok: false, readOnly };
    let answer: Taken = { ok: true };
    let late = false;
    const answered = (taken: Taken) => {
      if (!late) answer = taken;
      else if ("problem" in taken) this.set({ notice: { about: "not made", problem: taken.problem } });
    };
    this.turns.take(
      () => answered(this.make(edits)),
      () => answered(refused("reader missing", edits)),
    );
    late = true;
    return answer;
  }

  private make(edits: readonly Edit[]): Taken {
    const { reading } = this.current;
    if (!reading.ok) return refused("plan unsound", edits, reading.problems);
    const edited = editSound(reading, edits);
    if (!edited.ok) return edited;
    const { text, plan, document } = edited;
    if (text !== this.current.text) this.change(text, { ok: true, plan, document }, { did: "edit", edits });
    return { ok: true };
  }

  /** What edits would give, made nowhere: for a preview. */
  async wouldGive(edits: readonly Edit[]): Promise<Edited | undefined> {
    return withReader(() => this.wouldGiveNow(edits));
  }

  /** As `wouldGive`, on the spot. @throws FullYamlMissing */
  wouldGiveNow(edits: readonly Edit[]): Edited | undefined {
    const { reading } = this.current;
    return reading.ok ? editSound(reading, edits) : undefined;
  }

  /** Figures of an edit not made. */
  figuresOf(edited: ReadText): Promise<FiguresOutcome> {
    return this.parts.figures.whatIf(edited);
  }

  /**
   * Takes a whole text, sound or not, as typed by hand.
   * @param base The text it was made of: what has come in since is merged, as another tab's edits are.
   */
  setText(text: string, base = this.current.text): void {
    if (this.current.readOnly || text === this.current.text) return;
    this.takeText(text, { did: "text" }, base);
  }

  undo(): void {
    if (!this.current.readOnly) this.turns.take(() => this.queue.undo(), nothing);
  }

  redo(): void {
    if (!this.current.readOnly) this.turns.take(() => this.queue.redo(), nothing);
  }

  /** Makes an earlier state the newest. Nothing between is lost. */
  async restore(step: number): Promise<void> {
    const text = await this.textOf(step).catch(() => undefined);
    if (this.current.readOnly || text === this.current.text) return;
    if (text === undefined) this.set({ notice: { about: "not made" } });
    else this.takeText(text, { did: "restore", step });
  }

  /** The text of any state of the history, or undefined where it can't be put together. */
  textOf(step: number): Promise<string | undefined> {
    return this.history.textOf(step);
  }

  async nameMoment(step: number, name: string): Promise<void> {
    const { record } = this.current;
    await this.parts.keeper.nameMoment({ plan: record.id, step, name: name.trim(), at: this.parts.now() });
    await this.follow();
    this.parts.tellTabs();
  }

  /** Notes that a text, which was on screen when saving began, now lies in a file. */
  async noteSaved(file: string, text: string): Promise<void> {
    const mark = markOf(text);
    this.elsewhere = mark;
    await this.settled();
    // edits may have come while the person chose where to
    const step = await this.history.findBack(
      this.current.record.head,
      ({ length, sum }) => length === mark.length && sum === mark.sum,
    );
    if (!step) return;
    const record = await this.parts.keeper.saved({ step: step.no, at: this.parts.now(), file });
    if (record) this.queue.recordChanged(record);
  }

  /** Would something be lost if the page were closed now? */
  atRisk(): boolean {
    const { keeping, text, readOnly } = this.current;
    if (this.draft || this.turns.wait || keeping.is === "keeping" || keeping.is === "failed") return true;
    const elsewhere = this.elsewhere !== undefined && isMarked(this.elsewhere, text);
    return keeping.is === "unkept" && readOnly === undefined && !elsewhere;
  }

  /** Another tab has changed the plan. */
  follow(): Promise<void> {
    return this.queue.follow();
  }

  /** Tries again what could not be kept. */
  retry(): void {
    this.queue.retry();
  }

  /** When everything so far is kept (or could not be). */
  async settled(): Promise<void> {
    await this.turns.over();
    await this.queue.settled();
  }

  dismissNotice(): void {
    this.set({ notice: undefined });
  }

  /** Shows figures of a change that is not made; `undefined` shows those of the plan again. */
  tryOut(triedOut: PlanState["triedOut"]): void {
    this.set({ triedOut });
  }

  /** @param before The text it was made of; the one shown when its turn comes, where it was made of that. */
  private takeText(text: string, about: StepAbout, before?: string): void {
    this.turns.take(
      () => this.change(text, readPlan(text), about, before),
      () => this.set({ notice: { about: "not made" } }),
    );
  }

  private change(text: string, reading: ReadPlan, about: StepAbout, before = this.current.text): void {
    this.show(text, reading, undefined);
    const name = reading.ok ? reading.plan.name : this.current.record.name;
    this.queue.keep({ before, after: text, about, name });
  }

  private show(text: string, reading: ReadPlan, notice: Notice | undefined): void {
    const known = reading.ok ? this.parts.figures.knownOf(text) : unreadable;
    this.set({
      text,
      reading,
      triedOut: undefined,
      ...(known ? { outcome: known, fresh: true } : { fresh: false }),
      ...(notice ? { notice } : {}),
    });
    if (!known) void this.workOut();
  }

  private async workOut(): Promise<void> {
    const { text, reading } = this.current;
    const outcome = reading.ok ? await this.parts.figures.current({ text, plan: reading.plan }) : unreadable;
    if (outcome && this.current.text === text) this.set({ outcome, fresh: true });
  }

  private queueChanged({ record, ways, text, keeping, notice, moments, wrote }: QueueChange): void {
    if (text !== undefined && text !== this.current.text) this.show(text, readPlan(text), notice);
    else if (notice) this.set({ notice });
    this.keeping = keeping;
    this.set({
      record,
      keeping: this.keepingShown(),
      ...(moments ? { moments } : {}),
      ...ways,
    });
    if (wrote) this.parts.tellTabs();
  }

  /** What waits for its turn is not kept yet. */
  private keepingShown(): Keeping {
    return this.turns.wait && this.keeping.is !== "failed" ? { is: "keeping" } : this.keeping;
  }

  private set(change: Partial<PlanState>): void {
    this.current = { ...this.current, ...change };
    for (const listener of this.listeners) listener();
  }
}

const nothing = () => {};
const unreadable = { is: "unreadable" } as const;

function refused(
  code: EditProblem["code"],
  edits: readonly Edit[],
  problems?: readonly ReadProblem[],
): Taken {
  const edit = edits[0] ?? { edit: "remove", at: "" };
  return { ok: false, problem: { code, edit, ...(problems === undefined ? {} : { problems }) } };
}
