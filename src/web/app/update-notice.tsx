import { useState, useSyncExternalStore } from "react";
import { useWords } from "./context.js";
import { update } from "./offline.js";

/** Tells of a newer version of the page; nothing happens until it is taken. */
export function UpdateNotice() {
  const words = useWords().keeping;
  const ready = useSyncExternalStore(update.subscribe, update.isReady);
  const [later, setLater] = useState(false);
  if (!ready || later) return null;
  return (
    <aside className="notice" role="status">
      <p>{words.updateReady}</p>
      <button type="button" onClick={update.take}>
        {words.updateNow}
      </button>
      <button type="button" className="quiet" onClick={() => setLater(true)}>
        {words.updateLater}
      </button>
    </aside>
  );
}
