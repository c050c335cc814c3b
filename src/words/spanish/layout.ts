import type { DrillTool } from "../../core/box/drill-order.js";
import type { LayoutWords } from "../layout/english.js";
import { boxes } from "../screen/es/boxes.js";
import { parts } from "../screen/es/parts.js";
import { joinedInSpanish } from "./joining.js";
import { jointInSpanish } from "./joint-kinds.js";
import { many } from "./many.js";
import { partInSpanish, toolInSpanish, wireInSpanish } from "./part-names.js";
import { sided } from "./sided.js";
import { colourIn, materialIn } from "./trade.js";

const { faces } = boxes;
const tools: Readonly<Record<DrillTool, string>> = {
  punch: "granete",
  "twist drill": "broca helicoidal",
  "step drill": "broca escalonada",
  "hole saw": "corona",
  "deburring tool": "desbarbador",
};

/** What is said of boxes, cuts, ends and parts in Spanish. */
export const layoutInSpanish: LayoutWords = {
  joining: joinedInSpanish,
  slack: {
    owner: "tuyos",
    "draw out": "para sacarlo",
    "work beside": "para trabajar al lado",
    "off its hole": "para apartarlo de su agujero",
    "at panel": "en el cuadro",
    "at battery": "en la batería",
    "make again": "para rehacer la punta",
  },
  shortSlack: {
    owner: "tuyos",
    "draw out": "sacarlo",
    "work beside": "trabajar",
    "off its hole": "apartarlo",
    "at panel": "en cuadro",
    "at battery": "en borne",
    "make again": "reserva",
  },
  partKinds: {
    ...parts.kinds,
    gland: "Prensaestopas y tapones",
    fuse: "Fusibles y disyuntores",
    bus: "Barras y regletas",
    tie: "Grapas y bridas",
  },
  faces,
  supports: {
    enclosed: "cerrado en todo su largo",
    ends: "en sus extremos",
    every: (count, apart) => `${many(count, "grapa", "grapas")}, cada ${apart}`,
  },
  box: {
    noGland: (cable, size) => `ningún prensaestopas de la serie aprieta ${cable} (${size})`,
    notRound: (cable) => `${cable} es plano, y una junta redonda deja pasar agua a su lado`,
    wall: (wall, size) => `su pared de ${wall} es demasiado gruesa para la rosca de ${size}`,
    tooMany: (room) => `sitio solo para ${room} entradas`,
    tooLarge: (entries) => `ninguna cara es bastante grande para ${entries}`,
    tooTall: (content) => `${content} no cabe bajo su tapa`,
    noRoom: (content) => `no hay sitio para ${content}`,
    noBend: (face) => `no hay sitio para doblar los conductores detrás de la ${faces[face]}`,
    noHole: (size, cable) => `no hay agujero de ${size} para ${cable}`,
  },
  why: {
    nothing: "El plan no dice su interior ni trae un catálogo de cajas.",
    none: (largest, why) => `Ninguna caja del catálogo lo admite todo. La mayor, ${largest}: ${why}.`,
    inside: (size, wall, material) => `interior ${size}, pared ${wall}, ${material}`,
    doesNot: (why) => `No sirve: ${why}.`,
    drilled: "ya taladrada",
    noPrice: "precio desconocido",
    smaller: (id, why) => `La siguiente menor, ${id}, no sirve: ${why}.`,
  },
  passing: {
    holds: (through, size) => `Con sus prensaestopas puestos${size} pasa por ${through}.`,
    bare: (through, size) =>
      `Por ${through} solo pasa desnuda: con sus prensaestopas puestos${size} es demasiado grande. Móntalos en su sitio.`,
    fails: (through, size) => `No pasa por ${through}, ni con sus prensaestopas${size} ni sin ellos.`,
    unchecked: (what, through) => `No se comprobó si ${what} pasa por ${through}.`,
  },
  drill: {
    punch: (count, face, held) =>
      `Marcar con granete ${count > 1 ? `${count} centros` : "el centro"} en la ${faces[face]}${held}`,
    deburr: (count, face) =>
      `Quitar las rebabas de ${count > 1 ? `${count} agujeros` : "1 agujero"} en la ${faces[face]}, por los dos lados`,
    drill: (count, size, face, tool, held) =>
      `Taladrar ${count > 1 ? `${count} agujeros` : "1 agujero"} de ${size} en la ${faces[face]} con ${tools[tool]}${held}`,
    held: { "lid on": "con la tapa puesta", "block behind wall": "un taco detrás de la pared" },
  },
  from: {
    offcut: (length, number) => `retal de ${length}${number === undefined ? "" : `, n.º ${number}`}`,
    spool: (length) => `rollo de ${length} en casa`,
    new: (length, number) => `rollo nuevo de ${length}, n.º ${number}`,
    "by length": (length) => `${length} cortados en la tienda`,
  },
  cut: {
    tooLong: (piece, length, longest) =>
      `${piece} mide ${length}; lo más largo que hay es ${longest}. Compra un rollo más largo, o empálmalo en una caja del recorrido.`,
    notEnough: (needed, onHand) =>
      `Hacen falta ${needed}; los ${onHand} que hay en casa no bastan, y no se vende.`,
    negative: (stock) => `${stock} tiene una cantidad por debajo de cero.`,
    noPrice: (stock) => `${stock} no tiene precio.`,
    none: "no se puede sacar de estos largos",
    cheapest: "demostrado: nada cuesta menos",
    leastWire: "demostrado: nada gasta menos cable",
    found: "lo mejor hallado; podría haber algo mejor",
  },
  buy: {
    pieces: (count) => many(count, "pieza", "piezas"),
    unlisted: (count) => `${count}, en ninguna lista de precios`,
    nothing: "nada que comprar",
    spools: (times, length) => `${times} × rollo de ${length}`,
    cutOff: (length) => `${length} al corte`,
  },
  cores: (count) => `${count}\u00a0conductores`,
  bought: {
    more: (had, more) => `${had} ya comprado, hace falta además ${more}`,
    over: (had, over) => `${had} ya comprado, ${over} más de lo que pide la lista`,
    notWanted: "Comprado, y ya no está en la lista",
    gone: "ya no está en la lista",
  },
  end: {
    lug: (size) => `de tubo ${size}`,
    tab: (size) => `lengüeta ${size}\u00a0mm`,
    noStud: "perno no dicho",
    noTab: "lengüeta no dicha",
    steps: (one, other) => `de ${one} a ${other}`,
    sleeve: (lined, from, to, length) =>
      `${lined ? "con adhesivo, " : ""}de ${from} a ${to}\u00a0mm, ${length}\u00a0mm de largo`,
  },
  entry: (id) => id.replace(/^spare (\d+)$/, "reserva $1"),
  sided,
  part: partInSpanish,
  use: (name, kind) => (name === "runs" && (kind === "tie" || kind === "label") ? "tendidos" : name),
  wire: wireInSpanish,
  tool: toolInSpanish,
  material: materialIn,
  joint: jointInSpanish,
  colour: colourIn,
  leg: (leg) => (leg === "out" ? "ida" : leg === "return" ? "retorno" : leg),
};
