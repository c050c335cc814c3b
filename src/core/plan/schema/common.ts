import {
  type Endpoint,
  type JointKind,
  jointKinds,
  type Protection,
  type Surroundings,
  type Switch,
} from "../model/common.js";
import { byForm, listOf, map, shared, wordOr } from "./combine.js";
import { fields, optional, otherwise } from "./fields.js";
import { amps, metres } from "./quantities.js";
import { choice, flag, text } from "./scalars.js";
import { type Shape, tell } from "./shape.js";

export const surroundings: Shape<Surroundings> = shared(
  "surroundings",
  choice(["dry", "splash", "wet", "bilge", "engine space"]),
);

export const jointKind: Shape<JointKind> = shared("joint", choice(jointKinds));

const devices = ["blade fuse", "bolted fuse", "cartridge fuse", "breaker"] as const;

/** Parts marked by their maker, and where they sit. */
const ignition = optional("ignition protected", flag, "Marked by its maker as ignition protected.");
const where = optional("surroundings", surroundings, "Where it sits, as far as water and vapour go.");

export const longProtection = fields("a device", {
  device: otherwise(
    "device",
    choice(devices),
    "blade fuse" as const,
    "Kind of device; a blade fuse unless said.",
  ),
  ratingA: optional("rating", amps, "Current it is made for."),
  interruptingA: optional("interrupts", amps, "Largest fault current it can break."),
  fromSourceM: optional(
    "from source",
    metres,
    "Length of conductor between the source of current and the device.",
  ),
  enclosed: optional("enclosed", flag, "That length lies in a sheath, conduit or box all the way."),
  surroundings: where,
  ignitionProtected: ignition,
});

/** `5 A` is a blade fuse of 5 A; or a section that says more. */
export const protection: Shape<Protection> = shared(
  "protection",
  byForm({
    scalar: map(amps, (ratingA): Protection => ({ device: "blade fuse", ratingA })),
    section: longProtection,
  }),
);

export const protectionOrNone: Shape<Protection | "none"> = wordOr("none", "none" as const, protection);

export const switchSection = fields("a switch", {
  ratingA: optional("rating", amps, "Current it is made for."),
  surroundings: where,
  ignitionProtected: ignition,
});

export const switchShape: Shape<Switch> = shared(
  "switch",
  byForm({
    scalar: map(amps, (ratingA): Switch => ({ ratingA })),
    section: switchSection,
  }),
);

export const switchOrNone: Shape<Switch | "none"> = wordOr("none", "none" as const, switchShape);

/** `house`, `helm / lamps`, `buck / out`: a place, and the outlet on it where it has several. */
export const endpoint: Shape<Endpoint> = {
  label: "place, or `place / outlet`",
  json: (definitions) =>
    definitions.use("end", () => ({ type: ["string", "number", "boolean"], minLength: 1 })),
  read: (spot) => {
    const written = text.read(spot);
    if (written === undefined) return undefined;
    const parted = written.indexOf(" / ");
    if (parted === -1) return { place: written };
    const place = written.slice(0, parted).trim();
    const port = written.slice(parted + 3).trim();
    if (place === "" || port === "")
      return tell(spot, { code: "wrong form", expected: { kind: "form", form: "name" } });
    return { place, port };
  },
};

/** One name alone, or a list of them. */
export const names: Shape<readonly string[]> = shared(
  "names",
  byForm({ scalar: map(text, (name): readonly string[] => [name]), list: listOf(text) }),
);
