import type { RuleId } from "../../core/findings/rules.js";
import type { RuleWords } from "../rule-words.js";
import { colourIn, placeIn } from "./trade.js";

const colourFaults: Readonly<Record<string, string>> = {
  same: "La ida y el retorno tienen el mismo color",
  "red return": "Se usa el rojo para el retorno",
  "dark live": "Se usa un color de retorno para el conductor con tensión",
  bonding: "Se usa un color reservado a la conexión equipotencial",
};

const layings: Readonly<Record<string, string>> = {
  "in a sheath": "dentro de una funda",
  singly: "con conductores sueltos",
};

export const conductorRules = {
  ampacity: {
    title: "Ningún conductor lleva más de lo que puede",
    why: "Pasado su límite, el aislante se ablanda y envejece hasta que hay un cortocircuito; detrás de un cuadro no lo ve nadie.",
    mend: "Un conductor más grueso, un aislante que aguante más calor, o menos carga en el tendido.",
    says: (say) =>
      `Un conductor de ${say.at} (${say.term("size")}) lleva ${say.figure}; su corriente admisible aquí es de ${say.limit}.`,
    unchecked: (say) => `No se pudo calcular qué corriente llevan los conductores de ${say.all}.`,
  },
  "engine-space-ampacity": {
    title: "Los conductores cuentan con el calor del compartimento del motor",
    why: "El aire caliente le quita al aislante lo que podría aguantar: un conductor que vale en cubierta puede ser demasiado fino junto a un motor.",
    mend: "Un conductor más grueso, un aislante que aguante más calor, o un camino que rodee el compartimento del motor.",
    says: (say) =>
      `En el compartimento del motor un conductor de ${say.at} (${say.term("size")}) puede llevar ${say.limit}; lleva ${say.figure}.`,
    unchecked: (say) =>
      `No se pudo calcular qué corriente llevan los conductores de ${say.all} en el compartimento del motor.`,
  },
  "shared-return": {
    title: "Un retorno compartido vale para la suma",
    why: "Cada conductor de ida tiene su fusible, pero el retorno que comparten no tiene ninguno y lleva juntas todas sus corrientes.",
    mend: "Un retorno más grueso, o un retorno propio para cada salida del cuadro.",
    says: (say) =>
      `El retorno de ${say.at} lleva la suma de ${say.others}: ${say.figure}; su sección (${say.term("size")}) admite ${say.limit}.`,
    unchecked: (say) => `No se pudo calcular qué corriente lleva el retorno compartido de ${say.at}.`,
  },
  "least-size": {
    title: "Ningún conductor es más fino que la sección mínima",
    why: "Los conductores muy finos se rompen al primer tirón o corte, por poca corriente que lleven.",
    mend: "Usa la sección mínima o una mayor; dentro de una funda se admite más fino que suelto.",
    says: (say) =>
      `La sección de ${say.at} es ${say.term("size")}, ${layings[say.term("lies")] ?? say.term("lies")}; así tendido, la mínima es ${say.term("least")}.`,
  },
  "out-of-sheath": {
    title: "Los conductores finos no salen de su funda",
    why: "La funda es lo que sujeta a un conductor fino; fuera de ella cuelga solo de sus pocos hilos.",
    mend: "Pela menos funda, o usa la sección mínima para conductores sueltos.",
    says: (say) =>
      `El conductor de ${say.at} (${say.term("size")}) va ${say.figure} fuera de su funda; ${say.limit} es lo máximo para una sección menor que ${say.term("least")}.`,
  },
  "solid-conductor": {
    title: "Los conductores son de muchos hilos",
    why: "Un barco vibra. El hilo macizo se endurece donde se dobla y se rompe dentro de su aislante.",
    mend: "Cobre de muchos hilos, estañado donde pueda mojarse.",
    says: (say) => `El conductor de ${say.at} es macizo; en un barco los conductores son de muchos hilos.`,
  },
  "hull-return": {
    title: "El casco no lleva corriente",
    why: "Una corriente por el metal del barco se lo come bajo el agua, y cualquier tornillo flojo se vuelve una unión caliente.",
    mend: "Tiende un conductor de retorno junto a cada uno de ida.",
    says: (say) => `El retorno de ${say.at} va por el casco.`,
  },
  "size-unmet": {
    title: "Alguna sección cumple todos los límites",
    why: "Si hasta en el conductor más grueso que se piensa comprar se pierde demasiado, el plan no se puede construir como está.",
    mend: "Admite secciones mayores, acorta el camino, mueve el cuadro o reparte la carga.",
    says: (say, { terms }) =>
      `Ninguna combinación de las secciones admitidas cumple todos los límites${terms?.largest ? ` (la mayor: ${terms.largest})` : ""}; no basta en ${say.all}.`,
  },
  "run-length": {
    title: "Cada tendido está medido",
    why: "La caída de tensión va con la longitud, y lo que se compra también; una suposición no sirve para ninguna de las dos cosas.",
    mend: "Pon un cordel por el camino que seguirá el cable y escribe lo que mide.",
    says: (say) => `Falta la longitud de ${say.at}.`,
    unchecked: (say) =>
      `Falta la longitud de ${say.at}: se ha supuesto ${say.step("L assumed")}, y de ahí salen todas las cifras que dependen de ella.`,
  },
  chafe: {
    title: "Los tendidos van protegidos donde pasan por un canto",
    why: "Con cada ola, un canto sierra el aislante. El cortocircuito llega años después y en algún sitio que no se ve.",
    mend: "Un pasamuros de goma, una manguera abierta a lo largo o un perfil de goma en cada agujero y cada canto, y una grapa cerca.",
    says: (say) => `Falta protección contra el roce en ${say.at}.`,
    unchecked: (say) => `El plan no dice si hay protección contra el roce en ${say.all}.`,
  },
  "conductor-colour": {
    title: "Los colores dicen la verdad",
    why: "Quien abra la caja después, quizá tú a oscuras, se fía de los colores.",
    mend: "Rojo u otro color vivo a la ida, negro o amarillo al retorno, verde solo para la conexión equipotencial.",
    says: (say) =>
      `${colourFaults[say.term("fault")] ?? "Los colores engañan"} en ${say.at} (ida: ${colourIn(say.term("out"))}; retorno: ${colourIn(say.term("return"))}).`,
    unchecked: (say) => `El plan no dice los colores de ${say.all}.`,
  },
  "untinned-wet": {
    title: "El cobre va estañado donde se moja",
    why: "El agua sube por los hilos desnudos y los vuelve negros, y la resistencia crece de la punta hacia dentro.",
    mend: "Cobre estañado, y puntas selladas.",
    says: (say) => `El cobre de ${say.at} no está estañado y está en ${placeIn(say.term("surroundings"))}.`,
  },
} as const satisfies Partial<Record<RuleId, RuleWords>>;
