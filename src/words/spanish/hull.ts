import type { EdgeSide } from "../../core/hull/faces/edge-names.js";
import type { HullWords } from "../hull/english.js";
import { spanish as steps } from "../steps/spanish.js";
import { sided } from "./sided.js";
import { materialIn } from "./trade.js";

const coordinates: Readonly<Record<string, string>> = {
  height: "altura",
  "half-breadth": "semimanga",
  breadth: "manga",
};
const offs: Readonly<Record<string, string>> = { above: "por encima de", below: "por debajo de" };
const edge = (side: EdgeSide) => steps.sizes.edges[side];

/** What is said of the hull, its marks and its holes, in Spanish. */
export const hullInSpanish: HullWords = {
  next: {
    breadth: (line) => `manga total de ${line}`,
    coordinate: (coordinate, line) => `${coordinates[coordinate] ?? coordinate} de ${line}`,
    at: (what, station) => `${what} en la estación ${station}`,
    reasons: {
      missing: "sin cifra en esta estación",
      gap: "nada medido cerca",
      end: "no medido hasta su extremo",
      check: "lo demás es bastante seguro; esta guarda de un desliz",
    },
    unsure: (by) => `; incierto en ${by}`,
  },
  under: (length) => `menos de ${length}`,
  reference: {
    at: (lengths) => `${lengths} a proa, a babor y arriba`,
    station: (line, length) => `en ${line}, en la estación ${length}`,
    along: (line, length) => `en ${line}, a ${length} de su extremo de popa`,
    from: (name) => ` desde ${name}`,
    flat: (along, start, off) => `${along} a la derecha${start}, ${off} hacia arriba`,
    belowEdge: (along, start, off) => `${along} a lo largo${start}, ${off} bajo el borde superior`,
    offLine: (along, start, off, side, line) =>
      `${along} a lo largo${start}, ${off} ${offs[side] ?? side} ${line}`,
  },
  edge,
  theEdge: steps.sizes.edges.unnamed,
  ways: {
    up: "arriba",
    down: "abajo",
    aft: "a popa",
    forward: "a proa",
    left: "a la izquierda",
    right: "a la derecha",
  },
  move: {
    along: (length, forward, strip) =>
      `${length} ${forward ? (strip ? "a proa" : "a la derecha") : strip ? "a popa" : "a la izquierda"}`,
    up: (length, up) => `${length} ${up ? "arriba" : "abajo"}`,
    both: (parts) => `muévela ${parts.join(" y ")}`,
    leave: "déjala",
  },
  verdicts: {
    good: "bien",
    misplaced: "fuera de sitio",
    "boat not symmetrical": "sigue al barco, que no es simétrico",
    "reading in doubt": "hay una lectura dudosa: tómala otra vez",
    "not known": "sin medir",
  },
  twin: {
    same: (of) => `igual que ${of}`,
    own: (of, off) => `propios: los de ${of} fallarían ${off}`,
  },
  minds: {
    "back with wood": "apoya la chapa en madera",
    "peck and clear chips": "entra por pasos y saca la viruta",
    "no cutting oil": "sin aceite de corte: agrieta la plancha",
    "round the rim": "redondea el borde",
    "keep off moulded corners": "lejos de las esquinas moldeadas",
    "seal the end grain": "sella la testa de la madera",
    "isolate from the fitting": "aísla los metales entre sí",
    "dust of glass": "mascarilla y gafas: polvo de vidrio",
    "stop the step with tape": "marca el escalón con cinta, o sigue de largo",
  },
  tool: {
    there: "ya está hecho",
    unknown: "no se sabe",
    speed: (rpm) => `, unas ${rpm}\u00a0rpm`,
    pilot: (size) => `guía de ${size}, luego `,
    names: { "twist drill": "broca helicoidal", "step drill": "broca escalonada", "hole saw": "corona" },
  },
  seal: {
    drain: "desagüe",
    open: "abierto",
    notSaid: "no se dice",
    gasket: "sellado por su junta",
    sealed: "sellado",
    sealant: (ml, days) => `sellador, ${ml}\u00a0ml; curado del todo en ${days}\u00a0días`,
    all: (ml, count, name) =>
      `Sellador en total: unos ${ml}\u00a0ml, con lo que se pierde: ${count} × ${name}.`,
    container: (name) => name.replace(/^cartridge /, "cartucho de ").replace(/^squeeze tube /, "tubo de "),
  },
  behind: {
    zone: (name, length) => `${name}: a ${length}`,
    room: (length) => `sitio ${length}`,
    reached: (opening) => `se llega por ${sided(opening)}`,
  },
  afloat: {
    unknown: "no se sabe",
    under: "bajo el agua",
    below: (length) => `${length} bajo el agua`,
    dry: (degrees) => `seco hasta ${degrees}°`,
    heel: (degrees, starboard) => `${degrees} a ${starboard ? "estribor" : "babor"}`,
    trim: (degrees, bow) => `${degrees} de ${bow ? "proa" : "popa"}`,
  },
  material: materialIn,
};
