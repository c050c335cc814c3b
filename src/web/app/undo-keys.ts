import { useEffect } from "react";
import type { PlanStore } from "../state/plan-store.js";

/** Control or command with Z and Y. A field one is typing in keeps its own undo. */
export function useUndoKeys(store: PlanStore): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || isTyping(event.target)) return;
      const key = event.key.toLowerCase();
      const direction = key === "z" ? (event.shiftKey ? "redo" : "undo") : key === "y" ? "redo" : undefined;
      if (!direction) return;
      event.preventDefault();
      store[direction]();
    };
    addEventListener("keydown", onKey);
    return () => removeEventListener("keydown", onKey);
  }, [store]);
}

function isTyping(target: EventTarget | null): boolean {
  return target instanceof HTMLElement && target.matches("input, textarea, select, [contenteditable=true]");
}
