import { isoAmpacity, isoBundling, isoEngineSpace } from "./ampacity-iso.js";
import type { RuleFigures } from "./rule-set-type.js";
import type { Cited, Source, Status } from "./source.js";

const at = (title: string, place: string, status: Status): Source => ({ title, place, status });
const iso = <T>(value: T, clause: string, status: Status = "published"): Cited<T> => ({
  value,
  source: at("ISO 10133:2012", clause, status),
});

/** ISO: small craft, extra-low-voltage d.c. installations. */
export const isoRules: RuleFigures = {
  name: "iso",
  title: "ISO small craft",
  sizeKeys: isoAmpacity.rows.map((row) => row.key),

  maxDropSafety: iso(0.03, "4.8 note"),
  maxDropOther: iso(0.1, "4.8", "memory"),
  // the note ends `other equipment vital to safety`: a horn is counted there
  safetyRoles: iso(["navigation light", "bilge pump", "blower", "sound signal"], "4.8 note"),

  ampacity: isoAmpacity,
  engineSpace: isoEngineSpace,
  bundling: isoBundling,

  leastSheathed: iso("0.75 mm²", "7.7"),
  leastSingle: iso("1 mm²", "7.7"),
  maxOutOfSheathM: iso(0.8, "7.7"),
  leastSizeExemptM: iso(0.2, "7.7"),
  leastSizeExemptA: iso(0, "7.7: no exemption by current"),

  maxProtectionDistanceM: iso(0.2, "8, recalled", "memory"),
  // no longer distance is known to be allowed for an enclosed conductor or at a battery
  maxProtectionDistanceEnclosedM: iso(0.2, "8, recalled", "memory"),
  maxProtectionDistanceBatteryM: iso(0.2, "8, recalled", "memory"),
  maxProtectionDistanceChargerM: { value: 1.8, source: at("ISO 13297:2020", "12.3", "published") },
  maxProtectionShare: iso(1, "8, recalled", "memory"),

  maxTerminalsPerStud: iso(4, "recalled", "memory"),
  returnColours: iso(["black", "yellow"], "recalled", "memory"),
  maxBatteryMovementM: iso(0.01, "5.2"),
  minFuelPartM: iso(0.3, "5.7"),
};
