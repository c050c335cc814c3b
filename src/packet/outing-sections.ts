import type { BatteryTrace, OutingFigures } from "../core/energy/types.js";
import type { Figures } from "../core/figures-types.js";
import type { OnPeriod } from "../core/plan/model/outing.js";
import { barsThatFit, outingChart } from "../drawing/outing-chart.js";
import type { Shape } from "../drawing/shapes.js";
import { decimals, hours, marked, percent, threeDigits, volts } from "../words/numbers.js";
import type { Paper } from "./page.js";
import { paragraph, stacked } from "./piece.js";
import type { Section } from "./section.js";

/** A page for each outing and battery: its charge and voltage against time, with what was on. */
export function outingSections(figures: Figures, paper: Paper): Section[] {
  return figures.outings.flatMap((outing) => {
    const pages = outing.batteries.map((trace) => outingPage(figures, outing, trace, paper));
    return pages.length === 0
      ? []
      : [{ title: `Outing: ${outing.name}`, subtitle: `lasts ${hours(outing.lastsH)}`, pages }];
  });
}

function outingPage(figures: Figures, outing: OutingFigures, trace: BatteryTrace, paper: Paper): Shape[] {
  const widthMm = paper.right - paper.left;
  const battery = figures.plan.batteries.find(({ name }) => name === trace.battery);
  const brownOuts = outing.brownOuts.filter(({ gear }) => batteryOf(figures, gear) === trace.battery);
  const periods = periodsOf(figures, outing, trace.battery);
  const words = stacked([
    paragraph(
      {
        text: `Battery ${trace.battery}: ${verdict(outing, trace)}`,
        sizePt: 12,
        weight: "semibold",
        maxLines: 2,
      },
      widthMm,
      0.6,
    ),
    paragraph({ text: detail(figures, outing, trace), maxLines: 2 }, widthMm, 0.6),
    ...(brownOuts.length === 0
      ? []
      : [paragraph({ text: brownOutWords(brownOuts), colour: "accent", maxLines: 3 }, widthMm)]),
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
              text: `Also on: ${names.slice(fit).join(", ")}`,
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
  );
  return [
    ...words.draw(paper.left, paper.top),
    ...chart,
    ...more.flatMap((piece) => piece.draw(paper.left, paper.bottom + 4)),
  ];
}

function verdict(outing: OutingFigures, trace: BatteryTrace): string {
  if (trace.cutOffAtH !== undefined) return `stops after ${hours(trace.cutOffAtH)}, before the outing ends.`;
  if (trace.reserveAtH !== undefined) return `reaches its reserve after ${hours(trace.reserveAtH)}.`;
  const long = outing.hoursToReserve.find(({ battery }) => battery === trace.battery)?.hours;
  const lasting =
    long === undefined || !Number.isFinite(long)
      ? ""
      : ` From full, the same use would take ${hours(long)} to reach the reserve.`;
  return `comes home with ${percent(trace.chargeLeft, 0)}.${lasting}`;
}

function detail(figures: Figures, outing: OutingFigures, trace: BatteryTrace): string {
  const use = usesByGroup(figures, outing, trace.battery)
    .slice(0, 4)
    .map(([gear, usedAh]) => `${threeDigits(usedAh)}\u00a0Ah to ${gear}`);
  const uses = use.length > 0 ? ` Of that goes ${use.join(", ")}.` : "";
  const charging = figures.charging
    .filter(({ battery }) => battery === trace.battery)
    .slice(0, 3)
    .map(({ charger, hours: long, days, state }) => {
      if (state === "too cold") return `${charger}: too cold to charge`;
      if (state === "unchecked" || (long === undefined && days === undefined))
        return `${charger}: not checked`;
      return long === undefined
        ? `${charger}: ${decimals(days, 1)} days of sun`
        : `${charger}: ${hours(long)}`;
    });
  const charge =
    charging.length > 0 ? ` To charge again after the longest outing: ${charging.join("; ")}.` : "";
  return `Uses ${threeDigits(trace.usedAh)}\u00a0Ah of ${marked(trace.usableAh, "Ah")} that it can give at this temperature and age.${uses}${charge}`;
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

function brownOutWords(brownOuts: OutingFigures["brownOuts"]): string {
  const list = brownOuts
    .slice(0, 6)
    .map(
      ({ gear, atH, voltageV, minV }, index) =>
        `${index + 1} ${gear} after ${hours(atH)} (${volts(voltageV)}, needs ${volts(minV)})`,
    );
  const rest = brownOuts.length - list.length;
  return `Too little voltage: ${list.join("; ")}${rest > 0 ? `; and ${rest} more` : ""}.`;
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
