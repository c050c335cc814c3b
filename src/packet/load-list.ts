import type { Figures } from "../core/figures-types.js";
import type { CompleteGear } from "../core/plan/completed.js";
import { within } from "../core/quantity/within.js";
import { decimals, marked, noFigure, percent, shareSet, threeDigits } from "../words/numbers.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import { cornerNamed, type GearGroup, gearGroups, type WorstGear, worstByGear } from "./look-up.js";
import type { Paper } from "./page.js";
import { paragraph, space } from "./piece.js";
import { flowing, type Section } from "./section.js";
import { type Cell, type Column, type Row, table } from "./table.js";

type LoadWords = PaperWords["electrics"]["loads"];

const columns = ({ heads }: LoadWords): readonly Column[] => [
  { heading: heads.gear, share: 46 },
  { heading: heads.count, share: 15, align: "right" },
  { heading: heads.draws, share: 25, align: "right" },
  { heading: heads.together, share: 24, align: "right" },
  { heading: heads.circuit, share: 38 },
  { heading: heads.usual, share: 22, align: "right" },
  { heading: heads.worst, share: 22, align: "right" },
  { heading: heads.down, share: 22, align: "right" },
  { heading: heads.drop, share: 18, align: "right" },
  { heading: heads.limit, share: 16, align: "right" },
  { heading: heads.against, share: 24 },
];

/** Every piece of gear with what it draws, what feeds it, and what reaches its terminals. */
export function loadList(figures: Figures, paper: Paper, { electrics }: PaperWords): Section {
  const words = electrics.loads;
  const worst = worstByGear(figures);
  const nominal = new Map(cornerNamed(figures, "nominal")?.gear.map((gear) => [gear.id, gear]));
  const rows = gearGroups(figures.plan.gear).map((group): Row => {
    const currents = group.pieces.map(({ name }) => nominal.get(name)).filter((gear) => gear?.on === true);
    const togetherA = currents.reduce((sum, gear) => sum + (gear?.currentA ?? 0), 0);
    const usualV = Math.min(...currents.map((gear) => gear?.voltageV ?? Number.NaN));
    const first = group.pieces[0];
    const hard = hardest(group, worst);
    return {
      cells: [
        nameCell(group, words),
        String(group.pieces.length),
        first === undefined ? noFigure : drawWords(first),
        currents.length === 0 ? noFigure : threeDigits(togetherA),
        circuitsOf(group, figures, words),
        decimals(usualV, 2),
        decimals(hard?.gear.voltageV, 2),
        decimals(first?.minV, 2),
        percent(hard?.gear.dropShare),
        shareSet(first?.maxDropShare),
        verdict(group, hard, words),
      ],
    };
  });
  const widthMm = paper.right - paper.left;
  const intro = paragraph({ text: words.explanation, colour: "soft", sizePt: 9.5 }, widthMm);
  return flowing(
    words.title,
    words.count(figures.plan.gear.length),
    [intro, space(2), ...table(columns(words), rows, widthMm)],
    paper,
  );
}

function nameCell({ name, pieces }: GearGroup, { roles }: LoadWords): Cell {
  const role = pieces[0]?.role ?? "other";
  const words = { text: name, weight: "semibold", maxLines: 2 } as const;
  return role === "other"
    ? { words: [words] }
    : { words: [words, { text: roles[role], sizePt: 9.5, colour: "soft" }] };
}

function drawWords({ draw }: CompleteGear): string {
  switch (draw.kind) {
    case "power":
      return marked(draw.powerW, "W");
    case "current":
      return marked(draw.currentA, "A");
    case "resistance":
      return marked(draw.resistanceOhm, "Ω");
    default:
      return draw satisfies never;
  }
}

function circuitsOf({ pieces }: GearGroup, figures: Figures, { notFed }: LoadWords): Cell {
  const circuits = [...new Set(pieces.map(({ name }) => figures.plan.circuitOf.get(name)))];
  const words = circuits.map((circuit) => circuit ?? notFed);
  return { words: words.slice(0, 3).map((text) => ({ text, maxLines: 2 })) };
}

function hardest({ pieces }: GearGroup, worst: ReadonlyMap<string, WorstGear>): WorstGear | undefined {
  let most: WorstGear | undefined;
  for (const { name } of pieces) {
    const one = worst.get(name);
    if (one && (most === undefined || one.gear.dropShare > most.gear.dropShare)) most = one;
  }
  return most;
}

function verdict({ pieces }: GearGroup, hard: WorstGear | undefined, words: LoadWords): Cell {
  const piece = pieces.find(({ name }) => name === hard?.gear.id);
  if (hard === undefined || piece === undefined) return { words: [{ text: words.notChecked, sizePt: 9.5 }] };
  const over = !within(hard.gear.dropShare, piece.maxDropShare);
  const low = hard.gear.underVoltage;
  const text = words.verdicts[over && low ? "both" : over ? "over" : low ? "low" : "within"];
  const where =
    pieces.length > 1
      ? [{ text: words.atNumber(pieces.indexOf(piece) + 1), sizePt: 9.5, colour: "soft" } as const]
      : [];
  const look = over || low ? ({ weight: "semibold", colour: "accent" } as const) : {};
  return { words: [{ text, sizePt: 9.5, ...look }, ...where] };
}
