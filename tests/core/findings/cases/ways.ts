import type { RuleCase } from "../case.js";
import { layoutBoat, soundBox } from "../layout-boat.js";

/** The trunk led past a knee, with what the legs and the knee say of themselves. */
const led = (knee: string, leg = "", more = "") =>
  layoutBoat({
    trunk: `along: [knee], size: 16 AWG, ${more === "" ? "twisted: false" : more}`,
    more: `waypoints: {knee: {${knee}}}
legs:
  under the thwart: {from: helm, to: knee, length: 5 ft${leg === "" ? "" : `, ${leg}`}}
  along the stem: {from: knee, to: fore box, length: 3 ft${leg.includes("near") ? `, ${leg}` : ""}}`,
  });
const straight = "bend: none";

export const wayCases = {
  "way-missing": {
    raises: [
      {
        boat: () =>
          layoutBoat({
            trunk: "along: [knee], size: 16 AWG",
            more: "waypoints: {knee: {}}\nlegs: {one: {from: helm, to: knee, length: 1 m}}",
          }),
        at: "trunk",
        level: "mend",
      },
      {
        boat: () =>
          layoutBoat({
            trunk: "along: [], size: 16 AWG",
            more: "waypoints: {knee: {}}\nlegs: {one: {from: helm, to: knee, length: 1 m}, two: {from: house, to: fore box, length: 1 m}}",
          }),
        at: "trunk",
        level: "mend",
      },
      {
        boat: () =>
          layoutBoat({ trunk: "along: [], size: 16 AWG", more: "legs: {one: {from: helm, to: fore box}}" }),
        at: "trunk",
        level: "mend",
      },
    ],
    quiet: [() => led(straight)],
  },
  "bend-radius": {
    raises: [
      { boat: () => led("bend: 10 mm"), at: "knee", level: "mend", figure: 10 },
      { boat: () => led(""), at: "knee", level: "unchecked" },
    ],
    quiet: [() => led(straight), () => led("bend: 60 mm")],
  },
  "edge-bare": {
    raises: [
      { boat: () => led(`${straight}, opening: 20 mm, edge: bare`), at: "knee", level: "mend" },
      { boat: () => led(`${straight}, opening: 20 mm`), at: "knee", level: "unchecked" },
    ],
    quiet: [() => led(`${straight}, opening: 20 mm, edge: grommet`), () => led(straight)],
  },
  "opening-room": {
    raises: [
      { boat: () => led(`${straight}, opening: 6 mm, edge: grommet`), at: "knee", level: "mend", figure: 6 },
    ],
    quiet: [() => led(`${straight}, opening: 20 mm, edge: grommet`)],
  },
  "clearance-heat": {
    raises: [
      {
        boat: () => led(straight, "near: {dry exhaust: 100 mm}"),
        at: "under the thwart",
        level: "mend",
        figure: 0.1,
        limit: 0.25,
      },
      {
        boat: () =>
          layoutBoat({
            trunk: "along: [knee], size: 16 AWG",
            more: "waypoints: {knee: {bend: none}}\nlegs: {one: {from: helm, to: knee, length: 1 m, near: {hot surface: 1 m}}, two: {from: knee, to: fore box, length: 1 m}}",
          }),
        at: "two",
        level: "unchecked",
      },
    ],
    quiet: [() => led(straight), () => led(straight, "near: {dry exhaust: 250 mm, hot surface: 2 m}")],
  },
  "clearance-fuel": {
    raises: [
      {
        boat: () => led(straight, "near: {fuel part: 50 mm}"),
        at: "under the thwart",
        level: "mend",
        figure: 0.05,
        limit: 0.1,
      },
    ],
    quiet: [() => led(straight), () => led(straight, "near: {fuel part: 100 mm}")],
  },
  "compass-near": {
    raises: [
      { boat: () => led(straight, "near: {compass: 40 mm}"), at: "trunk", level: "mend", limit: 0.5 },
      { boat: () => led(straight, "near: {compass: 300 mm}", "legs: out"), at: "trunk", level: "unchecked" },
    ],
    quiet: [
      () => led(straight, "near: {compass: 1 m}"),
      () => led(straight, "near: {compass: 40 mm}", "twisted: true"),
    ],
  },
  "leg-supports": {
    raises: [
      {
        boat: () => led(straight, "supports: 3 ft"),
        at: "under the thwart",
        level: "mend",
        figure: 0.9144,
        limit: 0.4572,
      },
    ],
    quiet: [() => led(straight, "supports: 18 in"), () => led(straight, "supports: 3 ft, enclosed: true")],
  },
  "slack-short": {
    raises: [
      {
        boat: () =>
          layoutBoat({
            box: `${soundBox}, drawn out: 8 in`,
            trunk: "length: 8 ft, size: 16 AWG, slack: {end: 6 in}",
          }),
        at: "trunk",
        level: "mend",
        figure: 0.1524,
      },
    ],
    quiet: [
      () => layoutBoat({ box: `${soundBox}, drawn out: 8 in` }),
      () =>
        layoutBoat({
          box: `${soundBox}, drawn out: 8 in`,
          trunk: "length: 8 ft, size: 16 AWG, slack: {end: 2 ft}",
        }),
      () => layoutBoat({ trunk: "length: 8 ft, size: 16 AWG, slack: {end: 6 in}" }),
    ],
  },
} as const satisfies Record<string, RuleCase>;
