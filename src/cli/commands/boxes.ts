import { mkdirSync } from "node:fs";
import { join } from "node:path";
import type { BoxFigures } from "../../core/box/plan-boxes.js";
import { faceSheet } from "../../drawing/template-sheet.js";
import { dxfSheet } from "../../drawing/writers/dxf.js";
import { svgSheet } from "../../drawing/writers/svg.js";
import { holeTable } from "../../packet/files/tables.js";
import { boxWhyWords } from "../../words/box-words.js";
import { drillWords, mmWords } from "../../words/layout-words.js";
import { paperInEnglish } from "../../words/paper/english.js";
import { faceWords } from "../../words/template-words.js";
import { readArguments } from "../arguments.js";
import { writeWhole } from "../files.js";
import { layoutFindingLines } from "../layout-findings.js";
import { loadWhole } from "../load-whole.js";
import { print, printFile, printJson } from "../print.js";
import { exit, InputProblem, reason } from "../problem.js";
import { type Column, textTable } from "../table.js";
import { harmless, paint, type Terminal, terminal, wrap } from "../terminal.js";
import { notThere } from "../unknown.js";

export const help = `skiffloom boxes PLAN [--box NAME] [--csv] [--json]
skiffloom boxes PLAN --template svg|dxf --to FOLDER [--box NAME] [--force]

Prints for every box what comes in by which gland, where each hole goes, in what order it is drilled, and what is
inside. A box is laid out where its inside is told, or chosen from the boxes you would buy:
  boxes: {fore box: {inside: [170 mm, 120 mm, 75 mm], wall: 3 mm, of: abs, boss: 10 mm, lid lip: 5 mm}}
  box catalogue: {small: {inside: [110 mm, 80 mm, 50 mm], price: 14 EUR}, large: {inside: [190 mm, 140 mm, 80 mm], price: 23 EUR}}
A box with 'holes' is taken as it is drilled, and checked.

  --box NAME           this box only
  --template svg|dxf   a file at true scale for each face that is drilled, svg with a bar and a square to check
                       the print by; the packet has them for paper
  --to FOLDER          where the files go; --force writes over those that are there
  --csv                the holes as a table, in the plan's unit, from the lower left corner of the face's inside
  --json               everything as data (docs/json.md)

Clamp a box, never hold it in the hand: a step drill grabs. Wear eye protection.`;

export function run(words: readonly string[]): number {
  const given = readArguments("boxes", words, {
    plan: true,
    flags: { box: "value", template: "value", to: "value", force: "switch", csv: "switch", json: "switch" },
  });
  const { figures, layout } = loadWhole(given.plan);
  const asked = given.values.box;
  const boxes = layout.boxes.filter(({ box }) => asked === undefined || box === asked);
  if (boxes.length === 0 && asked !== undefined) {
    const names = layout.boxes.map(({ box }) => box);
    throw notThere("box", asked, names);
  }
  if (given.values.template !== undefined) {
    writeTemplates(boxes, given.values.template, given.values.to, given.switches.has("force"));
    return exit.fine;
  }
  if (given.switches.has("json")) {
    printJson({ skiffloom: "boxes", version: 1, plan: { name: figures.plan.source.name }, boxes });
    return exit.fine;
  }
  if (given.switches.has("csv")) {
    printFile(holeTable(boxes, figures.plan.source.shows, paperInEnglish));
    return exit.fine;
  }
  const screen = terminal();
  print([
    ...(boxes.length === 0 ? ["This plan has no boxes."] : []),
    ...boxes.flatMap((box) => boxLines(box, screen)),
    ...layoutFindingLines(figures, ["boxes"], screen),
  ]);
  return exit.fine;
}

function writeTemplates(
  boxes: readonly BoxFigures[],
  kind: string,
  to: string | undefined,
  force: boolean,
): void {
  if (kind !== "svg" && kind !== "dxf")
    throw new InputProblem([`--template takes svg or dxf, not ${harmless(kind)}`]);
  if (to === undefined) throw new InputProblem(["say where the templates go with --to FOLDER"]);
  const templates = boxes.flatMap((box) => box.templates);
  if (templates.length === 0)
    throw new InputProblem(["no box here is to be drilled; 'skiffloom boxes PLAN' tells why"]);
  try {
    mkdirSync(to, { recursive: true });
  } catch (error) {
    throw new InputProblem([`${to} can't be made: ${reason(error)}`]);
  }
  const used = new Set<string>();
  for (const template of templates) {
    const name = freeName(`${template.box} ${faceWords[template.face]}`, used);
    const path = join(to, `${name}.${kind}`);
    writeWhole(
      path,
      kind === "svg" ? svgSheet(faceSheet(template, "print")) : dxfSheet(faceSheet(template, "cut")),
      force,
    );
    process.stdout.write(`${harmless(path)} written\n`);
  }
}

/** A file name every system takes, and no other template of this plan has. */
function freeName(wanted: string, used: Set<string>): string {
  const plain =
    wanted
      .replace(/[^\p{L}\p{N} _-]+/gu, "-")
      .trim()
      .slice(0, 60) || "box";
  let name = plain;
  for (let number = 2; used.has(name.toLowerCase()); number += 1) name = `${plain} ${number}`;
  used.add(name.toLowerCase());
  return name;
}

const left = (heading: string): Column => ({ heading, align: "left" });
const right = (heading: string): Column => ({ heading, align: "right" });

function boxLines(box: BoxFigures, screen: Terminal): string[] {
  return [
    paint(harmless(box.box), "strong", screen),
    ...boxWhyWords(box).flatMap((line) => wrap(line, screen.width, 2)),
    ...entryTable(box, screen),
    ...contentsLines(box, screen),
    ...(box.drilling.length > 0 ? ["Drilling:"] : []),
    ...box.drilling.map((step, index) => `  ${String(index + 1).padStart(2)}  ${drillWords(step)}`),
    "",
  ];
}

function entryTable({ layout }: BoxFigures, screen: Terminal): string[] {
  if (layout === undefined || layout.entries.length === 0) return [];
  const rows = layout.entries.map(({ id, on, x, y, holeMm }) => [
    faceWords[on],
    id,
    layout.glands.find(({ cable }) => cable === id)?.fit.size ?? "",
    mmWords(holeMm),
    mmWords(x),
    mmWords(y),
  ]);
  const columns = [left("face"), left("entry"), left("gland"), right("hole"), right("along"), right("up")];
  return textTable(columns, rows, screen);
}

function contentsLines({ layout }: BoxFigures, screen: Terminal): string[] {
  const placed = layout?.contents ?? [];
  if (placed.length === 0) return [];
  const each = placed.map(
    ({ id, x, y, turned }) => `${id} at ${mmWords(x)}, ${mmWords(y)}${turned ? ", turned" : ""}`,
  );
  return wrap(`Inside, from the lower left corner: ${each.join("; ")}.`, screen.width, 2);
}
