import { materials } from "../../reference/drilling.js";
import { listOf } from "./combine.js";
import { fields, optional, otherwise } from "./fields.js";
import { craftForm } from "./form.js";
import { celsius, conductorSize, metres } from "./quantities.js";
import { choice, flag, text } from "./scalars.js";

/** How lengths, conductors and paper are shown; what is left out follows from the rules. */
export const showsKeys = fields("what is shown", {
  lengths: optional("lengths", choice(["inches", "millimetres"]), "Lengths in print. `us` rules: inches."),
  conductors: optional("conductors", choice(["awg", "metric"]), "Names of conductor sizes. `us` rules: awg."),
  paper: optional("paper", choice(["letter", "a4"]), "Paper of the packet. `us` rules: letter."),
});

export const craft = fields("the craft", {
  kind: optional("kind", text, "Kind of boat in your own words."),
  lengthM: optional("length", metres, "Length over all."),
  beamM: optional("beam", metres, "Greatest beam."),
  hullMaterial: optional("hull", choice([...materials, "fabric" as const]), "Material of the hull."),
  petrolOnBoard: optional("petrol on board", flag, "A petrol engine or tank is on board at any time."),
  form: optional("form", craftForm, "Her form: a survey, a starting form, or a table of offsets."),
});

export const ambient = fields("temperatures", {
  coldC: optional("cold", celsius, "Coldest air the electrics are used in."),
  airC: optional("air", celsius, "Usual air."),
  hotC: optional("hot", celsius, "Hottest air the electrics are used in."),
  engineSpaceC: optional("engine space", celsius, "Hottest air in an engine space."),
});

export const conductors = fields("how conductors are chosen", {
  aim: otherwise(
    "aim",
    choice(["cheapest", "lightest"]),
    "cheapest" as const,
    "What the sizes are chosen for.",
  ),
  sizes: otherwise(
    "sizes",
    listOf(conductorSize),
    [],
    "Sizes you are willing to buy. Left out: the whole series of the rules.",
  ),
  insulationC: optional("insulation", celsius, "Temperature the insulation is rated for."),
  tinned: optional("tinned", flag, "Tinned copper."),
});
