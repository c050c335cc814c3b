import type { PartKind } from "../../core/parts/parts-list.js";
import { protectionKinds } from "./devices.js";
import { jointKinds } from "./joint-kinds.js";
import { colourIn } from "./trade.js";

/** A name as `core/parts/item-names.ts` makes it, and how it is said; the groups of the pattern are what it holds. */
type Named = readonly [made: RegExp, said: (...parts: readonly string[]) => string];

const device = (kind = "") => protectionKinds[kind] ?? kind;
const devices = "(blade fuse|bolted fuse|cartridge fuse|breaker)";
const stud = (name = "") =>
  name === "stud not told" ? "perno no dicho" : name.replace(/^(.*) mm stud$/, "perno de $1 mm");
/** `red`, `red to blue`, and sizes of lugs as they are. */
const colours = (name = "") => name.split(" to ").map(colourIn).join(" a ");
const count = (number = "", one = "", many = "") => `${number} ${number === "1" ? one : many}`;

const ends: readonly Named[] = [
  [/^lug (.+), (.+)$/, (size = "", hole) => `terminal de tubo ${size}, ${stud(hole)}`],
  [/^ring, (.+), (.+)$/, (colour, hole) => `terminal de anillo, ${colours(colour)}, ${stud(hole)}`],
  [/^fork, (.+), (.+)$/, (colour, hole) => `terminal de horquilla, ${colours(colour)}, ${stud(hole)}`],
  [
    /^push-on, (.+), (.+)$/,
    (colour, tab = "") =>
      `terminal plano, ${colours(colour)}, ${tab === "tab not told" ? "lengüeta no dicha" : tab}`,
  ],
  [/^ferrule (.+)$/, (size = "") => `puntera ${size}`],
  [/^crimped butt, (.+)$/, (colour) => `${jointKinds["crimped butt"]}, ${colours(colour)}`],
  [/^sealed butt, (.+)$/, (colour) => `${jointKinds["sealed butt"]}, ${colours(colour)}`],
  [/^solder sleeve (.+)$/, (size = "") => `${jointKinds["solder sleeve"]} ${size}`],
  [/^lever clamp, (\d+) ways$/, (ways = "") => `${jointKinds["lever clamp"]}, ${ways} entradas`],
  [/^pin plug, pair$/, () => `${jointKinds["pin plug"]}, pareja`],
  [/^tap (.+)$/, (size = "") => `${jointKinds.tap} ${size}`],
  [/^twist-on cap$/, () => jointKinds["twist-on cap"]],
];

const made: Readonly<Record<PartKind, readonly Named[]>> = {
  terminal: ends,
  joint: ends,
  sleeve: [
    [
      /^lined sleeve (.+) to (.+) mm, by the cm$/,
      (a = "", b = "") => `funda con adhesivo ${a} a ${b} mm, por cm`,
    ],
    [/^sleeve (.+) to (.+) mm, by the cm$/, (a = "", b = "") => `funda ${a} a ${b} mm, por cm`],
  ],
  fuse: [[new RegExp(`^${devices} (.+) A$`), (kind, rating = "") => `${device(kind)} ${rating} A`]],
  "fuse holder": [
    [new RegExp(`^${devices} holder$`), (kind) => `portafusibles para ${device(kind)}`],
    [/^end at a breaker$/, () => "punta en un disyuntor"],
    [new RegExp(`^end at a ${devices} holder$`), (kind) => `punta en un portafusibles para ${device(kind)}`],
  ],
  switch: [
    [
      /^(master )?switch(?: (.+) A)?$/,
      (master, rating) =>
        `interruptor${master === undefined ? "" : " general"}${rating === undefined ? "" : ` ${rating} A`}`,
    ],
  ],
  gland: [
    [/^(.+) gland$/, (size = "") => `prensaestopas ${size}`],
    [/^(.+) plug$/, (size = "") => `tapón ${size}`],
  ],
  bus: [
    [/^bus bar, (\d+) studs$/, (studs) => `barra, ${count(studs, "perno", "pernos")}`],
    [/^terminal strip, one pole$/, () => "regleta de bornes, un polo"],
    [/^wires inside a panel$/, () => "cables dentro de un cuadro"],
  ],
  tie: [[/^cable clip or tie$/, () => "grapa o brida"]],
  sealant: [[/^sealant, tube$/, () => "sellador, tubo"]],
  tape: [[/^self-fusing tape, roll$/, () => "cinta autosoldable, rollo"]],
  label: [[/^wire flag$/, () => "banderita para cable"]],
  other: [[/^grommet for a (.+) hole$/, (hole = "") => `pasamuros de goma para agujero de ${hole}`]],
  conductor: [
    [/^(.+), 1 core in a sheath$/, (size = "") => `${size}, 1 conductor con funda`],
    [/^(.+), (\d+) cores$/, (size = "", cores = "") => `${size}, ${cores} conductores`],
    [/^(.+), single$/, (size = "") => `${size}, suelto`],
    [/^(.+), (.+)$/, (size = "", colour = "") => `${size}, ${colourIn(colour)}`],
  ],
  box: [],
  gear: [],
};

/** A part by its name, which is what stock and prices in the plan are matched by; a name of the owner's own stays. */
export function partInSpanish(name: string, kind: PartKind): string {
  for (const [pattern, said] of made[kind]) {
    const found = pattern.exec(name);
    if (found) return said(...found.slice(1));
  }
  return name;
}

const sized = /^[^,]*\d ?(AWG|mm2|mm²|kcmil),/;

/** A name that may be a part of any kind, or a thing of the owner's. */
export function anyPartInSpanish(name: string): string {
  if (sized.test(name)) return wireInSpanish(name);
  for (const kind of [
    "terminal",
    "sleeve",
    "fuse",
    "fuse holder",
    "switch",
    "gland",
    "bus",
    "tie",
    "other",
  ] as const) {
    const said = partInSpanish(name, kind);
    if (said !== name) return said;
  }
  return name;
}

export const wireInSpanish = (kind: string): string => partInSpanish(kind, "conductor");

const tools: ReadonlyMap<string, string> = new Map([
  ["ratchet crimper for insulated terminals", "engastadora de trinquete para terminales aislados"],
  [
    "ratchet crimper for heat-shrink terminals, hot air",
    "engastadora de trinquete para terminales termorretráctiles, aire caliente",
  ],
  ["hot air", "aire caliente"],
  ["soldering iron, hot air", "soldador, aire caliente"],
  ["ferrule crimper, screwdriver", "engastadora de punteras, destornillador"],
  ["fingers", "los dedos"],
  ["pin crimper", "engastadora de clavijas"],
  ["pliers", "alicates"],
  [
    "lug press with the die of the size, hot air",
    "prensa de terminales con la matriz de su medida, aire caliente",
  ],
]);

/** The tool an end is made with; `jointTools` has the English ones. */
export const toolInSpanish = (tool: string): string => tools.get(tool) ?? tool;
