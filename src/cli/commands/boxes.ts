import { mkdirSync } from "node:fs";
import { join } from "node:path";
import type { BoxFigures } from "../../core/box/plan-boxes.js";
import { faceSheet } from "../../drawing/template-sheet.js";
import { dxfSheet } from "../../drawing/writers/dxf.js";
import { svgSheet } from "../../drawing/writers/svg.js";
import { holeTable } from "../../packet/files/tables.js";
import { boxWhyWords } from "../../words/box-words.js";
import { drillWords, mmWords } from "../../words/layout-words.js";
import { paperWords } from "../../words/paper/fetch.js";
import type { TerminalWords } from "../../words/terminal/english.js";
import { readArguments } from "../arguments.js";
import { writeWhole } from "../files.js";
import { type Screen, screenIn } from "../language.js";
import { layoutFindingLines } from "../layout-findings.js";
import { loadWhole } from "../load-whole.js";
import { print, printFile, printJson } from "../print.js";
import { exit, InputProblem, reason } from "../problem.js";
import { left, right, textTable } from "../table.js";
import { harmless, paint, wrap } from "../terminal.js";
import { notThere } from "../unknown.js";

export async function run(words: readonly string[], told: TerminalWords): Promise<number> {
  const given = readArguments("boxes", words, {
    plan: true,
    flags: { box: "name", template: "value", to: "value", force: "switch", csv: "switch", json: "switch" },
  });
  const { figures, layout } = loadWhole(given.plan);
  const asked = given.values.box;
  const boxes = layout.boxes.filter(({ box }) => asked === undefined || box === asked);
  if (boxes.length === 0 && asked !== undefined) {
    const names = layout.boxes.map(({ box }) => box);
    throw notThere("box", asked, names);
  }
  if (given.values.template !== undefined) {
    writeTemplates(
      boxes,
      given.values.template,
      given.values.to,
      given.switches.has("force"),
      await screenIn(told),
    );
    return exit.fine;
  }
  if (given.switches.has("json")) {
    printJson({ skiffloom: "boxes", version: 1, plan: { name: figures.plan.source.name }, boxes });
    return exit.fine;
  }
  if (given.switches.has("csv")) {
    printFile(holeTable(boxes, figures.plan.source.shows, await paperWords(told.language)));
    return exit.fine;
  }
  const screen = await screenIn(told);
  print([
    ...(boxes.length === 0 ? [told.layout.boxes.none] : []),
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
  { told, paper }: Screen,
): void {
  if (kind !== "svg" && kind !== "dxf")
    throw new InputProblem(({ common }) => common.words.takes("template", ["svg", "dxf"], harmless(kind)));
  if (to === undefined) throw new InputProblem(({ layout }) => layout.boxes.sayWhere);
  const templates = boxes.flatMap((box) => box.templates);
  if (templates.length === 0) throw new InputProblem(({ layout }) => layout.boxes.notDrilled);
  const { layout, drawn } = paper.of;
  try {
    mkdirSync(to, { recursive: true });
  } catch (error) {
    throw new InputProblem((say) => say.common.files.unmade(to, reason(error, say)));
  }
  const used = new Set<string>();
  for (const template of templates) {
    const name = freeName(`${template.box} ${layout.faces[template.face]}`, used);
    const path = join(to, `${name}.${kind}`);
    writeWhole(
      path,
      kind === "svg"
        ? svgSheet(faceSheet(template, "print", drawn))
        : dxfSheet(faceSheet(template, "cut", drawn)),
      force,
    );
    print([told.common.files.written(path)]);
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

function boxLines(box: BoxFigures, screen: Screen): string[] {
  return [
    paint(harmless(box.box), "strong", screen),
    ...boxWhyWords(box, screen.paper.of.layout).flatMap((line) => wrap(line, screen.width, 2)),
    ...entryTable(box, screen),
    ...contentsLines(box, screen),
    ...(box.drilling.length > 0 ? [screen.told.layout.boxes.drilling] : []),
    ...box.drilling.flatMap((step, index) =>
      wrap(drillWords(step, screen.paper.of.layout), screen.width - 6).map(
        (line, at) => `  ${(at === 0 ? String(index + 1) : "").padStart(2)}  ${line}`,
      ),
    ),
    "",
  ];
}

function entryTable({ layout }: BoxFigures, screen: Screen): string[] {
  if (layout === undefined || layout.entries.length === 0) return [];
  const { layout: words } = screen.paper.of;
  const { heads } = screen.told.layout.boxes;
  const rows = layout.entries.map(({ id, on, x, y, holeMm }) => [
    words.faces[on],
    words.entry(id),
    layout.glands.find(({ cable }) => cable === id)?.fit.size ?? "",
    mmWords(holeMm),
    mmWords(x),
    mmWords(y),
  ]);
  const columns = [
    left(heads.face),
    left(heads.entry),
    left(heads.gland),
    right(heads.hole),
    right(heads.along),
    right(heads.up),
  ];
  return textTable(columns, rows, screen);
}

function contentsLines({ layout }: BoxFigures, screen: Screen): string[] {
  const placed = layout?.contents ?? [];
  if (placed.length === 0) return [];
  const { boxes: say } = screen.told.layout;
  const each = placed.map(({ id, x, y, turned }) => say.at(id, mmWords(x), mmWords(y), turned));
  return wrap(say.inside(each.join("; ")), screen.width, 2);
}
