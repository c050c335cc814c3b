import { useCallback, useEffect, useRef, useState } from "react";
import type { Step } from "../../../core/work/step.js";
import { noteEdits, undoEdits } from "../../../core/work/work-edits.js";
import type { StepDrawing } from "../../../drawing/work/step-drawing.js";
import { usePlan, usePlanStore, usePreferences, useShows } from "../../app/context.js";
import type { CloseIt } from "../../garage/close-project.js";
import type { WorkShown } from "../../garage/messages.js";
import { ownersMinutes, useForeman } from "../../garage/use-foreman.js";
import { useMadeEdits } from "../../garage/use-made-edits.js";

export interface Work {
  readonly work: WorkShown | undefined;
  readonly problem: string | undefined;
  /** Ticks a step. Answers whether it was kept. */
  readonly tick: (step: string) => Promise<boolean>;
  /** Keeps a note or a photo with a step, ticked or not, at once. Answers whether it was kept. */
  readonly note: (step: string, said: { readonly note?: string; readonly photo?: string }) => boolean;
  /** What of a step is better drawn than told; nothing where the plan has changed meanwhile. */
  readonly draw: (step: Step) => Promise<readonly StepDrawing[]>;
  /** Takes back the last tick of a step. */
  readonly untick: (step: string) => void;
  readonly finish: CloseIt;
}

/** The work on the open plan, worked out anew when the plan changes, and each minute while something rests. */
export function useWork(): Work {
  const ask = useForeman();
  const store = usePlanStore();
  const text = usePlan((state) => state.text);
  const [work, setWork] = useState<WorkShown>();
  const { problem, say, make } = useMadeEdits();
  const saying = useRef(say);
  saying.current = say;
  const minute = useMinute(work?.rests.some(({ leftMin }) => (leftMin ?? 0) > 0) === true);
  useEffect(() => {
    let wanted = true;
    const load = async () => {
      const outcome = await ask({ ask: "work", text, nowMin: minute });
      if (!wanted) return;
      if (outcome.is === "work") setWork(outcome.work);
      else saying.current(outcome);
    };
    void load();
    return () => {
      wanted = false;
    };
  }, [ask, text, minute]);
  const { lengths, conductors, paper } = useShows();
  const [{ language }] = usePreferences();
  const draw = useCallback(
    async (step: Step) => {
      const shows = { lengths, conductors, paper };
      const room = isDesk() ? deskRoom : phoneRoom;
      const outcome = await ask({ ask: "drawings", text: store.get().text, step, shows, room, language });
      return outcome.is === "drawings" ? outcome.drawings : [];
    },
    [ask, store, lengths, conductors, paper, language],
  );
  return {
    work,
    problem,
    draw,
    tick: async (step) =>
      make(await ask({ ask: "tick", text: store.get().text, nowMin: ownersMinutes(), step })),
    note: (step, { note, photo }) => {
      const { reading } = store.get();
      if (!reading.ok) return false;
      const edits = noteEdits(reading.plan.work, step, {
        nowMin: ownersMinutes(),
        ...(note === undefined ? {} : { note }),
        ...(photo === undefined ? {} : { photos: [{ file: photo }] }),
      });
      return make({ is: "edits", edits });
    },
    untick: (step) => {
      const { reading } = store.get();
      if (reading.ok) make({ is: "edits", edits: undoEdits(reading.plan, step) });
    },
    finish: async (name, shelf) => {
      make(await ask({ ask: "finish", text: store.get().text, nowMin: ownersMinutes(), name, shelf }));
    },
  };
}

/** Is there room for the list beside the step? As in garage.css. */
export const isDesk = (): boolean => matchMedia("(min-width: 64rem)").matches;

/** What a drawing may take, so that its words are still read where it is shown. */
const phoneRoom = { widthMm: 100, mostMm: 76 } as const;
const deskRoom = { widthMm: 150, mostMm: 90 } as const;

/** The minute it is; moves on only while `running`. */
function useMinute(running: boolean): number {
  const [minute, setMinute] = useState(ownersMinutes);
  useEffect(() => {
    if (!running) return;
    const timer = setInterval(() => setMinute(ownersMinutes()), 10_000);
    return () => clearInterval(timer);
  }, [running]);
  return minute;
}
