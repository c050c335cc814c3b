import { useEffect, useRef } from "react";
import { type Level, levels } from "../../core/findings/finding.js";
import type { ScreenWords } from "../../words/screen/en.js";
import { ReadOut, useReadOut } from "../parts/read-out.js";
import { useWordsOfFindings } from "../words/findings.js";
import { usePlan } from "./context.js";

interface Ledger {
  readonly hours: { readonly hoursLeft?: string };
  readonly drop?: { readonly share: string } | undefined;
  readonly counts: Readonly<Record<Level, number>>;
}

/** So long nothing more must change before it is said [ms]: keys pressed one after the other make one sentence. */
const restMs = 900;

/** Says what an edit changed in the ledger line, once it rests. What is only tried out, as while a thing is dragged, is not said. */
export function LedgerSaid({ shown }: { shown: Ledger }) {
  const words = useWordsOfFindings();
  const settled = usePlan((state) => state.fresh && state.triedOut === undefined);
  const now = partsOf(shown, words).join("\n");
  const counts = levels
    .map((level) => `${shown.counts[level]} ${words.findings.levels[level].name}`)
    .join("\n");
  const before = useRef<readonly [object, string, string]>(undefined);
  const [said, say] = useReadOut();
  useEffect(() => {
    if (!settled) return;
    before.current ??= [words, now, counts];
    const timer = setTimeout(() => {
      const known = before.current;
      before.current = [words, now, counts];
      // the same in another language is no change
      if (known?.[0] !== words) return;
      const found = newIn(counts, known[2]);
      const changed = [
        ...newIn(now, known[1]),
        ...(found.length > 0 ? [`${words.shell.findings}: ${found.join(", ")}`] : []),
      ];
      if (changed.length > 0) say(`${changed.join(". ")}.`);
    }, restMs);
    return () => clearTimeout(timer);
  }, [settled, now, counts, words, say]);
  return <ReadOut said={said} />;
}

/** Lines that were not there before. */
function newIn(now: string, before: string): string[] {
  const known = before.split("\n");
  return now.split("\n").filter((line) => line !== "" && !known.includes(line));
}

function partsOf({ hours, drop }: Ledger, { shell }: Pick<ScreenWords, "shell">): readonly string[] {
  return [
    ...(hours.hoursLeft === undefined ? [] : [`${shell.hoursLeft}: ${hours.hoursLeft}`]),
    ...(drop === undefined ? [] : [`${shell.worstDrop}: ${drop.share}`]),
  ];
}
