import type { RuleCase } from "../case.js";
import { type Lines, layoutBoat, soundBox } from "../layout-boat.js";

const box =
  (text: string, change: Partial<Lines> = {}) =>
  () =>
    layoutBoat({ box: text, ...change });
const measured = "wall: 3 mm, of: abs, boss: 10 mm, lid lip: 5 mm, ip: IP65, stud: 5 mm";
/** Drilled already, 160 mm across below: three holes for M12 or M16 glands at these places along it, 35 mm up. */
const drilled = (along: readonly number[], more = "", holeMm = 16.5) =>
  `${soundBox}${more}, holes: {${along.map((x, k) => `h${k + 1}: {on: down, at: [${x} mm, 35 mm], hole: ${holeMm} mm}`).join(", ")}}`;
const hatch = (opening: string) => `waypoints: {hatch: {opening: ${opening}}}`;

export const boxCases = {
  "gland-fit": {
    raises: [
      {
        boat: () => layoutBoat({ leads: "length: 3 ft, size: 16 AWG, outside: 2 mm" }),
        at: "fore box",
        level: "mend",
        figure: 2,
        limit: 3,
      },
      {
        boat: () => layoutBoat({ trunk: "length: 8 ft, size: 16 AWG, outside: 24 mm" }),
        at: "fore box",
        level: "mend",
        figure: 24,
        limit: 21,
      },
      {
        boat: () => layoutBoat({ trunk: "length: 8 ft, size: 16 AWG, outside: 8 mm, flat: 5 mm" }),
        at: "fore box",
        level: "mend",
        figure: 5,
        limit: 8,
      },
      { boat: box(soundBox.replace("wall: 3 mm", "wall: 6 mm")), at: "fore box", level: "mend", figure: 6 },
    ],
    quiet: [box(soundBox), () => layoutBoat({ trunk: "length: 8 ft, size: 16 AWG, outside: 20.9 mm" })],
  },
  "entries-fit": {
    raises: [
      { boat: box(`${soundBox}, spare entries: 30`), at: "fore box", level: "mend", figure: 33 },
      {
        boat: box("spare entries: 30", { more: `box catalogue: {small: {inside: [90 mm, 60 mm, 45 mm]}}` }),
        at: "fore box",
        level: "mend",
      },
      {
        boat: box(`inside: [40 mm, 30 mm, 20 mm], ${measured.replace("10 mm", "2 mm")}`),
        at: "fore box",
        level: "mend",
      },
    ],
    quiet: [box(`${soundBox}, spare entries: 1`)],
  },
  "own-hole": {
    raises: [{ boat: box(drilled([35, 80])), at: "fore box", level: "mend", figure: 16.5 }],
    quiet: [box(drilled([35, 80, 125]))],
  },
  "hole-web": {
    raises: [{ boat: box(drilled([35, 55, 125])), at: "fore box", level: "mend", figure: 3.5, limit: 6.6 }],
    quiet: [box(drilled([35, 80, 125]))],
  },
  "hole-place": {
    raises: [
      { boat: box(drilled([12, 80, 125])), at: "fore box", level: "mend", figure: 12 },
      { boat: box(drilled([35, 80, 125], ", closed faces: [down]")), at: "fore box", level: "mend" },
      { boat: box(drilled([35, 80, 158])), at: "fore box", level: "mend" },
    ],
    quiet: [box(drilled([35, 80, 125]))],
  },
  "nut-room": {
    raises: [
      { boat: box(drilled([35, 59, 125])), at: "fore box", level: "mend", figure: 24 },
      { boat: box(drilled([35, 53, 125])), at: "fore box", level: "mend", figure: 18 },
    ],
    quiet: [box(drilled([35, 62, 125]))],
  },
  "upward-entry": {
    raises: [
      { boat: box(drilled([35, 80, 125]).replaceAll("on: down", "on: up")), at: "fore box", level: "mend" },
      { boat: box(`${soundBox}, closed faces: [down, left, right]`), at: "fore box", level: "mind" },
    ],
    quiet: [box(drilled([35, 80, 125])), box(soundBox)],
  },
  "box-contents": {
    raises: [
      {
        boat: box(`${soundBox}, contents: {block: {size: [50 mm, 40 mm, 65 mm]}}`),
        at: "fore box",
        level: "mend",
        figure: 65,
        limit: 60,
      },
      {
        boat: box(`${soundBox}, contents: {block: {size: [150 mm, 100 mm, 30 mm]}}`),
        at: "fore box",
        level: "mend",
      },
    ],
    quiet: [box(`${soundBox}, contents: {block: {size: [60 mm, 30 mm, 30 mm]}}`)],
  },
  "box-opening": {
    raises: [
      { boat: box(`${soundBox}, through: hatch`, { more: hatch("60 mm") }), at: "fore box", level: "mend" },
      {
        boat: box(`${soundBox}, through: hatch`, { more: hatch("{across: 117 mm, up: 78 mm}") }),
        at: "fore box",
        level: "mind",
      },
      {
        boat: box(`${soundBox}, through: hatch`, { more: "waypoints: {hatch: {}}" }),
        at: "fore box",
        level: "unchecked",
      },
      {
        boat: () =>
          layoutBoat({ battery: "size: [200 mm, 170 mm, 180 mm], through: hatch", more: hatch("160 mm") }),
        at: "house",
        level: "mend",
      },
    ],
    quiet: [box(`${soundBox}, through: hatch`, { more: hatch("{across: 170 mm, up: 110 mm}") })],
  },
  "box-water": {
    raises: [
      { boat: box(soundBox.replace("IP65", "IP40")), at: "fore box", level: "mend", figure: 0, limit: 4 },
      { boat: box(soundBox.replace(", ip: IP65", "")), at: "fore box", level: "unchecked" },
    ],
    quiet: [box(soundBox), box(soundBox.replace("IP65", "IP44"))],
  },
  "box-unmeasured": {
    raises: [
      { boat: box(""), at: "fore box", level: "unchecked" },
      { boat: box(soundBox.replace(", boss: 10 mm", "")), at: "fore box", level: "unchecked" },
    ],
    quiet: [box(soundBox), box(drilled([35, 80, 125]).replace("lid lip: 5 mm, ", ""))],
  },
} as const satisfies Record<string, RuleCase>;
