import type { BatteryTrace, BrownOut, OutingFigures } from "../core/energy/types.js";
import type { OnPeriod } from "../core/plan/model/outing.js";
import { type DrawnWords, drawnInEnglish } from "../words/drawn/english.js";
import { clock, decimals, hours, percent, shareSet, volts } from "../words/numbers.js";
import { fitText } from "./fonts/wrap.js";
import { box, line, points, polygon, polyline, strokes, text } from "./make.js";
import type { Point, Shape } from "./shapes.js";

/** What a chart shows: one battery through one outing, with what was on. */
export interface OutingChart {
  readonly outing: Pick<OutingFigures, "lastsH" | "startClockH">;
  readonly trace: BatteryTrace;
  readonly reserveShare: number;
  readonly cutOffV: number;
  readonly nominalV: number;
  readonly on: readonly OnPeriod[];
  readonly brownOuts: readonly BrownOut[];
}

export interface Room {
  readonly left: number;
  readonly bottom: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

type ChartWords = DrawnWords["chart"];

const labelMm = 40;
const tailMm = 24;
const chargeMm = 42;
const voltageMm = 29;
const gapMm = 7;
const barMm = 4.4;
const small = { sizeMm: points(9), weight: "regular" } as const;
const strong = { sizeMm: points(9.5), weight: "semibold" } as const;

/** How many bars of things that are on fit under the two curves of a room. */
export const barsThatFit = (heightMm: number) =>
  Math.max(0, Math.floor((heightMm - chargeMm - voltageMm - 2 * gapMm - 14) / barMm));

/** Charge and terminal voltage against time on one scale of hours, below them a bar for whatever is on. */
export function outingChart(
  chart: OutingChart,
  room: Room,
  { chart: words }: DrawnWords = drawnInEnglish,
): Shape[] {
  const { trace, outing } = chart;
  const left = room.left + labelMm;
  const widthMm = room.widthMm - labelMm - tailMm;
  const lastsH = Math.max(outing.lastsH, 1e-6);
  const across = (atH: number) => left + (Math.min(Math.max(atH, 0), lastsH) / lastsH) * widthMm;
  const top = room.bottom + room.heightMm - 5;
  const chargeBottom = top - chargeMm;
  const voltageTop = chargeBottom - gapMm;
  const voltageBottom = voltageTop - voltageMm;
  const barsTop = voltageBottom - gapMm - 3;
  const bars = [...new Set(chart.on.map(({ what }) => what))].slice(0, barsThatFit(room.heightMm));
  const lowest = barsTop - bars.length * barMm - 1;
  const ticks = hourTicks(lastsH);
  return [
    ...ticks.flatMap((atH) => [
      line(across(atH), top, across(atH), lowest, strokes.hair),
      text(across(atH), lowest - 4, `${Number(atH.toFixed(2))} h`, { ...small, anchor: "middle" }),
      ...(outing.startClockH === undefined
        ? []
        : [
            text(across(atH), lowest - 8, clock(outing.startClockH + atH), {
              ...small,
              anchor: "middle",
              colour: "soft",
            }),
          ]),
    ]),
    ...chargeCurve(chart, { left, right: left + widthMm, top, bottom: chargeBottom }, across, words),
    ...voltageCurve(
      chart,
      { left, right: left + widthMm, top: voltageTop, bottom: voltageBottom },
      across,
      words,
    ),
    ...onBars(bars, chart.on, room.left, barsTop, across, words),
    ...brownOutMarks(chart.brownOuts, across, top, lowest),
    ...moments(trace, { left, right: left + widthMm, top, bottom: chargeBottom }, across, words),
  ];
}

interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

function chargeCurve(
  { trace, reserveShare }: OutingChart,
  frame: Frame,
  across: (atH: number) => number,
  words: ChartWords,
): Shape[] {
  const up = (share: number) => frame.bottom + Math.min(Math.max(share, 0), 1) * (frame.top - frame.bottom);
  const curve = trace.points.map(({ atH, charge }): Point => ({ x: across(atH), y: up(charge) }));
  const last = trace.points.at(-1);
  return [
    box(frame.left, frame.bottom, frame.right - frame.left, up(reserveShare) - frame.bottom, {
      fill: "wash",
    }),
    ...scale(
      frame,
      words.charge,
      [0, 0.25, 0.5, 0.75, 1].map((share) => [up(share), percent(share, 0)]),
    ),
    line(frame.left, up(reserveShare), frame.right, up(reserveShare), strokes.accentDash),
    text(frame.right + 1.5, up(reserveShare) - 1, words.reserve(shareSet(reserveShare)), {
      ...small,
      colour: "accent",
    }),
    ...(curve.length > 1 ? [polyline(curve, strokes.bold)] : []),
    ...(last === undefined
      ? []
      : endLabel(
          frame,
          { x: across(last.atH), y: up(last.charge) },
          percent(last.charge, 0),
          up(reserveShare),
        )),
  ];
}

/** The last value at the end of the curve; where that is the right edge, clear of a label already there. */
function endLabel(frame: Frame, end: Point, words: string, taken: number): Shape[] {
  if (end.x < frame.right - 16) return [text(end.x + 1.5, end.y + 1.2, words, strong)];
  const clear = Math.abs(end.y - taken) < 3.6 ? taken + (end.y >= taken ? 3.6 : -3.6) : end.y;
  return [text(frame.right + 1.5, clear - 1, words, strong)];
}

function voltageCurve(
  { trace, cutOffV, nominalV }: OutingChart,
  frame: Frame,
  across: (atH: number) => number,
  words: ChartWords,
): Shape[] {
  const values = trace.points.map(({ terminalV }) => terminalV).filter(Number.isFinite);
  const stepV = nominalV > 18 ? 2 : 1;
  const low = Math.floor((Math.min(cutOffV, ...values) - 0.05 * nominalV) / stepV) * stepV;
  const high = Math.ceil((Math.max(nominalV, ...values) + 0.02 * nominalV) / stepV) * stepV;
  const up = (value: number) =>
    frame.bottom + Math.min(Math.max((value - low) / (high - low), 0), 1) * (frame.top - frame.bottom);
  const curve = trace.points.map(({ atH, terminalV }): Point => ({ x: across(atH), y: up(terminalV) }));
  const ticks: [number, string][] = [];
  for (let value = low; value <= high + 1e-9; value += stepV)
    ticks.push([up(value), `${decimals(value, 0)}\u00a0V`]);
  const sparse = ticks.filter((_, index) => index % Math.ceil(ticks.length / 7) === 0);
  const last = trace.points.at(-1);
  return [
    ...scale(frame, words.atPosts, sparse),
    line(frame.left, up(cutOffV), frame.right, up(cutOffV), strokes.softDash),
    text(frame.right + 1.5, up(cutOffV) - 1, words.stops(`${decimals(cutOffV, 1)}\u00a0V`), {
      ...small,
      colour: "soft",
    }),
    ...(curve.length > 1 ? [polyline(curve, strokes.line)] : []),
    ...(last === undefined
      ? []
      : endLabel(frame, { x: across(last.atH), y: up(last.terminalV) }, volts(last.terminalV), up(cutOffV))),
  ];
}

function scale(frame: Frame, title: string, ticks: readonly (readonly [number, string])[]): Shape[] {
  return [
    text(frame.left - labelMm, frame.top - 3, title, strong),
    ...ticks.flatMap(([y, words]) => [
      line(frame.left, y, frame.right, y, strokes.hair),
      text(frame.left - 2, y - 1, words, { ...small, anchor: "end" }),
    ]),
    box(frame.left, frame.bottom, frame.right - frame.left, frame.top - frame.bottom, {
      stroke: strokes.fine,
    }),
  ];
}

function onBars(
  names: readonly string[],
  on: readonly OnPeriod[],
  left: number,
  top: number,
  across: (atH: number) => number,
  words: ChartWords,
): Shape[] {
  const heading = names.length === 0 ? [] : [text(left, top + 1.4, words.on, strong)];
  return [
    ...heading,
    ...names.flatMap((name, index) => {
      const y = top - (index + 1) * barMm;
      const bars = on
        .filter(({ what }) => what === name)
        .flatMap((period) => onBar(period, y, across, words));
      return [text(left, y + 1.2, fitText(name, labelMm - 3, small), small), ...bars];
    }),
  ];
}

function onBar(period: OnPeriod, y: number, across: (atH: number) => number, say: ChartWords): Shape[] {
  const widthMm = Math.max(across(period.toH) - across(period.fromH), 0.3);
  const fill = period.duty < 1 || period.level < 1 ? "hair" : "soft";
  const part = partWords(period, say);
  const words =
    part === "" ? [] : [text(across(period.toH) + 1, y + 1.1, part, { ...small, colour: "soft" })];
  return [box(across(period.fromH), y + 0.6, widthMm, 3, { fill }), ...words];
}

function partWords({ duty, level }: OnPeriod, words: ChartWords): string {
  const parts = [
    ...(duty < 1 ? [words.ofTheTime(percent(duty, duty < 0.1 ? 1 : 0))] : []),
    ...(level < 1 ? [words.at(percent(level, 0))] : []),
  ];
  return parts.join(", ");
}

const mostMarks = 6;
/** Marks nearer to each other than this share one [mm]. */
const markApartMm = 9;

function brownOutMarks(
  brownOuts: readonly BrownOut[],
  across: (atH: number) => number,
  top: number,
  lowest: number,
): Shape[] {
  const marks: { x: number; numbers: number[] }[] = [];
  for (const [index, { atH }] of brownOuts.slice(0, mostMarks).entries()) {
    const x = across(atH);
    const near = marks.find((mark) => Math.abs(mark.x - x) < markApartMm);
    if (near) near.numbers.push(index + 1);
    else marks.push({ x, numbers: [index + 1] });
  }
  return marks.flatMap(({ x, numbers }) => {
    const corners = [
      { x: x - 1.6, y: top + 3.4 },
      { x: x + 1.6, y: top + 3.4 },
      { x, y: top + 0.6 },
    ];
    const words = numbers.length > 2 ? `${numbers[0]}–${numbers.at(-1)}` : numbers.join(", ");
    return [
      polygon(corners, { fill: "accent" }),
      text(x + 2, top + 0.9, words, { ...strong, colour: "accent" }),
      line(x, top, x, lowest, { colour: "accent", widthMm: 0.2, dashMm: [0.6, 0.8] }),
    ];
  });
}

/** When the reserve and the end come, on the side of the line that has room. */
function moments(
  { reserveAtH, cutOffAtH }: BatteryTrace,
  frame: Frame,
  across: (atH: number) => number,
  say: ChartWords,
): Shape[] {
  const mark = (atH: number | undefined, words: (hours: string) => string, down: number): Shape[] => {
    if (atH === undefined || !Number.isFinite(atH)) return [];
    const x = across(atH);
    const right = x < (frame.left + frame.right) / 2;
    return [
      line(x, frame.top, x, frame.bottom, strokes.accent),
      text(right ? x + 1 : x - 1, frame.top - down, words(hours(atH)), {
        ...strong,
        anchor: right ? "start" : "end",
        colour: "accent",
      }),
    ];
  };
  return [...mark(reserveAtH, say.reserveAfter, 4.5), ...mark(cutOffAtH, say.stopsAfter, 9)];
}

/** Six to twelve steps of a round number of hours. */
function hourTicks(lastsH: number): number[] {
  const step =
    [0.1, 0.25, 0.5, 1, 2, 3, 6, 12, 24, 48, 96, 240].find((one) => lastsH / one <= 12) ?? lastsH / 10;
  const ticks: number[] = [];
  for (let index = 0; index * step <= lastsH * 1.0001; index += 1) ticks.push(index * step);
  return ticks;
}
