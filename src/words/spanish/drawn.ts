import type { DrawnWords } from "../drawn/english.js";
import { boxes } from "../screen/es/boxes.js";
import { joinedInSpanish } from "./joining.js";
import { layoutInSpanish } from "./layout.js";

/** From where a flat face is looked at. */
const from: Readonly<Record<NonNullable<Parameters<DrawnWords["step"]["looks"]>[0]>, string>> = {
  aft: "hacia popa",
  forward: "hacia proa",
  port: "hacia babor",
  starboard: "hacia estribor",
  up: "hacia arriba",
  down: "hacia abajo",
};

/** Words that stand in drawings and under them, in Spanish. */
export const drawnInSpanish: DrawnWords = {
  joining: joinedInSpanish,
  range: (first, last) => `${first} a ${last}`,
  template: {
    title: (box, face) => `${box}: ${boxes.faces[face]}, vista desde fuera`,
    tile: (row, column, rows, columns) => `parte ${row}.${column} de ${rows} × ${columns}`,
    lid: "tapa",
    base: "fondo",
    bar: (lengthMm) => `${lengthMm} mm: mide antes de taladrar`,
    square: (sideMm) => `cuadrado de ${sideMm} mm`,
    more: (count) => `y ${count} más, en la hoja de la caja`,
    scale: "Imprime al 100 %, sin ajustar a la página. Si barra o cuadrado no miden lo justo, no taladres.",
  },
  entry: layoutInSpanish.entry,
  sided: layoutInSpanish.sided,
  inside: (size, depth) => `${size} por dentro, ${depth} de fondo`,
  step: {
    trueScale: "a tamaño real",
    lidOff: (box, scale, contents) => `${box} sin la tapa, ${scale}: ${contents}.`,
    looks: (towards) => `vista de frente${towards === undefined ? "" : `, mirando ${from[towards]}`}`,
    seen: (inside, bowRight) =>
      `vista desde ${inside ? "dentro" : "fuera"}; la proa queda a la ${bowRight ? "derecha" : "izquierda"}`,
    part: "Una parte, enmarcada en la figura pequeña; una flecha con letra lleva a un punto de más allá.",
    notByDrawing: "Traza con las lecturas, no con este dibujo.",
    circuit: (run) =>
      `El circuito de ${run} en una línea, de la batería hacia fuera: una sola línea vale por la ida y el retorno.`,
    sides: { port: "babor", starboard: "estribor" },
  },
  diagram: {
    noFuse: "aún ninguno",
    sizeOpen: "sección abierta",
    cut: (length) => `cortar\u00a0${length}`,
    notOn: "apagado en estos casos",
    worst: (voltage) => `peor ${voltage}`,
    output: (voltage) => `a ${voltage}`,
    chargers: {
      mains: "cargador de red",
      solar: "cargador solar",
      engine: "cargador del motor",
      converter: "cargador convertidor",
    },
    open: "abierto",
    byItself: (name) => `${name}, dibujado aparte`,
    fedBy: (run) => `alimentado por ${run}`,
    continued: "sigue",
    refers: {
      battery: (to) => `batería ${to}`,
      output: (to) => `salida de ${to}`,
      way: (to) => `salida ${to}`,
      "drawn elsewhere": (to) => `${to}, dibujado en otro sitio`,
      "in run": (to) => `en ${to}, dibujado arriba`,
      unknown: (to) => `${to}, desconocido`,
    },
  },
  chart: {
    charge: "Carga",
    atPosts: "En los bornes",
    on: "Encendido",
    reserve: (share) => `reserva ${share}`,
    stops: (voltage) => `se para a ${voltage}`,
    reserveAfter: (hours) => `reserva tras ${hours}`,
    stopsAfter: (hours) => `se para tras ${hours}`,
    ofTheTime: (share) => `${share} del tiempo`,
    at: (share) => `al ${share}`,
  },
};
