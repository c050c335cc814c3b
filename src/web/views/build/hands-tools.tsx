import { useEffect, useId, useLayoutEffect, useRef, useState } from "react";
import { useWordsOfBuild } from "../../words/build.js";

/** What helps with full or wet hands: the screen stays on, steps are read out, and a remote or any keyboard ticks. */
export function HandsTools(props: {
  spoken: boolean;
  onSpoken: (on: boolean) => void;
  forward: () => void;
  back: () => void;
  readOnly: boolean;
}) {
  const words = useWordsOfBuild().build;
  const id = useId();
  const [awake, setAwake] = useState(true);
  const holds = useWakeLock(awake);
  const [remote, setRemote] = useState(false);
  // a key pressed as soon as a new step stands there must mean that step, not the one before
  const hands = useRef(props);
  useLayoutEffect(() => {
    hands.current = props;
  });
  useEffect(() => {
    if (!remote) return;
    const pressed = (event: KeyboardEvent) => {
      if (event.repeat || (event.key !== "PageDown" && event.key !== "PageUp")) return;
      event.preventDefault();
      if (event.key === "PageDown") hands.current.forward();
      else hands.current.back();
    };
    addEventListener("keydown", pressed);
    return () => removeEventListener("keydown", pressed);
  }, [remote]);
  return (
    <fieldset className="hands">
      <legend>{words.hands}</legend>
      <label>
        <input type="checkbox" checked={awake} onChange={(event) => setAwake(event.target.checked)} />
        {words.awake}
      </label>
      {awake && holds === "refused" && <p className="hint">{words.awakeRefused}</p>}
      <label>
        <input
          type="checkbox"
          checked={props.spoken}
          onChange={(event) => props.onSpoken(event.target.checked)}
        />
        {words.aloud}
      </label>
      {!props.readOnly && (
        <label>
          <input
            type="checkbox"
            checked={remote}
            aria-describedby={id}
            onChange={(event) => setRemote(event.target.checked)}
          />
          {words.remote}
        </label>
      )}
      {remote && (
        <p className="hint" id={id}>
          {words.remoteHint}
        </p>
      )}
    </fieldset>
  );
}

/** Keeps the screen on while `wanted` and the page is in sight. */
function useWakeLock(wanted: boolean): "held" | "refused" | "off" {
  const [state, setState] = useState<"held" | "refused" | "off">("off");
  useEffect(() => {
    if (!wanted) return setState("off");
    if (!("wakeLock" in navigator)) return setState("refused");
    let lock: WakeLockSentinel | undefined;
    let over = false;
    const hold = async () => {
      if (document.visibilityState !== "visible") return;
      try {
        lock = await navigator.wakeLock.request("screen");
        if (over) await lock.release();
        else setState("held");
      } catch {
        // the battery is low, or the browser does not allow it
        setState("refused");
      }
    };
    const seen = () => void hold();
    void hold();
    document.addEventListener("visibilitychange", seen);
    return () => {
      over = true;
      document.removeEventListener("visibilitychange", seen);
      void lock?.release();
    };
  }, [wanted]);
  return state;
}
