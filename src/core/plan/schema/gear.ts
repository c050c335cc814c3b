import { behaviours, type Gear, gearRoles } from "../model/gear.js";
import { limits } from "../source/limits.js";
import { named, refine } from "./combine.js";
import { jointKind, surroundings } from "./common.js";
import { fields, optional, otherwise, required } from "./fields.js";
import { boatPoints } from "./form.js";
import { two } from "./lists.js";
import { hole, placingKeys, placingOf } from "./placing.js";
import {
  aboveZeroM,
  amps,
  celsius,
  conductorSize,
  draw,
  kilograms,
  metres,
  positiveShare,
  voltageRange,
} from "./quantities.js";
import { choice, flag, whole } from "./scalars.js";
import type { Shape } from "./shape.js";

export const leads = fields("its own leads", {
  size: required("size", conductorSize, "Size of its own leads."),
  lengthM: required("length", metres, "Length of its own leads."),
  insulationC: optional("insulation", celsius, "Temperature their insulation is rated for."),
  fuseA: optional("fuse", amps, "Fuse in the lead, as it comes from the maker."),
});

export const gearItem = fields("a piece of gear", {
  role: optional("role", choice(gearRoles), "What it is there for."),
  count: otherwise(
    "count",
    whole(1, limits.maxGear),
    1,
    "How many alike; they are called `name 1`, `name 2` …",
  ),
  draw: required(
    "draws",
    draw,
    "What it takes: power, current or resistance, and the voltage the figure was given at.",
  ),
  behaviour: optional("behaves as", choice(behaviours), "How its current answers to voltage."),
  startA: optional("starts", amps, "Current at the start, for a motor."),
  works: optional("works", voltageRange, "Least and greatest voltage it works at."),
  leads: optional("leads", leads, "Its own wires, as they come from the maker."),
  maxDropShare: optional("drop", positiveShare, "Greatest drop you or its maker allow, of nominal voltage."),
  maxFuseA: optional("largest fuse", amps, "Greatest fuse its maker allows in front of it."),
  floatSwitch: otherwise("float switch", flag, false, "Started by water, not by a hand."),
  surroundings: optional("surroundings", surroundings, "Where it sits, as far as water and vapour go."),
  joint: optional("joint", jointKind, "Joint between its leads and the run."),
  weightKg: optional("weight", kilograms, "Weight."),
  ...placingKeys,
  hole: optional("hole", hole, "Hole it needs in its face."),
  standsAtM: optional(
    "stands at",
    boatPoints,
    "Where its middle stands when it is on no face; a list with one for each piece.",
  ),
  studM: optional("stud", aboveZeroM, "Stud of its terminals."),
  tabM: optional("tab", aboveZeroM, "Width of its push-on tabs."),
  strainReliefM: optional("strain relief", two(metres), "Least and greatest cable its strain relief holds."),
});

export const gear: Shape<readonly Gear[]> = named(
  refine(gearItem, ({ works, on, places, row, side, pair, ...rest }, say): Omit<Gear, "name"> => {
    const value = drawValue(rest.draw);
    if (!(value > 0))
      say({ code: "out of limits", expected: { kind: "above", limit: aboveZero[rest.draw.kind] } }, "draws");
    if (rest.draw.kind !== "resistance" && rest.draw.atV !== undefined && !(rest.draw.atV > 0))
      say({ code: "out of limits", expected: { kind: "above", limit: "0 V" } }, "draws");
    const stands = rest.standsAtM?.length;
    if (stands !== undefined && stands !== 1 && stands !== rest.count)
      say(
        { code: "wrong count", found: String(stands), expected: { kind: "count", of: [rest.count] } },
        "stands at",
      );
    const placing = placingOf(
      { side, pair, ...(on && { on }), ...(places && { places }), ...(row && { row }) },
      rest.count,
      say,
    );
    return {
      ...rest,
      ...(works === undefined ? {} : { minV: works.lowV, maxV: works.highV }),
      ...(placing === undefined ? {} : { placing }),
    };
  }),
);

const aboveZero = { power: "0 W", current: "0 A", resistance: "0 Ω" } as const;

function drawValue(given: Gear["draw"]): number {
  if (given.kind === "power") return given.powerW;
  return given.kind === "current" ? given.currentA : given.resistanceOhm;
}
