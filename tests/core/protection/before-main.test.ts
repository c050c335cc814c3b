import { describe, expect, test } from "vitest";
import { beforeMain, failsBeforeMain } from "../../../src/core/circuit/protection/conditions/before-main.js";
import { deviceKinds } from "../../../src/core/circuit/protection/devices.js";
import { prepareGuard } from "../../../src/core/circuit/protection/prepared.js";
import { usRules } from "../../../src/core/reference/rule-set-us.js";
import { lampWay } from "./guards.js";

const names = Object.keys(deviceKinds) as (keyof typeof deviceKinds)[];

describe.each(names)("a %s that should open before what is nearer the source", (branch) => {
  const { ratingsA } = deviceKinds[branch];
  // both ask the same of the same curves: one for every pair of standard ratings at once, one to tell the figures. Where the two devices
  // may open at one moment, which happens at the tables' own rows, neither may call it fine.
  test.each(names)(
    "%s: the quick question and the told result agree for every pair of ratings and any short",
    (nearer) => {
      const prepared = prepareGuard({ ...lampWay, device: branch }, usRules);
      for (const nearShortA of [30, 300, 3000])
        for (const ratingA of ratingsA)
          for (const mainA of deviceKinds[nearer].ratingsA) {
            const short = { ...prepared, nearShortA };
            const told = beforeMain(short, ratingA, { id: "main", device: nearer, ratingA: mainA });
            const where = `${ratingA} A before ${mainA} A at ${nearShortA} A`;
            expect(failsBeforeMain(short, ratingA, nearer, mainA), where).toBe(told?.state === "fails");
          }
    },
  );
});
