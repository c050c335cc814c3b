import type { Plan, Shows } from "../model/plan.js";
import { nothingBuilt } from "../model/work.js";
import { boxes, catalogue } from "./boxes.js";
import { builtKeys } from "./built.js";
import { map } from "./combine.js";
import { ambient, conductors, craft, showsKeys } from "./craft.js";
import { faces, references } from "./faces.js";
import { fields, optional, otherwise, requiredWithStandIn } from "./fields.js";
import { gear } from "./gear.js";
import { checked, floatKeys, marks } from "./marks.js";
import { moneyOf } from "./money.js";
import { corners, oneAtATime, outings } from "./outings.js";
import { panels } from "./panels.js";
import { runs } from "./runs.js";
import { choice, text, whole } from "./scalars.js";
import type { Shape } from "./shape.js";
import { bought, prices, pricesPerMetre, stock } from "./stock.js";
import { batteries, chargers, converters } from "./supply.js";
import { legs, waypoints } from "./ways.js";
import { workSections } from "./work.js";

/** The format written and read here. */
export const formatVersion = 1;

/** Every section of a plan. A new one is a file beside this and one line here. */
export const planKeys = fields("a plan", {
  skiffloom: requiredWithStandIn(
    "skiffloom",
    whole(formatVersion, formatVersion),
    formatVersion,
    "Version of the format.",
  ),
  name: requiredWithStandIn("name", text, "", "Name of the plan."),
  rules: requiredWithStandIn("rules", choice(["us", "iso"]), "us" as const, "Rule-set: `us` or `iso`."),
  shows: otherwise("shows", showsKeys, {}, "How figures are shown."),
  craft: otherwise("craft", craft, {}, "The boat."),
  ambient: otherwise("ambient", ambient, {}, "Temperatures."),
  conductors: otherwise(
    "conductors",
    conductors,
    { aim: "cheapest", sizes: [] },
    "How conductors are chosen.",
  ),
  batteries: otherwise("batteries", batteries, [], "Batteries by name."),
  chargers: otherwise("chargers", chargers, [], "Chargers by name."),
  converters: otherwise(
    "converters",
    converters,
    [],
    "Converters by name; each has the outlets `in` and `out`.",
  ),
  panels: otherwise("panels", panels, [], "Switch panels by name."),
  boxes: otherwise("boxes", boxes, [], "Junction boxes by name."),
  catalogue: otherwise("box catalogue", catalogue, [], "Boxes you are willing to buy, by name."),
  gear: otherwise("gear", gear, [], "Gear by name."),
  runs: otherwise("runs", runs, [], "Runs by name: one cable between two places."),
  waypoints: otherwise("waypoints", waypoints, [], "Points that cables pass, by name."),
  legs: otherwise("legs", legs, [], "Stretches between places and waypoints that cables lie along, by name."),
  references: otherwise("references", references, [], "Points to put the end of the tape to, by name."),
  faces: otherwise("faces", faces, [], "What is drilled, by name."),
  marks: otherwise("marks", marks, {}, "How marks are set out."),
  checked: otherwise(
    "checked",
    checked,
    [],
    "Readings taken at marks: by mark, then by what was measured from.",
  ),
  float: optional("float", floatKeys, "What she carries, and so how she floats."),
  oneAtATime: otherwise("one at a time", oneAtATime, [], "Groups of gear of which one is on at a time."),
  corners: otherwise("corners", corners, [], "Conditions to solve at, besides the three every plan gets."),
  outings: otherwise("outings", outings, [], "Outings by name."),
  stock: otherwise("stock", stock, { wire: [], parts: [] }, "What is on hand."),
  bought: otherwise(
    "bought",
    bought,
    { wire: [], parts: [] },
    "What was bought for the plan, as ticked on its shopping list, and is not among the stock yet.",
  ),
  prices: otherwise("prices", prices, { wire: [], parts: [] }, "Prices."),
  ...workSections,
  asBuilt: otherwise("as built", builtKeys, nothingBuilt, "What was really built."),
});

export const planShape: Shape<Plan> = map(
  planKeys,
  ({ skiffloom: _version, shows, stock: onHand, bought: inBasket, prices: known, ...all }): Plan => {
    const { references: points, faces: drilled, marks: wanted, checked: read, float, ...most } = all;
    const { catalogue: toBuy, ...others } = most;
    const { freeHours, workDone, notes, readings, mends, projects, asBuilt, ...rest } = others;
    return {
      ...rest,
      hull: {
        references: points,
        faces: drilled,
        marks: wanted,
        checked: read,
        ...(float === undefined ? {} : { float }),
      },
      work: { freeHours, workDone, notes, readings, mends, projects, asBuilt },
      shows: { ...usualShows[rest.rules], ...shows },
      catalogue: toBuy.map(({ price, ...made }) =>
        price === undefined ? made : { ...made, price: moneyOf(price, known.currency) },
      ),
      ...(known.currency === undefined ? {} : { currency: known.currency }),
      stockWire: onHand.wire,
      stockParts: onHand.parts,
      boughtWire: inBasket.wire,
      boughtParts: inBasket.parts,
      wireOffers: known.wire,
      partOffers: known.parts,
      wirePrices: pricesPerMetre(known.wire),
    };
  },
);

const usualShows: Readonly<Record<Plan["rules"], Shows>> = {
  us: { lengths: "inches", conductors: "awg", paper: "letter" },
  iso: { lengths: "millimetres", conductors: "metric", paper: "a4" },
};
