import type { RuleId } from "../../core/findings/rules.js";
import type { RuleWords, Say } from "../rule-words.js";

export const formRules = {
  "form-stations": {
    title: "Las estaciones van de popa a proa, y hay bastantes",
    why: "Una línea se traza por sus estaciones en orden. Desordenadas, o con una sola, no hay línea.",
    mend: "Escribe las estaciones desde el espejo de popa hacia proa, cada una una vez, y da cifras de cada línea en dos de ellas al menos.",
    says: (say, { terms }) =>
      terms?.kind === "stations out of order"
        ? `En ${say.at}, a una estación a ${say.limit} la sigue otra a ${say.figure}.`
        : `Para ${say.at === "craft" ? "la forma" : say.at} hay muy pocas ${terms?.what === "lines" ? "líneas" : "estaciones"}: ${say.figure}; hacen falta ${say.limit} al menos.`,
  },
  "form-table": {
    title: "Se entienden todas las columnas y los números de la cartilla de trazado",
    why: "Una columna que no se entiende se deja fuera, y la forma se dibuja sin ella.",
    mend: "Llama «station» a la primera columna y «NOMBRE half-breadth» y «NOMBRE height» a las demás; escribe los números como dice la cartilla.",
    says: (say, { terms }) =>
      terms?.kind === "unknown column"
        ? `No se entiende el encabezado de ${spot(say)}: «${terms.found ?? ""}».`
        : `En ${spot(say)} de la cartilla pone «${terms?.found ?? ""}», que no es un número de los suyos.`,
  },
  "form-lines-cross": {
    title: "Las líneas van una por encima de otra",
    why: "Donde dos líneas se cruzan, una se midió o se escribió mal; las caras entre ellas quedan del revés.",
    mend: "Mide las dos otra vez en el lugar donde se cruzan.",
    says: (say, { terms }) =>
      `${say.at} pasa ${say.figure} por debajo o por dentro de ${terms?.by ?? "la línea de abajo"}, en la estación a ${say.step("right")}.`,
  },
  "form-open-surface": {
    title: "El casco está cerrado",
    why: "Con un hueco en crujía o en un extremo nadie sabe cuánta agua desplaza.",
    mend: "Haz que la quilla llegue tan lejos como las demás líneas, en crujía, y que las que acaban antes acaben también en ella.",
    says: (say, { terms }) =>
      terms?.where === "centreline"
        ? `${say.at}, la línea más baja, queda a ${say.figure} de crujía.`
        : terms?.where === "aft"
          ? `${say.at} empieza a ${say.figure}, y el casco a ${say.limit}: queda abierto a popa.`
          : `${say.at} deja el casco abierto a proa.`,
  },
  "form-unfair": {
    title: "Las medidas siguen una línea suave",
    why: "Una cifra fuera de la línea de sus vecinas es un descuido con la cinta o un bulto de verdad. Si se alisara, ya no se sabría cuál.",
    mend: "Mide esa otra vez. Si sale lo mismo, el barco tiene ahí un bulto: déjala.",
    says: (say, { terms }) =>
      `${coordinates[terms?.coordinate ?? ""] ?? "La cifra"} de ${spot(say)} se aparta ${say.figure} de la línea de sus vecinas (hasta ${say.limit} puede ser casualidad); lo suave sería ${say.step("right")}.`,
  },
  "form-contradiction": {
    title: "Las lecturas de comprobación concuerdan con la forma",
    why: "Un contorno o una anchura que no concuerda dice que alguna de las cifras en que se apoya está mal, aunque cada una parezca buena.",
    mend: "Mídelo otra vez, y luego las cifras que abarca.",
    says: (say, { terms }) =>
      `${readings[terms?.reading ?? ""] ?? "La lectura"} en ${spot(say)} se aparta ${say.figure} de lo que da la forma (hasta ${say.limit} puede ser casualidad); debería dar ${say.step("right")}.`,
  },
  "form-not-judged": {
    title: "Hay cifras bastantes para juzgar si las líneas son suaves",
    why: "Con menos de seis cifras una línea se acomoda a lo que sea, también a un descuido con la cinta.",
    mend: "Toma las estaciones que propone «skiffloom form».",
    says: (say) =>
      `Aún no se puede juzgar si ${say.many ? "son suaves las líneas" : "es suave la línea"} ${say.all}.`,
    unchecked: (say) =>
      `No se juzgó si ${say.many ? "son suaves las líneas" : "es suave la línea"} ${say.all}: cada línea necesita seis cifras de una clase.`,
  },
  "not-on-the-form": {
    title: "Las caras, los puntos y las lecturas están sobre la forma",
    why: "Lo que está donde la forma no tiene nada no se puede trazar desde ella.",
    mend: "Haz que empiece y acabe donde sus líneas, parte la cara en dos por la esquina, o mide la línea hasta más lejos.",
    says: (say, { terms, figure }) => {
      if (terms?.kind === "corner inside the strip")
        return `${say.at} pasa por encima de la esquina de ${terms.by ?? "una línea"}: haz dos caras.`;
      if (figure === undefined) return `${say.at} está entre líneas que la forma no tiene.`;
      if (terms?.what === "outline") return `El contorno de ${say.at} no encierra nada.`;
      const line = terms?.by ?? say.at;
      return `${say.at} pide ${say.figure}, pero ${line === say.at ? "" : `${line} `}acaba a ${say.limit}.`;
    },
    unchecked: (say) => `No se pudo trazar ${say.all}: el plan no da una forma del barco que se pueda usar.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;

export const markRules = {
  "mark-mirror": {
    title: "Los puntos de referencia no están todos en una recta",
    why: "Desde puntos en una recta, dos cintas se cruzan en dos lugares, uno reflejo del otro. Se acaba marcando el que no es.",
    mend: "Usa para comprobar un punto fuera de esa recta, o mira dos veces de qué lado va la marca.",
    says: (say, { terms }) =>
      `Todos los puntos desde los que se traza ${say.at} están en una recta: ${terms?.by ?? ""}.`,
  },
  "mark-misplaced": {
    title: "Las marcas están en su sitio antes de taladrar",
    why: "Un agujero no se puede mover. Una marca, sí.",
    mend: "Bórrala, muévela como se dice y mide otra vez.",
    says: (say, { terms, working = [] }) => {
      const moves = [
        ["move along", terms?.along],
        ["move up or down", terms?.up],
      ].flatMap(([symbol = "", way = ""]) => {
        const value = working.find((one) => one.symbol === symbol)?.value;
        // under half a sixteenth of an inch there is nothing to move
        return typeof value === "number" && value > 8e-4 ? [`${say.step(symbol)} ${ways[way] ?? way}`] : [];
      });
      return `La marca de ${say.at} está a ${say.figure} de su sitio (se admiten ${say.limit}): muévela ${moves.join(" y ")}. No taladres ahí.`;
    },
  },
  "mark-poor-crossing": {
    title: "Las dos cintas de una marca se cruzan bien",
    why: "Donde se cruzan casi paralelas, un milímetro de cinta es un centímetro de casco.",
    mend: "Añade un punto de referencia hacia un lado, para que las cintas se crucen más cerca del ángulo recto.",
    says: (say, { terms }) =>
      `Las cintas hasta ${say.all} se cruzan a ${say.figure} en el mejor caso${terms?.by ? `, desde ${terms.by}` : ""}; hacen falta ${say.limit} al menos.`,
  },
  "mark-reading-doubt": {
    title: "Las lecturas concuerdan entre sí",
    why: "De varias lecturas que no concuerdan una está mal, y mientras no se sepa cuál, no sirve ninguna.",
    mend: "Toma otra vez las lecturas de esa marca, con otro punto de referencia más si lo hay.",
    says: (say, { terms, figure }) =>
      terms?.kind === "reading off the face"
        ? `Una lectura en ${say.at} se tomó desde ${terms.by ?? "otro lugar"}, que no está en su cara.`
        : `Una de las ${figure === undefined ? "" : `${figure} `}lecturas en ${say.at} no casa con las demás.`,
  },
  "mark-unreachable": {
    title: "Dos cintas llegan a cada marca",
    why: "Con una sola cinta se conoce un círculo, no un lugar.",
    mend: "Añade cerca un punto de referencia en la cara, permite una cinta recta hasta la marca, o toma una más larga.",
    says: (say, { figure }) =>
      `${figure === 1 ? "Solo una cinta llega" : "Ninguna cinta llega"} hasta ${say.all}; una marca necesita ${say.limit}, desde dos puntos.`,
  },
  "mark-without-check": {
    title: "Cada marca tiene una lectura de comprobación",
    why: "Dos cintas siempre se cruzan en alguna parte, también con un descuido en una. La tercera lo dice.",
    mend: "Añade un punto de referencia.",
    says: (say) => `Falta una tercera lectura para comprobar ${say.all}.`,
  },
  "marks-not-measured": {
    title: "Las marcas se miden otra vez antes de taladrar",
    why: "La lectura de comprobación lleva un minuto; el agujero es para siempre.",
    mend: "Lee la comprobación de cada marca y escríbela en el plan, en «checked».",
    says: (say) => `Después de marcar no se ${say.many ? "midieron" : "midió"} ${say.all}.`,
    unchecked: (say) =>
      `Aún no hay lecturas de ${say.all}: no se sabe si ${say.many ? "las marcas están" : "la marca está"} en su sitio.`,
  },
  "sides-differ": {
    title: "Las dos bandas son iguales",
    why: "Los cascos rara vez son iguales en las dos bandas. Con los mismos números las luces quedan entonces desiguales.",
    mend: "Usa los números de la hoja de cada banda, o decide seguir al barco antes que a la cinta.",
    says: (say, { terms }) =>
      terms?.kind === "own numbers"
        ? `Con los números de la primera banda habría un error de ${say.figure} en ${say.others} (se admiten ${say.limit}): en ${say.at} la segunda banda tiene números propios.`
        : `Según las lecturas en ${terms?.by ?? "la cara"}, ${say.at}${sides[terms?.side ?? ""] ?? terms?.side ?? ""} está a ${say.figure} de donde lo pone el plan.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;

const coordinates: Readonly<Record<string, string>> = {
  "half-breadth": "La semimanga",
  height: "La altura",
};

const readings: Readonly<Record<string, string>> = {
  breadth: "La anchura",
  girth: "El contorno",
  along: "La longitud a lo largo de la línea",
};

const ways: Readonly<Record<string, string>> = {
  forward: "hacia proa",
  aft: "hacia popa",
  left: "a la izquierda",
  right: "a la derecha",
  up: "hacia arriba",
  down: "hacia abajo",
};

const sides: Readonly<Record<string, string>> = { " to port": " a babor", " to starboard": " a estribor" };

/** A place in a table or on a line, which the core names in English: `line 4, column 2`, `chine at 1.200 m`. */
const spot = ({ at }: Say) =>
  at
    .replace(/^line (\d+), column (\d+)$/, "el renglón $1, columna $2")
    .replace(/^column (\d+)$/, "la columna $1")
    .replace(/ at (-?[\d.]+ m)$/, " a $1");
