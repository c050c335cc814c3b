import type { CureKey } from "../core/reference/cures.js";
import type { ToolKey } from "../core/reference/tools.js";
import { groupedBy } from "../core/work/grouped.js";
import type { Binding } from "../core/work/order-binds.js";
import type { ConsumableKey, PrecedenceReason, Step, StepKind, Task } from "../core/work/step.js";
import { listed } from "./say.js";

export const kindTitles: Readonly<Record<StepKind, string>> = {
  survey: "Survey",
  "battery off": "Battery off",
  "open up": "Open",
  "cut box": "Boxes and panels",
  mark: "Mark",
  drill: "Drill",
  "draw wire": "Cut and draw cables",
  join: "Make ends and joints",
  seal: "Seal",
  mount: "Mount",
  connect: "Connect",
  secure: "Secure",
  label: "Label",
  "prove dead": "Prove, battery off",
  "battery on": "Battery on",
  "prove live": "Prove, battery on",
  "close up": "Close up",
};

export const toolWords: Readonly<Record<ToolKey, string>> = {
  tape: "tape",
  punch: "centre punch",
  "drill with twist bit": "drill, twist bit",
  "drill with step bit": "drill, step bit",
  "drill with hole saw": "drill, hole saw",
  "deburring tool": "deburring tool",
  "drawing line": "drawing line",
  "cutter and stripper": "cutter and stripper",
  crimper: "crimper",
  "hot air": "hot air",
  "soldering iron": "soldering iron",
  screwdriver: "screwdriver",
  spanner: "spanner",
  "sealant gun": "sealant gun",
  "label printer": "label printer",
  meter: "meter",
  hose: "water hose",
};

export const consumableWords: Readonly<Record<ConsumableKey, readonly [one: string, many: string]>> = {
  pencil: ["pencil", "pencils"],
  "masking tape": ["strip of masking tape", "strips of masking tape"],
  "pulling tape": ["turn of tape at an end", "turns of tape, one at each end"],
  wire: ["length of wire", "lengths of wire"],
  joint: ["terminal or joint", "terminals or joints"],
  sleeve: ["sleeve", "sleeves"],
  solder: ["solder", "solder"],
  "edge sealer": ["edge sealer", "edge sealer"],
  sealant: ["sealant", "sealant"],
  gland: ["gland", "glands"],
  clip: ["clip or tie", "clips or ties"],
  label: ["label", "labels"],
  screw: ["screw", "screws"],
  fuse: ["fuse", "fuses"],
  grommet: ["grommet", "grommets"],
  plug: ["blank plug", "blank plugs"],
};

export function consumableText({ what, count }: Step["consumables"][number]): string {
  const [one, many] = consumableWords[what];
  if (one === many) return one;
  return count === 1 ? `1 ${one}` : `${count} ${many}`;
}

export const cureWords: Readonly<Record<CureKey, string>> = {
  "sealant before wet": "sealant must cure before water reaches it",
  "edge sealer": "the sealed edge must dry",
  "shrunk sleeve cold": "the sleeve must be cold before it is pulled about",
};

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
  "battery last": "the battery is the last thing connected",
  "cured before wet": "sealant is cured before it is wet",
  "prove before closing": "proven before it is closed",
  "label before closing": "labelled before it is closed",
  "mark leaned on": "measured from a mark that must be there",
  "largest end first": "the largest end goes through while there is room",
  "battery off first": "the battery is off before hands go in",
  "open before working": "opened before it is worked in",
};

/** Names with numbers in a row stand together: `coaming lamp 1 to 6 and sounder`. */
export function namesText(names: readonly string[]): string {
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
          ? `${part.run.stem} ${part.run.from} to ${part.run.to}`
          : part.name,
    ),
  );
}

/**
 * Each step's own line by its id, `Draw lamp trunk from helm to fore box`; steps that would read alike are told apart. What is no step of
 * these is called by its id.
 */
export function stepTitles(steps: Iterable<Step>): (id: string) => string {
  const titles = new Map<string, string>();
  const alike = groupedBy([...steps], titleOf);
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

function titleOf(step: Step): string {
  const { pieces, at, doneBefore } = step;
  const what = namesText(pieces);
  const where = namesText([...new Set(at)]);
  const ends = at.length > 1 ? ` from ${at[0]} to ${at.at(-1)}` : "";
  const more = doneBefore === undefined || doneBefore.length === 0 ? "" : " (the rest is done)";
  const titles: Readonly<Record<Task, string>> = {
    "survey boat": "Survey the boat and lay out everything",
    "survey run": `Measure the way of ${what}${ends}`,
    "battery off": `Take ${where} off: negative first`,
    "open box": `Open ${where}`,
    "mark box": `Mark the holes of ${where}${forWhat(step)}`,
    "drill box": `Drill ${where}${forWhat(step)}`,
    "deburr box": `Deburr the holes of ${where}`,
    "fill box": `Fit into ${where}: ${what}`,
    "mark gear": `Mark ${where}`,
    "drill gear": `Drill for ${where}`,
    "seal edge": `Seal the bare edges of ${where}`,
    "fit grommet": `Fit a grommet at ${where}`,
    "cut wire": `Cut ${what}`,
    "draw wire": `Draw ${what}${ends}`,
    "join end": `Make the end of ${what} at ${where}`,
    shrink: `Shrink the end of ${what} at ${where}`,
    "bed gear": `Bed ${where} in sealant`,
    "seal entries": `Tighten the entries of ${where}`,
    "mount box": `Mount ${where}`,
    "mount panel": `Mount ${where}`,
    "mount battery": `Set and hold down ${where}`,
    "mount gear": `Mount ${where}`,
    "connect end": `Connect ${what} at ${where}`,
    "secure run": `Secure ${what}${ends}`,
    "label run": `Label both ends of ${what}`,
    "prove continuity":
      doneBefore === undefined ? "Prove continuity of every circuit" : `Prove continuity to ${what}`,
    "prove polarity":
      doneBefore === undefined ? "Prove polarity at every piece of gear" : `Prove polarity at ${what}`,
    "prove insulation": "Prove insulation between the poles and to the hull",
    "battery on": `Connect ${where}: positive, then negative, then its main fuse`,
    "prove way": `Switch ${where} on for the first time and measure`,
    "prove pump": `Run ${what} for the first time and measure`,
    "see navigation lights": `Look at the navigation lights of ${where} from outside`,
    "leak test": `Hose ${where} and look behind`,
    "close box": `Close ${where}`,
    "close panel": `Close ${where}`,
  };
  return `${titles[step.task]}${more}`;
}

function forWhat({ pieces, doneBefore }: Step): string {
  return doneBefore === undefined || doneBefore.length === 0 ? "" : ` for ${namesText(pieces)}`;
}

/** What holds the end of the work where it is, one link as a sentence. `title` gives a step's own line. */
export function bindingWords(link: Binding, title: (step: string) => string): string {
  switch (link.by) {
    case "start":
      return `“${title(link.step)}” is the first step.`;
    case "hands":
      return `“${title(link.step)}” waits for your hands.`;
    case "hours":
      return `“${title(link.step)}” waits for your next free hours.`;
    case "cure":
      return `“${title(link.step)}” waits because ${link.cure === undefined ? "something done before must rest" : cureWords[link.cure]}.`;
    default:
      return link.by satisfies never;
  }
}

/** How sure it is that there is no better order. */
export function proofWords({
  proof,
  gapShare,
}: {
  readonly proof: "proven" | "bounded";
  readonly gapShare: number;
}): string {
  if (proof === "proven") return "No order takes less; proven.";
  if (gapShare < 0.01) return "No order takes even 1 % less.";
  return `No order takes less than ${((1 - gapShare) * 100).toFixed(0)} % of that.`;
}
