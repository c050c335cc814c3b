import { limits } from "../../core/plan/source/limits.js";
import type { ReadProblemWords, ReadSaid } from "../problems/problem-words.js";
import { grouped } from "../problems/told.js";
import { expectedInSpanish } from "./read-expected.js";
import { yamlInSpanish } from "./yaml-problems.js";

const count = (value: number) => grouped(value, "\u202f");
const unreadable = ({ found, expected }: ReadSaid) => `No se puede leer ${found}. Se espera ${expected}.`;

/** A plan's problems in Spanish. Keys, names and words of the plan's format stay as they are written there. */
export const readProblemsInSpanish: ReadProblemWords = {
  item: (no) => `n.º ${no}`,
  where: (line, column) => `línea ${line}, columna ${column}`,
  quoted: (text) => `«${text}»`,
  form: { list: "una lista", section: "una sección con claves" },
  codes: {
    "not utf-8": () => "A partir de aquí el archivo no es texto UTF-8; guárdalo como UTF-8.",
    "too large": () =>
      `El archivo es demasiado grande; un plan puede tener ${limits.maxBytes / 1024 / 1024} MB.`,
    "too deep": () =>
      `Hay demasiadas secciones unas dentro de otras; un plan no necesita más de ${limits.maxDepth} niveles.`,
    "too many values": () => `El plan contiene demasiado; puede tener ${count(limits.maxValues)} valores.`,
    "too many aliases": () =>
      `Hay demasiadas referencias (*nombre); un plan puede tener ${count(limits.maxAliases)}, y ninguna que se multiplique.`,
    "too much gear": ({ bare }) =>
      `Son ${bare} equipos, sumadas las cantidades; un plan puede tener ${count(limits.maxGear)}.`,
    "more problems": () => "Hay más problemas después de estos; arregla primero estos.",
    "several documents": () =>
      "Aquí empieza un segundo documento (---); un archivo de plan contiene uno solo.",
    empty: () => "El archivo está vacío. Un plan empieza con «skiffloom: 1», un nombre y las normas.",
    tag: ({ found }) => `La etiqueta ${found} no se usa en los planes; quítala.`,
    "merge key": () =>
      "«<<» no mezcla en YAML 1.2; escribe las claves una a una, o usa *nombre para un valor entero.",
    "unknown alias": ({ bare }) => `*${bare} no se refiere a nada: antes no hay ningún &${bare}.`,
    "alias in itself": ({ bare }) => `*${bare} está dentro de su propio &${bare}.`,
    "key not a word": () => "Aquí una clave tiene que ser una palabra, o varias, sin más.",
    "bad name": ({ found }) =>
      `${found} no puede ser un nombre: no puede llevar « / », ni espacio o barra en un extremo, ni más de ${limits.maxNameLength} letras, ni ser una palabra con significado propio.`,
    "duplicate key": ({ found, firstLine }) =>
      `${found} está escrito dos veces; la primera está en la línea ${firstLine}.`,
    "unknown key": ({ found, guessed, expected }) =>
      `Aquí no hay ninguna clave ${found}.${guessed ? "" : ` Las conocidas son: ${expected}.`}`,
    "missing key": ({ found }) => `Falta la clave ${found}.`,
    "wrong form": ({ form, expected }) => `Se espera ${expected}, y hay ${form}.`,
    "nothing written": ({ expected }) =>
      `Aquí no hay nada escrito. Se espera ${expected}; para omitirlo, borra la línea.`,
    "not one of": ({ found, expected }) => `${found} no es ninguno de estos: ${expected}.`,
    "number needed": ({ found, expected }) => `Se espera ${expected} sin unidad, y hay ${found}.`,
    "other unit": ({ found, expected }) =>
      `${found} tiene otra unidad que la lectura a la que pertenece; se espera ${expected}.`,
    "out of limits": ({ found, expected }) =>
      `${found} está fuera de los límites: tiene que ser ${expected}.`,
    "both keys": ({ expected }) => `Escribe solo una de estas claves: ${expected}.`,
    "neither key": ({ expected }) => `Hace falta una de estas claves: ${expected}.`,
    "newer format": ({ bare, expected }) =>
      `El plan está escrito en el formato ${bare}; este programa lee hasta el ${expected}. Se ha dejado como está; hace falta un Skiffloom más nuevo.`,
    "no such format": ({ bare, expected }) =>
      `No existe el formato ${bare}; escribe «skiffloom: ${expected}».`,
    "names alike": ({ found, firstLine }) =>
      `${found} parece el nombre de la línea ${firstLine} y es otro: difieren en signos que no se distinguen a la vista, aquí entre corchetes. Escribe los dos igual, o da a cada cosa el suyo.`,
    "name used twice": ({ found, firstLine }) =>
      `${found} ya es el nombre de algo en la línea ${firstLine}; da a cada cosa el suyo.`,
    "unknown place": ({ found }) => `Nada en el plan se llama ${found}.`,
    "unknown way": ({ found }) => `No hay ninguna salida del cuadro ${found}.`,
    "unknown outlet": ({ found, expected }) =>
      `${found} no existe; las salidas de un convertidor son: ${expected}.`,
    "no outlets": ({ found }) =>
      `${found} no existe: solo los cuadros, las cajas y los convertidores tienen salidas.`,
    "ambiguous way": ({ found, expected }) =>
      `${found} es el nombre de varias salidas del cuadro; escribe una de estas: ${expected}.`,
    "unknown battery": ({ found }) => `No hay ninguna batería llamada ${found}.`,
    "unknown waypoint": ({ found }) => `No hay ningún punto de paso llamado ${found}.`,
    "unknown gear": ({ found }) => `No hay ningún equipo llamado ${found}.`,
    "unknown face": ({ found }) => `No hay ninguna cara llamada ${found}.`,
    "unknown reference": ({ found }) => `No hay ningún punto de referencia llamado ${found}.`,
    "unknown line": ({ found, guessed, expected }) =>
      `Aquí no hay ninguna línea llamada ${found}.${guessed ? "" : ` Las conocidas son: ${expected}.`}`,
    "one side only": ({ found }) => `${found} está en una sola banda del barco: no tiene pareja.`,
    "odd pair": ({ bare }) => `Un par necesita los mismos en cada banda; ${bare} es impar.`,
    itself: ({ found }) => `${found} está conectado consigo mismo.`,
    "wrong count": ({ bare, expected }) => `El número de longitudes es ${bare}; se espera ${expected}.`,
    "ends before it begins": () => "Empieza después de terminar.",
    "after the end": ({ found }) => `${found} cae después del final de la salida al agua.`,
  },
  faults: {
    empty: unreadable,
    "no number": unreadable,
    "no unit": ({ found, expected }) => `A ${found} le falta la unidad. Se espera ${expected}.`,
    "unknown unit": ({ found, expected }) => `No se conoce la unidad de ${found}. Se espera ${expected}.`,
    "wrong kind": ({ found, kind, expected }) => `${found} es ${kind}. Se espera ${expected}.`,
    comma: ({ found, expected }) =>
      `${found} lleva una coma; escribe un punto para los decimales y nada entre los miles. Se espera ${expected}.`,
    order: ({ found, expected }) =>
      `Las partes de ${found} no van juntas en este orden. Se espera ${expected}.`,
    absurd: ({ found, expected }) => `${found} es demasiado grande para ser cierto. Se espera ${expected}.`,
    "not made": ({ found, expected }) => `No hay conductor de la sección ${found}. Se espera ${expected}.`,
  },
  meant: (nearest, sure) => (sure ? `¿Querías decir «${nearest}»?` : `¿Quizá «${nearest}»?`),
  expected: expectedInSpanish,
  yaml: yamlInSpanish,
};
