import { wallMaterials } from "../../reference/boxes.js";
import {
  type BoxContent,
  type BoxFitting,
  type BoxHole,
  type CatalogueBox,
  type EntryPlace,
  faceNames,
  type WaterCode,
} from "../model/layout.js";
import type { JunctionBox } from "../model/supply.js";
import { listOf, named, refine, shared } from "./combine.js";
import { surroundings } from "./common.js";
import { fields, optional, otherwise, required } from "./fields.js";
import { boatPoint } from "./form.js";
import { three, two } from "./lists.js";
import { type Amount, amount } from "./money.js";
import { aboveZeroM, metres, quantity } from "./quantities.js";
import { choice, flag, text, whole } from "./scalars.js";
import { type Shape, scalarText } from "./shape.js";

const face = shared("face", choice(faceNames));
/** A size of something that is made: a tenth of a millimetre at least. */
const madeM = quantity("length", { min: 0.0001 });
export const measures = shared("three measures", three(madeM));

const usualCodes = choice(["IP20", "IP40", "IP44", "IP54", "IP55", "IP56", "IP65", "IP66", "IP67", "IP68"]);
const ipPattern = "^IP[0-6X][0-8]( ?/ ?(IP)?[0-6X]?[0-8])?$";

/** An IP code of IEC 60529: solids `0` to `6` or `X`, water `0` to `8`, or two of them where both jets and immersion were tested. */
const waterCode: Shape<WaterCode> = {
  label: "IP code: `IP65`, `IPX4`, `IP66/IP67`",
  json: () => ({ type: "string", pattern: ipPattern }),
  read: (spot) => {
    const written = scalarText(spot, "text");
    if (written === undefined) return undefined;
    const [first, second] = [...written.matchAll(/\d(?= *\/|$)/g)].map(([digit]) => Number(digit));
    if (!new RegExp(ipPattern).test(written) || first === undefined) {
      // told with the codes most boxes have
      usualCodes.read(spot);
      return undefined;
    }
    if (second === undefined) return { numeral: first };
    return { numeral: Math.max(first, second), jetNumeral: Math.min(first, second) };
  },
};

/** How a box is made; the same for one's own and for those of the catalogue. */
const form = {
  wallM: optional("wall", madeM, "Thickness of its wall."),
  material: optional("of", choice(wallMaterials), "What it is made of."),
  mounted: optional("on", choice(["wall", "floor"]), "How it sits: base to a wall, or on a floor."),
  bossM: optional("boss", metres, "Corner posts inside: how far they reach along each side."),
  lidLipM: optional("lid lip", metres, "From the lid's seat down, where no hole may come."),
  closedFaces: optional("closed faces", listOf(face), "Faces that are not to be drilled."),
  water: optional("ip", waterCode, "Its IP code, as its maker says."),
} as const;

export const hole = fields("a hole", {
  on: required("on", face, "Face it is in."),
  atM: required("at", two(metres), "Along the face from its left inner corner, and up from the base."),
  holeM: required("hole", madeM, "Diameter."),
});
const holes: Shape<readonly BoxHole[]> = named(hole);

const entryPlace = fields("a place of an entry", {
  on: required("on", face, "Face it is in."),
  atM: required("at", two(metres), "Along the face from its left inner corner, and up from the base."),
});
const entries: Shape<readonly EntryPlace[]> = named(entryPlace);

export const content = fields("a thing inside", {
  sizeM: required("size", measures, "Across, up the base, and tall."),
  roomM: optional("room", metres, "Working room around it."),
  upright: otherwise("upright", flag, false, "Must not be turned."),
  count: otherwise("count", whole(1, 100), 1, "How many."),
});
const contents: Shape<readonly BoxContent[]> = named(content);

export const fitting = fields("a fitting", {
  holeM: required("hole", madeM, "Hole it needs."),
  acrossM: optional("across", madeM, "Across its flange or the corners of its nut."),
  on: optional("on", face, "Face it must be in."),
  spanner: otherwise("spanner", flag, false, "A spanner must get round it."),
});
const fittings: Shape<readonly BoxFitting[]> = named(fitting);

/** Keys of a box, or of the casing of a panel. */
export const enclosure = {
  insideM: optional("inside", measures, "Inside: across, up (or back, on a floor), from base to lid."),
  ...form,
  holes: optional("holes", holes, "Holes it has already, by name: cables take these and none is drilled."),
  entries: optional(
    "entries",
    entries,
    "Where entries shall be, by the name of the run or fitting; the others find their own place.",
  ),
  catalogueBox: optional(
    "catalogue box",
    text,
    "Which box of the `box catalogue` it is; left out, with no `inside`: the cheapest that does.",
  ),
  contents: optional("contents", contents, "What is screwed to its base, by name."),
  fittings: optional("fittings", fittings, "Entries that are no glands, by name: vent, drain, switch, plug."),
  glands: optional("glands", choice(["metric", "pg"]), "Series of its glands."),
  spareEntries: optional("spare entries", whole(0, 100), "Entries to keep free."),
  drawnOutM: optional("drawn out", metres, "From its seat to where it can be worked on."),
  through: optional("through", text, "Opening it must pass, by the name of a waypoint."),
  studM: optional("stud", aboveZeroM, "Studs of its buses."),
  standsAtM: optional("stands at", boatPoint, "Where its middle stands in the boat."),
} as const;

export const box = fields("a box", {
  joins: optional("joins", choice(["tee", "bus", "terminal strip"]), "How conductors meet in it."),
  returns: optional(
    "returns",
    choice(["joined", "apart"]),
    "`joined`: one negative for all that comes in. `apart`: each way keeps its own.",
  ),
  terminalsPerStud: optional("terminals per stud", whole(1, 20), "Terminals on its fullest stud."),
  covered: optional("covered", flag, "Its live parts are covered."),
  surroundings: optional("surroundings", surroundings, "Where it sits, as far as water and vapour go."),
  ...enclosure,
});
export const boxes: Shape<readonly JunctionBox[]> = named(box);

export const catalogueBox = fields("a box to buy", {
  insideM: required("inside", measures, "Inside: across, up, from base to lid."),
  ...form,
  price: optional("price", amount, "What it costs."),
});

/** As read: its price still as written, since the currency stands with the prices. */
export type WrittenCatalogueBox = Omit<CatalogueBox, "price"> & { readonly price?: Amount };
export const catalogue: Shape<readonly WrittenCatalogueBox[]> = named(
  refine(catalogueBox, (given): Omit<WrittenCatalogueBox, "name"> => given),
);
