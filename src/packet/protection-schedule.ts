import type { ConditionResult, ProtectionFigures } from "../core/circuit/protection/types.js";
import type { Figures } from "../core/figures-types.js";
import type { Shows } from "../core/plan/model/plan.js";
import { conditionWords, stateWords } from "../words/labels.js";
import { amps, counted, decimals, lengthWords, marked, threeDigits } from "../words/numbers.js";
import type { Paper } from "./page.js";
import { paragraph, space, type Words } from "./piece.js";
import { flowing, type Section } from "./section.js";
import { type Cell, type Column, type Row, table } from "./table.js";

const columns: readonly Column[] = [
  { heading: "Device", share: 44 },
  { heading: "Rating", share: 21, align: "right" },
  { heading: "Kind", share: 28 },
  { heading: "Load, A", share: 22, align: "right" },
  { heading: "Weakest conductor it guards", share: 50 },
  { heading: "Short, A, here / far end", share: 30, align: "right" },
  { heading: "Breaks up to,\u00a0A", share: 22, align: "right" },
  { heading: "Conditions", share: 64 },
  { heading: "Other ratings that would do", share: 30 },
];

/** Every fuse and breaker, what it carries and guards, and whether each condition holds. */
export function protectionSchedule(figures: Figures, shows: Shows, paper: Paper): Section {
  const interrupting = interruptingByDevice(figures);
  const rows = figures.protection.map(
    (device): Row => ({
      cells: device.spare
        ? spareCells(device)
        : [
            { words: [{ text: device.id, weight: "semibold" }] },
            ratingCell(device),
            { words: [{ text: device.device, maxLines: 2 }] },
            loadCell(device),
            weakestCell(device),
            `${threeDigits(device.shortAtDeviceA)} / ${threeDigits(device.shortAtFarEndA)}`,
            interruptingCell(interrupting.get(device.id), device),
            { words: conditionLines(device.conditions, shows) },
            othersCell(device),
          ],
    }),
  );
  const widthMm = paper.right - paper.left;
  const intro = paragraph({ text: explanation, colour: "soft", sizePt: 9.5 }, widthMm);
  const subtitle = counted(figures.protection.length, "fuse or breaker", "fuses and breakers");
  return flowing("Protection schedule", subtitle, [intro, space(2), ...table(columns, rows, widthMm)], paper);
}

/** A way on which nothing hangs yet has no fuse to be fitted, and nothing to judge one by. */
function spareCells({ id, device }: ProtectionFigures): Cell[] {
  const none: Cell = { words: [{ text: "–", ...quiet }] };
  return [
    { words: [{ text: id, weight: "semibold" }] },
    { words: [{ text: "none yet", ...quiet }] },
    { words: [{ text: device, maxLines: 2 }] },
    none,
    { words: [{ text: "spare: nothing hangs on it", ...quiet, maxLines: 2 }] },
    none,
    none,
    { words: [{ text: "Fit a fuse when something does; then it is judged.", ...quiet, maxLines: 3 }] },
    none,
  ];
}

const quiet = { sizePt: 9.5, colour: "soft" } as const;

const explanation =
  "A fuse protects the conductor, not the gear. Fit no larger rating than the one given, whatever is on hand. A condition that could not be checked for want of a figure is called not checked; it is not held. Usual: what devices of this kind can break; read yours.";

function ratingCell(device: ProtectionFigures): Cell {
  const fixed = device.fixedByOwner ? [{ text: "as given", ...quiet }] : [];
  return { words: [{ text: marked(device.ratingA, "A"), weight: "semibold", sizePt: 12 }, ...fixed] };
}

function loadCell({ loadA, startA }: ProtectionFigures): Cell {
  const start = startA > loadA * 1.001 ? [{ text: `start ${threeDigits(startA)}`, ...quiet }] : [];
  return { words: [{ text: threeDigits(loadA) }, ...start] };
}

function weakestCell({ weakest }: ProtectionFigures): Cell {
  if (weakest === undefined) return { words: [{ text: "not known", ...quiet }] };
  const allows = `${weakest.sizeKey.replaceAll(" ", "\u00a0")}, allows ${amps(weakest.allowedA)}`;
  return {
    words: [
      { text: conductorWords(weakest.id), sizePt: 9.5, maxLines: 2 },
      { text: allows, sizePt: 9.5, colour: "soft", maxLines: 2 },
    ],
  };
}

/** `coaming lamp 1 / lead / out` is the lead of coaming lamp 1; of a run, its name is enough. */
function conductorWords(id: string): string {
  const [thing = id, ...rest] = id.split(" / ");
  const part = rest.includes("lead") || rest.includes("leads") ? ", its lead" : "";
  return `${thing}${part}${rest.includes("return") ? ", return" : ""}`;
}

function interruptingCell(given: number | undefined, { conditions }: ProtectionFigures): Cell {
  const usual = conditions.find(({ condition }) => condition === "interrupts")?.limit;
  if (given !== undefined) return { words: [{ text: decimals(given, 0) }, { text: "as given", ...quiet }] };
  if (usual === undefined) return { words: [{ text: "not known", ...quiet }] };
  return { words: [{ text: decimals(usual, 0) }, { text: "usual", ...quiet }] };
}

function conditionLines(conditions: readonly ConditionResult[], shows: Shows): Words[] {
  const held = conditions.filter(({ state }) => state === "holds").length;
  const rest = conditions.filter(({ state }) => state !== "holds");
  const all = held === conditions.length ? `All ${held} held.` : `${held} of ${conditions.length} held.`;
  return [
    { text: conditions.length === 0 ? "None could be checked." : all, sizePt: 9.5 },
    ...rest.map((condition): Words => {
      const why = condition.state === "fails" ? figures(condition, shows) : "";
      const look = condition.state === "fails" ? ({ weight: "semibold", colour: "accent" } as const) : {};
      return {
        text: `${capital(stateWords[condition.state])}: ${conditionWords[condition.condition]}${why}`,
        sizePt: 9.5,
        maxLines: 3,
        ...look,
      };
    }),
  ];
}

function figures({ figure, limit, unit, binds }: ConditionResult, shows: Shows): string {
  const amount = (value: number) =>
    unit === "m" ? lengthWords(value, shows) : `${threeDigits(value)}\u00a0${unit}`;
  const numbers =
    figure === undefined || limit === undefined ? "" : `, ${amount(figure)} against ${amount(limit)}`;
  return `${numbers}${binds === undefined ? "" : ` (${binds})`}`;
}

function othersCell(device: ProtectionFigures): Cell {
  const others = device.possibleA.filter((ratingA) => ratingA !== device.ratingA);
  if (device.possibleA.length === 0) {
    const [one, other] = device.conflict ?? [];
    const why =
      one && other ? `None: “${conditionWords[one]}” against “${conditionWords[other]}”.` : "None would do.";
    return { words: [{ text: why, sizePt: 9.5, weight: "semibold", colour: "accent", maxLines: 6 }] };
  }
  const list = others.map((ratingA) => Number(ratingA.toPrecision(4))).join(", ");
  return {
    words: [{ text: others.length === 0 ? "this one only" : `${list}\u00a0A`, sizePt: 9.5, maxLines: 5 }],
  };
}

const capital = (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;

/** What each device is said to break, from the plan, by the device's id [A]. */
function interruptingByDevice({ plan }: Figures): Map<string, number> {
  const known = new Map<string, number>();
  const note = (id: string, device: { interruptingA?: number } | "none" | undefined) => {
    if (device !== undefined && device !== "none" && device.interruptingA !== undefined)
      known.set(id, device.interruptingA);
  };
  for (const { name, main } of plan.batteries) note(`${name} / main`, main);
  for (const panel of plan.panels) {
    note(`${panel.name} / main`, panel.main);
    for (const way of panel.ways) note(`${panel.name} / ${way.name} / fuse`, way.protection);
  }
  for (const run of plan.runs) note(`${run.name} / fuse`, run.protection);
  return known;
}
