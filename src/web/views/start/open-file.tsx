import { type ChangeEvent, type DragEvent, useRef, useState } from "react";
import { limits } from "../../../core/plan/source/limits.js";
import { useWords } from "../../app/context.js";
import { goTo } from "../../app/place.js";
import { faultReason } from "../../fault.js";
import { Icon } from "../../parts/icon.js";

const mostMegabytes = `${limits.maxBytes / 1024 / 1024} MB`;

/** Opens a plan from this device: by the browser's chooser, or dropped here. */
export function OpenFile() {
  const words = useWords();
  const input = useRef<HTMLInputElement>(null);
  const [said, setSaid] = useState<string>();
  const open = async (file: File, handle?: FileSystemFileHandle) => {
    const { keeping } = words;
    try {
      const { openFile } = await import("../../state/files.js");
      const opened = await openFile(file, handle);
      if (opened.is === "plan") return goTo({ at: "plan", plan: opened.id, view: "layout" });
      setSaid(opened.because === "empty" ? keeping.fileEmpty : keeping.tooLarge(mostMegabytes));
    } catch (error) {
      setSaid(keeping.fileUnread(faultReason(error)));
    }
  };
  const choose = async () => {
    const files = await import("../../state/files.js");
    if (!files.canSaveInPlace()) return input.current?.click();
    try {
      const chosen = await files.chooseFile();
      if (chosen) await open(chosen.file, chosen.handle);
    } catch (error) {
      if (!(error instanceof DOMException && error.name === "AbortError")) input.current?.click();
    }
  };
  const onInput = (event: ChangeEvent<HTMLInputElement>) => {
    const file = event.target.files?.[0];
    if (file) void open(file);
    event.target.value = "";
  };
  const onDrop = (event: DragEvent) => {
    event.preventDefault();
    const file = event.dataTransfer.files[0];
    if (file) void open(file);
  };
  return (
    <fieldset
      className="way-in"
      aria-label={words.start.openFile}
      onDragOver={(event) => event.preventDefault()}
      onDrop={onDrop}
    >
      <button type="button" className="card" onClick={() => void choose()}>
        <span>
          <b>{words.start.openFile}</b>
          <span className="hint">{words.start.openFileHint}</span>
        </span>
        <Icon name="open" />
      </button>
      <input
        ref={input}
        type="file"
        className="away"
        accept=".yaml,.yml,application/yaml"
        tabIndex={-1}
        aria-hidden="true"
        onChange={onInput}
      />
      {said !== undefined && <p role="alert">{said}</p>}
    </fieldset>
  );
}
