import { usualBattery, usualBox, usualConverter, usualPanel } from "../../reference/assumed.js";
import {
  chargeLimits,
  dischargeLimits,
  internalResistance,
  peukertExponents,
  shortCircuitPerAh,
} from "../../reference/batteries.js";
import type {
  CompleteBattery,
  CompleteBox,
  CompleteCharger,
  CompleteConverter,
  CompletePanel,
  CompleteWay,
} from "../completed.js";
import type { Protection, Switch } from "../model/common.js";
import type { Enclosure } from "../model/layout.js";
import type { Battery, Charger, Converter, JunctionBox, Panel, Way } from "../model/supply.js";
import { usualMainDevice } from "./main-device.js";
import { blocksVoltageV } from "./marked-voltage.js";
import { amps, milliohms, type Notes, percent, volts } from "./notes.js";

export function completeBattery(battery: Battery, notes: Notes): CompleteBattery {
  const at = battery.name;
  const { chemistry, capacityAh } = battery;
  const limits = dischargeLimits[chemistry];
  const mainDevice = usualMainDevice(chemistry, capacityAh, battery.shortCircuitA);
  const markedV = notes.take(battery.nominalV, usualBattery.nominalV, at, "voltage", "twelve-volts", volts);
  const nominalV = blocksVoltageV(chemistry, markedV);
  const blocks = nominalV / 12;
  const internalOhm = notes.take(
    battery.internalOhm,
    (internalResistance[chemistry].ohmAh * blocks) / capacityAh,
    at,
    "internal resistance",
    "resistance-by-chemistry",
    milliohms,
  );
  return {
    ...battery,
    nominalV,
    internalOhm,
    ratedHours: notes.take(
      battery.ratedHours,
      usualBattery.ratedHours,
      at,
      "rated over",
      "twenty-hours",
      (h) => `${h} h`,
    ),
    ageYears: notes.take(battery.ageYears, 0, at, "age", "new-battery", (years) => `${years} years`),
    shortCircuitA: notes.take(
      battery.shortCircuitA,
      shortCircuitPerAh[chemistry] * capacityAh,
      at,
      "short circuit",
      "short-by-chemistry",
      amps,
    ),
    reserveShare: notes.take(
      battery.reserveShare,
      limits.reserveShare,
      at,
      "reserve",
      chemistry === "lifepo4" ? "reserve-lithium" : "reserve-lead",
      percent,
    ),
    peukertExponent: notes.take(
      battery.peukertExponent,
      peukertExponents[chemistry].k,
      at,
      "peukert",
      "peukert-by-chemistry",
    ),
    cutOffV: notes.take(
      battery.cutOffV,
      limits.cutOffV * blocks,
      at,
      "cut-off",
      "cut-off-by-chemistry",
      volts,
    ),
    studsPerPost: notes.take(battery.studsPerPost, 1, at, "studs per post", "one-stud"),
    surroundings: notes.take(battery.surroundings, "dry", at, "surroundings", "battery-dry"),
    main: notes.take<Protection | "none">(
      battery.main,
      { device: mainDevice },
      at,
      "main",
      "main-fuse-added",
      () => `${mainDevice}, rating worked out`,
    ),
  };
}

export function completeCharger(
  charger: Charger,
  battery: Battery | undefined,
  notes: Notes,
): CompleteCharger {
  const at = charger.name;
  const usual = chargeLimits[battery?.chemistry ?? "agm"];
  const blocks = (battery?.nominalV ?? 12) / 12;
  return {
    ...charger,
    absorptionV: notes.take(
      charger.absorptionV,
      usual.absorptionV * blocks,
      at,
      "absorption",
      "absorption-by-chemistry",
      volts,
    ),
    selfLimiting: notes.take(charger.selfLimiting, false, at, "self limiting", "not-self-limiting"),
  };
}

/** @param inputNominalV Nominal voltage of what feeds it [V]. */
export function completeConverter(
  converter: Converter,
  inputNominalV: number,
  notes: Notes,
): CompleteConverter {
  const at = converter.name;
  const usual = usualConverter;
  return {
    ...converter,
    efficiency: notes.take(
      converter.efficiency,
      usual.efficiency,
      at,
      "efficiency",
      "usual-converter",
      percent,
    ),
    standbyW: notes.take(
      converter.standbyW,
      usual.standbyW,
      at,
      "standby",
      "usual-converter",
      (w) => `${w} W`,
    ),
    minInputV: notes.take(
      converter.minInputV,
      usual.minInputShare * inputNominalV,
      at,
      "works from",
      "usual-converter",
      volts,
    ),
    maxInputV: notes.take(
      converter.maxInputV,
      usual.maxInputShare * inputNominalV,
      at,
      "works to",
      "usual-converter",
      volts,
    ),
    isolated: notes.take(converter.isolated, false, at, "isolated", "common-negative"),
    surroundings: notes.take(converter.surroundings, "splash", at, "surroundings", "open-boat"),
  };
}

export function completePanel(panel: Panel, notes: Notes): CompletePanel {
  return {
    ...panel,
    studsPerBus: notes.take(
      panel.studsPerBus,
      usualPanel.studsPerBus,
      panel.name,
      "studs per bus",
      "usual-panel",
    ),
    surroundings: notes.take(panel.surroundings, "splash", panel.name, "surroundings", "open-boat"),
    ...casing(panel, panel.name, notes),
    ways: panel.ways.map((way) => completeWay(way, panel.name, notes)),
  };
}

function completeWay(way: Way, panel: string, notes: Notes): CompleteWay {
  const at = `${panel} / ${way.name}`;
  const usualSwitch: Switch | "none" = way.alwaysLive ? "none" : {};
  const usualFuse: Protection | "none" = { device: "blade fuse" };
  return {
    ...way,
    switch: notes.take(
      way.switch,
      usualSwitch,
      at,
      "switch",
      way.alwaysLive ? "live-no-switch" : "switch-added",
      (value) => (value === "none" ? "none" : "one, rated for the load"),
    ),
    protection: notes.take(
      way.protection,
      usualFuse,
      at,
      "fuse",
      "way-fuse-added",
      () => "blade fuse, rating worked out",
    ),
  };
}

/** @param sharedReturnEnds True where a run with a shared return ends here: the box must then join its returns. */
export function completeBox(box: JunctionBox, sharedReturnEnds: boolean, notes: Notes): CompleteBox {
  const at = box.name;
  return {
    ...box,
    joins: notes.take(box.joins, "tee", at, "joins", "tees"),
    returns: notes.take(
      box.returns,
      sharedReturnEnds ? "joined" : "apart",
      at,
      "returns",
      sharedReturnEnds ? "shared-return-ends" : "returns-apart",
    ),
    surroundings: notes.take(box.surroundings, "splash", at, "surroundings", "open-boat"),
    ...casing(box, at, notes),
  };
}

/** What a box is made of, where its inside is given. */
function casing(
  { insideM, wallM, material }: Enclosure,
  at: string,
  notes: Notes,
): Pick<Enclosure, "wallM" | "material"> {
  if (insideM === undefined) return {};
  const mm = (lengthM: number) => `${Math.round(lengthM * 1e4) / 10} mm`;
  return {
    wallM: notes.take(wallM, usualBox.wallM, at, "wall", "usual-box", mm),
    material: notes.take(material, usualBox.material, at, "of", "usual-box"),
  };
}
