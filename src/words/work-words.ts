import { groupedBy } from "../core/work/grouped.js";
import type { Binding } from "../core/work/order-binds.js";
import type { PrecedenceReason, Step } from "../core/work/step.js";
import { listed } from "./listed.js";
import { english } from "./steps/english.js";
import type { StepWords } from "./steps/step-words.js";

export function consumableText(
  { what, count }: Step["consumables"][number],
  words: StepWords = english,
): string {
  const [one, many] = words.consumables[what];
  // what is not counted is one word in English; in Spanish a thing that is may have one too
  const [aMass, masses] = english.consumables[what];
  if (aMass === masses) return one;
  return count === 1 ? `1 ${one}` : `${count} ${many}`;
}

export const reasonWords: Readonly<Record<PrecedenceReason, string>> = {
  "measure before cutting": "measure before you cut",
  "mark before drilling": "mark before you drill",
  "drill before deburring": "the hole comes before its edge",
  "drill before sealing": "the hole comes before its edge is sealed",
  "box holes before contents":
    "chips and contents do not go together: the box is drilled before anything is in it",
  "hole before wire": "the hole comes before the cable",
  "cut before drawing": "cut before you draw",
  "wire before joint": "the cable lies before its ends are made",
  "joint before shrinking": "the joint is made before it is shrunk",
  "joint before sealant": "joints are made while a hand still gets behind",
  "edge before sealant": "the edge is sealed and dry before sealant goes on",
  "mount before wire": "the box stands before cables come to it",
  "gear before joint": "the gear stands before its leads are joined",
  "wire before clips": "the cable lies before it is held",
  "joint before connecting": "the end is made before it is screwed down",
  "connect before proving": "what is not connected can't be proven",
  "dead before live": "proven dead before anything is live",
  "polarity before charger": "swapped poles are found before a charger or the battery meets them",
  "battery last": "the battery is the last thing connected",
  "cured before wet": "sealant is cured before it is wet",
  "prove before closing": "proven before it is closed",
  "label before closing": "labelled before it is closed",
  "mark leaned on": "measured from a mark that must be there",
  "largest end first": "the largest end goes through while there is room",
  "battery off first": "the battery is off before hands go in",
  "covered before working":
    "a solar panel is covered before hands go near its lead or the battery is taken off",
  "panel last":
    "a solar panel sees light again only when battery and regulator are there to take what it gives",
  "open before working": "opened before it is worked in",
};

/** Names with numbers in a row stand together: `coaming lamp 1 to 6 and sounder`. */
export function namesText(
  names: readonly string[],
  words: Pick<StepWords, "range" | "joining"> = english,
): string {
  const runs: { readonly stem: string; readonly from: number; to: number }[] = [];
  const parts = names.map((name) => {
    const [, stem = "", number = ""] = /^(.+) ([1-9]\d*)$/.exec(name) ?? [];
    const last = runs.at(-1);
    if (number !== "" && last?.stem === stem && last.to + 1 === Number(number)) {
      last.to += 1;
      return undefined;
    }
    const run = { stem, from: Number(number), to: Number(number) };
    runs.push(number === "" ? { stem: "", from: 0, to: -1 } : run);
    return { name, run };
  });
  return listed(
    parts.flatMap((part) =>
      part === undefined
        ? []
        : part.run.to > part.run.from
          ? `${part.run.stem} ${words.range(part.run.from, part.run.to)}`
          : part.name,
    ),
    words.joining,
  );
}

/**
 * Each step's own line by its id, `Draw lamp trunk from helm to fore box`; steps that would read alike are told apart. What is no step of
 * these is called by its id.
 */
export function stepTitles(steps: Iterable<Step>, words: StepWords = english): (id: string) => string {
  const titles = new Map<string, string>();
  const alike = groupedBy([...steps], (step) => titleOf(step, words));
  for (const [title, same] of alike)
    for (const step of same) titles.set(step.id, same.length === 1 ? title : `${title} (${ownPart(step)})`);
  return (id) => titles.get(id) ?? id;
}

/** What of a step's id its title does not name. */
function ownPart({ id, at, pieces }: Step): string {
  const [, ...parts] = id.split(" / ");
  const own = parts.filter((part) => !at.includes(part) && !pieces.includes(part));
  return (own.length === 0 ? parts : own).join(" / ");
}

function titleOf({ task, pieces, at, doneBefore }: Step, words: StepWords): string {
  const partly = doneBefore !== undefined && doneBefore.length > 0;
  const what = namesText(pieces, words);
  const title = words.titles[task]({
    what,
    where: namesText([...new Set(at)], words),
    ends: at.length > 1 ? words.fromTo(at[0] ?? "", at.at(-1) ?? "") : "",
    forWhat: partly ? words.forWhat(what) : "",
    all: doneBefore === undefined,
  });
  return partly ? `${title}${words.restDone}` : title;
}

/** What holds the end of the work where it is, one link as a sentence. `title` gives a step's own line. */
export function bindingWords(
  link: Binding,
  title: (step: string) => string,
  { binds, cures }: StepWords = english,
): string {
  const step = title(link.step);
  if (link.by === "cure") return binds.cure(step, link.cure && cures[link.cure]);
  return binds[link.by](step);
}

/** How sure it is that there is no better order. */
export function proofWords(
  { proof, gapShare }: { readonly proof: "proven" | "bounded"; readonly gapShare: number },
  { proof: words }: StepWords = english,
): string {
  if (proof === "proven") return words.proven;
  return gapShare < 0.01 ? words.within : words.least(((1 - gapShare) * 100).toFixed(0));
}
