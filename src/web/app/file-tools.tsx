import { useEffect, useState } from "react";
import { faultReason } from "../fault.js";
import { whenWords } from "../parts/when-words.js";
import { fileOf, type SavedFile, saveElsewhere, saveInPlace } from "../state/files.js";
import { usePlan, usePlanStore, useWords } from "./context.js";
import { StorageAnswer } from "./storage-answer.js";

/** Saving to a real file, and whether there is any copy outside this browser. */
export function FileTools() {
  const { keeping } = useWords();
  const store = usePlanStore();
  const record = usePlan((state) => state.record);
  const [file, setFile] = useState<string>();
  const [said, setSaid] = useState<string>();
  useEffect(() => {
    fileOf(record.id).then(setFile, () => setFile(undefined));
  }, [record.id]);
  const save = async (saving: (id: string, name: string, text: string) => Promise<SavedFile>) => {
    try {
      const { text } = store.get();
      const saved = await saving(record.id, record.name, text);
      if (saved.is === "saved") {
        await store.noteSaved(saved.file, text);
        setFile(await fileOf(record.id).catch(() => undefined));
        setSaid(keeping.saved(saved.file));
      } else if (saved.is === "changed meanwhile") setSaid(keeping.fileChanged(saved.file));
    } catch (error) {
      setSaid(keeping.fileFailed(faultReason(error)));
    }
  };
  const { saved } = record;
  return (
    <section className="file-tools">
      {file !== undefined && (
        <button type="button" onClick={() => void save(saveInPlace)}>
          {keeping.saveTo(file)}
        </button>
      )}
      <button type="button" onClick={() => void save(saveElsewhere)}>
        {keeping.saveCopy}
      </button>
      <p className="hint">
        {saved ? keeping.savedAs(whenWords(saved.at)) : `${keeping.onlyHere} ${keeping.onlyHereHint}`}{" "}
        <StorageAnswer />
      </p>
      {said !== undefined && <p role="status">{said}</p>}
    </section>
  );
}
