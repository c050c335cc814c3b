import type { RuleId } from "../../core/findings/rules.js";
import { listed } from "../listed.js";
import { noFigure } from "../numbers.js";
import type { RuleWords, Say } from "../rule-words.js";
import { boxes } from "../screen/es/boxes.js";
import { spanish } from "../steps/spanish.js";
import { placeIn } from "./trade.js";

const proof = (say: Say) =>
  say.term("proof") === "proven" ? "" : "; no se encontró una disposición que valga, aunque podría haberla";
const cracks = (say: Say) => (say.term("cracks") === "yes" ? "; este material se raja ahí" : "");

const holePlaces: Readonly<Record<string, (say: Say) => string>> = {
  "near-corner": (say) => `está a ${say.figure} de la esquina interior; su tuerca necesita ${say.limit}`,
  "near-base": (say) => `está a ${say.figure} del fondo; su tuerca necesita ${say.limit}`,
  "near-lid": (say) =>
    `está a ${say.figure} por debajo del labio de la tapa; con ${say.limit} queda libre la junta`,
  "on-boss": (say) => `está a ${say.figure} de un poste de la esquina; su tuerca necesita ${say.limit}`,
  "off-the-face": () => "se sale del borde de su cara",
  "closed-face": () => "está en una cara que no se taladra",
};

const measureNames: Readonly<Record<string, string>> = boxes.measures;

/** What of a box is unmeasured. */
const unmeasured = (say: Say) =>
  listed(
    say
      .term("what")
      .split(" and ")
      .map((one) => measureNames[one] ?? one),
    spanish.joining,
  );

export const boxRules = {
  "gland-fit": {
    title: "Cada cable que entra en una caja tiene un prensaestopas que lo sujeta",
    why: "Una junta que no cierra sobre el cable deja entrar el agua a lo largo de él, y no lo sujeta cuando se tira.",
    mend: "Un prensaestopas de otro tamaño o con otra junta, un cable más redondo o más grueso, o una pared más fina en el agujero.",
    says: (say) => {
      const where = `${say.others} en ${say.at}`;
      switch (say.term("problem")) {
        case "cable-not-round":
          return `${where}: el cable es plano (${say.figure} por ${say.limit}) y una junta redonda deja pasar agua por su lado.`;
        case "wall-too-thick":
          return `La pared de ${say.at} es de ${say.figure}: la rosca de un prensaestopas ${say.term("size")} para ${say.others} atraviesa ${say.limit} como mucho.`;
        default:
          return say.term("side") === "between"
            ? `${where}: el cable mide ${say.figure} de grueso y cae entre dos prensaestopas de la serie.`
            : `${where}: el cable mide ${say.figure} de grueso; el prensaestopas ${say.term("side") === "thin" ? "más pequeño sujeta desde" : "más grande admite hasta"} ${say.limit}.`;
      }
    },
  },
  "entries-fit": {
    title: "Una caja tiene sitio para todas sus entradas",
    why: "Dos tuercas que se tocan no se pueden apretar, y una pared con más agujero que pared se rompe.",
    mend: "Una caja mayor, menos entradas libres, o dos salidas del cuadro en un mismo cable.",
    says: (say) =>
      say.term("problem") === "entry-too-large"
        ? `Ninguna cara de ${say.at} es bastante grande para ${say.others}.`
        : `${say.term("from") === "catalogue" ? `Ninguna caja del catálogo admite las entradas de ${say.at} (${say.figure}); la mayor tiene` : `En ${say.at} hacen falta ${say.figure} entradas y hay`} sitio para ${say.limit}${proof(say)}.`,
  },
  "own-hole": {
    title: "Cada cable encuentra su agujero en una caja ya taladrada",
    why: "En un agujero demasiado ancho el prensaestopas gira con su tuerca y deja pasar agua; en uno demasiado pequeño no entra.",
    mend: "Taladra el agujero que necesita, o lleva el cable a otra parte.",
    says: (say) =>
      `${say.others} en ${say.at}: hace falta un agujero de ${say.figure}; ${say.term("free") === "none" ? "no queda ninguno" : `los que quedan son de ${say.term("free")}`}.`,
  },
  "hole-web": {
    title: "Entre dos agujeros queda pared suficiente",
    why: "La tira de pared entre dos agujeros aguanta el tirón de los dos cables; si es demasiado fina, se desgarra o se raja.",
    mend: "Mueve uno de los dos, o prescinde de uno y tápalo por los dos lados.",
    says: (say) =>
      `En ${say.at} solo quedan ${say.figure} de pared entre ${say.others}; deberían quedar ${say.limit}${cracks(say)}.`,
  },
  "hole-place": {
    title: "Los agujeros guardan distancia a esquinas, postes, tapa y junta",
    why: "Una tuerca apoyada en un nervio o en un labio cierra solo por un lado, y un agujero donde asienta la junta deja entrar agua por la tapa.",
    mend: "Lleva la entrada hacia el centro de su cara.",
    says: (say) =>
      `${say.others} en ${say.at}: el agujero ${holePlaces[say.term("fault")]?.(say) ?? "está en mal sitio"}${cracks(say)}.`,
  },
  "nut-room": {
    title: "Alrededor de cada tuerca cabe una llave",
    why: "Un prensaestopas que no se puede apretar no cierra, y tampoco se puede volver a abrir.",
    mend: "Mueve uno de los dos, o toma el prensaestopas más pequeño que aún sujete el cable.",
    says: (say) =>
      say.term("fault") === "nuts-touch"
        ? `En ${say.at} se tocan las tuercas de ${say.others}: sus centros están a ${say.figure} y hacen falta ${say.limit}.`
        : `En ${say.at} no cabe una llave entre ${say.others}: sus centros están a ${say.figure} y hacen falta ${say.limit}.`,
  },
  "upward-entry": {
    title: "Los cables entran en una caja por abajo o por un lado",
    why: "El agua baja por el cable y se queda en una entrada que mira hacia arriba; tarde o temprano está dentro.",
    mend: "Entra por abajo, con una comba donde escurra el agua; gira la caja, o toma una con más sitio en sus caras bajas.",
    says: (say) =>
      say.term("from") === "drilled"
        ? `Entradas por la cara superior de ${say.at}: ${say.others}.`
        : `Para ${say.others}, ${say.at} solo tiene sitio en su cara superior.`,
  },
  "box-contents": {
    title: "Lo que va dentro de una caja cabe en ella",
    why: "Los conductores con una curva demasiado cerrada detrás de su prensaestopas se rompen; donde no entra un dedo, nada se aprieta.",
    mend: "Una caja mayor, piezas más pequeñas, o entradas en otras caras.",
    says: (say) => {
      switch (say.term("problem")) {
        case "too-tall":
          return `La altura de ${say.others} es de ${say.figure}; bajo la tapa de ${say.at} hay ${say.limit}.`;
        case "no-room-to-bend":
          return `Detrás de las entradas de ${say.at} hay ${say.figure}; sus conductores necesitan ${say.limit} para doblarse.`;
        default:
          return `En ${say.at} no hay sitio para ${say.others} junto a lo demás${proof(say)}.`;
      }
    },
  },
  "box-opening": {
    title: "Lo que debe pasar por una abertura pasa",
    why: "Una caja que se acaba en el banco y no pasa por la escotilla se desmonta otra vez en el barco.",
    mend: "Una caja menor, una abertura más ancha, o entrar por otro lado.",
    says: (say) =>
      say.term("state") === "bare"
        ? `${say.at} pasa por ${say.others} solo antes de montar sus prensaestopas.`
        : `${say.at} no pasa por ${say.others}: su extremo más pequeño mide ${say.term("end")}.`,
    unchecked: (say) =>
      `No se pudo juzgar si ${say.at} pasa por ${say.others}: sus medidas o las de la abertura no están en el plan.`,
  },
  "box-water": {
    title: "Una caja no deja entrar el agua de su sitio",
    why: "Las salpicaduras encuentran toda tapa que no está hecha para ellas, y dentro se secan y dejan sal.",
    mend: "Una caja con un código IP más alto, o un sitio más seco.",
    says: (say) =>
      `El código IP de ${say.at} tiene la cifra ${say.figure} para el agua; su sitio es ${placeIn(say.term("surroundings"))} y pide ${say.limit}.`,
    unchecked: (say) =>
      say.figure === noFigure
        ? `Falta en el plan el código IP de ${say.all} (\`ip\`), que dice qué agua se queda fuera.`
        : `La prueba de ${say.at} es bajo el agua (cifra ${say.figure}), y eso no demuestra que resista los chorros de su sitio (${say.limit}).`,
  },
  "box-unmeasured": {
    title: "Las cajas se miden antes de taladrarlas",
    why: "Una plantilla es tan buena como la caja para la que se dibujó: un poste o un labio fuera de su sitio la echa a perder.",
    mend: "Mide la propia caja y escríbelo en el plan.",
    says: (say) => `Al plan le faltan medidas de ${say.at}: ${unmeasured(say)}.`,
    unchecked: (say) =>
      say.term("what") === "inside"
        ? `${say.at} está sin distribuir: ni su interior ni un catálogo de cajas están en el plan.`
        : `Al plan le faltan medidas de ${say.others === "" ? say.at : `${say.others} (${say.at})`}: ${unmeasured(say)}. Un agujero podría dar con eso.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;
