import { type CSSProperties, type KeyboardEvent, useId, useRef, useState } from "react";
import type { TermId } from "../../words/screen/en/terms.js";
import { useWordsOfTerms } from "../words/terms.js";

const widthRem = 18;

/** A sign beside a term of the trade: hovered, tapped or reached by key, it says what the term means. Escape closes it. */
export function Term({ of }: { of: TermId }) {
  const { terms } = useWordsOfTerms();
  const { name, means } = terms.of[of];
  const id = useId();
  const button = useRef<HTMLButtonElement>(null);
  const [place, setPlace] = useState<CSSProperties>();
  const show = () => {
    const box = button.current?.getBoundingClientRect();
    if (!box) return;
    const widthPx = widthRem * Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
    const left = Math.max(8, Math.min(box.left, innerWidth - widthPx - 8));
    setPlace(
      box.bottom > innerHeight * 0.7 ? { left, bottom: innerHeight - box.top } : { left, top: box.bottom },
    );
  };
  const hide = () => setPlace(undefined);
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== "Escape" || !place) return;
    event.preventDefault();
    hide();
  };
  return (
    // the note stays while the pointer is on it: it is a part of this
    <span className="term" onPointerLeave={(event) => event.pointerType === "mouse" && hide()}>
      <button
        ref={button}
        type="button"
        aria-label={terms.whatIs(name)}
        aria-describedby={id}
        onPointerEnter={(event) => event.pointerType === "mouse" && show()}
        onFocus={show}
        onBlur={hide}
        onClick={show}
        onKeyDown={onKeyDown}
      >
        ?
      </button>
      {/* there from the first: a description that comes with the focus is read out twice */}
      <span id={id} className="term-means" style={place} hidden={!place}>
        <b>{name}</b>: {means}
      </span>
    </span>
  );
}
