import { chargerGuards } from "./guards/chargers.js";
import { GuardReader } from "./guards/guards.js";
import type { GuardInput, GuardState } from "./guards/input.js";
import type { Guard } from "./protection/guard.js";
import { judgeGuards, settledRatings } from "./protection/judge-all.js";
import type { ProtectionFigures } from "./protection/types.js";
import type { RunGroup } from "./sizing/groups.js";

/** Conditions a thicker conductor can mend. */
const mendedByCopper: ReadonlySet<string> = new Set([
  "protects-weakest",
  "clears-far-short",
  "withstands-short",
]);

const noneOpen: ReadonlySet<string> = new Set();

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

  /** Groups with the least size of those raised that a short would harm behind their device; undefined where none is open to it. */
  strengthened(
    groups: readonly RunGroup[],
    indexes: readonly number[],
    protection: readonly ProtectionFigures[],
  ): readonly RunGroup[] | undefined {
    const weakBranches = protection.flatMap(({ conditions }) =>
      conditions.flatMap(({ condition, state, binds }) =>
        state === "fails" && binds !== undefined && mendedByCopper.has(condition) ? [binds] : [],
      ),
    );
    if (weakBranches.length === 0) return undefined;
    const groupOf = this.groupOfBranch();
    const weak = new Set(weakBranches.map((branch) => groupOf.get(branch) ?? ""));
    let raised = false;
    const stronger = groups.map((group, at): RunGroup => {
      const next = (indexes[at] ?? 0) + 1;
      if (!weak.has(group.id) || group.fixed !== undefined || next >= group.candidates.length) return group;
      raised = true;
      return {
        ...group,
        least: { index: next, clause: "what its fuse lets through in a short, I²t ≤ k²S²" },
      };
    });
    return raised ? stronger : undefined;
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
