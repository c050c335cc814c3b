import { useLayoutEffect, useRef, useState } from "react";
import { usePlan } from "../../app/context.js";
import { keepPhoto } from "../../garage/photos.js";
import { ownersMinutes } from "../../garage/use-foreman.js";
import { useWordsOfBuild } from "../../words/build.js";

/** What leaves the field without a click, as a hand that draws the page, has left it for good after this [ms]. */
const tapMs = 300;

/** A note kept grows the list under it: the tap that leaves the field must have come to its end before things move. */
function afterTap(work: () => void): void {
  const over = () => {
    clearTimeout(timer);
    document.removeEventListener("click", over);
    work();
  };
  const timer = setTimeout(over, tapMs);
  document.addEventListener("click", over);
}

/** A note that is kept as soon as its field or its step is left, or the page goes out of sight: nothing typed with wet hands is lost. */
export function NoteField({ keep }: { keep: (note: string) => boolean }) {
  const words = useWordsOfBuild().build;
  const [note, setNote] = useState("");
  const typed = useRef("");
  const type = (text: string) => {
    typed.current = text;
    setNote(text);
  };
  const take = () => {
    const said = typed.current.trim();
    if (said === "") return;
    // first taken out, then kept: leaving the field and the step at once must not keep it twice
    type("");
    if (!keep(said)) type(said);
  };
  const latest = useRef(take);
  latest.current = take;
  useLayoutEffect(() => {
    const hidden = () => document.visibilityState === "hidden" && latest.current();
    document.addEventListener("visibilitychange", hidden);
    return () => {
      document.removeEventListener("visibilitychange", hidden);
      latest.current();
    };
  }, []);
  return (
    <label className="field">
      <span>{words.note}</span>
      <textarea
        rows={2}
        value={note}
        onChange={(event) => type(event.target.value)}
        onKeyDown={(event) => event.key === "Tab" && latest.current()}
        onBlur={() => afterTap(() => latest.current())}
      />
    </label>
  );
}

/** Takes a photo, puts it into this browser's keeping, and then tells its name. */
export function PhotoButton({ step, onKept }: { step: string; onKept: (file: string) => void }) {
  const words = useWordsOfBuild().build;
  const plan = usePlan(({ record }) => record.id);
  const [failed, setFailed] = useState(false);
  const take = async (picture: File | undefined) => {
    if (picture === undefined) return;
    const kind = /^image\/(\w+)$/.exec(picture.type)?.[1] ?? "jpg";
    const file = `${step.replace(/[^\p{L}\p{N}]+/gu, "-").slice(0, 60)}-${ownersMinutes().toString(36)}-${Math.floor(performance.now()).toString(36)}.${kind}`;
    try {
      await keepPhoto(plan, file, picture);
      setFailed(false);
      onKept(file);
    } catch {
      setFailed(true);
    }
  };
  return (
    <>
      <label className="photo-button">
        {words.photo}
        <input
          className="away"
          type="file"
          accept="image/*"
          capture="environment"
          onChange={(event) => {
            void take(event.target.files?.[0]);
            event.target.value = "";
          }}
        />
      </label>
      {failed && (
        <p className="problem" role="alert">
          {words.photoFailed}
        </p>
      )}
    </>
  );
}
