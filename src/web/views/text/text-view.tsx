import { useEffect, useState } from "react";
import { usePlan, usePlanStore, useWords } from "../../app/context.js";

/** The plan as its file holds it, to read, copy, and edit by hand. A text that can't be read is kept all the same, and says why. */
export function View() {
  const words = useWords();
  const store = usePlanStore();
  const text = usePlan((state) => state.text);
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const [typed, setTyped] = useState(text);
  useEffect(() => setTyped(text), [text]);
  return (
    <div className="text-view">
      <h2>{words.views.names.text}</h2>
      <textarea
        aria-label={words.views.names.text}
        value={typed}
        readOnly={readOnly}
        spellCheck={false}
        dir="ltr"
        onChange={(event) => setTyped(event.target.value)}
      />
      {!readOnly && (
        <p className="row">
          <button type="button" disabled={typed === text} onClick={() => store.setText(typed)}>
            {words.log.takeText}
          </button>
          <button type="button" className="quiet" disabled={typed === text} onClick={() => setTyped(text)}>
            {words.shell.cancel}
          </button>
        </p>
      )}
    </div>
  );
}
