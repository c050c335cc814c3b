import type { BoxFigures } from "../core/box/plan-boxes.js";
import type { LayoutFigures } from "../core/parts/layout-types.js";
import { boxInside } from "../drawing/box-inside.js";
import { fitText } from "../drawing/fonts/wrap.js";
import { points, text } from "../drawing/make.js";
import { figure } from "../drawing/parts.js";
import type { Shape } from "../drawing/shapes.js";
import { templateParts } from "../drawing/template-sheet.js";
import { boxWhyWords, passingWords } from "../words/box-words.js";
import { drillWords, moneyWords } from "../words/layout-words.js";
import { decimals } from "../words/numbers.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import { type PieceName, pieceName, pieceNames } from "../words/piece-words.js";
import { columnGapMm, flow } from "./flow.js";
import type { Paper } from "./page.js";
import { beside, heading, type Piece, paragraph, space, stacked, together } from "./piece.js";
import type { Section } from "./section.js";
import { type Column, type Row, table } from "./table.js";
import { tickLine } from "./tick.js";

/** For each box: how it is made up, its holes and their order, then a template at true scale for each face that is drilled. */
type BoxWords = PaperWords["layout"]["boxes"];

export function boxSheets(
  { boxes: laidOut, cables }: LayoutFigures,
  paper: Paper,
  words: PaperWords,
): Section[] {
  const say = words.layout.boxes;
  const names = pieceNames(cables, words.of.layout);
  const boxes = laidOut.map((box) => ({
    ...box,
    templates: box.templates.map((template) => ({
      ...template,
      holes: template.holes.map((hole) => ({ ...hole, id: pieceName(names, hole.id) })),
    })),
  }));
  return boxes.map((box): Section => {
    const numbers = entryNumbers(box);
    return {
      title: say.title(box.box),
      subtitle: subtitle(box, say),
      pages: [
        ...flow(pieces(box, numbers, names, paper, words), paper),
        ...box.templates.flatMap((template) => {
          const noteMm = 6;
          const area = {
            left: paper.left,
            bottom: paper.bottom,
            widthMm: paper.right - paper.left,
            heightMm: paper.top - paper.bottom - noteMm,
          };
          return templateParts(template, area, words.of.drawn).map(({ part, shapes }) => [
            ...templateHead(template.face, part, paper, words),
            ...figure(say.template(template.face), shapes, words.frame.drawn),
          ]);
        }),
      ],
    };
  });
}

function templateHead(
  face: BoxFigures["templates"][number]["face"],
  part: string,
  paper: Paper,
  { layout, of }: PaperWords,
): Shape[] {
  const title = `${layout.boxes.template(face)}${part === "" ? "" : `, ${part}`}`;
  const type = { sizeMm: points(11.5), weight: "semibold" } as const;
  const y = paper.top - 4;
  return [
    text(paper.left, y, fitText(title, (paper.right - paper.left) * 0.45, type), type),
    text(paper.right, y, of.drawn.template.scale, { sizeMm: points(9), anchor: "end" }),
  ];
}

/** Numbers of the entries, face by face as on its template: those of one face start again at 1. */
function entryNumbers({ layout }: BoxFigures): ReadonlyMap<string, number> {
  const numbers = new Map<string, number>();
  for (const face of layout?.faces ?? []) {
    const here = (layout?.entries ?? []).filter(({ on }) => on === face.name);
    here
      .toSorted((a, b) => a.x - b.x || a.y - b.y)
      .forEach(({ id }, index) => {
        numbers.set(id, index + 1);
      });
  }
  return numbers;
}

function subtitle({ kind, bought, layout, from }: BoxFigures, words: BoxWords): string {
  const holes = layout === undefined ? words.notLaidOut : words.holes(layout.entries.length);
  const price = bought?.price === undefined ? "" : `, ${moneyWords(bought.price)}`;
  const casing = kind === "panel" ? words.casing : "";
  const made = bought === undefined ? (from === "drilled" ? words.drilled : "") : `${bought.name}${price}`;
  return [casing, made, holes].filter((part) => part !== "").join(" · ");
}

function pieces(
  box: BoxFigures,
  numbers: ReadonlyMap<string, number>,
  names: ReadonlyMap<string, PieceName>,
  paper: Paper,
  words: PaperWords,
): Piece[] {
  const say = words.layout.boxes;
  const { drawn } = words.of;
  const widthMm = paper.right - paper.left;
  const leftMm = widthMm * 0.47;
  const rightAt = widthMm * 0.52;
  const facts = boxFacts(box, words).map((each) =>
    paragraph({ text: each, maxLines: 6 }, widthMm - rightAt, 1.6),
  );
  const { body, layout } = box;
  if (body === undefined || layout === undefined)
    return boxFacts(box, words).map((each) => paragraph({ text: each, maxLines: 8 }, widthMm, 2));
  const below = [
    space(2),
    ...table(columns(say), entryRows(box, numbers, names, words), widthMm),
    ...(box.drilling.length === 0
      ? []
      : together([
          heading(say.order, widthMm),
          ...inTwoColumns(
            box.drilling.map((step, index) => `${index + 1}  ${drillWords(step, words.of.layout)}`),
            widthMm,
          ),
        ])),
  ];
  // smaller where that brings the order of drilling onto the page with the holes
  const wantedMm = Math.min(78, (leftMm * body.heightMm) / body.widthMm);
  const leftOverMm = paper.top - paper.bottom - stacked(below).heightMm - 10.5;
  const drawingMm = Math.max(46, leftOverMm < 46 ? wantedMm : Math.min(wantedMm, leftOverMm));
  const draw = (room: { left: number; bottom: number }) =>
    boxInside(body, layout, numbers, { ...room, widthMm: leftMm, heightMm: drawingMm }, drawn);
  const { scale, letters } = draw({ left: 0, bottom: 0 });
  const notes = [
    say.lidOff(scale === 1 ? drawn.step.trueScale : `1 : ${scale}`),
    ...(letters.size === 0 ? [] : [[...letters].map(([name, letter]) => `${letter}: ${name}`).join("; ")]),
  ];
  const type = { sizeMm: points(9), weight: "regular" } as const;
  const drawing: Piece = {
    heightMm: drawingMm + 2 + 4 * notes.length,
    draw: (x, top) => [
      ...figure(say.title(box.box), draw({ left: x, bottom: top - drawingMm }).shapes, words.frame.drawn),
      ...notes.map((note, index) =>
        text(x, top - drawingMm - 4.5 - index * 4, fitText(note, leftMm, type), { ...type, colour: "soft" }),
      ),
    ],
  };
  return [
    beside([
      { at: 0, piece: drawing },
      { at: rightAt, piece: stacked(facts) },
    ]),
    ...below,
  ];
}

/** Lines to tick, down one half of the width and then down the other. */
function inTwoColumns(lines: readonly string[], widthMm: number): Piece[] {
  const columnMm = (widthMm - columnGapMm) / 2;
  const half = Math.ceil(lines.length / 2);
  return lines.slice(0, half).map((line, index) => {
    const right = lines[half + index];
    return beside([
      { at: 0, piece: tickLine({ text: line }, columnMm) },
      ...(right === undefined
        ? []
        : [{ at: columnMm + columnGapMm, piece: tickLine({ text: right }, columnMm) }]),
    ]);
  });
}

function boxFacts(box: BoxFigures, { layout: { boxes: words }, of }: PaperWords): string[] {
  const { body, from, unmeasured, passing, layout } = box;
  return [
    ...boxWhyWords(box, of.layout),
    ...(body === undefined ? [] : [words.stands(body.mounted === "wall", waterWords(box, words))]),
    ...(passing === undefined ? [] : [passingWords(passing, of.layout)]),
    ...(box.spareEntries > 0 ? [words.spares(box.spareEntries)] : []),
    ...((layout?.contents ?? []).length > 0 && from !== "drilled" ? [words.contents] : []),
    ...(unmeasured.length > 0 && from !== "none"
      ? [words.unmeasured(unmeasured.map((one) => words.measures[one]).join(", "))]
      : []),
    ...(from === "drilled" ? [words.asTheyAre] : []),
    ...(box.drilling.length > 0 ? [words.clamp] : []),
  ];
}

function waterWords({ water }: BoxFigures, words: BoxWords): string {
  if (water === undefined) return words.waterUnknown;
  const { jetNumeral, numeral } = water;
  return words.water(jetNumeral === undefined ? String(numeral) : words.numerals(jetNumeral, numeral));
}

const columns = ({ heads }: BoxWords): readonly Column[] => [
  { heading: heads.face, share: 26 },
  { heading: heads.number, share: 10, align: "right" },
  { heading: heads.comes, share: 74 },
  { heading: heads.gland, share: 24 },
  { heading: heads.hole, share: 22, align: "right" },
  { heading: heads.along, share: 26, align: "right" },
  { heading: heads.up, share: 26, align: "right" },
  { heading: heads.nut, share: 26, align: "right" },
];

function entryRows(
  { layout }: BoxFigures,
  numbers: ReadonlyMap<string, number>,
  names: ReadonlyMap<string, PieceName>,
  { layout: { boxes: words }, of }: PaperWords,
): Row[] {
  const faces = layout?.faces.map(({ name }) => name) ?? [];
  return (layout?.entries ?? [])
    .toSorted(
      (a, b) =>
        faces.indexOf(a.on) - faces.indexOf(b.on) || (numbers.get(a.id) ?? 0) - (numbers.get(b.id) ?? 0),
    )
    .map(({ id, on, x, y, holeMm, acrossMm }) => ({
      cells: [
        of.layout.faces[on],
        { words: [{ text: String(numbers.get(id) ?? ""), weight: "semibold" }] },
        of.layout.entry(pieceName(names, id)),
        layout?.glands.find(({ cable }) => cable === id)?.fit.size ??
          (/^spare \d+$/.test(id) ? words.plug : "–"),
        { words: [{ text: decimals(holeMm, 1), weight: "semibold" }] },
        decimals(x, 1),
        decimals(y, 1),
        decimals(acrossMm, 1),
      ],
    }));
}
