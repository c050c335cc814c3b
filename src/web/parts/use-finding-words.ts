import { useSyncExternalStore } from "react";
import type { FindingWords } from "../../words/finding-words.js";
import { findingsInEnglish } from "../../words/rules.js";
import { usePreferences } from "../app/context.js";

interface Told {
  readonly language: "en" | "es";
  readonly words: FindingWords;
}

const english: Told = { language: "en", words: findingsInEnglish };
let spanish: Told | undefined;
const listeners = new Set<() => void>();

/** Fetches the other language's words with the first finding that is shown in it. */
function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  if (spanish === undefined) void fetchSpanish();
  return () => listeners.delete(listener);
}

async function fetchSpanish(): Promise<void> {
  const { findingsInSpanish } = await import("../../words/spanish/findings.js");
  spanish = { language: "es", words: findingsInSpanish };
  for (const listener of listeners) listener();
}

const never = () => () => {};

/** What is said of findings, in the person's language; English while the other is on its way. */
export function useFindingWords(): Told {
  const [{ language }] = usePreferences();
  const inEnglish = language === "en";
  return useSyncExternalStore(inEnglish ? never : subscribe, () =>
    inEnglish ? english : (spanish ?? english),
  );
}
