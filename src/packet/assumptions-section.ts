import type { Figures } from "../core/figures-types.js";
import type { AssumptionReason } from "../core/plan/complete/reasons.js";
import { usualCopperRise, usualCorners } from "../core/reference/assumed.js";
import { deviceDrop, holderDrop, switchDrop } from "../core/reference/contacts.js";
import { joints } from "../core/reference/joints.js";
import { assumptionReason } from "../words/assumptions.js";
import { counted, decimals, percent, volts } from "../words/numbers.js";
import type { Paper } from "./page.js";
import { paragraph, space } from "./piece.js";
import { flowing, type Section } from "./section.js";
import { type Column, type Row, table } from "./table.js";

const columns: readonly Column[] = [
  { heading: "What was left out", share: 40 },
  { heading: "Taken instead", share: 32 },
  { heading: "For", share: 70 },
  { heading: "Why", share: 100 },
];

/** Everything the plan left out and what was taken instead; like assumptions share a row. */
export function assumptionsSection(figures: Figures, paper: Paper): Section {
  const widthMm = paper.right - paper.left;
  const alike = new Map<string, { field: string; value: string; reason: AssumptionReason; at: string[] }>();
  for (const { field, value, reason, at } of figures.assumptions) {
    const key = `${field}\n${value}\n${reason}`;
    const known = alike.get(key);
    if (known) known.at.push(at);
    else alike.set(key, { field, value, reason, at: [at] });
  }
  const rows = [...alike.values()].map(
    ({ field, value, reason, at }): Row => ({
      cells: [
        { words: [{ text: field, weight: "semibold" }] },
        { words: [{ text: value }] },
        { words: [{ text: namesOf(at), sizePt: 9.5, maxLines: 4 }] },
        { words: [{ text: assumptionReason(reason), sizePt: 9.5, maxLines: 4 }] },
      ],
    }),
  );
  const intro = paragraph(
    {
      text: "Write any of these in the plan and your value is used and checked in its place.",
      colour: "soft",
      sizePt: 9.5,
    },
    widthMm,
  );
  const always = paragraph({ text: inEveryPlan(), colour: "soft", sizePt: 9.5, maxLines: 5 }, widthMm);
  return flowing(
    "Assumptions",
    counted(figures.assumptions.length, "value that the plan leaves out", "values that the plan leaves out"),
    rows.length === 0 ? [] : [intro, space(1), always, space(2), ...table(columns, rows, widthMm)],
    paper,
  );
}

/** What the figures take in any plan, so that they can be added up by hand. */
function inEveryPlan(): string {
  const milliohm = (kind: "crimped ring" | "crimped butt") => decimals(joints[kind].ohmAt1Mm2 * 1000, 1);
  const fuseV = deviceDrop["blade fuse"] + holderDrop["blade fuse"];
  const boltedV = deviceDrop["bolted fuse"] + holderDrop["bolted fuse"];
  return [
    "In every plan, common practice without a source:",
    `the usual case has batteries ${percent(usualCorners.nominalCharge, 0)} charged, the worst has them at their reserve and copper ${usualCopperRise.riseK} K over the hottest air;`,
    `a crimped ring has ${milliohm("crimped ring")} mΩ and a butt ${milliohm("crimped butt")} mΩ on 1 mm², less on more copper;`,
    `a blade fuse with its holder loses ${volts(fuseV)} at its rating, a bolted one ${volts(boltedV)}, a switch ${volts(switchDrop.atRatingV)};`,
    "a conductor has the greatest resistance its size may have.",
  ].join(" ");
}

const mostNames = 12;

function namesOf(at: readonly string[]): string {
  const names = [...new Set(at)];
  const rest = names.length - mostNames;
  return `${names.slice(0, mostNames).join(", ")}${rest > 0 ? ` and ${rest} more` : ""}`;
}
