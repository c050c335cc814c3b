import type { Corner, OnPeriod, Outing } from "../model/outing.js";
import { listOf, named, refine } from "./combine.js";
import { names } from "./common.js";
import { fields, optional, otherwise, required } from "./fields.js";
import { celsius, clockTime, duty, hours, positiveHours, share, volts } from "./quantities.js";
import { text } from "./scalars.js";
import type { Shape } from "./shape.js";

export const period = fields("a stretch of time", {
  what: required("what", text, "Gear, way (`panel / way`) or panel that is on."),
  fromH: otherwise("from", hours, 0, "From how long after the start. Left out: from the start."),
  toH: optional("to", hours, "To how long after the start. Left out: to the end."),
  duty: otherwise("runs", duty, 1, "How often it runs: `2 min each hour`. Left out: all the time."),
  level: otherwise("level", share, 1, "Share of its full draw: a motor at `50 %`."),
});

export const outing = fields("an outing", {
  startClockH: optional("start", clockTime, 'Time of day it starts, in quotes: `"04:30"`.'),
  lastsH: required("lasts", positiveHours, "How long it lasts."),
  airC: optional("air", celsius, "Air at the time."),
  startCharge: optional("charge", share, "State of charge at the start."),
  on: otherwise("on", listOf(period), [], "What is on, and when."),
});

export const outings: Shape<readonly Outing[]> = named(
  refine(
    outing,
    (given, say): Omit<Outing, "name"> => ({
      ...given,
      on: given.on.map((each, index): OnPeriod => {
        const toH = each.toH ?? given.lastsH;
        if (toH > given.lastsH) say({ code: "after the end" }, "on", index, "to");
        if (each.fromH > toH) say({ code: "ends before it begins" }, "on", index, "from");
        return { ...each, toH };
      }),
    }),
  ),
);

export const corner = fields("a corner", {
  charge: optional("charge", share, "State of charge of the batteries."),
  batteryV: optional("voltage", volts, "Voltage of the batteries without load, instead of a charge."),
  copperC: optional("copper", celsius, "Temperature of the copper."),
  on: optional("on", names, "Gear that is on. Left out: everything that may be on together."),
});

export const corners: Shape<readonly Corner[]> = named(
  refine(corner, (given, say): Omit<Corner, "name"> => {
    if (given.charge !== undefined && given.batteryV !== undefined)
      say(
        { code: "both keys", found: "voltage", expected: { kind: "keys", of: ["charge", "voltage"] } },
        "voltage",
      );
    return given;
  }),
);

/** Groups of gear of which one is on at a time. */
export const oneAtATime: Shape<readonly (readonly string[])[]> = listOf(listOf(text));
