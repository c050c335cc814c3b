import { useEffect, useState } from "react";
import { usePlan, usePlanStore } from "../../app/context.js";
import type { Draft } from "../../state/plan-store.js";
import { mergeTexts } from "../../state/text/merge.js";
import { useWordsOfLog } from "../../words/log.js";

/**
 * The plan as its file holds it, to read, copy, and edit by hand. A text that can't be read is kept all the same, and says why. What is
 * typed waits in the store until it is taken over or left, whatever view is open and whatever comes in meanwhile.
 */
export function View() {
  const words = useWordsOfLog();
  const store = usePlanStore();
  const text = usePlan((state) => state.text);
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const [, redraw] = useState(0);
  const draft = onTop(store.draft, text);
  useEffect(() => {
    store.draft = draft;
  }, [store, draft]);
  const put = (next: Draft | undefined) => {
    store.draft = next?.typed === text ? undefined : next;
    redraw((count) => count + 1);
  };
  return (
    <div className="text-view">
      <h2>{words.views.names.text}</h2>
      <textarea
        aria-label={words.views.names.text}
        value={draft?.typed ?? text}
        readOnly={readOnly}
        spellCheck={false}
        dir="ltr"
        onChange={(event) => put({ base: draft?.base ?? text, typed: event.target.value })}
      />
      {!readOnly && (
        <p className="row">
          <button
            type="button"
            disabled={!draft}
            onClick={() => draft && store.setText(draft.typed, draft.base)}
          >
            {words.log.takeText}
          </button>
          <button type="button" className="quiet" disabled={!draft} onClick={() => put(undefined)}>
            {words.shell.cancel}
          </button>
        </p>
      )}
    </div>
  );
}

/** What is typed, on top of the text as it is now where both go together; else on the one it was begun on. */
function onTop(draft: Draft | undefined, text: string): Draft | undefined {
  if (!draft || draft.base === text) return draft;
  const typed = mergeTexts(draft.base, draft.typed, text);
  if (typed === text) return undefined;
  return typed === undefined ? draft : { base: text, typed };
}
