import { readQuantity } from "../../quantity/read.js";
import { usualMainDevice } from "../complete/main-device.js";
import { keyText, valueText } from "../edits/value.js";
import { readPlan } from "../read-text.js";
import type { ReadProblem } from "../source/problem.js";
import type { NewBattery, NewGear, NewPlanAnswers } from "./answers.js";
import { flowGear } from "./gear-keys.js";
import { newOuting } from "./new-outing.js";
import { newWays, wayText } from "./new-ways.js";

export type NewPlan =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly text: string; readonly problems: readonly ReadProblem[] };

const battery = "battery";
const panel = "panel";

/**
 * A complete, commented plan to go on from. What the answers do not say is left open, so that it is worked out or assumed
 * and listed as such. Answers that make no sound plan (a voltage for a length) come back as problems of the text.
 */
export function newPlanText(answers: NewPlanAnswers): NewPlan {
  const text = [
    head(answers),
    supply(answers),
    panels(answers),
    gear(answers),
    runs(answers),
    newOuting(answers.gear, panel),
  ].join("\n");
  const read = readPlan(text);
  return read.ok ? { ok: true, text } : { ok: false, text, problems: read.problems };
}

/** Answers are data: whatever they hold, they stay one value on one line. */
const value = (given: string) => valueText(given) ?? JSON.stringify(given);

function head(answers: NewPlanAnswers): string {
  const { name, kind, length, beam, form, lengths, hull, petrolOnBoard, rules } = answers;
  const craft = [
    `kind: ${keyText(kind)}`,
    `length: ${value(length)}`,
    ...(beam === undefined ? [] : [`beam: ${value(beam)}`]),
    ...(hull === undefined ? [] : [`hull: ${hull}`]),
    ...(petrolOnBoard === undefined ? [] : [`petrol on board: ${petrolOnBoard}`]),
    ...(form === undefined ? [] : [`form: {start from: ${form.shape}, depth: ${value(form.depth)}}`]),
  ];
  const shows = lengths === undefined ? "" : `shows: {lengths: ${lengths}}   # inches | millimetres\n`;
  return `# A plan of the boat's electrics. Change what is not so, add what you know, and delete nothing you may want to
# remember. What is left out is worked out or assumed, and the list of assumptions says so. docs/plan-format.md has all keys.
skiffloom: 1   # format version
name: ${keyText(name)}
rules: ${rules}   # us | iso: whose numbers the findings use
${shows}
craft:
${craft.map((line) => `  ${line}`).join("\n")}
# ambient: {cold: 0 °C, air: 20 °C, hot: 35 °C}   # the air she is used in
`;
}

function supply({ battery: given, gear: items }: NewPlanAnswers): string {
  const ownBatteries = items.flatMap((item) =>
    typeof item.straightFrom === "object" ? [ownBattery(item, item.straightFrom)] : [],
  );
  return `batteries:
  ${battery}:
${batteryLines(given)}
    # A fuse close to the positive post protects everything behind it. \`from source\` is the length of wire before it.
    main: {device: ${mainDevice(given)}, rating: work out, from source: 5 in}
${ownBatteries.join("")}`;
}

const ownName = ({ name }: NewGear) => `${name} battery`;

/** One run leaves it, with a fuse of its own, so there is no main besides. */
const ownBattery = (item: NewGear, given: NewBattery): string => `  ${keyText(ownName(item))}:
${batteryLines(given)}
    main: none   # the one cable that leaves it has a fuse of its own, close to the post
`;

const batteryLines = ({ chemistry, voltage, capacity }: NewBattery): string => `    chemistry: ${chemistry}
    voltage: ${value(voltage ?? "12 V")}
    capacity: ${value(capacity)}
    # From its label or sheet; its fuse must be able to break the short circuit:
    # internal resistance: 9 mΩ
    # short circuit: 1400 A
    # most current: 100 A
    reserve: ${chemistry === "lifepo4" ? "20 %" : "50 %"}   # what you will not use
    # fixed: strap   # strap | bracket | tray | loose
    # covered: true   # posts booted, or in a lidded box`;

/** A capacity that can't be read is told of when the whole plan is read. */
function mainDevice({ chemistry, capacity }: NewBattery): string {
  const read = readQuantity(capacity, "charge");
  return usualMainDevice(chemistry, read.ok ? read.value.value : 0);
}

function panels({ gear: items }: NewPlanAnswers): string {
  const ways = newWays(items).map(({ name, floats, gear: on }) => {
    const what = on.length === 0 ? "for what comes later" : on.map((item) => item.name).join(", ");
    const says = what.replace(/[\r\n]+/g, " ");
    return `      ${keyText(name)}: ${wayText(floats)}   # ${says}${floats ? ": live, it starts by itself" : ""}`;
  });
  return `panels:
  ${panel}:
    # surroundings: splash   # dry | splash | wet | bilge | engine space
    ways:   # a way is one fused, switched outlet; elsewhere it is written \`${panel} / lamps\`
${ways.join("\n")}
`;
}

function gear({ gear: items }: NewPlanAnswers): string {
  if (items.length === 0)
    return "gear: {}   # lamps, pumps, sockets: one line each, `lamp: {draws: 0.9 W}`\n";
  return `gear:   # what each draws stands on its label or in its sheet; its leads are the thin wires it comes with
${items.map(gearLines).join("\n")}
`;
}

function gearLines(item: NewGear): string {
  return [
    `  ${keyText(item.name)}:`,
    ...flowGear(item).map((line) =>
      line.startsWith("count: ") ? `    ${line}   # named 1, 2, 3 … behind the name` : `    ${line}`,
    ),
    "    # works: 9 V to 16 V",
    "    # leads: {size: 20 AWG, length: 8 in}",
    "    # largest fuse: 3 A   # its maker's limit",
  ].join("\n");
}

function runs({ battery: given, gear: items }: NewPlanAnswers): string {
  const feed = `  panel feed: {from: ${battery}, to: ${panel}, length: ${value(given.cable)}, size: work out}`;
  const cables = newWays(items).flatMap(({ name, gear: on }) =>
    on.map((item) => {
      const each = (item.count ?? 1) === 1 ? "" : ", reaches: each";
      const from = keyText(`${panel} / ${name}`);
      return `  ${keyText(`${item.name} cable`)}: {from: ${from}, to: ${keyText(item.name)}${each}, length: ${value(item.cable)}}`;
    }),
  );
  return `runs:   # one cable between two places, both conductors in it; sizes are worked out
${[feed, ...cables, ...items.flatMap((item) => straightRun(item, given))].join("\n")}
`;
}

/** From a battery to gear past the panel, fused at the post; on the shared battery it leaves before its main fuse. */
function straightRun(item: NewGear, shared: NewBattery): string[] {
  const { straightFrom } = item;
  if (straightFrom === undefined) return [];
  const own = straightFrom !== "the battery";
  const from = own ? keyText(ownName(item)) : battery;
  const device = mainDevice(own ? straightFrom : shared);
  const parts = [
    `from: ${from}`,
    `to: ${keyText(item.name)}`,
    ...((item.count ?? 1) === 1 ? [] : ["reaches: each"]),
    `length: ${value(item.cable)}`,
    `fuse: {device: ${device}, rating: work out, from source: 5 in}`,
    ...(own ? [] : ["before main: true"]),
  ];
  return [`  ${keyText(`${item.name} cable`)}: {${parts.join(", ")}}`];
}
