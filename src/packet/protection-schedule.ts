import type { ConditionResult, ProtectionFigures } from "../core/circuit/protection/types.js";
import type { Figures } from "../core/figures-types.js";
import type { Shows } from "../core/plan/model/plan.js";
import { amps, decimals, lengthWords, marked, threeDigits } from "../words/numbers.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import { pathWords } from "../words/path-words.js";
import type { Paper } from "./page.js";
import { paragraph, space, type Words } from "./piece.js";
import { flowing, type Section } from "./section.js";
import { type Cell, type Column, type Row, table } from "./table.js";

type ProtectionWords = PaperWords["electrics"]["protection"];

const columns = ({ heads }: ProtectionWords): readonly Column[] => [
  { heading: heads.device, share: 44 },
  { heading: heads.rating, share: 21, align: "right" },
  { heading: heads.kind, share: 28 },
  { heading: heads.load, share: 22, align: "right" },
  { heading: heads.weakest, share: 50 },
  { heading: heads.short, share: 30, align: "right" },
  { heading: heads.breaks, share: 22, align: "right" },
  { heading: heads.conditions, share: 64 },
  { heading: heads.others, share: 30 },
];

/** Every fuse and breaker, what it carries and guards, and whether each condition holds. */
export function protectionSchedule(figures: Figures, shows: Shows, paper: Paper, words: PaperWords): Section {
  const say = words.electrics.protection;
  const { labels, findings } = words.of;
  const interrupting = interruptingByDevice(figures);
  const rows = figures.protection.map(
    (device): Row => ({
      cells: device.spare
        ? spareCells(device, words)
        : [
            { words: [{ text: pathWords(device.id, findings.path), weight: "semibold" }] },
            ratingCell(device, say),
            { words: [{ text: labels.devices[device.device], maxLines: 2 }] },
            loadCell(device, say),
            weakestCell(device, say),
            `${threeDigits(device.shortAtDeviceA)} / ${threeDigits(device.shortAtFarEndA)}`,
            interruptingCell(interrupting.get(device.id), device, say),
            { words: conditionLines(device.conditions, shows, words) },
            othersCell(device, words),
          ],
    }),
  );
  const widthMm = paper.right - paper.left;
  const intro = paragraph({ text: say.explanation, colour: "soft", sizePt: 9.5 }, widthMm);
  return flowing(
    say.title,
    say.count(figures.protection.length),
    [intro, space(2), ...table(columns(say), rows, widthMm)],
    paper,
  );
}

/** A way on which nothing hangs yet has no fuse to be fitted, and nothing to judge one by. */
function spareCells({ id, device }: ProtectionFigures, { electrics, of }: PaperWords): Cell[] {
  const words = electrics.protection;
  const none: Cell = { words: [{ text: "–", ...quiet }] };
  return [
    { words: [{ text: pathWords(id, of.findings.path), weight: "semibold" }] },
    { words: [{ text: words.noneYet, ...quiet }] },
    { words: [{ text: of.labels.devices[device], maxLines: 2 }] },
    none,
    { words: [{ text: words.spare, ...quiet, maxLines: 2 }] },
    none,
    none,
    { words: [{ text: words.fitLater, ...quiet, maxLines: 3 }] },
    none,
  ];
}

const quiet = { sizePt: 9.5, colour: "soft" } as const;

function ratingCell(device: ProtectionFigures, words: ProtectionWords): Cell {
  const fixed = device.fixedByOwner ? [{ text: words.asGiven, ...quiet }] : [];
  return { words: [{ text: marked(device.ratingA, "A"), weight: "semibold", sizePt: 12 }, ...fixed] };
}

function loadCell({ loadA, startA }: ProtectionFigures, words: ProtectionWords): Cell {
  const start = startA > loadA * 1.001 ? [{ text: words.start(threeDigits(startA)), ...quiet }] : [];
  return { words: [{ text: threeDigits(loadA) }, ...start] };
}

function weakestCell({ weakest }: ProtectionFigures, words: ProtectionWords): Cell {
  if (weakest === undefined) return { words: [{ text: words.notKnown, ...quiet }] };
  const allows = words.allows(weakest.sizeKey.replaceAll(" ", "\u00a0"), amps(weakest.allowedA));
  return {
    words: [
      { text: conductorWords(weakest.id, words), sizePt: 9.5, maxLines: 2 },
      { text: allows, sizePt: 9.5, colour: "soft", maxLines: 2 },
    ],
  };
}

/** `coaming lamp 1 / lead / out` is the lead of coaming lamp 1; of a run, its name is enough. */
function conductorWords(id: string, words: ProtectionWords): string {
  const [thing = id, ...rest] = id.split(" / ");
  const part = rest.includes("lead") || rest.includes("leads") ? words.itsLead : "";
  return `${thing}${part}${rest.includes("return") ? words.return : ""}`;
}

function interruptingCell(
  given: number | undefined,
  { conditions }: ProtectionFigures,
  words: ProtectionWords,
): Cell {
  const usual = conditions.find(({ condition }) => condition === "interrupts")?.limit;
  if (given !== undefined)
    return { words: [{ text: decimals(given, 0) }, { text: words.asGiven, ...quiet }] };
  if (usual === undefined) return { words: [{ text: words.notKnown, ...quiet }] };
  return { words: [{ text: decimals(usual, 0) }, { text: words.usual, ...quiet }] };
}

function conditionLines(conditions: readonly ConditionResult[], shows: Shows, words: PaperWords): Words[] {
  const say = words.electrics.protection;
  const { labels } = words.of;
  const held = conditions.filter(({ state }) => state === "holds").length;
  const rest = conditions.filter(({ state }) => state !== "holds");
  const all = held === conditions.length ? say.all(held) : say.some(held, conditions.length);
  return [
    { text: conditions.length === 0 ? say.nothing : all, sizePt: 9.5 },
    ...rest.map((condition): Words => {
      const why = condition.state === "fails" ? figures(condition, shows, words) : "";
      const look = condition.state === "fails" ? ({ weight: "semibold", colour: "accent" } as const) : {};
      return {
        text: `${capital(labels.states[condition.state])}: ${labels.conditions[condition.condition]}${why}`,
        sizePt: 9.5,
        maxLines: 3,
        ...look,
      };
    }),
  ];
}

function figures(
  { figure, limit, unit, binds }: ConditionResult,
  shows: Shows,
  { electrics, of }: PaperWords,
): string {
  const amount = (value: number) =>
    unit === "m" ? lengthWords(value, shows) : `${threeDigits(value)}\u00a0${unit}`;
  const numbers =
    figure === undefined || limit === undefined
      ? ""
      : electrics.protection.against(amount(figure), amount(limit));
  return `${numbers}${binds === undefined ? "" : ` (${pathWords(binds, of.findings.path)})`}`;
}

function othersCell(device: ProtectionFigures, { electrics, of }: PaperWords): Cell {
  const words = electrics.protection;
  const { conditions } = of.labels;
  const others = device.possibleA.filter((ratingA) => ratingA !== device.ratingA);
  if (device.possibleA.length === 0) {
    const [one, other] = device.conflict ?? [];
    const why = one && other ? words.conflict(conditions[one], conditions[other]) : words.none;
    return { words: [{ text: why, sizePt: 9.5, weight: "semibold", colour: "accent", maxLines: 6 }] };
  }
  const list = others.map((ratingA) => Number(ratingA.toPrecision(4))).join(", ");
  return {
    words: [{ text: others.length === 0 ? words.only : `${list}\u00a0A`, sizePt: 9.5, maxLines: 5 }],
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
