import type { RuleId } from "../../core/findings/rules.js";
import { noFigure } from "../numbers.js";
import { pointWords } from "../proving.js";
import type { RuleWords, Say } from "../rule-words.js";
import { points } from "./points.js";

const from = (say: Say) =>
  say.others ? `De ${pointWords(say.at, points)} a ${pointWords(say.others, points)}` : `En ${say.at}`;

const gone: Readonly<Record<string, string>> = {
  "no such point": "el plan ya no tiene ese punto",
  "no such branch": "el plan ya no tiene ese fusible, interruptor o cable",
  "no such gear": "el plan ya no tiene ese aparato",
  "no such way": "el plan ya no tiene esa salida",
  "second point missing": "falta el punto de la otra punta del medidor",
  "same point twice": "las dos puntas están en un mismo punto del circuito",
};

const fitting: Readonly<Record<string, string>> = {
  "a thousand times as much": "encajaría mil veces más",
  "a thousandth of it": "encajaría su milésima parte",
};

const unplaced = (say: Say) =>
  `${from(say)} se tomó una medida, pero ${gone[say.term("why")] ?? "no tiene lugar"} (${say.term("name")}).`;

export const readingRules = {
  "reading-outside": {
    title: "Las medidas son las de un barco sin fallos",
    why: "Una medida fuera de sus márgenes es una unión, un cable, un fusible, una batería o un aparato que no está como dice el plan.",
    mend: "`skiffloom prove` ordena lo que puede ser y dice qué medir después.",
    says: (say) =>
      say.term("kind") === "marking"
        ? `Lo que hay en ${say.at} lleva marcado ${say.figure}; el plan tiene ahí ${say.limit}.`
        : `${from(say)} el medidor marcó ${say.figure}; en un barco sin fallos marca ${say.term("side") === "low" ? "al menos" : "como mucho"} ${say.limit}.`,
  },
  "reading-range": {
    title: "Las medidas son de las que un medidor puede marcar ahí",
    why: "Milivoltios escritos como voltios, o una escala equivocada, llevan por mal camino la búsqueda de un fallo.",
    mend: "Mira la escala y la unidad, y mide otra vez. Hasta entonces la medida no cuenta en la búsqueda.",
    says: (say) => {
      const fits = say.term("fits");
      return `${from(say)} constan ${say.figure}, y no puede ser${fits === noFigure ? "" : `: ${fitting[fits] ?? fits}`}.`;
    },
  },
  "readings-differ": {
    title: "Dos medidas de lo mismo coinciden",
    why: "Donde dos medidas de lo mismo difieren más de lo que pueden errar sus medidores, algo cambió entre ellas: un contacto flojo, una unión caliente, otra carga.",
    mend: "Toma otra vez las dos, moviendo los cables; hasta entonces vale la última.",
    says: (say) => `${from(say)} el medidor marcó una vez ${say.limit} y otra ${say.figure}.`,
  },
  "reading-unplaced": {
    title: "Las medidas tienen su lugar en el plan",
    why: "Una medida cuyo punto ya no está en el plan sigue constando, pero no se puede decir nada de ella.",
    mend: "Nombra el punto como lo tiene ahora el plan, o déjala como historia.",
    says: unplaced,
    unchecked: unplaced,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;
