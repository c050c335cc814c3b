import type { Figures } from "../figures-types.js";
import type { FigureRef } from "./figure-ref.js";

/** A figure of a thing, to be shown with it. */
export interface ThingFigure {
  readonly figure: FigureRef;
  readonly value: number | string;
  readonly unit?: string;
}

/** The figures one asks for first of a thing (`gear`, `run`, `way`, `panel`, `battery`, `charger`), by its name. Empty for what has none. */
export function figuresOfThing(figures: Figures, name: string, kind: string): ThingFigure[] {
  switch (kind) {
    case "gear":
      return gearFigures(figures, name);
    case "run":
      return runFigures(figures, name);
    case "battery":
      return [...batteryFigures(figures, name), ...ratings(figures, name)];
    case "way":
    case "panel":
      return ratings(figures, name);
    case "charger":
      return figures.charging
        .filter(({ charger }) => charger === name)
        .map(({ charger, hours, state }) => ({
          figure: { of: "charging time", charger },
          ...(hours === undefined ? { value: state } : { value: hours, unit: "h" }),
        }));
    case "outing":
      return outingFigures(figures, name);
    default:
      return [];
  }
}

/** Nominal and worst drop, of the piece itself; of a group the piece that loses most. */
function gearFigures({ corners, plan }: Figures, name: string): ThingFigure[] {
  const pieces = new Set(
    plan.gear.filter((piece) => piece.name === name || piece.group === name).map((piece) => piece.name),
  );
  return corners.flatMap(({ name: corner, gear }): ThingFigure[] => {
    const on = gear.filter((piece) => pieces.has(piece.id) && piece.on);
    const worst = on.reduce((most, piece) => (piece.dropV > (most?.dropV ?? -1) ? piece : most), on[0]);
    if (!worst) return [];
    const { id, currentA, voltageV, dropShare } = worst;
    return [
      { figure: { of: "gear current", gear: id, corner }, value: currentA, unit: "A" },
      { figure: { of: "gear voltage", gear: id, corner }, value: voltageV, unit: "V" },
      { figure: { of: "gear drop", gear: id, corner }, value: dropShare * 100, unit: "%" },
    ];
  });
}

function runFigures({ sizes, corners, plan, protection }: Figures, name: string): ThingFigure[] {
  const runs = plan.runs.filter((run) => run.name === name || run.group === name);
  const groups = new Set(runs.map(({ group }) => group));
  const single = new Set(runs.map((run) => run.name));
  const chosen = sizes.choices.filter(({ run }) => groups.has(run));
  const worst = corners.find((corner) => corner.name === "worst drop");
  return [
    ...chosen.flatMap(({ id, size, ampacityA }): ThingFigure[] => [
      { figure: { of: "run size", choice: id }, value: size.key },
      { figure: { of: "run ampacity", choice: id }, value: ampacityA, unit: "A" },
    ]),
    ...(worst?.branches ?? [])
      .filter(({ of }) => single.has(of))
      .map(
        ({ id, dropV }): ThingFigure => ({
          figure: { of: "branch drop", branch: id, corner: "worst drop" },
          value: Math.abs(dropV),
          unit: "V",
        }),
      ),
    ...protection
      .filter(({ of }) => single.has(of) || groups.has(of))
      .map(
        ({ id, ratingA }): ThingFigure => ({
          figure: { of: "rating", device: id },
          value: ratingA,
          unit: "A",
        }),
      ),
  ];
}

/** None for a way on which nothing hangs yet: it has no fuse. */
function ratings({ protection }: Figures, name: string): ThingFigure[] {
  return protection
    .filter(({ of, spare }) => of === name && !spare)
    .map(({ id, ratingA }) => ({ figure: { of: "rating", device: id }, value: ratingA, unit: "A" }));
}

function batteryFigures({ corners, outings }: Figures, name: string): ThingFigure[] {
  return [
    ...corners.flatMap(({ name: corner, batteries }): ThingFigure[] =>
      batteries
        .filter(({ id }) => id === name)
        .flatMap(({ id, currentA, terminalV }) => [
          { figure: { of: "battery current", battery: id, corner }, value: currentA, unit: "A" },
          { figure: { of: "battery voltage", battery: id, corner }, value: terminalV, unit: "V" },
        ]),
    ),
    ...outings.flatMap((outing) => traceFigures(outing, name)),
  ];
}

function outingFigures({ outings }: Figures, name: string): ThingFigure[] {
  return outings
    .filter((outing) => outing.name === name)
    .flatMap((outing) => outing.batteries.flatMap(({ battery }) => traceFigures(outing, battery)));
}

function traceFigures(
  { name: outing, batteries, hoursToReserve }: Figures["outings"][number],
  battery: string,
): ThingFigure[] {
  return [
    ...hoursToReserve
      .filter((each) => each.battery === battery)
      .map(
        ({ hours }): ThingFigure => ({
          figure: { of: "hours to reserve", outing, battery },
          value: hours,
          unit: "h",
        }),
      ),
    ...batteries
      .filter((each) => each.battery === battery)
      .flatMap(({ chargeLeft, usedAh }): ThingFigure[] => [
        { figure: { of: "charge used", outing, battery }, value: usedAh, unit: "Ah" },
        { figure: { of: "charge left", outing, battery }, value: chargeLeft * 100, unit: "%" },
      ]),
  ];
}
