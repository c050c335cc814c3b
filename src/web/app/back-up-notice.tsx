import { useState } from "react";
import { faultReason } from "../fault.js";
import { saveElsewhere } from "../state/files.js";
import { usePlan, usePlanStore, useWords } from "./context.js";
import { StorageAnswer } from "./storage-answer.js";

/** So many edits that are nowhere but in this browser are worth a word; and so many more, another one. */
const worthAWord = 12;
/** Edits at which a person said later, by plan, as long as the page stays open. */
const putOff = new Map<string, number>();

/** Tells that the only copy of the last edits is in this browser, and offers to save one elsewhere. */
export function BackUpNotice() {
  const { keeping } = useWords();
  const store = usePlanStore();
  const { id, name, steps, saved } = usePlan(({ record }) => record);
  const lasting = usePlan((state) => state.keeping.is !== "unkept");
  const [, setLater] = useState(0);
  const [failed, setFailed] = useState<string>();
  const since = steps - Math.max(saved?.step ?? 1, putOff.get(id) ?? 1);
  if (!lasting || since < worthAWord) return null;
  const save = async () => {
    try {
      const { text } = store.get();
      const done = await saveElsewhere(id, name, text);
      if (done.is === "saved") await store.noteSaved(done.file, text);
      setFailed(undefined);
    } catch (error) {
      setFailed(keeping.fileFailed(faultReason(error)));
    }
  };
  const later = () => {
    putOff.set(id, steps);
    setLater(steps);
  };
  return (
    <aside className="notice" aria-label={keeping.onlyHere}>
      {/* its number goes up with each edit: that is not read out, only that the notice is there */}
      <span className="away" role="status">
        {keeping.onlyHere}
      </span>
      <p>
        {keeping.backUp(steps - (saved?.step ?? 1))} <StorageAnswer />
      </p>
      <button type="button" onClick={() => void save()}>
        {keeping.saveCopy}
      </button>
      <button type="button" className="quiet" onClick={later}>
        {keeping.backUpLater}
      </button>
      {failed !== undefined && <p className="problem">{failed}</p>}
    </aside>
  );
}
