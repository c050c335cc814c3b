import { useEffect, useRef } from "react";

/** Control or command with Z and Y. A field one is typing in keeps its own undo. */
export function useUndoKeys(go: (direction: "undo" | "redo") => void): void {
  const latest = useRef(go);
  latest.current = go;
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || isTyping(event.target)) return;
      const key = event.key.toLowerCase();
      const direction = key === "z" ? (event.shiftKey ? "redo" : "undo") : key === "y" ? "redo" : undefined;
      if (!direction) return;
      event.preventDefault();
      latest.current(direction);
    };
    addEventListener("keydown", onKey);
    return () => removeEventListener("keydown", onKey);
  }, []);
}

function isTyping(target: EventTarget | null): boolean {
  return target instanceof HTMLElement && target.matches("input, textarea, select, [contenteditable=true]");
}
