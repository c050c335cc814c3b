import type { SheetSection, SheetTest, SheetTestKind, StopReason } from "../core/proving/sheet/types.js";
import { seenFrom } from "../core/reference/seen-from.js";
import { marked } from "./numbers.js";
import { bandWords, branchWords, ohmWords, onWords, pointWords, readingWords } from "./proving.js";

export const sheetTestWords: Readonly<Record<SheetTestKind, string>> = {
  insulation: "Insulation, positive to negative",
  "insulation to hull": "Insulation to the hull",
  "continuity out": "Continuity, positive wire",
  "continuity back": "Continuity, negative wire",
  colours: "Positive to positive",
  "resting voltage": "Battery at rest",
  rating: "Fuse rating",
  "live point": "Supply arrives",
  "switched off": "Switch off",
  "unloaded voltage": "Volts, no load",
  current: "Current",
  "loaded voltage": "Volts, loaded",
  "drop out": "Drop, positive wire",
  "drop back": "Drop, negative wire",
  "pump running": "Pump under load",
  "float switch": "Float switch",
  "seen from": "Seen from",
  leak: "Leak test",
};

/** What to stop for, and what then. */
export const stopWords: Readonly<Record<StopReason, string>> = {
  "never below the limit": "Less: find the leak first.",
  "no way through": "More: a joint is open or bad.",
  "wrong way round": "A minus sign or nothing: swapped or open.",
  "battery not as charged": "Outside: charge it, or doubt it.",
  "not that rating": "Another: change it before power.",
  "still live": "More: the switch is in the wrong wire.",
  "outside the band": "Outside: find it before closing up.",
  "runs hot or dry": "Outside, dry or hot: switch off.",
  "does not start": "It does not start, or does not stop.",
  "not seen": "Dark, or seen outside its arc.",
  "lets water in": "One drop inside: seal again.",
};

/** Headings of the sheet's parts. */
export function sectionWords({ kind, at }: SheetSection): string {
  switch (kind) {
    case "insulation":
      return "Insulation: batteries apart, gear not yet connected or switched off";
    case "continuity":
      return "Continuity: batteries apart, fuses in, switches on";
    case "polarity":
      return "Polarity: by colour, at both ends";
    case "battery":
      return `Battery ${at}: connected last, everything off`;
    case "way":
      return at.endsWith(" / feed") ? `Straight from ${at.replace(/ \/ feed$/, "")}` : `Way ${at}`;
    case "seen":
      return `Navigation lights on ${at}: at night, from outside`;
    case "holes":
      return "Holes: a hose for five minutes, someone inside with a torch";
    default:
      return kind satisfies never;
  }
}

/** Where the probes go and what is on; without a meter, what one does. */
export function howWords({ test, at, probe, arcDeg }: SheetTest): string {
  if (probe?.kind === "marking") return `read what is printed on it: ${branchWords(probe.at)}`;
  if (probe?.kind === "current")
    return `clamp round the wire at ${branchWords(probe.at)}; ${onWords(probe.on)}`;
  if (probe) {
    const on =
      probe.kind === "ohm"
        ? ""
        : `; ${test === "switched off" ? "its switch off" : test === "unloaded voltage" ? "switch on, gear off" : onWords(probe.on)}`;
    return `${pointWords(probe.at)} to ${pointWords(probe.against)}${on}`;
  }
  switch (test) {
    case "insulation to hull":
      return `positive of ${at} to bare metal, then negative to bare metal`;
    case "colours":
      return `${at}: positive lead on the positive wire, negative on negative`;
    case "float switch":
      return `lift the float of ${at}, master off`;
    case "rating":
      return `read what is printed on it: ${branchWords(at)}`;
    case "seen from":
      if (arcDeg === seenFrom.sidelight.arcDeg)
        return `walk round: ${at}, red to port, green to starboard, each from right ahead to 22.5 ° abaft the beam; dark beyond`;
      return arcDeg === undefined || arcDeg >= 360
        ? `walk right round: ${at}`
        : `walk round: ${at} over ${marked(arcDeg, "°")}, dark beyond`;
    case "leak":
      return `hole of ${at}, outside wetted, from below and with the slope`;
    default:
      return at;
  }
}

export function expectedWords({ probe, band, leastOhm, mostV, ratingA, arcDeg, test }: SheetTest): string {
  if (probe && band) {
    if (test === "continuity out" || test === "continuity back") return `at most ${ohmWords(band.high)}`;
    return bandWords(probe.kind, band);
  }
  if (leastOhm !== undefined) return `at least ${ohmWords(leastOhm)}`;
  if (mostV !== undefined) return `at most ${readingWords("voltage", mostV)}`;
  if (ratingA !== undefined) return marked(ratingA, "A");
  if (arcDeg !== undefined) return arcDeg >= 360 ? "all round" : marked(arcDeg, "°");
  if (test === "leak") return "dry";
  return test === "seen from" ? "its own arc" : "right";
}

/** The instrument and its setting. */
export function settingWords({ setting, probe, test }: SheetTest): string {
  if (setting?.startsWith("clamp")) return `clamp, ${setting.slice("clamp ".length)}`;
  if (setting !== undefined) return `meter, ${setting}`;
  if (probe) return probe.kind === "marking" ? "eyes" : "meter";
  if (test === "leak") return "hose, torch";
  return test === "insulation to hull" ? "meter, 2 MΩ" : "eyes";
}
