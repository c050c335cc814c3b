import type { BoxFigures } from "../core/box/plan-boxes.js";
import type { LayoutFigures } from "../core/parts/layout-types.js";
import { boxInside } from "../drawing/box-inside.js";
import { fitText } from "../drawing/fonts/wrap.js";
import { points, text } from "../drawing/make.js";
import type { Shape } from "../drawing/shapes.js";
import { templateParts } from "../drawing/template-sheet.js";
import { boxWhyWords, passingWords } from "../words/box-words.js";
import { drillWords, moneyWords } from "../words/layout-words.js";
import { counted, decimals } from "../words/numbers.js";
import { type PieceName, pieceName, pieceNames } from "../words/piece-words.js";
import { faceWords, templateWords } from "../words/template-words.js";
import { flow } from "./flow.js";
import type { Paper } from "./page.js";
import { beside, heading, type Piece, paragraph, space, stacked, together } from "./piece.js";
import type { Section } from "./section.js";
import { type Column, type Row, table } from "./table.js";
import { tickLine } from "./tick.js";

/** For each box: how it is made up, its holes and their order, then a template at true scale for each face that is drilled. */
export function boxSheets({ boxes: laidOut, cables }: LayoutFigures, paper: Paper): Section[] {
  const names = pieceNames(cables);
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
      title: `Box: ${box.box}`,
      subtitle: subtitle(box),
      pages: [
        ...flow(pieces(box, numbers, names, paper), paper),
        ...box.templates.flatMap((template) => {
          const noteMm = 6;
          const area = {
            left: paper.left,
            bottom: paper.bottom,
            widthMm: paper.right - paper.left,
            heightMm: paper.top - paper.bottom - noteMm,
          };
          return templateParts(template, area).map(({ part, shapes }) => [
            ...templateHead(template.face, part, paper),
            ...shapes,
          ]);
        }),
      ],
    };
  });
}

function templateHead(face: BoxFigures["templates"][number]["face"], part: string, paper: Paper): Shape[] {
  const title = `Template of the ${faceWords[face]}, seen from outside${part === "" ? "" : `, ${part}`}`;
  const type = { sizeMm: points(11.5), weight: "semibold" } as const;
  const y = paper.top - 4;
  return [
    text(paper.left, y, fitText(title, (paper.right - paper.left) * 0.45, type), type),
    text(paper.right, y, templateWords.scale, { sizeMm: points(9), anchor: "end" }),
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

function subtitle({ kind, bought, layout, from }: BoxFigures): string {
  const holes = layout === undefined ? "not laid out" : counted(layout.entries.length, "hole");
  const price = bought?.price === undefined ? "" : `, ${moneyWords(bought.price)}`;
  const casing = kind === "panel" ? "casing of a panel" : "";
  const made =
    bought === undefined ? (from === "drilled" ? "drilled already" : "") : `${bought.name}${price}`;
  return [casing, made, holes].filter((part) => part !== "").join(" · ");
}

function pieces(
  box: BoxFigures,
  numbers: ReadonlyMap<string, number>,
  names: ReadonlyMap<string, PieceName>,
  paper: Paper,
): Piece[] {
  const widthMm = paper.right - paper.left;
  const leftMm = widthMm * 0.47;
  const rightAt = widthMm * 0.52;
  const facts = boxFacts(box).map((each) => paragraph({ text: each, maxLines: 6 }, widthMm - rightAt, 1.6));
  const { body, layout } = box;
  if (body === undefined || layout === undefined)
    return boxFacts(box).map((each) => paragraph({ text: each, maxLines: 8 }, widthMm, 2));
  const drawingMm = Math.min(78, Math.max(46, (leftMm * body.heightMm) / body.widthMm));
  const draw = (room: { left: number; bottom: number }) =>
    boxInside(body, layout, numbers, { ...room, widthMm: leftMm, heightMm: drawingMm });
  const { scale, letters } = draw({ left: 0, bottom: 0 });
  const notes = [
    `Lid off, ${scale === 1 ? "true scale" : `1 : ${scale}`}; numbers as on the template of each face`,
    ...(letters.size === 0 ? [] : [[...letters].map(([name, letter]) => `${letter}: ${name}`).join("; ")]),
  ];
  const type = { sizeMm: points(9), weight: "regular" } as const;
  const drawing: Piece = {
    heightMm: drawingMm + 2 + 4 * notes.length,
    draw: (x, top) => [
      ...draw({ left: x, bottom: top - drawingMm }).shapes,
      ...notes.map((words, index) =>
        text(x, top - drawingMm - 4.5 - index * 4, fitText(words, leftMm, type), { ...type, colour: "soft" }),
      ),
    ],
  };
  return [
    beside([
      { at: 0, piece: drawing },
      { at: rightAt, piece: stacked(facts) },
    ]),
    space(2),
    ...table(columns, entryRows(box, numbers, names), widthMm),
    ...(box.drilling.length === 0
      ? []
      : together([
          heading("In this order", widthMm),
          ...box.drilling.map((step, index) =>
            tickLine({ text: `${index + 1}  ${drillWords(step)}` }, widthMm),
          ),
        ])),
  ];
}

const clampWords =
  "Clamp the box, never hold it in the hand: a step drill grabs. Wear eye protection. The lid stays on while you drill: it keeps the box square. Try each gland in its hole before you go on to the next face.";

function boxFacts(box: BoxFigures): string[] {
  const { body, from, unmeasured, passing, layout } = box;
  return [
    ...boxWhyWords(box),
    ...(body === undefined
      ? []
      : [
          `It ${body.mounted === "wall" ? "hangs on a wall, lid towards you" : "stands on a floor, lid up"}${box.water === undefined ? "; its IP code is not told: whether it keeps water out was not checked" : `; water numeral of its IP code ${box.water.jetNumeral === undefined ? "" : `${box.water.jetNumeral} and `}${box.water.numeral}`}.`,
        ]),
    ...(passing === undefined ? [] : [passingWords(passing)]),
    ...(box.spareEntries > 0
      ? [`${counted(box.spareEntries, "spare entry", "spare entries")}, closed with a plug.`]
      : []),
    ...((layout?.contents ?? []).length > 0 && from !== "drilled"
      ? ["Contents are screwed to the base before the lid goes on; room to bend is kept behind each gland."]
      : []),
    ...(unmeasured.length > 0 && from !== "none"
      ? [`Not measured, so not checked: ${unmeasured.join(", ")}. Measure before you drill.`]
      : []),
    ...(from === "drilled" ? ["Its holes are taken as they are."] : []),
    ...(box.drilling.length > 0 ? [clampWords] : []),
  ];
}

const columns: readonly Column[] = [
  { heading: "Face", share: 26 },
  { heading: "No.", share: 10, align: "right" },
  { heading: "Comes in", share: 74 },
  { heading: "Gland", share: 24 },
  { heading: "Hole,\u00a0mm", share: 22, align: "right" },
  { heading: "Along, inside,\u00a0mm", share: 26, align: "right" },
  { heading: "Up from the base,\u00a0mm", share: 26, align: "right" },
  { heading: "Nut, corner to corner,\u00a0mm", share: 26, align: "right" },
];

function entryRows(
  { layout }: BoxFigures,
  numbers: ReadonlyMap<string, number>,
  names: ReadonlyMap<string, PieceName>,
): Row[] {
  const faces = layout?.faces.map(({ name }) => name) ?? [];
  return (layout?.entries ?? [])
    .toSorted(
      (a, b) =>
        faces.indexOf(a.on) - faces.indexOf(b.on) || (numbers.get(a.id) ?? 0) - (numbers.get(b.id) ?? 0),
    )
    .map(({ id, on, x, y, holeMm, acrossMm }) => ({
      cells: [
        faceWords[on],
        { words: [{ text: String(numbers.get(id) ?? ""), weight: "semibold" }] },
        pieceName(names, id),
        layout?.glands.find(({ cable }) => cable === id)?.fit.size ?? (/^spare \d+$/.test(id) ? "plug" : "–"),
        { words: [{ text: decimals(holeMm, 1), weight: "semibold" }] },
        decimals(x, 1),
        decimals(y, 1),
        decimals(acrossMm, 1),
      ],
    }));
}
