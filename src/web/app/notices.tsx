import { type ReactNode, useSyncExternalStore } from "react";
import { useProblemWords } from "../parts/use-problem-words.js";
import type { ReadOnly } from "../state/plan-state.js";
import { isTakenOver, takenOver } from "../state/shelf.js";
import { takeIn } from "../state/take-in.js";
import { BackUpNotice } from "./back-up-notice.js";
import { usePlan, usePlanStore, useWords } from "./context.js";
import { goTo } from "./place.js";

/** What a person should know about their plan just now: read only and why, another tab, a failure to keep. */
export function Notices() {
  const words = useWords().keeping;
  const isGivenUp = useSyncExternalStore(hearTakenOver, isTakenOver);
  const readOnly = usePlan((state) => state.readOnly);
  const keeping = usePlan((state) => state.keeping);
  const notice = usePlan((state) => state.notice);
  return (
    <>
      {isGivenUp && (
        <Notice urgent>
          <p>{words.otherTabTakesOver}</p>
        </Notice>
      )}
      {readOnly && <ReadOnlyNotice readOnly={readOnly} />}
      {keeping.is === "failed" && <FailedNotice reason={keeping.reason} />}
      {notice && <PlanNotice />}
      <BackUpNotice />
    </>
  );
}

function hearTakenOver(listener: () => void): () => void {
  addEventListener(takenOver, listener);
  return () => removeEventListener(takenOver, listener);
}

function Notice({ urgent = false, children }: { urgent?: boolean; children: ReactNode }) {
  return (
    <aside className="notice" role={urgent ? "alert" : "status"}>
      {children}
    </aside>
  );
}

function ReadOnlyNotice({ readOnly }: { readOnly: ReadOnly }) {
  const words = useWords();
  const store = usePlanStore();
  const reason = {
    newer: words.keeping.newer,
    damaged: words.keeping.damaged,
    "looked at": words.shell.readOnly,
    "broken history": words.keeping.brokenHistory(readOnly.because === "broken history" ? readOnly.step : 0),
  }[readOnly.because];
  const mend = async () => {
    const { text, record } = store.get();
    const { id } = await takeIn(text, { did: "made", from: "copy", name: record.name }, record.name);
    goTo({ at: "plan", plan: id, view: "text" });
  };
  return (
    <Notice>
      <p>{reason}</p>
      {readOnly.because !== "newer" && (
        <>
          <button type="button" onClick={() => void mend()}>
            {words.keeping.makeCopy}
          </button>
          <p className="hint">{words.keeping.makeCopyHint}</p>
        </>
      )}
    </Notice>
  );
}

function FailedNotice({ reason }: { reason: string }) {
  const words = useWords();
  const store = usePlanStore();
  return (
    <Notice urgent>
      <p>{words.keeping.failedWhy(reason)}</p>
      <button type="button" onClick={() => store.retry()}>
        {words.shell.tryAgain}
      </button>
    </Notice>
  );
}

function PlanNotice() {
  const { keeping, shell } = useWords();
  const store = usePlanStore();
  const { words: say } = useProblemWords();
  const notice = usePlan((state) => state.notice);
  if (!notice) return null;
  const close = () => store.dismissNotice();
  const said = {
    merged: keeping.merged,
    "other tab": keeping.fromOtherTab,
    "undo moved": keeping.undoMoved,
    gone: keeping.noPlanHere,
    "both kept": keeping.bothKept,
    "not made": notice.about === "not made" && notice.problem ? say.edit(notice.problem) : keeping.notMade,
    "brought up to date": keeping.olderFormat(notice.about === "brought up to date" ? notice.from : 0),
  }[notice.about];
  const takeMine = () => {
    if (notice.about === "both kept") void store.restore(notice.mine);
    close();
  };
  return (
    <Notice>
      <p>{said}</p>
      {notice.about === "both kept" && (
        <button type="button" onClick={takeMine}>
          {keeping.takeMine}
        </button>
      )}
      <button type="button" className="quiet" onClick={close}>
        {notice.about === "both kept" ? keeping.leaveIt : shell.close}
      </button>
    </Notice>
  );
}
