import type { Hazard } from "../../way/types.js";
import type { PlanLeg, PlanOpening, PlanWaypoint } from "../model/layout.js";
import { byForm, map, named, refine, wordOr } from "./combine.js";
import { fields, optional, otherwise, required } from "./fields.js";
import { three } from "./lists.js";
import { aboveZeroM, metres, quantity } from "./quantities.js";
import { choice, flag, text } from "./scalars.js";
import type { Shape } from "./shape.js";

export const openingKeys = fields("an opening", {
  across: required("across", aboveZeroM, "Its width."),
  up: required("up", aboveZeroM, "Its height."),
  ends: optional("ends", choice(["square", "round"]), "`round`: a slot with round ends."),
});

const opening: Shape<PlanOpening> = byForm({
  scalar: map(aboveZeroM, (diameterM): PlanOpening => ({ shape: "circle", diameterM })),
  section: map(openingKeys, ({ across, up, ends }): PlanOpening => {
    if (ends !== "round") return { shape: "rectangle", widthM: across, heightM: up };
    return { shape: "obround", lengthM: Math.max(across, up), widthM: Math.min(across, up) };
  }),
});

const placeM = three(quantity("length", { min: -1000, max: 1000 }));

export const waypoint = fields("a waypoint", {
  atM: optional("at", placeM, "Where it is: three lengths in any one frame."),
  opening: optional(
    "opening",
    opening,
    "Hole that cables or boxes pass there: a diameter, or `{across, up, ends}`.",
  ),
  edge: optional("edge", choice(["grommet", "gland", "rounded", "bare"]), "What the hole's edge has."),
  bendM: optional(
    "bend",
    wordOr("none", "none" as const, aboveZeroM),
    "Radius of the corner there; `none`: cables run straight on.",
  ),
});
export const waypoints: Shape<readonly PlanWaypoint[]> = named(waypoint);

const distance = (what: Hazard | "compass", says: string) => optional(what, metres, says);

/** Distances by the names of what is near. */
export const near = fields("distances", {
  "wet exhaust": distance("wet exhaust", "From a water-cooled exhaust."),
  "dry exhaust": distance("dry exhaust", "From a dry exhaust."),
  "hot surface": distance("hot surface", "From anything else that gets hot."),
  "fuel part": distance("fuel part", "From a fuel pipe, tank or fitting."),
  compass: distance("compass", "From the compass."),
});

export const leg = fields("a leg", {
  from: required("from", text, "Place or waypoint it starts at."),
  to: required("to", text, "Place or waypoint it ends at."),
  lengthM: optional(
    "length",
    metres,
    "Its length along hull or panel. Left out: straight between two places that are known.",
  ),
  enclosed: otherwise("enclosed", flag, false, "In conduit, trunking or a tray all along."),
  supportsM: optional("supports", aboveZeroM, "Distance between its clips or ties."),
  nearM: otherwise("near", near, {}, "What it comes near, and how near."),
});

export const legs: Shape<readonly PlanLeg[]> = named(
  refine(leg, (given, say): Omit<PlanLeg, "name"> => {
    if (given.from === given.to) say({ code: "itself", found: given.to }, "to");
    return given;
  }),
);
