import type { ConductorSize } from "../plan/model/common.js";
import { hullReturn } from "../reference/assumed.js";
import { jointOhm, protectionOhm, switchOhm } from "./conductor/contacts.js";
import { conductorOhmPerM } from "./conductor/resistance.js";
import type { Part } from "./results.js";
import type { Device, PartPlan } from "./topology/types.js";

/** Sizes and ratings settled so far: by size group, and by device. */
export interface Chosen {
  readonly sizes: ReadonlyMap<string, ConductorSize>;
  readonly tinned: ReadonlyMap<string, boolean>;
  readonly ratingsA: ReadonlyMap<string, number>;
}

/** Prices the parts of branches in ohms, at one corner's copper temperatures. Keeps what it has worked out. */
export class PartPricer {
  private readonly perM = new Map<string, number>();
  private readonly devices: ReadonlyMap<string, Device>;

  constructor(
    private readonly chosen: Chosen,
    devices: readonly Device[],
    private readonly copperC: number,
    private readonly engineSpaceCopperC: number,
  ) {
    this.devices = new Map(devices.map((device) => [device.id, device]));
  }

  /** Parts of one branch, joints on the conductor between them. */
  partsOf(plans: readonly PartPlan[]): Part[] {
    const conductor = plans.find((part) => part.kind === "conductor");
    const areaMm2 = conductor?.kind === "conductor" ? this.sizeOf(conductor.sizeGroup).areaMm2 : 1;
    return plans.map((part) => this.part(part, areaMm2));
  }

  private sizeOf(group: string): ConductorSize {
    const size = this.chosen.sizes.get(group);
    if (!size) throw new RangeError(`a size must be chosen for every group of conductors, none for ${group}`);
    return size;
  }

  private ohmPerM(size: ConductorSize, tinned: boolean, copperC: number): number {
    const key = `${size.key}|${tinned}|${copperC}`;
    const known = this.perM.get(key);
    if (known !== undefined) return known;
    const value = conductorOhmPerM(size, { tinned, copperC });
    this.perM.set(key, value);
    return value;
  }

  private part(part: PartPlan, areaMm2: number): Part {
    switch (part.kind) {
      case "conductor": {
        const size = this.sizeOf(part.sizeGroup);
        const tinned = this.chosen.tinned.get(part.sizeGroup) ?? true;
        const copperC = part.inEngineSpace ? this.engineSpaceCopperC : this.copperC;
        const ohmPerM = this.ohmPerM(size, tinned, copperC);
        return {
          kind: "conductor",
          lengthM: part.lengthM,
          sizeKey: size.key,
          ohmPerMAt20C: this.ohmPerM(size, tinned, 20),
          ohm: ohmPerM * part.lengthM,
        };
      }
      case "lead": {
        const size = part.size;
        const ohmPerM = this.ohmPerM(size, true, this.copperC);
        return {
          kind: "conductor",
          lengthM: part.lengthM,
          sizeKey: size.key,
          ohmPerMAt20C: this.ohmPerM(size, true, 20),
          ohm: ohmPerM * part.lengthM,
        };
      }
      case "joint":
        return { kind: "joint", joint: part.joint, ohm: jointOhm(part.joint, areaMm2) };
      case "protection": {
        const device = this.devices.get(part.device);
        const ratingA = this.chosen.ratingsA.get(part.device);
        if (!device || ratingA === undefined)
          throw new RangeError(`a rating must be chosen for every device, none for ${part.device}`);
        return { kind: "protection", ratingA, ohm: protectionOhm(device.protection.device, ratingA) };
      }
      case "switch":
        return { kind: "switch", ohm: switchOhm(part.ratingA) };
      case "hull":
        return { kind: "joint", joint: "crimped ring", ohm: hullReturn.ohm };
      default:
        return part satisfies never;
    }
  }
}
