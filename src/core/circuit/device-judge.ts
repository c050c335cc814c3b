import { chargerGuards } from "./guards/chargers.js";
import { GuardReader } from "./guards/guards.js";
import type { GuardInput, GuardState } from "./guards/input.js";
import type { Guard } from "./protection/guard.js";
import { harmsOf } from "./protection/judge.js";
import { judgeGuards, settledRatings } from "./protection/judge-all.js";
import type { Harm, ProtectionFigures } from "./protection/types.js";
import type { RunGroup } from "./sizing/groups.js";

const noneOpen: ReadonlySet<string> = new Set();

interface Strengthened {
  readonly groups: readonly RunGroup[];
  readonly stuck: readonly string[];
  readonly farShort: boolean;
}

/** Judges a plan's devices at states of sizes and loads. */
export class DeviceJudge {
  private readonly reader: GuardReader;

  constructor(private readonly input: GuardInput) {
    this.reader = new GuardReader(input);
  }

  /** A rating for each device to price a network with before any is judged: the owner's, or the load and a quarter. */
  firstRatings(mostBranchA: Float64Array): ReadonlyMap<string, number> {
    const owners = new Map(this.input.topology.devices.map(({ id, protection }) => [id, protection.ratingA]));
    const ratings = new Map<string, number>();
    this.input.topology.branches.forEach(({ parts }, index) => {
      const part = parts[0];
      if (part?.kind !== "protection") return;
      ratings.set(part.device, owners.get(part.device) ?? Math.max(1, 1.25 * (mostBranchA[index] ?? 0)));
    });
    return ratings;
  }

  /** Ratings that suit load, start, gear and the conductors already fixed; those still open are left out of account. */
  ratings(state: GuardState, openSizes: ReadonlySet<string>): ReadonlyMap<string, number> {
    return settledRatings(this.guards(state, openSizes), this.input.rules);
  }

  all(state: GuardState): readonly ProtectionFigures[] {
    return judgeGuards(this.guards(state, noneOpen), this.input.rules);
  }

  /** Greatest rating that stands before each group of conductors. */
  ratingByGroup(ratingsA: ReadonlyMap<string, number>): Map<string, number> {
    const byGroup = new Map<string, number>();
    this.reader.downstream.branches.forEach((branches, device) => {
      const ratingA = ratingsA.get(this.input.topology.devices[device]?.id ?? "");
      if (ratingA === undefined) return;
      for (const branch of branches) {
        for (const part of this.input.topology.branches[branch]?.parts ?? []) {
          if (part.kind === "conductor")
            byGroup.set(part.sizeGroup, Math.max(byGroup.get(part.sizeGroup) ?? 0, ratingA));
        }
      }
    });
    const chargers = new Set(this.input.plan.chargers.map(({ name }) => name));
    for (const { group, from, to, protection } of this.input.plan.runs) {
      if (protection?.ratingA === undefined) continue;
      if (chargers.has(from.place) || chargers.has(to.place)) byGroup.set(group, protection.ratingA);
    }
    return byGroup;
  }

  /**
   * Groups with the least size of those raised that a short would harm behind their device, or that leave their device no rating.
   * @param without Devices that no conductor helps to a rating: nothing is raised for theirs.
   * @returns Undefined where nothing is to be raised; `stuck`: devices whose conductors are at their largest, or not open to it;
   * `farShort`: some are raised for a short at their far end, which copper nearer the battery could have answered too.
   */
  strengthened(
    groups: readonly RunGroup[],
    indexes: readonly number[],
    protection: readonly ProtectionFigures[],
    without: ReadonlySet<string>,
  ): Strengthened | undefined {
    const harmed = protection.filter(
      ({ conditions, withThicker }) => withThicker !== undefined || harmsOf(conditions).length > 0,
    );
    if (harmed.length === 0) return undefined;
    const groupOf = this.groupOfBranch();
    const at = new Map(groups.map(({ id }, index) => [id, index]));
    const isOpen = ({ branch }: Harm): boolean => {
      const index = at.get(groupOf.get(branch) ?? "") ?? -1;
      const group = groups[index];
      return group?.fixed === undefined && (indexes[index] ?? 0) + 1 < (group?.candidates.length ?? 0);
    };
    /** By group: the device it is too thin for. */
    const weak = new Map<string, string>();
    const stuck: string[] = [];
    let farShort = false;
    for (const { id, conditions, withThicker } of harmed) {
      const wanted = without.has(id) ? [] : (withThicker?.harms ?? []);
      const reachable = wanted.every(isOpen);
      if (!reachable) stuck.push(id);
      for (const { branch, condition } of [...harmsOf(conditions), ...(reachable ? wanted : [])]) {
        weak.set(groupOf.get(branch) ?? "", id);
        if (condition === "clears-far-short" && !this.guardsFirstOnly(id)) farShort = true;
      }
    }
    let raised = false;
    const stronger = groups.map((group, index): RunGroup => {
      const next = (indexes[index] ?? 0) + 1;
      const device = weak.get(group.id);
      if (device === undefined || group.fixed !== undefined || next >= group.candidates.length) return group;
      raised = true;
      return { ...group, least: { index: next, reason: { rule: "suits a fuse", device } } };
    });
    return raised || stuck.length > 0 ? { groups: stronger, stuck, farShort } : undefined;
  }

  /** Is there no conductor but one between the battery and the far ends a device guards? Then no other copper could answer for it. */
  private guardsFirstOnly(id: string): boolean {
    const { topology } = this.input;
    const device = topology.devices.findIndex((each) => each.id === id);
    if ((this.reader.downstream.nearer[device] ?? -1) >= 0) return false;
    const branches = this.reader.downstream.branches[device] ?? [];
    const groups = branches.flatMap((branch) =>
      (topology.branches[branch]?.parts ?? []).flatMap((part) =>
        part.kind === "conductor" ? [part.sizeGroup] : [],
      ),
    );
    return new Set(groups).size <= 1;
  }

  private groupOfBranch(): ReadonlyMap<string, string> {
    return new Map(
      this.input.topology.branches.flatMap(({ id, parts }) => {
        const part = parts.find(({ kind }) => kind === "conductor");
        return part?.kind === "conductor" ? [[id, part.sizeGroup] as const] : [];
      }),
    );
  }

  private guards(state: GuardState, open: ReadonlySet<string>): Guard[] {
    return [...this.reader.guardsAt(state, open), ...chargerGuards(this.input, state.chosen)];
  }
}
