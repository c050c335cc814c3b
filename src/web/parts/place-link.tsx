import type { ReactNode, Ref } from "react";
import { followed } from "../app/arrival.js";
import { goTo, type Place, writePlace } from "../app/place.js";

/** A link to a place of the page. */
export function PlaceLink(props: {
  to: Place;
  className?: string | undefined;
  label?: string | undefined;
  title?: string | undefined;
  current?: boolean | undefined;
  ref?: Ref<HTMLAnchorElement> | undefined;
  /** Done as well, before one goes there. */
  onGo?: (() => void) | undefined;
  children: ReactNode;
}) {
  return (
    <a
      ref={props.ref}
      href={writePlace(props.to)}
      className={props.className}
      title={props.title}
      aria-label={props.label}
      aria-current={props.current ? "page" : undefined}
      onClick={(event) => {
        if (event.metaKey || event.ctrlKey || event.shiftKey) return;
        event.preventDefault();
        followed(event);
        props.onGo?.();
        goTo(props.to);
      }}
    >
      {props.children}
    </a>
  );
}
