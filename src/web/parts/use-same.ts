import { useRef } from "react";
import { sameValue } from "../state/same-value.js";

/** The value as it was last time where it says the same still, so that what is drawn of it is not drawn anew. */
export function useSame<T>(value: T): T {
  const last = useRef(value);
  if (!sameValue(last.current, value)) last.current = value;
  return last.current;
}
