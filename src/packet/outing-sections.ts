import type { BatteryTrace, OutingFigures } from "../core/energy/types.js";
import type { Figures } from "../core/figures-types.js";
import type { OnPeriod } from "../core/plan/model/outing.js";
import { barsThatFit, outingChart } from "../drawing/outing-chart.js";
import { figure } from "../drawing/parts.js";
import type { Shape } from "../drawing/shapes.js";
import { decimals, hours, marked, percent, threeDigits, volts } from "../words/numbers.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import type { Paper } from "./page.js";
import { paragraph, stacked } from "./piece.js";
import type { Section } from "./section.js";

/** A page for each outing and battery: its charge and voltage against time, with what was on. */
type OutingWords = PaperWords["electrics"]["outing"];

export function outingSections(figures: Figures, paper: Paper, words: PaperWords): Section[] {
  const say = words.electrics.outing;
  return figures.outings.flatMap((outing) => {
    const pages = outing.batteries.map((trace) => outingPage(figures, outing, trace, paper, words));
    return pages.length === 0
      ? []
      : [{ title: say.title(outing.name), subtitle: say.lasts(hours(outing.lastsH)), pages }];
  });
}

function outingPage(
  figures: Figures,
  outing: OutingFigures,
  trace: BatteryTrace,
  paper: Paper,
  { electrics: { outing: say }, frame, of }: PaperWords,
): Shape[] {
  const widthMm = paper.right - paper.left;
  const battery = figures.plan.batteries.find(({ name }) => name === trace.battery);
  const brownOuts = outing.brownOuts.filter(({ gear }) => batteryOf(figures, gear) === trace.battery);
  const periods = periodsOf(figures, outing, trace.battery);
  const words = stacked([
    paragraph(
      {
        text: say.battery(trace.battery, verdict(outing, trace, say)),
        sizePt: 12,
        weight: "semibold",
        maxLines: 2,
      },
      widthMm,
      0.6,
    ),
    paragraph({ text: detail(figures, outing, trace, say), maxLines: 2 }, widthMm, 0.6),
    ...(brownOuts.length === 0
      ? []
      : [paragraph({ text: brownOutWords(brownOuts, say), colour: "accent", maxLines: 3 }, widthMm)]),
  ]);
  const room = {
    left: paper.left,
    bottom: paper.bottom + 10,
    widthMm,
    heightMm: paper.top - paper.bottom - 10 - words.heightMm - 4,
  };
  const fit = barsThatFit(room.heightMm);
  const names = [...new Set(periods.map(({ what }) => what))];
  const left = names.length - fit;
  const more =
    left > 0
      ? [
          paragraph(
            {
              text: say.alsoOn(names.slice(fit).join(", ")),
              maxLines: 1,
              sizePt: 9.5,
              colour: "soft",
            },
            widthMm,
          ),
        ]
      : [];
  const chart = outingChart(
    {
      outing,
      trace,
      reserveShare: battery?.reserveShare ?? 0,
      cutOffV: battery?.cutOffV ?? 0,
      nominalV: battery?.nominalV ?? 12,
      on: periods,
      brownOuts,
    },
    room,
    of.drawn,
  );
  return [
    ...words.draw(paper.left, paper.top),
    ...figure(`${say.title(outing.name)}, ${trace.battery}`, chart, frame.drawn),
    ...more.flatMap((piece) => piece.draw(paper.left, paper.bottom + 4)),
  ];
}

function verdict(outing: OutingFigures, trace: BatteryTrace, words: OutingWords): string {
  if (trace.cutOffAtH !== undefined) return words.stops(hours(trace.cutOffAtH));
  if (trace.reserveAtH !== undefined) return words.reserve(hours(trace.reserveAtH));
  const long = outing.hoursToReserve.find(({ battery }) => battery === trace.battery)?.hours;
  const lasting = long === undefined || !Number.isFinite(long) ? "" : words.fromFull(hours(long));
  return `${words.home(percent(trace.chargeLeft, 0))}${lasting}`;
}

function detail(figures: Figures, outing: OutingFigures, trace: BatteryTrace, words: OutingWords): string {
  const use = usesByGroup(figures, outing, trace.battery)
    .slice(0, 4)
    .map(([gear, usedAh]) => words.to(`${threeDigits(usedAh)}\u00a0Ah`, gear));
  const uses = use.length > 0 ? words.ofThat(use.join(", ")) : "";
  const charging = figures.charging
    .filter(({ battery }) => battery === trace.battery)
    .slice(0, 3)
    .map(({ charger, hours: long, days, state }) => {
      if (state === "too cold") return words.tooCold(charger);
      if (state === "unchecked" || (long === undefined && days === undefined))
        return words.notChecked(charger);
      return long === undefined ? words.sun(charger, decimals(days, 1)) : `${charger}: ${hours(long)}`;
    });
  const charge = charging.length > 0 ? words.charge(charging.join("; ")) : "";
  return `${words.uses(`${threeDigits(trace.usedAh)}\u00a0Ah`, marked(trace.usableAh, "Ah"))}${uses}${charge}`;
}

/** Charge that goes to each group of gear, heaviest first. */
function usesByGroup(figures: Figures, outing: OutingFigures, battery: string): [string, number][] {
  const groupOf = new Map(figures.plan.gear.map(({ name, group }) => [name, group]));
  const sums = new Map<string, number>();
  for (const { gear, battery: from, usedAh } of outing.uses) {
    if (from !== battery) continue;
    const group = groupOf.get(gear) ?? gear;
    sums.set(group, (sums.get(group) ?? 0) + usedAh);
  }
  return [...sums].sort((a, b) => b[1] - a[1]);
}

function brownOutWords(brownOuts: OutingFigures["brownOuts"], words: OutingWords): string {
  const list = brownOuts
    .slice(0, 6)
    .map(({ gear, atH, voltageV, minV }, index) =>
      words.brownOut(index + 1, gear, hours(atH), volts(voltageV), volts(minV)),
    );
  const rest = brownOuts.length - list.length;
  return words.tooLow(`${list.join("; ")}${rest > 0 ? words.more(rest) : ""}`);
}

function batteryOf({ plan }: Figures, gear: string): string | undefined {
  return plan.circuits.get(plan.circuitOf.get(gear) ?? "")?.battery;
}

/** What is on and draws from the battery. A period may name gear, a group of it, a way or a panel; what cannot be placed is shown on every battery. */
function periodsOf(figures: Figures, outing: OutingFigures, battery: string): OnPeriod[] {
  const { plan } = figures;
  const periods = plan.outings.find(({ name }) => name === outing.name)?.on ?? [];
  return periods.filter(({ what }) => {
    const gear = plan.gear.filter((one) => {
      const circuit = plan.circuitOf.get(one.name) ?? "";
      return one.name === what || one.group === what || circuit === what || circuit.startsWith(`${what} / `);
    });
    return gear.length === 0 || gear.some((one) => batteryOf(figures, one.name) === battery);
  });
}
