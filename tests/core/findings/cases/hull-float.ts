import type { RuleCase } from "../case.js";
import { type Change, hullBoat } from "../hull-boat.js";

const sound = () => hullBoat();
const helm = "weight: 80 kg, at: [1.6 m, 0 m, 500 mm]";
const weighing = (kg: number, upMm = 200) =>
  hullBoat([helm, `weight: ${kg} kg, at: [1.9 m, 0 m, ${upMm} mm]`]);
const outlet = (place: string): Change => [
  "outlet: {at: {along: 200 mm, off: 70 mm}",
  `outlet: {at: {along: 200 mm, ${place}}`,
];
const under = outlet("above: chine, off: 15 mm");

export const floatCases = {
  "float-unknown": {
    raises: [
      { boat: () => hullBoat([/float:\n(?: {2}.*\n)+/, ""]), at: "lamp", level: "unchecked" },
      { boat: () => hullBoat([/ {2}hull: \{weight.*\n/, ""]), at: "hull", level: "unchecked" },
      {
        boat: () =>
          hullBoat(
            ["[0 mm, 600 mm, 1200 mm", "[0 mm, 1200 mm, 600 mm"],
            ["hole: {size: 22 mm,", "hole: {size: 22 mm, water: sealed,"],
          ),
        at: "switch",
        level: "unchecked",
      },
    ],
    quiet: [sound],
  },
  floats: {
    raises: [{ boat: () => weighing(9000), at: "craft", level: "stop", figure: 9090 }],
    quiet: [sound],
  },
  "freeboard-low": {
    raises: [
      {
        boat: () => weighing(1400),
        at: "plan",
        level: "mend",
        limit: 0.21,
        says: /for her length, a limit from memory: confirm it before relying on it\.$/,
      },
      {
        boat: () => weighing(1000),
        at: "plan",
        level: "mind",
        limit: 0.3048,
        says: /is the least for her length\.$/,
      },
      { boat: () => hullBoat(["beam: 1.5 m", "beam: 1.0 m"]), at: "plan", level: "unchecked" },
      {
        boat: () => hullBoat([helm, "weight: 800 kg, at: [3.2 m, 0 m, 200 mm]"]),
        at: "plan",
        level: "stop",
        limit: 0.21,
      },
    ],
    quiet: [sound, () => weighing(300)],
  },
  "hole-low": {
    raises: [
      { boat: () => hullBoat(outlet("off: 300 mm")), at: "outlet", level: "mind", limit: 0.25 },
      {
        boat: () =>
          hullBoat(
            [helm, "weight: 700 kg, at: [1.9 m, 0 m, 300 mm]"],
            ["outlet: {at: {along: 200 mm, off: 70 mm}", "outlet: {at: {along: 1400 mm, off: 70 mm}"],
          ),
        at: "outlet",
        level: "mind",
      },
      {
        boat: () =>
          hullBoat(
            [helm, "weight: 700 kg, at: [1.9 m, 0 m, 300 mm]"],
            [
              "outlet: {at: {along: 200 mm, off: 70 mm}",
              "outlet: {at: {along: 1400 mm, below: sheer, off: 35 mm}",
            ],
          ),
        at: "outlet",
        level: "mind",
        // 10° + (24 − 4.2)³/600
        limit: 22.937320000000003,
        says: /should stay dry to [\d.]+.°, a limit from memory: confirm it before relying on it\.$/,
      },
    ],
    quiet: [sound],
  },
  "hole-under-water": {
    raises: [
      { boat: () => hullBoat(under), at: "outlet", level: "stop" },
      { boat: () => hullBoat(under, ["water: open", "water: sealed"]), at: "outlet", level: "mind" },
    ],
    quiet: [sound, () => hullBoat(under, ["water: open", "water: drain"])],
  },
  "stands-upright": {
    raises: [{ boat: () => weighing(200, 3500), at: "craft", level: "stop" }],
    quiet: [sound],
  },
} as const satisfies Record<string, RuleCase>;
