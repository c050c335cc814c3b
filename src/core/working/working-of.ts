import type { Figures } from "../figures-types.js";
import type { FigureRef } from "./figure-ref.js";
import { batteryCurrentWorking, batteryVoltageWorking } from "./of-battery.js";
import { branchCurrentWorking, branchDropWorking } from "./of-branch.js";
import { conditionWorking, ratingWorking } from "./of-device.js";
import { gearCurrentWorking, gearDropWorking, gearVoltageWorking } from "./of-gear.js";
import { chargingWorking, outingWorking } from "./of-outing.js";
import { runAmpacityWorking, runSizeWorking, sizesTotalWorking } from "./of-run.js";
import type { Working } from "./working.js";

/** How a figure came about, from the tables alone. Undefined where the plan has no such figure (any more). */
export function workingOf(figures: Figures, ref: FigureRef): Working | undefined {
  switch (ref.of) {
    case "gear drop":
    case "gear voltage":
    case "gear current":
    case "branch drop":
    case "branch current":
    case "battery voltage":
    case "battery current":
      return cornerWorking(figures, ref);
    case "run size":
    case "run ampacity": {
      const choice = figures.sizes.choices.find(({ id }) => id === ref.choice);
      if (!choice) return undefined;
      return ref.of === "run size" ? runSizeWorking(figures, choice) : runAmpacityWorking(figures, choice);
    }
    case "sizes total":
      return sizesTotalWorking(figures);
    case "rating":
    case "condition": {
      const device = figures.protection.find(({ id }) => id === ref.device);
      if (!device) return undefined;
      if (ref.of === "rating") return ratingWorking(figures, device);
      const result = device.conditions.find(({ condition }) => condition === ref.condition);
      return result && conditionWorking(figures, device, result);
    }
    case "hours to reserve":
    case "charge left":
    case "charge used":
    case "usable capacity":
      return outingWorking(figures, ref);
    case "charging time": {
      const charging = figures.charging.find(({ charger }) => charger === ref.charger);
      return charging && chargingWorking(figures, charging);
    }
    default:
      return ref satisfies never;
  }
}

type CornerRef = Extract<FigureRef, { corner: string }>;

function cornerWorking(figures: Figures, ref: CornerRef): Working | undefined {
  const corner = figures.corners.find(({ name }) => name === ref.corner);
  if (!corner) return undefined;
  switch (ref.of) {
    case "gear drop":
    case "gear voltage":
    case "gear current": {
      const gear = corner.gear.find(({ id }) => id === ref.gear);
      if (!gear) return undefined;
      if (ref.of === "gear drop") return gearDropWorking(figures, corner, gear);
      return ref.of === "gear voltage"
        ? gearVoltageWorking(figures, corner, gear)
        : gearCurrentWorking(figures, corner, gear);
    }
    case "branch drop":
    case "branch current": {
      const branch = corner.branches.find(({ id }) => id === ref.branch);
      if (!branch) return undefined;
      return ref.of === "branch drop"
        ? branchDropWorking(figures, corner, branch)
        : branchCurrentWorking(figures, corner, branch);
    }
    case "battery voltage":
    case "battery current": {
      const battery = corner.batteries.find(({ id }) => id === ref.battery);
      if (!battery) return undefined;
      return ref.of === "battery voltage"
        ? batteryVoltageWorking(figures, corner, battery)
        : batteryCurrentWorking(figures, corner, battery);
    }
    default:
      return ref satisfies never;
  }
}
