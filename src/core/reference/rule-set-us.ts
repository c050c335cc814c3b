import { usAmpacity, usBundling, usEngineSpace } from "./ampacity-us.js";
import type { RuleFigures } from "./rule-set-type.js";
import type { Cited, Source, Status } from "./source.js";

const inch = 0.0254;
const at = (title: string, place: string, status: Status): Source => ({ title, place, status });
const cfr = <T>(value: T, section: string, status: Status = "published"): Cited<T> => ({
  value,
  source: at("33 CFR Part 183 Subpart I", section, status),
});
const voluntary = <T>(value: T, status: Status): Cited<T> => ({
  value,
  source: at("US voluntary small-craft d.c. standard E-11", "as quoted by a maker", status),
});

/** US: federal regulation where it has a number, the voluntary small-craft standard and practice where it has none. */
export const usRules: RuleFigures = {
  name: "us",
  title: "US small craft",
  sizeKeys: usAmpacity.rows.map((row) => row.key),

  maxDropSafety: voluntary(0.03, "published"),
  maxDropOther: voluntary(0.1, "published"),
  // the quotation names blowers, electronics and navigation lights; bilge pumps belong to the same list as recalled
  safetyRoles: voluntary(["navigation light", "bilge pump", "blower", "electronics"], "memory"),

  ampacity: usAmpacity,
  engineSpace: usEngineSpace,
  bundling: usBundling,

  leastSheathed: cfr("18 AWG", "183.425(d)"),
  leastSingle: cfr("16 AWG", "183.425(e)"),
  maxOutOfSheathM: cfr(30 * inch, "183.425(f)"),
  leastSizeExemptM: cfr(7 * inch, "183.425(g)"),
  leastSizeExemptA: cfr(1, "183.425(g)"),

  maxProtectionDistanceM: cfr(7 * inch, "183.455(b)(1)"),
  maxProtectionDistanceEnclosedM: cfr(40 * inch, "183.455(b)(2)"),
  maxProtectionDistanceBatteryM: cfr(72 * inch, "183.460(a), text not read", "memory"),
  maxProtectionDistanceChargerM: cfr(40 * inch, "183.455(b)(2), taken for a charger's lead", "practice"),
  maxProtectionShare: cfr(1.5, "183.455(c)(1)"),

  maxTerminalsPerStud: voluntary(4, "memory"),
  returnColours: voluntary(["black", "yellow"], "memory"),
  maxBatteryMovementM: cfr(1 * inch, "183.420(a)"),
  minFuelPartM: cfr(12 * inch, "183.420(c)"),
};
