import { useEffect, useState } from "react";
import { usePreferences } from "../app/context.js";
import type { Preferences } from "../state/preferences.js";

/** Words of one area, and the language they are in. */
export interface Said<T> {
  readonly lang: Preferences["language"];
  readonly say: T;
}

/** A hook for words that the page has in English and fetches in Spanish once that is chosen; English until they are there. */
export function inLanguage<T>(english: T, fetchSpanish: () => Promise<T>): () => Said<T> {
  const said: Said<T> = { lang: "en", say: english };
  let spanish: Said<T> | undefined;
  return () => {
    const [{ language }] = usePreferences();
    const [fetched, setFetched] = useState(spanish);
    useEffect(() => {
      if (language === "en" || fetched) return;
      let wanted = true;
      const load = async () => {
        spanish ??= { lang: "es", say: await fetchSpanish() };
        if (wanted) setFetched(spanish);
      };
      void load();
      return () => {
        wanted = false;
      };
    }, [language, fetched]);
    return language === "en" ? said : (fetched ?? said);
  };
}
