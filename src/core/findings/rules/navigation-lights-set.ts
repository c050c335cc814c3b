import { type LightKind, lightKindsOf } from "../../plan/light-kind.js";
import { underWay } from "../../reference/navigation-lights.js";
import type { Finding } from "../finding.js";
import { movedBy } from "../moved-by.js";
import { rule } from "../rule.js";
import { colregs, inlandRules } from "../sources.js";

const id = "navigation-lights-set";

/** The navigation lights are those that a boat so moved, and so long, shows under way. Where there are none nobody plans to be out by night. */
export const navigationLightsSet = rule({
  id,
  theme: "layout",
  level: "mend",
  sources: {
    us: [inlandRules("83.23, 83.25", "memory"), underWay.source, colregs("Rule 21")],
    iso: [underWay.source, colregs("Rule 21")],
  },
  check: ({ plan }) => {
    const lights = plan.gear.filter(({ role }) => role === "navigation light").map(({ name }) => name);
    const [at, ...others] = lights;
    if (at === undefined) return [];
    const about = { rule: id, at, ...(others.length > 0 && { with: others }) };
    const untold = (what: "moved" | "light" | "length", at: string): Finding[] => [
      { ...about, at, level: "unchecked", terms: { untold: what } },
    ];
    const moved = movedBy(plan);
    if (moved === undefined) return untold("moved", at);
    // a boat under oars may show a sailing boat's lights, and needs no more than a torch ready to hand
    if (moved === "oars") return [];
    const unknown = lights.find((name) => lightKindsOf(name).length === 0);
    if (unknown !== undefined) return untold("light", unknown);
    const shown = new Set(lights.flatMap(lightKindsOf));
    const { lengthM } = plan.source.craft;
    const lacks = moved === "motor" ? lacksUnderPower(shown, lengthM) : lacksUnderSail(shown);
    if (lacks === undefined) return [];
    if (lengthM === undefined) return untold("length", at);
    const short = lengthM < underWay.shortUnderM;
    // under sail a short boat may have a torch ready instead
    if (moved === "sail" && short) return [];
    const level =
      lacks === "sidelights" && moved === "motor" && short && shown.has("all-round") ? "mind" : "mend";
    return [{ ...about, level, terms: { lacks, moved } } satisfies Finding];
  },
});

type Lacks = "white light" | "stern light" | "sidelights";

/** What a boat under power lacks first; undefined: nothing. */
function lacksUnderPower(shown: ReadonlySet<LightKind>, lengthM: number | undefined): Lacks | undefined {
  const allRound = shown.has("all-round") && !(lengthM !== undefined && lengthM >= underWay.allRoundUnderM);
  if (!allRound && !shown.has("masthead")) return "white light";
  if (!allRound && !shown.has("stern")) return "stern light";
  return shown.has("sidelight") ? undefined : "sidelights";
}

function lacksUnderSail(shown: ReadonlySet<LightKind>): Lacks | undefined {
  if (!shown.has("sidelight")) return "sidelights";
  return shown.has("stern") ? undefined : "stern light";
}
