import type { Figures } from "../core/figures-types.js";
import type { AssumedField } from "../core/plan/complete/assumed-fields.js";
import type { AssumptionReason } from "../core/plan/complete/reasons.js";
import { usualCopperRise, usualCorners } from "../core/reference/assumed.js";
import { deviceDrop, holderDrop, switchDrop } from "../core/reference/contacts.js";
import { joints } from "../core/reference/joints.js";
import { decimals, percent, volts } from "../words/numbers.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import type { Paper } from "./page.js";
import { paragraph, space } from "./piece.js";
import { flowing, type Section } from "./section.js";
import { type Column, type Row, table } from "./table.js";

const columns = ({ heads }: PaperWords["findings"]["assumptions"]): readonly Column[] => [
  { heading: heads.field, share: 40 },
  { heading: heads.taken, share: 32 },
  { heading: heads.at, share: 70 },
  { heading: heads.why, share: 100 },
];

/** Everything the plan left out and what was taken instead; like assumptions share a row. */
export function assumptionsSection(
  figures: Figures,
  paper: Paper,
  { findings, frame, of: { assumed } }: PaperWords,
): Section {
  const words = findings.assumptions;
  const widthMm = paper.right - paper.left;
  const alike = new Map<
    string,
    { field: AssumedField; value: string; reason: AssumptionReason; at: string[] }
  >();
  for (const { field, value, reason, at } of figures.assumptions) {
    const key = `${field}\n${value}\n${reason}`;
    const known = alike.get(key);
    if (known) known.at.push(at);
    else alike.set(key, { field, value, reason, at: [at] });
  }
  const rows = [...alike.values()].map(
    ({ field, value, reason, at }): Row => ({
      cells: [
        { words: [{ text: assumed.field(field), weight: "semibold" }] },
        { words: [{ text: assumed.value(value) }] },
        { words: [{ text: namesOf(at, frame.more), sizePt: 9.5, maxLines: 4 }] },
        { words: [{ text: assumed.reasons[reason], sizePt: 9.5, maxLines: 4 }] },
      ],
    }),
  );
  const intro = paragraph(
    {
      text: words.write,
      colour: "soft",
      sizePt: 9.5,
    },
    widthMm,
  );
  const always = paragraph({ text: inEveryPlan(words), colour: "soft", sizePt: 9.5, maxLines: 5 }, widthMm);
  return flowing(
    words.title,
    words.count(figures.assumptions.length),
    rows.length === 0 ? [] : [intro, space(1), always, space(2), ...table(columns(words), rows, widthMm)],
    paper,
  );
}

/** What the figures take in any plan, so that they can be added up by hand. */
function inEveryPlan({ always }: PaperWords["findings"]["assumptions"]): string {
  const milliohm = (kind: "crimped ring" | "crimped butt") => decimals(joints[kind].ohmAt1Mm2 * 1000, 1);
  const fuseV = deviceDrop["blade fuse"] + holderDrop["blade fuse"];
  const boltedV = deviceDrop["bolted fuse"] + holderDrop["bolted fuse"];
  return always({
    charged: percent(usualCorners.nominalCharge, 0),
    riseK: usualCopperRise.riseK,
    ring: milliohm("crimped ring"),
    butt: milliohm("crimped butt"),
    blade: volts(fuseV),
    bolted: volts(boltedV),
    switched: volts(switchDrop.atRatingV),
  });
}

const mostNames = 12;

function namesOf(at: readonly string[], more: (count: number) => string): string {
  const names = [...new Set(at)];
  const rest = names.length - mostNames;
  return `${names.slice(0, mostNames).join(", ")}${rest > 0 ? more(rest) : ""}`;
}
