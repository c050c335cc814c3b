import type { PlannedStep } from "../core/work/order.js";
import type { WorkFigures } from "../core/work/plan-work.js";
import type { Step, Task } from "../core/work/step.js";
import type { Shape } from "../drawing/shapes.js";
import { hours } from "../words/numbers.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import { sessionWords } from "../words/work-times.js";
import { flow } from "./flow.js";
import type { Paper } from "./page.js";
import { paragraph, space } from "./piece.js";
import type { PackedSheet, Section } from "./section.js";
import { type Column, type Row, table } from "./table.js";

/** Steps of one stretch of free hours, under the words that head it in the order of work. */
interface Session {
  readonly heads: string;
  readonly steps: readonly Step[];
}

/** A page of the packet as its words tell it. */
interface TextPage {
  /** Counted from 1. */
  readonly page: number;
  readonly titles: readonly string[];
  readonly words: string;
}

/**
 * Which pages to take along for which evening: a line for each stretch of free hours of the order of work.
 * @param sheets The packet after its first page and these pages, dealt out.
 * @param before Pages that stand before `sheets`, these included.
 */
export function eveningsSection(
  work: WorkFigures,
  sheets: readonly PackedSheet[],
  before: number,
  paper: Paper,
  words: PaperWords,
): Section {
  const say = words.work.evenings;
  const sessions = sessionsOf(work, words);
  const pages = sheets.map(
    (parts, at): TextPage => ({
      page: before + at + 1,
      titles: parts.map(({ section }) => section.title),
      words: parts.map(({ shapes }) => textIn(shapes)).join(" "),
    }),
  );
  const cautions = pages.find(({ titles }) => titles.includes(words.findings.cautions.title))?.page;
  const widthMm = paper.right - paper.left;
  const columns: readonly Column[] = [
    { heading: say.heads.when, share: 56 },
    { heading: say.heads.steps, share: 38 },
    { heading: say.heads.work, share: 58 },
    { heading: say.heads.pages, share: 110 },
  ];
  const rows = sessions.map((session, at): Row => {
    const next = sessions[at + 1];
    const minutes = session.steps.reduce((sum, step) => sum + step.minutes, 0);
    const kinds = [...new Set(session.steps.map(({ kind }) => words.of.steps.kinds[kind]))];
    return {
      cells: [
        { words: [{ text: session.heads, weight: "semibold" }] },
        say.steps(session.steps.length, hours(minutes / 60)),
        { words: [{ text: kinds.join(" · "), sizePt: 9, colour: "soft", maxLines: 3 }] },
        { words: [{ text: pagesFor(session, next, pages, words).join(" · "), sizePt: 9.5, maxLines: 6 }] },
      ],
    };
  });
  return {
    title: say.title,
    subtitle: say.subtitle,
    pages:
      rows.length < 2
        ? []
        : flow(
            [
              paragraph({ text: say.lead(cautions), sizePt: 9.5, colour: "soft" }, widthMm),
              space(2),
              ...table(columns, rows, widthMm),
            ],
            paper,
          ),
  };
}

function sessionsOf({ order, step, nowMin }: WorkFigures, { of }: PaperWords): Session[] {
  const sessions: { heads: string; steps: Step[] }[] = [];
  let before: PlannedStep | undefined;
  for (const planned of order.steps) {
    const one = step.get(planned.step);
    if (one === undefined) continue;
    const heads = sessionWords(planned.startMin, before?.startMin, nowMin, of.steps);
    if (heads !== "" || sessions.length === 0) sessions.push({ heads, steps: [] });
    sessions.at(-1)?.steps.push(one);
    before = planned;
  }
  return sessions;
}

/** Which sheets a task is done by, and whether only the pages that name what it is done to. */
type Sheets = "marks" | "holes" | "boxes" | "cuts" | "runs" | "flags" | "ends" | "tests";
const sheetsOf: Readonly<Partial<Record<Task, readonly Sheets[]>>> = {
  "survey run": ["runs"],
  "mark box": ["boxes"],
  "drill box": ["boxes"],
  "deburr box": ["boxes"],
  "fill box": ["boxes"],
  "mark gear": ["marks"],
  "drill gear": ["marks", "holes"],
  "cut wire": ["cuts"],
  "draw wire": ["runs"],
  "secure run": ["runs"],
  "label run": ["flags"],
  "join end": ["ends"],
  "connect end": ["ends"],
  "prove continuity": ["tests"],
  "prove polarity": ["tests"],
  "prove charger polarity": ["tests"],
  "prove insulation": ["tests"],
  "battery on": ["tests"],
  "prove way": ["tests"],
  "prove pump": ["tests"],
  "see navigation lights": ["tests"],
  "leak test": ["tests"],
};

function pagesFor(
  session: Session,
  next: Session | undefined,
  pages: readonly TextPage[],
  { hull, layout, work: { order, tests, evenings: say } }: PaperWords,
): string[] {
  const titled = (title: string) => pages.filter(({ titles }) => titles.includes(title));
  const ofOrder = titled(order.title);
  const headed = (heads: string) => ofOrder.findIndex(({ words }) => names(words, heads));
  const from = Math.max(0, headed(session.heads));
  const to = next === undefined ? ofOrder.length - 1 : Math.max(from, headed(next.heads));
  const wanted = new Map<Sheets, Set<string>>();
  for (const { task, at, pieces } of session.steps)
    for (const sheets of sheetsOf[task] ?? []) {
      const known = wanted.get(sheets) ?? new Set();
      for (const name of [...at, ...pieces]) known.add(name);
      wanted.set(sheets, known);
    }
  const naming = (title: string, sheets: Sheets) =>
    titled(title).filter(({ words }) => [...(wanted.get(sheets) ?? [])].some((name) => names(words, name)));
  const marked = pages.filter(({ titles }) => titles.some((title) => title.startsWith(hull.marks.title(""))));
  const boxes = [...(wanted.get("boxes") ?? [])].flatMap((name) => titled(layout.boxes.title(name)));
  const found: readonly (readonly [string, readonly TextPage[]])[] = [
    [order.title, ofOrder.slice(from, to + 1)],
    [
      hull.marks.title("").replace(/: $/, ""),
      marked.filter(({ words }) => [...(wanted.get("marks") ?? [])].some((name) => names(words, name))),
    ],
    [
      hull.holes.title,
      wanted.has("holes") ? [...titled(hull.holes.title), ...titled(hull.holes.withPulling)] : [],
    ],
    [layout.boxes.title("").replace(/: $/, ""), boxes],
    [layout.cuts.title, naming(layout.cuts.title, "cuts")],
    [layout.runs.title, naming(layout.runs.title, "runs")],
    [layout.flags.title, naming(layout.flags.title, "flags")],
    [layout.ends.title, naming(layout.ends.title, "ends")],
    [tests.title, naming(tests.title, "tests")],
  ];
  return found.flatMap(([title, list]) =>
    list.length === 0 ? [] : [say.sheet(title, ranges(list.map(({ page }) => page)))],
  );
}

/** Do the words of a page hold a name, not as a part of another word? */
function names(words: string, name: string): boolean {
  for (let at = words.indexOf(name); at >= 0; at = words.indexOf(name, at + 1)) {
    const [before, after] = [words[at - 1] ?? " ", words[at + name.length] ?? " "];
    if (!/[\p{L}\p{N}]/u.test(before) && !/[\p{L}\p{N}]/u.test(after)) return true;
  }
  return false;
}

/** `12`, `12–14, 20`. */
function ranges(pages: readonly number[]): string {
  const runs: { readonly from: number; to: number }[] = [];
  for (const page of [...new Set(pages)].toSorted((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last !== undefined && page === last.to + 1) last.to = page;
    else runs.push({ from: page, to: page });
  }
  return runs.map(({ from, to }) => (from === to ? String(from) : `${from}–${to}`)).join(", ");
}

/** All words of some shapes, in the order they are drawn. */
function textIn(shapes: readonly Shape[]): string {
  return shapes
    .flatMap((shape) =>
      shape.kind === "text" ? [shape.text] : shape.kind === "group" ? [textIn(shape.shapes)] : [],
    )
    .join(" ");
}
