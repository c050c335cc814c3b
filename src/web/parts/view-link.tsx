import type { ReactNode, Ref } from "react";
import { usePlace } from "../app/place.js";
import type { ViewId } from "../app/view-ids.js";
import { PlaceLink } from "./place-link.js";

/** A link to another view of the open plan. `at`: what is selected there; left out: what is selected now. */
export function ViewLink(props: {
  view: ViewId;
  at?: string;
  className?: string;
  label?: string;
  title?: string;
  current?: boolean;
  ref?: Ref<HTMLAnchorElement> | undefined;
  onGo?: () => void;
  children: ReactNode;
}) {
  const place = usePlace();
  if (place.at !== "plan") return null;
  const { view, at, ...rest } = props;
  const selected = at ?? place.selected;
  const to = { at: "plan", plan: place.plan, view, ...(selected === undefined ? {} : { selected }) } as const;
  return <PlaceLink to={to} {...rest} />;
}
