import { useCallback, useEffect, useRef } from "react";
import { Foreman } from "./foreman.js";
import type { ForemanOutcome, ForemanQuestion } from "./messages.js";

/** A foreman for as long as a view is open. */
export function useForeman(): (question: ForemanQuestion) => Promise<ForemanOutcome> {
  const foreman = useRef<Foreman>(undefined);
  useEffect(
    () => () => {
      foreman.current?.close();
      foreman.current = undefined;
    },
    [],
  );
  return useCallback((question) => {
    foreman.current ??= new Foreman();
    return foreman.current.ask(question);
  }, []);
}

/** Minutes since 1970 on the owner's clock: what a wall clock here shows. */
export function ownersMinutes(): number {
  const now = new Date();
  return Math.floor(now.getTime() / 60_000) - now.getTimezoneOffset();
}
