import { ageShare, temperatureShare } from "../energy/battery-model.js";
import type { BatteryTrace, ChargingFigures, OutingFigures } from "../energy/types.js";
import type { Figures } from "../figures-types.js";
import type { CompleteBattery } from "../plan/completed.js";
import {
  capacityByAge,
  capacityByTemperature,
  chargeLimits,
  peukertExponents,
} from "../reference/batteries.js";
import { chargeAcceptance, solarYield } from "../reference/battery-charging.js";
import { assumedFor } from "./assumed-for.js";
import type { FigureRef } from "./figure-ref.js";
import type { Given, Working } from "./working.js";

type OutingRef = Extract<FigureRef, { outing: string }>;

/** A figure of one battery on one outing. */
export function outingWorking(figures: Figures, ref: OutingRef): Working | undefined {
  const outing = figures.outings.find(({ name }) => name === ref.outing);
  const battery = figures.plan.batteries.find(({ name }) => name === ref.battery);
  const trace = outing?.batteries.find((each) => each.battery === ref.battery);
  if (!outing || !battery || !trace) return undefined;
  switch (ref.of) {
    case "usable capacity":
      return capacityWorking(figures, outing, battery, trace);
    case "charge left":
    case "charge used":
      return usedWorking(figures, outing, battery, trace, ref.of);
    case "hours to reserve":
      return reserveWorking(figures, outing, battery, trace);
    default:
      return ref.of satisfies never;
  }
}

const capacityRef = ({ name }: OutingFigures, battery: string): FigureRef => ({
  of: "usable capacity",
  outing: name,
  battery,
});

function capacityWorking(
  figures: Figures,
  { name }: OutingFigures,
  battery: CompleteBattery,
  trace: BatteryTrace,
): Working {
  const airC = figures.plan.outings.find((outing) => outing.name === name)?.airC ?? figures.plan.ambient.airC;
  return {
    at: battery.name,
    value: trace.usableAh,
    unit: "Ah",
    says: "usable capacity",
    formula: "C = C_printed · f_cold · f_age",
    given: [
      { term: "capacity printed", value: battery.capacityAh, unit: "Ah" },
      { term: "factor", value: temperatureShare(battery.chemistry, airC), at: `${airC} °C` },
      {
        term: "factor",
        value: ageShare(battery.chemistry, battery.ageYears),
        at: `${battery.ageYears} years`,
      },
    ],
    sources: [capacityByTemperature.source, capacityByAge.source],
    assumptions: assumedFor(figures, [battery.name], ["age", "rated over"]),
  };
}

function usedWorking(
  figures: Figures,
  outing: OutingFigures,
  battery: CompleteBattery,
  trace: BatteryTrace,
  of: "charge left" | "charge used",
): Working {
  const uses = outing.uses.filter((use) => use.battery === battery.name);
  const shown =
    of === "charge left" ? { value: trace.chargeLeft * 100, unit: "%" } : { value: trace.usedAh, unit: "Ah" };
  return {
    at: battery.name,
    ...shown,
    says: of,
    formula: "Q = Σ ∫ I · (I / I_rated)^(k − 1) dt,  charge = charge₀ − Q / C",
    given: [
      { term: "charge before", value: (trace.points[0]?.charge ?? 1) * 100, unit: "%" },
      { term: "used", value: trace.usedAh, unit: "Ah" },
      { term: "capacity here", value: trace.usableAh, unit: "Ah", figure: capacityRef(outing, battery.name) },
      { term: "peukert", value: battery.peukertExponent },
      { term: "outing lasts", value: outing.lastsH, unit: "h" },
    ],
    table: {
      columns: [{ term: "use of gear", unit: "Ah" }],
      rows: uses.map(({ gear, usedAh }) => ({ name: gear, cells: [usedAh] })),
    },
    sources: [peukertExponents.source],
    assumptions: assumedFor(figures, [battery.name], ["peukert", "age", "rated over", "reserve"]),
  };
}

function reserveWorking(
  figures: Figures,
  outing: OutingFigures,
  battery: CompleteBattery,
  trace: BatteryTrace,
): Working | undefined {
  const reached = outing.hoursToReserve.find((each) => each.battery === battery.name);
  if (!reached) return undefined;
  return {
    at: battery.name,
    value: reached.hours,
    unit: "h",
    says: "hours to reserve",
    formula: "charge(t) = 1 − ∫ I · (I / I_rated)^(k − 1) dt / C = reserve",
    given: [
      { term: "reserve", value: battery.reserveShare * 100, unit: "%" },
      { term: "capacity here", value: trace.usableAh, unit: "Ah", figure: capacityRef(outing, battery.name) },
      { term: "outing lasts", value: outing.lastsH, unit: "h" },
      {
        term: "used",
        value: trace.usedAh,
        unit: "Ah",
        figure: { of: "charge used", outing: outing.name, battery: battery.name },
      },
      { term: "peukert", value: battery.peukertExponent },
    ],
    sources: [peukertExponents.source, capacityByTemperature.source],
    assumptions: assumedFor(figures, [battery.name], ["reserve", "peukert", "age", "rated over"]),
  };
}

/** Hours at a charger until full. */
export function chargingWorking(figures: Figures, charging: ChargingFigures): Working {
  const charger = figures.plan.chargers.find(({ name }) => name === charging.charger);
  const battery = figures.plan.batteries.find(({ name }) => name === charging.battery);
  const given: Given[] = [
    { term: "charge before", value: charging.fromCharge * 100, unit: "%", at: charging.battery },
  ];
  if (charger?.outputA !== undefined)
    given.push({ term: "charger output", value: charger.outputA, unit: "A" });
  if (charger?.outputW !== undefined)
    given.push(
      { term: "charger output", value: charger.outputW, unit: "W" },
      { term: "factor", value: solarYield.share },
    );
  if (charger?.sunHoursPerDay !== undefined)
    given.push({ term: "sun hours", value: charger.sunHoursPerDay, unit: "h" });
  if (charging.days !== undefined) given.push({ term: "days", value: charging.days });
  if (charger) given.push({ term: "absorption voltage", value: charger.absorptionV, unit: "V" });
  given.push({ term: "state", value: charging.state });
  return {
    at: charging.charger,
    value: charging.hours ?? charging.state,
    ...(charging.hours === undefined ? {} : { unit: "h" }),
    says: "charging time",
    formula: "t = (Q_lacking − τ · I) / I + τ · ln(I / I_tail)",
    given,
    sources: battery ? [chargeAcceptance.source, chargeLimits.source] : [],
    assumptions: assumedFor(
      figures,
      [charging.charger, charging.battery],
      ["absorption", "self limiting", "age"],
    ),
  };
}
