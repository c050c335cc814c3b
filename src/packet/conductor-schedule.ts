import type { SizeChoice } from "../core/circuit/sizes/types.js";
import type { Figures } from "../core/figures-types.js";
import type { CompleteRun } from "../core/plan/completed.js";
import type { Shows } from "../core/plan/model/plan.js";
import { conductorColour } from "../drawing/palette.js";
import { counted, decimals, lengthWords, noFigure, sizeWords, threeDigits } from "../words/numbers.js";
import { sizeReason } from "../words/size-reasons.js";
import { cornerNamed, fromTo, runDrops } from "./look-up.js";
import type { Paper } from "./page.js";
import { paragraph, space } from "./piece.js";
import { flowing, type Section } from "./section.js";
import { type Cell, type Column, type Row, table } from "./table.js";

const columns: readonly Column[] = [
  { heading: "Run", share: 62 },
  { heading: "Length", share: 25, align: "right" },
  { heading: "Size", share: 28 },
  { heading: "Cores", share: 14, align: "right" },
  { heading: "Colours", share: 36 },
  { heading: "Carries,\u00a0A", share: 22, align: "right" },
  { heading: "May carry,\u00a0A", share: 20, align: "right" },
  { heading: "Drop, V", share: 17, align: "right" },
  { heading: "Why this size", share: 66 },
];

/** Every run with its conductors, and why each is the size it is. */
export function conductorSchedule(figures: Figures, shows: Shows, paper: Paper): Section {
  const choices = new Map(figures.sizes.choices.map((choice) => [choice.id, choice]));
  const carriedA = new Map(
    figures.plan.runs.map(({ name, group }) => [
      name,
      (choices.get(group) ?? choices.get(name))?.currentA ?? 0,
    ]),
  );
  const drops = runDrops(cornerNamed(figures, "worst drop"), carriedA);
  const rows = figures.plan.runs.flatMap((run): Row[] => {
    const both = choices.get(run.group) ?? choices.get(run.name);
    const back = choices.get(`${run.group} / return`) ?? choices.get(`${run.name} / return`);
    const drop = drops.get(run.name);
    const { outV, returnV } = drop ?? { outV: Number.NaN, returnV: Number.NaN };
    const main = both ?? back;
    const first = row(
      run,
      main,
      back === undefined || both === undefined ? outV + returnV : outV,
      shows,
      "run",
    );
    return both !== undefined && back !== undefined
      ? [first, row(run, back, returnV, shows, "return")]
      : [first];
  });
  const widthMm = paper.right - paper.left;
  const intro = paragraph({ text: aimWords(figures), colour: "soft", sizePt: 9.5, maxLines: 5 }, widthMm);
  const pieces = [intro, space(2), ...table(columns, rows, widthMm)];
  return flowing("Conductor schedule", counted(figures.plan.runs.length, "run"), pieces, paper);
}

function row(
  run: CompleteRun,
  choice: SizeChoice | undefined,
  dropV: number,
  shows: Shows,
  leg: "run" | "return",
): Row {
  const pulledM = leg === "return" ? run.returnPulledM : run.pulledM;
  const name = leg === "return" ? `${run.name}, its return` : run.name;
  return {
    cells: [
      {
        words: [
          { text: name, weight: "semibold", maxLines: 2 },
          { text: `${fromTo(run)}${carriesWords(run)}`, sizePt: 9.5, colour: "soft", maxLines: 2 },
        ],
      },
      {
        words: [
          { text: lengthWords(pulledM, shows) },
          { text: `${lengthWords(run.pulledM - run.lengthM, shows)} slack`, sizePt: 9.5, colour: "soft" },
        ],
      },
      sizeCell(run, choice, shows),
      choice === undefined ? noFigure : String(choice.cores),
      colourCell(run, leg),
      threeDigits(choice?.currentA),
      threeDigits(choice?.ampacityA),
      decimals(dropV, 2),
      whyCell(choice, shows),
    ],
  };
}

/** The ways of a run that carries several. */
function carriesWords({ carries }: CompleteRun): string {
  return carries.length > 1 ? `, carries ${carries.join(", ")}` : "";
}

function sizeCell(run: CompleteRun, choice: SizeChoice | undefined, shows: Shows): Cell {
  const size = choice?.size ?? run.size;
  if (size === undefined) return { words: [{ text: "not worked out" }] };
  const fixed =
    choice?.fixedByOwner === true ? [{ text: "as given", sizePt: 9.5, colour: "soft" } as const] : [];
  return { words: [{ text: sizeWords(size, shows), weight: "semibold" }, ...fixed] };
}

function colourCell(run: CompleteRun, leg: "run" | "return"): Cell {
  const { out, return: back } = run.colours ?? {};
  const legs: [string, string | undefined][] = [];
  if (leg === "run" && run.legs !== "return") legs.push(["out", out]);
  if (run.legs !== "out") legs.push(["return", back]);
  if (legs.every(([, colour]) => colour === undefined))
    return { words: [{ text: "not given", sizePt: 9.5, colour: "soft" }] };
  return {
    words: legs.map(([name, colour]) => ({
      text: `${colour ?? "not given"} (${name})`,
      sizePt: 9.5,
      maxLines: 1,
      swatch: colour === undefined ? "paper" : (conductorColour(colour) ?? "paper"),
    })),
  };
}

function whyCell(choice: SizeChoice | undefined, shows: Shows): Cell {
  if (choice === undefined) return { words: [{ text: "no current was worked out for it", sizePt: 9.5 }] };
  return { words: [{ text: whyWords(choice, shows), sizePt: 9.5, maxLines: 5 }] };
}

/** The reason is what the next smaller size breaks, so that size is named where there is one. */
function whyWords({ reason, nextSmaller, fixedByOwner }: SizeChoice, shows: Shows): string {
  const why = sizeReason(reason);
  if (nextSmaller === undefined) return sentence(why);
  const smaller = `${sizeWords(nextSmaller.size, shows)} would not do: ${sizeReason(nextSmaller.reason)}.`;
  if (fixedByOwner || reason.rule === "owner") return `${sentence(why)} ${smaller}`;
  return smaller;
}

const sentence = (clause: string) => `${clause.charAt(0).toUpperCase()}${clause.slice(1)}.`;

function aimWords({ sizes, plan }: Figures): string {
  const aim = `Sizes are the ${sizes.aim} set for the whole boat that keeps every limit`;
  const proof = {
    proven: "; proven: no other set does better.",
    bounded: "; the best found, though a better one could exist.",
    none: ` — but none does: ${sizes.unmet.slice(0, 4).join(", ") || "some gear"} cannot be served by any size allowed.`,
  }[sizes.proof];
  const lengths = ` Drop is that of the run alone, out and back, in the worst corner. Lengths are ${plan.source.shows.lengths === "inches" ? "to 1/16 in" : "in millimetres"} of the cable as it is pulled: the way, and the slack at both ends, which stays in the circuit.`;
  return aim + proof + lengths;
}
