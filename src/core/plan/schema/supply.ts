import { type Battery, type Charger, type Converter, chemistries } from "../model/supply.js";
import { measures } from "./boxes.js";
import { named, refine } from "./combine.js";
import { names, protectionOrNone, surroundings, switchShape } from "./common.js";
import { fields, optional, otherwise, required } from "./fields.js";
import { boatPoint } from "./form.js";
import {
  aboveZeroM,
  age,
  amps,
  celsius,
  kilograms,
  metres,
  positiveHours,
  positiveShare,
  quantity,
  share,
  voltageRange,
  volts,
  watts,
} from "./quantities.js";
import { choice, flag, number, text, whole } from "./scalars.js";
import type { Shape } from "./shape.js";

export const battery = fields("a battery", {
  chemistry: required("chemistry", choice(chemistries), "What it is made of."),
  nominalV: optional(
    "voltage",
    volts,
    "Nominal voltage of the whole battery, 12 V or 24 V as a rule; the 12.8 V on an LiFePO4 battery count as 12 V.",
  ),
  capacityAh: required("capacity", quantity("charge", { above: 0, max: 100_000 }), "Capacity when new."),
  ratedHours: optional("rated over", positiveHours, "Hours of the discharge the capacity is rated at."),
  ageYears: optional("age", age, "Age."),
  internalOhm: optional(
    "internal resistance",
    quantity("resistance", { above: 0, max: 1000 }),
    "Internal resistance when new, at 25 °C.",
  ),
  shortCircuitA: optional("short circuit", amps, "What it can drive into a dead short."),
  reserveShare: optional("reserve", share, "Share of the capacity you will not use."),
  peukertExponent: optional("peukert", number({ min: 1, max: 2 }), "Peukert's exponent, 1 to 2."),
  maxDischargeA: optional(
    "most current",
    amps,
    "Greatest lasting current its maker or its electronics allow.",
  ),
  cutOffV: optional("cut-off", volts, "Voltage at which it, or its electronics, stops."),
  weightKg: optional("weight", kilograms, "Weight."),
  standsAtM: optional("stands at", boatPoint, "Where its middle stands in the boat."),
  sizeM: optional("size", measures, "Outside: length, width, height."),
  through: optional("through", text, "Opening it must pass, by the name of a waypoint."),
  studM: optional("stud", aboveZeroM, "Studs of its posts."),
  fixed: optional("fixed", choice(["strap", "bracket", "tray", "loose"]), "How it is held down."),
  vented: optional("vented", flag, "Its place lets gas out at the top."),
  covered: optional("covered", flag, "Its posts are booted, or it stands in a lidded box."),
  studsPerPost: optional("studs per post", whole(1, 20), "Studs at each post."),
  surroundings: optional("surroundings", surroundings, "Where it stands, as far as water and vapour go."),
  fuelPartWithinM: optional("nearest fuel part", metres, "Distance to the nearest metal fuel part above it."),
  parallelWith: otherwise("parallel with", names, [], "Batteries it is wired in parallel with."),
  main: optional("main", protectionOrNone, "Main fuse or breaker at the positive post, or `none`."),
  master: optional("master", switchShape, "Master switch beside it."),
});
export const batteries: Shape<readonly Battery[]> = named(battery);

export const charger = fields("a charger", {
  kind: required("kind", choice(["mains", "solar", "engine", "converter"]), "Where its power comes from."),
  charges: required("charges", text, "Battery it charges."),
  output: required("output", quantityOfOutput(), "Greatest output: a current, or a solar panel's power."),
  sunHoursPerDay: optional("sun hours", positiveHours, "Hours of full sun a day, for a solar panel."),
  absorptionV: optional("absorption", volts, "Absorption voltage."),
  selfLimiting: optional("self limiting", flag, "Limits the current of its own output."),
  stopsBelowC: optional("stops below", celsius, "Cell temperature under which it does not charge."),
  studM: optional("stud", aboveZeroM, "Studs of its terminals."),
  standsAtM: optional("stands at", boatPoint, "Where its middle stands in the boat."),
});

function quantityOfOutput(): Shape<{ readonly outputA: number } | { readonly outputW: number }> {
  return {
    label: "current, or power",
    json: (definitions) => ({ anyOf: [amps.json(definitions), watts.json(definitions)] }),
    read: (spot) => {
      const power = spot.node.kind === "scalar" && /(w|watts?)$/i.test(spot.node.text.trim());
      if (power) {
        const outputW = watts.read(spot);
        return outputW === undefined ? undefined : { outputW };
      }
      const outputA = amps.read(spot);
      return outputA === undefined ? undefined : { outputA };
    },
  };
}

export const chargers: Shape<readonly Charger[]> = named(
  refine(charger, ({ output, ...rest }): Omit<Charger, "name"> => ({ ...rest, ...output })),
);

export const converter = fields("a converter", {
  outputV: required("output", volts, "Voltage it gives."),
  maxOutputA: required("most output", amps, "Greatest lasting current it gives."),
  efficiency: optional("efficiency", positiveShare, "Efficiency."),
  standbyW: optional(
    "standby",
    quantity("power", { min: 0, max: 1_000_000 }),
    "What it takes with nothing on.",
  ),
  works: optional("works", voltageRange, "Least and greatest voltage at its input."),
  isolated: optional("isolated", flag, "No connection between its two negatives inside."),
  studM: optional("stud", aboveZeroM, "Studs of its terminals."),
  surroundings: optional("surroundings", surroundings, "Where it sits, as far as water and vapour go."),
  standsAtM: optional("stands at", boatPoint, "Where its middle stands in the boat."),
});

export const converters: Shape<readonly Converter[]> = named(
  refine(
    converter,
    ({ works, ...rest }): Omit<Converter, "name"> => ({
      ...rest,
      ...(works === undefined ? {} : { minInputV: works.lowV, maxInputV: works.highV }),
    }),
  ),
);
