import { useSyncExternalStore } from "react";
import { usePreferences } from "../app/context.js";
import type { Preferences } from "../state/preferences.js";

/** Words of one area, and the language they are in. */
export interface Told<T> {
  readonly language: Preferences["language"];
  readonly words: T;
}

const never = () => () => {};

/**
 * A hook for words that the page has in English. The Spanish ones are fetched with the first that is shown in Spanish; English until they
 * are there.
 */
export function inLanguage<T>(inEnglish: T, fetchSpanish: () => Promise<T>): () => Told<T> {
  const english: Told<T> = { language: "en", words: inEnglish };
  let spanish: Told<T> | undefined;
  const listeners = new Set<() => void>();
  const fetched = async () => {
    spanish = { language: "es", words: await fetchSpanish() };
    for (const listener of listeners) listener();
  };
  const subscribe = (listener: () => void) => {
    listeners.add(listener);
    if (spanish === undefined) void fetched();
    return () => listeners.delete(listener);
  };
  return () => {
    const [{ language }] = usePreferences();
    const plain = language === "en";
    return useSyncExternalStore(plain ? never : subscribe, () => (plain ? english : (spanish ?? english)));
  };
}
