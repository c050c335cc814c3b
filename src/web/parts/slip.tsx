import { type ReactNode, useEffect, useId, useLayoutEffect, useRef } from "react";
import { useWords } from "../app/context.js";
import { Icon } from "./icon.js";

/** A slip of paper beside the drawing. Escape closes it; focus comes to its heading when it opens. */
export function Slip(props: { title: string; kind?: ReactNode; close: () => void; children: ReactNode }) {
  const words = useWords().shell;
  const heading = useRef<HTMLHeadingElement>(null);
  const paper = useRef<HTMLElement>(null);
  const kindId = useId();
  const { title, close } = props;
  useLayoutEffect(() => {
    const opener = document.activeElement;
    const own = paper.current;
    // closed with the focus in it: that goes back to where it came from
    return () => {
      if (own?.contains(document.activeElement) && isFocusable(opener) && opener.isConnected) opener.focus();
    };
  }, []);
  useEffect(() => {
    if (title === "") return;
    // a drawing keeps the focus, so that its keys go on moving what was selected there
    if (document.activeElement?.closest("[data-keeps-focus]")) return;
    heading.current?.focus({ preventScroll: true });
  }, [title]);
  useEffect(() => {
    // wherever the focus is: what lies over the slip, and a field one types in, takes the key for itself first
    const onKey = (event: KeyboardEvent) => {
      if (event.key === "Escape" && !event.defaultPrevented && !document.querySelector(".panel")) close();
    };
    document.addEventListener("keydown", onKey);
    return () => document.removeEventListener("keydown", onKey);
  }, [close]);
  return (
    <aside ref={paper} className="slip" aria-label={words.slipOf(title)}>
      <header className="slip-head">
        <div>
          {props.kind !== undefined && (
            <p className="slip-kind" id={kindId}>
              {props.kind}
            </p>
          )}
          <h2 ref={heading} tabIndex={-1} aria-describedby={props.kind === undefined ? undefined : kindId}>
            <bdi>{title}</bdi>
          </h2>
        </div>
        <button type="button" className="icon-button" aria-label={words.close} onClick={close}>
          <Icon name="close" />
        </button>
      </header>
      {props.children}
    </aside>
  );
}

/** Things in a drawing take the focus too. */
const isFocusable = (element: Element | null): element is HTMLElement | SVGElement =>
  element instanceof HTMLElement || element instanceof SVGElement;
