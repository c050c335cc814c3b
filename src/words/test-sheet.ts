import type { SheetSection, SheetTest } from "../core/proving/sheet/types.js";
import { seenFrom } from "../core/reference/seen-from.js";
import { marked } from "./numbers.js";
import { english } from "./proof/english.js";
import type { ProofWords } from "./proof/proof-words.js";
import { bandWords, branchWords, ohmWords, onWords, pointWords, readingWords } from "./proving.js";

/** Headings of the sheet's parts. */
export function sectionWords({ kind, at }: SheetSection, { sheet }: ProofWords = english): string {
  const feed = kind === "way" && at.endsWith(" / feed");
  return feed ? sheet.sections.feed(at.replace(/ \/ feed$/, "")) : sheet.sections[kind](at);
}

/** Where the probes go and what is on; without a meter, what one does. */
export function howWords({ test, at, probe, arcDeg }: SheetTest, words: ProofWords = english): string {
  const { sheet, proving } = words;
  const { how } = sheet;
  if (probe?.kind === "marking") return how.marking(branchWords(probe.at, words));
  if (probe?.kind === "current")
    return `${how.clamp(branchWords(probe.at, words))}; ${onWords(probe.on, words)}`;
  if (probe) {
    const on =
      probe.kind === "ohm"
        ? ""
        : `; ${test === "switched off" ? how.ownSwitchOff : test === "unloaded voltage" ? how.gearOff : onWords(probe.on, words)}`;
    const { points } = proving;
    return `${proving.range(pointWords(probe.at, points), pointWords(probe.against, points))}${on}`;
  }
  switch (test) {
    case "insulation to hull":
      return how.hull(at);
    case "colours":
      return how.colours(at);
    case "float switch":
      return how.float(at);
    case "rating":
      return how.marking(branchWords(at, words));
    case "seen from":
      if (arcDeg === seenFrom.sidelight.arcDeg) return how.sidelights(at, "22.5 °");
      return arcDeg === undefined || arcDeg >= 360 ? how.allRound(at) : how.arc(at, marked(arcDeg, "°"));
    case "leak":
      return how.leak(at);
    default:
      return at;
  }
}

export function expectedWords(
  { probe, band, leastOhm, mostV, ratingA, arcDeg, test }: SheetTest,
  words: ProofWords = english,
): string {
  const { atLeast, atMost } = words.proving;
  const { expected } = words.sheet;
  if (probe && band) {
    if (test === "continuity out" || test === "continuity back") return atMost(ohmWords(band.high, words));
    return bandWords(probe.kind, band, words);
  }
  if (leastOhm !== undefined) return atLeast(ohmWords(leastOhm, words));
  if (mostV !== undefined) return atMost(readingWords("voltage", mostV, words));
  if (ratingA !== undefined) return marked(ratingA, "A");
  if (arcDeg !== undefined) return arcDeg >= 360 ? expected.allRound : marked(arcDeg, "°");
  if (test === "leak") return expected.dry;
  return test === "seen from" ? expected.ownArc : expected.right;
}

/** The instrument and its setting. */
export function settingWords(
  { setting, probe, test }: SheetTest,
  { sheet: { instruments } }: ProofWords = english,
): string {
  if (setting?.startsWith("clamp")) return instruments.clamp(setting.slice("clamp ".length));
  if (setting !== undefined) return instruments.meter(setting);
  if (probe) return probe.kind === "marking" ? instruments.eyes : instruments.plainMeter;
  if (test === "leak") return instruments.hose;
  return test === "insulation to hull" ? instruments.meter("2 MΩ") : instruments.eyes;
}
