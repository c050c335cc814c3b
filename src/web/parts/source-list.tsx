import type { Source } from "../../core/reference/source.js";
import { sourceWords } from "../../words/source-words.js";
import { useSourceWords } from "./use-source-words.js";

/** Where figures come from, each source once. */
export function SourceList({ of }: { of: readonly Source[] }) {
  const { language, words } = useSourceWords();
  return (
    <ul className="sources" lang={language}>
      {[...new Set(of.map((source) => sourceWords(source, words)))].map((said) => (
        <li key={said}>{said}</li>
      ))}
    </ul>
  );
}
