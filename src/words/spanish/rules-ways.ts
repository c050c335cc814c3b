import type { RuleId } from "../../core/findings/rules.js";
import { noFigure } from "../numbers.js";
import type { RuleWords } from "../rule-words.js";

const somethingHot = "algo caliente";

const hazards: Readonly<Record<string, string>> = {
  "wet exhaust": "un escape refrigerado por agua",
  "dry exhaust": "un escape seco",
  "hot surface": somethingHot,
  "fuel part": "una pieza de combustible",
};

export const wayRules = {
  "way-missing": {
    title: "Un tendido que va por tramos tiene un camino",
    why: "Sin camino, su longitud es una suposición, y la suposición entra en su sección, su caída y la lista de corte.",
    mend: "Añade el tramo que falta, o da una longitud al tendido.",
    says: (say) => {
      switch (say.term("problem")) {
        case "unknown-waypoint":
          return `El tendido ${say.at} debe pasar por ${say.others}, adonde no llega ningún tramo.`;
        case "leg-without-length":
          return `El tendido ${say.at} no tiene camino: el tramo ${say.others} no tiene longitud, y no se sabe dónde están sus extremos.`;
        default:
          return `El tendido ${say.at} no tiene camino: ningún tramo une ${say.others}.`;
      }
    },
  },
  "bend-radius": {
    title: "Ninguna curva es más cerrada de lo que admiten sus cables",
    why: "Un cable doblado de más se rompe hilo a hilo dentro de su aislante, donde nadie lo ve.",
    mend: "Redondea la esquina, lleva el cable con una curva más amplia o toma uno más fino.",
    says: (say) =>
      `La curva de ${say.at} tiene un radio de ${say.figure}; el más grueso de sus cables (${say.others}) necesita ${say.limit}.`,
    unchecked: (say) =>
      `Cuánto se doblan los cables en ${say.all} no está en el plan (\`bend\`, o \`none\` donde van rectos).`,
  },
  "edge-bare": {
    title: "Ningún cable roza un canto desnudo",
    why: "Un barco nunca está quieto: un canto sierra la funda y el aislante en una temporada.",
    mend: "Un pasamuros de goma, un prensaestopas, o un canto redondeado y liso.",
    says: (say, { with: runs = [] }) =>
      `Por el canto desnudo de ${say.at} ${runs.length > 1 ? "pasan" : "pasa"} ${say.others}.`,
    unchecked: (say) => `Qué protege el canto de ${say.all} no está en el plan (\`edge\`).`,
  },
  "opening-room": {
    title: "Los cables que pasan por un agujero caben juntos",
    why: "El último cable pasa a la fuerza y raspa los demás.",
    mend: "Un agujero más grande, o un segundo.",
    says: (say) =>
      `El hueco de ${say.at} tiene ${say.figure} de ancho; los cables que pasan por él (${say.others}) ocupan juntos ${say.limit}.`,
    unchecked: (say) => `El ancho de ${say.all} no está en el plan.`,
  },
  "clearance-heat": {
    title: "Los cables se mantienen lejos del calor",
    why: "Con calor el aislante envejece deprisa y el conductor puede llevar menos; con mucho, se funde sobre el cobre de su vecino.",
    mend: "Llévalos por otro lado, o pon una pantalla en medio y vuelve a medir.",
    says: (say) =>
      `En ${say.at} los cables (${say.others}) pasan a ${say.figure} de ${hazards[say.term("hazard")] ?? somethingHot}; deberían guardar ${say.limit}.`,
    unchecked: (say) => `La distancia de ${say.all} al calor no está en el plan.`,
  },
  "clearance-fuel": {
    title: "Los cables se mantienen lejos del combustible",
    why: "Un conductor pelado por el roce junto a un tubo de combustible es una chispa donde nunca debe haberla.",
    mend: "Llévalos por otro lado, por encima y separados.",
    says: (say) =>
      `En ${say.at} los cables (${say.others}) pasan a ${say.figure} de una pieza de combustible; deberían guardar ${say.limit}.`,
    unchecked: (say) => `La distancia de ${say.all} a las piezas de combustible no está en el plan.`,
  },
  "compass-near": {
    title: "Nada desvía el compás",
    why: "Toda corriente crea un campo; un par de conductores cerca del compás mueve la aguja cuando se encienden las luces.",
    mend: "Trenza la ida con la vuelta, o llévalas más lejos; luego comprueba los desvíos del compás con todo encendido y con todo apagado.",
    says: (say) =>
      `El desvío del compás por ${say.all} puede ser ${say.figure === noFigure ? "cualquiera" : `de ${say.figure}`}; ${say.limit} es lo máximo.`,
    unchecked: (say) =>
      `El efecto de ${say.all} en el compás no se pudo calcular: hay un conductor sin su vuelta al lado.`,
  },
  "leg-supports": {
    title: "Los cables se sujetan cada poco, como pide la regla",
    why: "Un cable que cuelga se balancea, y cada vaivén lo dobla por el mismo sitio.",
    mend: "Más grapas o bridas, o un tubo de punta a punta.",
    says: (say) =>
      `En ${say.at} hay ${say.figure} entre sujeciones; ${say.limit} es lo máximo para ${say.others}.`,
  },
  "slack-short": {
    title: "Los cables tienen holgura para sacar una caja",
    why: "Una caja que no sale con sus cables puestos no se vuelve a abrir, o se le cortan los cables.",
    mend: "Deja que se calcule la holgura, o da la que hace falta.",
    says: (say) =>
      `El tendido ${say.at} tiene ${say.figure} de holgura en ${say.others}; para sacar lo que hay ahí y trabajar hacen falta ${say.limit}.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;
