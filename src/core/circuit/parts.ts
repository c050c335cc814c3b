import type { ConductorSize } from "../plan/model/common.js";
import { hullReturn } from "../reference/assumed.js";
import { jointOhm, protectionOhm, switchOhm } from "./conductor/contacts.js";
import { conductorOhmPerM, type Make } from "./conductor/resistance.js";
import type { Part } from "./results.js";
import type { Device, PartPlan } from "./topology/types.js";

/** Sizes and ratings settled so far: by size group, and by device. */
export interface Chosen {
  readonly sizes: ReadonlyMap<string, ConductorSize>;
  readonly tinned: ReadonlyMap<string, boolean>;
  readonly ratingsA: ReadonlyMap<string, number>;
}

/** Conductors of one size and make: resistance outside and inside engine spaces, and at 20 °C [Ω/m]. */
interface Stuff {
  readonly size: ConductorSize;
  readonly ohmPerM: number;
  readonly engineSpaceOhmPerM: number;
  readonly ohmPerMAt20C: number;
}

/** Copper at one corner's temperatures, by size and make. Keeps what it has worked out. */
export class CopperAt {
  private readonly bySize = new Map<string, Stuff>();

  constructor(
    private readonly copperC: number,
    private readonly engineSpaceCopperC: number,
    readonly make: Make = "greatest",
  ) {}

  stuff(size: ConductorSize, tinned: boolean): Stuff {
    const key = tinned ? size.key : `${size.key} plain`;
    const known = this.bySize.get(key);
    if (known) return known;
    const at = (copperC: number) => conductorOhmPerM(size, { tinned, copperC, make: this.make });
    const { copperC, engineSpaceCopperC } = this;
    const stuff = {
      size,
      ohmPerM: at(copperC),
      engineSpaceOhmPerM: at(engineSpaceCopperC),
      ohmPerMAt20C: at(20),
    };
    this.bySize.set(key, stuff);
    return stuff;
  }
}

/** Prices the parts of branches in ohms, at one corner's copper temperatures. Keeps what it has worked out. */
export class PartPricer {
  private readonly byGroup = new Map<string, Stuff>();

  constructor(
    private readonly chosen: Chosen,
    private readonly devices: ReadonlyMap<string, Device>,
    private readonly copper: CopperAt,
  ) {}

  /** Parts of one branch, joints on the conductor between them. */
  partsOf(plans: readonly PartPlan[]): Part[] {
    const areaMm2 = this.areaMm2(plans);
    return plans.map((part) => this.part(part, areaMm2));
  }

  /** All parts of one branch together [Ω]. */
  ohmOf(plans: readonly PartPlan[]): number {
    const areaMm2 = this.areaMm2(plans);
    let ohm = 0;
    for (const part of plans) ohm += this.partOhm(part, areaMm2);
    return ohm;
  }

  /** The parts of one branch that keep their resistance whatever the size of its conductor, and its joints on it [Ω]. */
  ohmBesideConductor(plans: readonly PartPlan[]): number {
    const areaMm2 = this.areaMm2(plans);
    let ohm = 0;
    for (const part of plans) if (part.kind !== "conductor") ohm += this.partOhm(part, areaMm2);
    return ohm;
  }

  private areaMm2(plans: readonly PartPlan[]): number {
    for (const part of plans) if (part.kind === "conductor") return this.group(part.sizeGroup).size.areaMm2;
    return 1;
  }

  private group(id: string): Stuff {
    const known = this.byGroup.get(id);
    if (known) return known;
    const size = this.chosen.sizes.get(id);
    if (!size) throw new RangeError(`a size must be chosen for every group of conductors, none for ${id}`);
    const stuff = this.copper.stuff(size, this.chosen.tinned.get(id) ?? true);
    this.byGroup.set(id, stuff);
    return stuff;
  }

  private ratingA(device: string): number {
    const ratingA = this.chosen.ratingsA.get(device);
    if (ratingA === undefined)
      throw new RangeError(`a rating must be chosen for every device, none for ${device}`);
    return ratingA;
  }

  private partOhm(part: PartPlan, areaMm2: number): number {
    switch (part.kind) {
      case "conductor": {
        const { ohmPerM, engineSpaceOhmPerM } = this.group(part.sizeGroup);
        // slack may be cut away as it is fitted: the least there can be is the way alone
        const lengthM = this.copper.make === "least" ? part.wayM : part.lengthM;
        return (part.inEngineSpace ? engineSpaceOhmPerM : ohmPerM) * lengthM;
      }
      case "lead":
        return this.copper.stuff(part.size, true).ohmPerM * part.lengthM;
      case "joint":
        return jointOhm(part.joint, areaMm2);
      case "protection": {
        const device = this.devices.get(part.device);
        if (!device) throw new RangeError(`a device of the circuit is required, got ${part.device}`);
        return protectionOhm(device.protection.device, this.ratingA(part.device));
      }
      case "switch":
        return switchOhm(part.ratingA);
      case "hull":
        return hullReturn.ohm;
      default:
        return part satisfies never;
    }
  }

  private part(part: PartPlan, areaMm2: number): Part {
    const ohm = this.partOhm(part, areaMm2);
    switch (part.kind) {
      case "conductor":
      case "lead": {
        const { size, ohmPerMAt20C } =
          part.kind === "lead" ? this.copper.stuff(part.size, true) : this.group(part.sizeGroup);
        return { kind: "conductor", lengthM: part.lengthM, sizeKey: size.key, ohmPerMAt20C, ohm };
      }
      case "joint":
        return { kind: "joint", joint: part.joint, ohm };
      case "protection":
        return { kind: "protection", ratingA: this.ratingA(part.device), ohm };
      case "switch":
        return { kind: "switch", ohm };
      case "hull":
        return { kind: "joint", joint: "crimped ring", ohm };
      default:
        return part satisfies never;
    }
  }
}
