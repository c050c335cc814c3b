import type { Finding } from "../../core/findings/finding.js";
import { findingSentence } from "../../words/findings.js";
import { useShows } from "../app/context.js";
import { useFindingWords } from "./use-finding-words.js";

/** A finding as a sentence; keys of the plan in it stand in the type of the plan's own text. */
export function FindingSentence({ of }: { of: Finding }) {
  const shows = useShows();
  const { words, language } = useFindingWords();
  return (
    <span lang={language}>
      {findingSentence(of, shows, words)
        .split("`")
        // biome-ignore lint/suspicious/noArrayIndexKey: parts of one text have no name, and never change places
        .map((part, index) => (index % 2 === 1 ? <code key={index}>{part}</code> : part))}
    </span>
  );
}
