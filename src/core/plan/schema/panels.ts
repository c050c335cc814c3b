import type { Panel } from "../model/supply.js";
import { enclosure } from "./boxes.js";
import { named } from "./combine.js";
import { protectionOrNone, surroundings, switchOrNone, switchShape } from "./common.js";
import { fields, optional, otherwise } from "./fields.js";
import { positiveShare } from "./quantities.js";
import { flag, whole } from "./scalars.js";
import type { Shape } from "./shape.js";

export const way = fields("a way", {
  switch: optional("switch", switchOrNone, "Its switch, or `none`."),
  protection: optional("fuse", protectionOrNone, "Its fuse or breaker, or `none`."),
  alwaysLive: otherwise("always live", flag, false, "Taken before the panel's master switch."),
  maxDropShare: optional(
    "drop",
    positiveShare,
    "Greatest drop for everything on the way, of nominal voltage.",
  ),
});

/** Words that stand for something else where a way's name may stand. */
const reservedWays = ["feed"];

export const panel = fields("a panel", {
  main: optional("main", protectionOrNone, "Its main fuse or breaker, or `none`."),
  master: optional("master", switchShape, "Its master switch."),
  ways: otherwise("ways", named(way, reservedWays), [], "One protected, switched outlet each."),
  studsPerBus: optional("studs per bus", whole(1, 200), "Studs on each of its buses."),
  covered: optional("covered", flag, "Its live parts are covered at the back."),
  surroundings: optional("surroundings", surroundings, "Where it sits, as far as water and vapour go."),
  ...enclosure,
});
export const panels: Shape<readonly Panel[]> = named(panel);
