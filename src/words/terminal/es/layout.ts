import { many } from "../../spanish/many.js";
import type { TerminalWords } from "../english.js";

export const layout: TerminalWords["layout"] = {
  boxes: {
    none: "Este plan no tiene cajas.",
    drilling: "Taladrado:",
    heads: {
      face: "cara",
      entry: "entrada",
      gland: "prensaestopas",
      hole: "agujero",
      along: "a lo largo",
      up: "alto",
    },
    inside: (each) => `Dentro, desde la esquina inferior izquierda: ${each}.`,
    at: (what, x, y, turned) => `${what} en ${x}, ${y}${turned ? ", girado" : ""}`,
    sayWhere: "di dónde van las plantillas con --to CARPETA",
    notDrilled: "aquí no hay ninguna caja que taladrar; 'skiffloom boxes PLAN' dice por qué",
  },
  cuts: {
    heads: { from: "se corta de", piece: "trozo", length: "longitud" },
    left: "sobra",
    scrap: "desecho",
  },
  routes: {
    runs: "Tendidos",
    heads: {
      run: "tendido",
      from: "desde",
      to: "hasta",
      past: "pasa por",
      way: "recorrido",
      slack: "holgura",
      cut: "corte",
    },
    noWay: "no hay camino",
    inAll: (slack, inches) =>
      `${slack} de holgura en todos los cables juntos; las longitudes de corte se redondean hacia arriba ${inches ? "a la pulgada" : "a 10 mm"}.`,
    slack: "Holgura",
    ends: (run, start, end) => `${run}: al principio ${start}; al final ${end}.`,
    together: "Qué va junto",
    legHeads: {
      leg: "tramo, o tendido sin tramos",
      from: "desde",
      to: "hasta",
      length: "longitud",
      holds: "lleva",
      bundle: "mazo",
      supports: "sujeción",
    },
    count: (runs) => many(runs, "tendido", "tendidos"),
  },
  parts: {
    wanting: (without, all) =>
      `${without} de ${all} artículos por comprar aún no tienen precio. --csv prices escribe una tabla para rellenar, --prices ARCHIVO la lee.`,
    wire: "Cable",
    wireHeads: {
      wire: "cable",
      needed: "necesario",
      stock: "de lo que hay",
      buy: "por comprar",
      price: "precio",
    },
    heads: {
      needed: "necesario",
      spares: "repuestos",
      stock: "hay",
      buy: "por comprar",
      left: "sobra",
      price: "precio",
    },
    total: (money) => `Total de lo que tiene precio: ${money}.`,
    without: (count) =>
      count === 1
        ? " 1 artículo no tiene precio y no está incluido."
        : ` ${count} artículos no tienen precio y no están incluidos.`,
    boughtHeads: { bought: "comprado", amount: "cantidad", against: "según la lista" },
    allBought: "todo lo que hace falta",
    nothingBought: "No hay nada apuntado como comprado: no se ha escrito nada.",
    shelved: (lines, path) => `${lines} de lo comprado, en el estante: escrito en ${path}`,
    booked: (lines, path) => `${lines} de existencias al día: escrito en ${path}`,
    nothing: "El plan ya tiene todo eso: no se ha escrito nada.",
    writtenTo: (path) => `escrito en ${path}`,
  },
};
