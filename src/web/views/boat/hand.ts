import type { Shows } from "../../../core/plan/model/plan.js";
import type { PlanStore } from "../../state/plan-store.js";
import { type Drag, dragged, dragOf } from "./drag.js";
import { movedPlan } from "./model/moved-plan.js";
import type { Spot2, ViewName } from "./model/paper.js";
import { placeEdits } from "./model/place-edits.js";
import type { BoatScene, Moves } from "./model/scene.js";
import type { BoatThing } from "./model/things.js";
import type { Preview } from "./preview.js";

/** A moment without a key after which what was nudged counts as put down [ms]. */
const restMs = 500;

/** What the hand moves about in, and who hears of what was put down. */
export interface HandAround {
  readonly scene: BoatScene;
  readonly shows: Shows;
  /** `taken`: it was written into the plan. */
  readonly put: (drag: Drag, taken: boolean) => void;
}

/**
 * What is dragged or nudged, shown at every step, written into the plan once when it is put down. It stands beside the view and not in
 * its state: of all that is on screen only what shows the thing in the hand is drawn anew at a step.
 */
export class Hand {
  private readonly listeners = new Set<() => void>();
  private live:
    | { drag: Drag; readonly others: readonly BoatThing[]; byMm: Spot2; readonly names: string }
    | undefined;
  private timer: ReturnType<typeof setTimeout> | undefined;

  constructor(
    private readonly store: PlanStore,
    private readonly preview: Pick<Preview, "getReady" | "follow" | "stop">,
    private around: HandAround,
  ) {}

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  readonly now = (): Drag | undefined => this.live?.drag;

  /** Names of all that moves along, a line each: the same from one step to the next. */
  readonly names = (): string | undefined => this.live?.names;

  movesIn(around: HandAround): void {
    this.around = around;
  }

  /** The hand is on the drawing: what the figures of a drag need is fetched, if it has not been yet. */
  readonly expect = (): void => void this.preview.getReady();

  start(thing: BoatThing, view: ViewName, marked: readonly BoatThing[]): boolean {
    this.drop();
    if (this.store.get().readOnly || !this.take(thing, view, "pointer", marked)) return false;
    this.tell();
    return true;
  }

  move(byMm: Spot2, withinM: number): void {
    const { live } = this;
    if (live) this.show(live, dragged(this.around.scene, live.drag, byMm, live.others, withinM));
  }

  nudge(thing: BoatThing, view: ViewName, byMm: Spot2, marked: readonly BoatThing[]): void {
    if (this.store.get().readOnly) return;
    const going = this.live?.drag;
    if (going?.by !== "keys" || going.lead.name !== thing.name || going.view !== view) {
      this.drop();
      if (!this.take(this.around.scene.byName.get(thing.name) ?? thing, view, "keys", marked)) return;
    }
    const { live } = this;
    if (!live) return;
    live.byMm = [live.byMm[0] + byMm[0], live.byMm[1] + byMm[1]];
    this.show(live, dragged(this.around.scene, live.drag, live.byMm, live.others, 0));
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.drop(), restMs);
  }

  /** Puts it down where it is. */
  readonly drop = (): void => {
    const done = this.live?.drag;
    if (!done) return;
    const moved = done.at.some((value, axis) => Math.abs(value - (done.from[axis] ?? value)) > 1e-6);
    const taken = moved && this.place(done.moves);
    this.cancel();
    if (moved) this.around.put(done, taken);
  };

  /** Puts it back where it was. */
  readonly cancel = (): void => {
    clearTimeout(this.timer);
    this.live = undefined;
    this.preview.stop();
    this.tell();
  };

  /** Writes where pieces are to be. @returns whether they could be. */
  place(moves: Moves): boolean {
    const { scene, shows } = this.around;
    const edits = placeEdits(scene, moves, shows);
    return edits.length > 0 && this.store.edit(edits).ok;
  }

  private take(thing: BoatThing, view: ViewName, by: Drag["by"], marked: readonly BoatThing[]): boolean {
    const begun = dragOf(thing, view, by, marked);
    if (!begun) return false;
    const { others, ...drag } = begun;
    this.live = { drag, others, byMm: [0, 0], names: namesOf(drag) };
    return true;
  }

  private show(live: NonNullable<Hand["live"]>, next: Drag): void {
    const names = namesOf(next);
    this.live = { ...live, drag: next, names };
    const { scene, shows } = this.around;
    this.preview.follow({
      edits: () => placeEdits(scene, next.moves, shows),
      plan: () => movedPlan(scene, next.moves, shows),
    });
    this.tell();
  }

  private tell(): void {
    for (const listener of this.listeners) listener();
  }
}

const namesOf = ({ moves }: Drag) => [...moves.keys()].join("\n");
