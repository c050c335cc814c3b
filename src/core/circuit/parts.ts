import type { ConductorSize } from "../plan/model/common.js";
import { hullReturn } from "../reference/assumed.js";
import { wholes } from "./columns.js";
import { jointOhm, protectionOhm, switchOhm } from "./conductor/contacts.js";
import { conductorOhmPerM, type Make } from "./conductor/resistance.js";
import type { Part } from "./results.js";
import type { Device, PartPlan, Topology } from "./topology/types.js";

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

/** What of a topology its prices hang on, looked up once. */
export class PartsList {
  readonly devices: ReadonlyMap<string, Device>;
  /** Groups of conductors that have a branch. */
  readonly groups: readonly string[];
  /** Group of the conductor in each branch, by index; −1: none. */
  readonly groupOf: Int32Array;

  /** @param alike Of a circuit joined alike, of the same conductors and devices. */
  constructor(
    readonly topology: Topology,
    alike?: PartsList,
  ) {
    if (alike) {
      ({ devices: this.devices, groups: this.groups, groupOf: this.groupOf } = alike);
      return;
    }
    this.devices = new Map(topology.devices.map((device) => [device.id, device]));
    const indexOf = new Map<string, number>();
    this.groupOf = wholes(topology.branches, ({ parts }) => {
      const part = parts.find(({ kind }) => kind === "conductor");
      if (part?.kind !== "conductor") return -1;
      const index = indexOf.get(part.sizeGroup) ?? indexOf.size;
      indexOf.set(part.sizeGroup, index);
      return index;
    });
    this.groups = [...indexOf.keys()];
  }
}

/** Prices the parts of branches in ohms, at one corner's copper temperatures. Branches by their index in the topology. */
export class PartPricer {
  /** By group. */
  private readonly stuffs: readonly Stuff[];

  /** @throws RangeError if a group has no size. */
  constructor(
    private readonly chosen: Chosen,
    private readonly list: PartsList,
    private readonly copper: CopperAt,
  ) {
    this.stuffs = list.groups.map((id) => {
      const size = chosen.sizes.get(id);
      if (!size) throw new RangeError(`a size must be chosen for every group of conductors, none for ${id}`);
      return copper.stuff(size, chosen.tinned.get(id) ?? true);
    });
  }

  /**
   * Parts of one branch, joints on the conductor between them.
   * @param before The same branch at other temperatures: its contacts are the same there.
   */
  partsOf(branch: number, before?: readonly Part[]): readonly Part[] {
    const stuff = this.stuffOf(branch);
    const plans = this.plansOf(branch);
    if (before && !plans.some(isCopper)) return before;
    return plans.map((part, at) => (isCopper(part) ? undefined : before?.[at]) ?? this.part(part, stuff));
  }

  /** All parts of one branch together [Ω]. */
  ohmOf(branch: number): number {
    const stuff = this.stuffOf(branch);
    let ohm = 0;
    for (const part of this.plansOf(branch)) ohm += this.partOhm(part, stuff);
    return ohm;
  }

  /** The parts of one branch that keep their resistance whatever the size of its conductor, and its joints on it [Ω]. */
  ohmBesideConductor(branch: number): number {
    const stuff = this.stuffOf(branch);
    let ohm = 0;
    for (const part of this.plansOf(branch)) if (part.kind !== "conductor") ohm += this.partOhm(part, stuff);
    return ohm;
  }

  private plansOf(branch: number): readonly PartPlan[] {
    return this.list.topology.branches[branch]?.parts ?? [];
  }

  /** What the conductor of a branch is; undefined where it has none. */
  private stuffOf(branch: number): Stuff | undefined {
    return this.stuffs[this.list.groupOf[branch] ?? -1];
  }

  private ratingA(device: string): number {
    const ratingA = this.chosen.ratingsA.get(device);
    if (ratingA === undefined)
      throw new RangeError(`a rating must be chosen for every device, none for ${device}`);
    return ratingA;
  }

  private partOhm(part: PartPlan, stuff: Stuff | undefined): number {
    switch (part.kind) {
      case "conductor": {
        const ohmPerM = part.inEngineSpace ? stuff?.engineSpaceOhmPerM : stuff?.ohmPerM;
        // slack may be cut away as it is fitted: the least there can be is the way alone
        return (ohmPerM ?? 0) * (this.copper.make === "least" ? part.wayM : part.lengthM);
      }
      case "lead":
        return this.copper.stuff(part.size, true).ohmPerM * part.lengthM;
      case "lead fuse":
        return protectionOhm("blade fuse", part.ratingA);
      case "joint":
        return jointOhm(part.joint, stuff?.size.areaMm2 ?? 1);
      case "protection": {
        const device = this.list.devices.get(part.device);
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

  private part(part: PartPlan, stuff: Stuff | undefined): Part {
    const ohm = this.partOhm(part, stuff);
    switch (part.kind) {
      case "conductor":
      case "lead": {
        const of = part.kind === "lead" ? this.copper.stuff(part.size, true) : stuff;
        const { key: sizeKey } = of?.size ?? { key: "" };
        const ohmPerMAt20C = of?.ohmPerMAt20C ?? 0;
        return { kind: "conductor", lengthM: part.lengthM, sizeKey, ohmPerMAt20C, ohm };
      }
      case "lead fuse":
        return { kind: "protection", ratingA: part.ratingA, ohm };
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

/** Does its resistance change with the temperature? */
function isCopper({ kind }: PartPlan): boolean {
  return kind === "conductor" || kind === "lead";
}
