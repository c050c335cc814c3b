import { usualCopperRise } from "../../reference/assumed.js";
import { conductorOhmPerM } from "../conductor/resistance.js";
import type { Chosen } from "../parts.js";
import type { Guard } from "../protection/guard.js";
import { outGroup } from "../topology/build.js";
import { faultSource } from "./fault-source.js";
import type { GuardInput } from "./input.js";

/**
 * Guards of the leads between chargers and batteries. The battery is the strong source there, so the distance that counts
 * is from its post. What the charger itself can drive into a short is left to its own limit.
 */
export function chargerGuards(
  { plan, ampacities }: Pick<GuardInput, "plan" | "ampacities">,
  chosen: Chosen,
): Guard[] {
  const chargers = new Map(plan.chargers.map((charger) => [charger.name, charger]));
  const guards: Guard[] = [];
  for (const run of plan.runs) {
    const charger = chargers.get(run.from.place) ?? chargers.get(run.to.place);
    const size = chosen.sizes.get(outGroup(run));
    const { protection } = run;
    if (!charger || !protection || !size) continue;
    const nominalV = plan.batteries.find(({ name }) => name === charger.charges)?.nominalV ?? 12;
    const loadA = charger.outputA ?? (charger.outputW === undefined ? 0 : charger.outputW / nominalV);
    const ampacityA = ampacities.at(run).of(size);
    const { hotC, engineSpaceC } = plan.ambient;
    const copperC = (run.inEngineSpace ? Math.max(hotC, engineSpaceC) : hotC) + usualCopperRise.riseK;
    const perM = conductorOhmPerM(size, { tinned: run.tinned, copperC });
    const { ratingA, interruptingA, fromSourceM } = protection;
    guards.push({
      id: `${run.name} / fuse`,
      of: run.name,
      device: protection.device,
      ...(ratingA !== undefined && { ratingA }),
      ...(interruptingA !== undefined && { interruptingA }),
      place: {
        ...(fromSourceM !== undefined && { fromSourceM }),
        enclosed: protection.enclosed ?? false,
        startsAt: "battery post",
      },
      loadA,
      start: "none",
      conductors: [
        {
          id: `${run.name} / out`,
          sizeKey: size.key,
          areaMm2: size.areaMm2,
          insulationC: run.insulationC,
          farLoopOhm: perM * (run.pulledM + run.returnPulledM),
          ...(ampacityA !== undefined && { ampacityA }),
        },
      ],
      gear: [],
      faults: { source: faultSource(charger.charges, plan), nearLoopOhm: 0 },
    });
  }
  return guards;
}
