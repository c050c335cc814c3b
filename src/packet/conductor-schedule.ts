import type { SizeChoice } from "../core/circuit/sizes/types.js";
import { priceBasis } from "../core/circuit/sizing/prices.js";
import type { Figures } from "../core/figures-types.js";
import type { CompleteRun } from "../core/plan/completed.js";
import type { Shows } from "../core/plan/model/plan.js";
import { ruleSet } from "../core/reference/rule-sets.js";
import { conductorColour } from "../drawing/palette.js";
import { decimals, lengthWords, noFigure, sizeWords, threeDigits } from "../words/numbers.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import { sizeReason } from "../words/size-reasons.js";
import { cornerNamed, endWords, runDrops } from "./look-up.js";
import type { Paper } from "./page.js";
import { paragraph, space } from "./piece.js";
import { flowing, type Section } from "./section.js";
import { type Cell, type Column, type Row, table } from "./table.js";

type ConductorWords = PaperWords["electrics"]["conductors"];

const columns = ({ heads }: ConductorWords): readonly Column[] => [
  { heading: heads.run, share: 57 },
  { heading: heads.length, share: 38, align: "right" },
  { heading: heads.size, share: 24 },
  { heading: heads.cores, share: 14, align: "right" },
  { heading: heads.colours, share: 39 },
  { heading: heads.carries, share: 22, align: "right" },
  { heading: heads.may, share: 20, align: "right" },
  { heading: heads.drop, share: 17, align: "right" },
  { heading: heads.why, share: 59 },
];

/** Every run with its conductors, and why each is the size it is. */
export function conductorSchedule(figures: Figures, shows: Shows, paper: Paper, words: PaperWords): Section {
  const say = words.electrics.conductors;
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
      words,
    );
    return both !== undefined && back !== undefined
      ? [first, row(run, back, returnV, shows, "return", words)]
      : [first];
  });
  const widthMm = paper.right - paper.left;
  const intro = paragraph(
    { text: aimWords(figures, say), colour: "soft", sizePt: 9.5, maxLines: 7 },
    widthMm,
  );
  const pieces = [intro, space(2), ...table(columns(say), rows, widthMm)];
  return flowing(say.title, say.count(figures.plan.runs.length), pieces, paper);
}

function row(
  run: CompleteRun,
  choice: SizeChoice | undefined,
  dropV: number,
  shows: Shows,
  leg: "run" | "return",
  words: PaperWords,
): Row {
  const say = words.electrics.conductors;
  const pulledM = leg === "return" ? run.returnPulledM : run.pulledM;
  const name = leg === "return" ? say.itsReturn(run.name) : run.name;
  return {
    cells: [
      {
        words: [
          { text: name, weight: "semibold", maxLines: 2 },
          {
            text: `${say.fromTo(endWords(run.from), endWords(run.to))}${carriesWords(run, say)}`,
            sizePt: 9.5,
            colour: "soft",
            maxLines: 2,
          },
        ],
      },
      {
        words: [
          { text: lengthWords(pulledM, shows) },
          { text: say.slack(lengthWords(run.pulledM - run.lengthM, shows)), sizePt: 9.5, colour: "soft" },
        ],
      },
      sizeCell(run, choice, shows, say),
      choice === undefined ? noFigure : String(choice.cores),
      colourCell(run, leg, words),
      threeDigits(choice?.currentA),
      threeDigits(choice?.ampacityA),
      decimals(dropV, 2),
      whyCell(choice, shows, words),
    ],
  };
}

/** The ways of a run that carries several. */
function carriesWords({ carries }: CompleteRun, words: ConductorWords): string {
  return carries.length > 1 ? words.carries(carries.join(", ")) : "";
}

function sizeCell(
  run: CompleteRun,
  choice: SizeChoice | undefined,
  shows: Shows,
  words: ConductorWords,
): Cell {
  const size = choice?.size ?? run.size;
  if (size === undefined) return { words: [{ text: words.notWorkedOut }] };
  const fixed =
    choice?.fixedByOwner === true ? [{ text: words.asGiven, sizePt: 9.5, colour: "soft" } as const] : [];
  return { words: [{ text: sizeWords(size, shows), weight: "semibold" }, ...fixed] };
}

function colourCell(run: CompleteRun, leg: "run" | "return", words: PaperWords): Cell {
  const { notGiven, legs: names } = words.electrics.conductors;
  const { out, return: back } = run.colours ?? {};
  const legs: [string, string | undefined][] = [];
  if (leg === "run" && run.legs !== "return") legs.push([names.out, out]);
  if (run.legs !== "out") legs.push([names.return, back]);
  if (legs.every(([, colour]) => colour === undefined))
    return { words: [{ text: notGiven, sizePt: 9.5, colour: "soft" }] };
  return {
    words: legs.map(([name, colour]) => ({
      text: `${colour === undefined ? notGiven : words.of.layout.colour(colour)} (${name})`,
      sizePt: 9.5,
      maxLines: 1,
      swatch: colour === undefined ? "paper" : (conductorColour(colour) ?? "paper"),
    })),
  };
}

function whyCell(choice: SizeChoice | undefined, shows: Shows, words: PaperWords): Cell {
  if (choice === undefined) return { words: [{ text: words.electrics.conductors.noCurrent, sizePt: 9.5 }] };
  return { words: [{ text: whyWords(choice, shows, words), sizePt: 9.5, maxLines: 5 }] };
}

/** The reason is what the next smaller size breaks, so that size is named where there is one. */
function whyWords(
  { reason, nextSmaller, fixedByOwner }: SizeChoice,
  shows: Shows,
  words: PaperWords,
): string {
  const why = sizeReason(reason, words);
  if (nextSmaller === undefined) return sentence(why);
  const smaller = words.electrics.conductors.smaller(
    sizeWords(nextSmaller.size, shows),
    sizeReason(nextSmaller.reason, words),
  );
  if (fixedByOwner || reason.rule === "owner") return `${sentence(why)} ${smaller}`;
  return smaller;
}

const sentence = (clause: string) => `${clause.charAt(0).toUpperCase()}${clause.slice(1)}.`;

function aimWords({ sizes, plan }: Figures, words: ConductorWords): string {
  const proof = sizes.proof === "none" ? words.none(sizes.unmet.slice(0, 4).join(", ")) : words[sizes.proof];
  const basis = priceBasis(plan, ruleSet(plan.source.rules), sizes);
  const rests = basis === undefined || basis === "prices" ? "" : words.basis[basis];
  return `${words.aim(sizes.aim)}${proof}${rests}${words.lengths(plan.source.shows.lengths === "inches")}`;
}
