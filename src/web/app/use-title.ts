import { useEffect } from "react";
import { useWords } from "./context.js";

/** What the window is called: what a person with several open, or one who hears the page, tells it by. The narrowest first. */
export function useTitle(...parts: readonly string[]): void {
  const { name } = useWords().shell;
  const title = [...parts, name].join(" – ");
  useEffect(() => {
    document.title = title;
  }, [title]);
}
