import { asking } from "../../screen/es/asking.js";
import { many } from "../../spanish/many.js";
import type { TerminalWords } from "../english.js";

const small = <Key extends string>(words: Readonly<Record<Key, string>>): Record<Key, string> => {
  const said = { ...words } as Record<Key, string>;
  for (const key of Object.keys(words) as Key[]) said[key] = words[key].toLowerCase();
  return said;
};

export const work: TerminalWords["work"] = {
  order: {
    allDone: "Todos los pasos están hechos.",
    wait: (hours) => `No antes de que pasen ${hours}.`,
    next: "Ahora",
    minutes: (title, minutes) => `${title}  (${minutes}\u00a0min)`,
    called: (id) => `se llama ${id}`,
    tools: (names) => `herramientas: ${names}`,
    takes: (names) => `gasta: ${names}`,
    title: "Orden de trabajo",
    lead: (steps, of, hours, changes, span, proof) =>
      `${steps === 1 ? "Queda" : "Quedan"} ${many(steps, "paso", "pasos")} de ${of}; ${hours} de trabajo, ${many(changes, "cambio", "cambios")} de herramienta, hecho ${span} después de empezar. ${proof}`,
    assumedHours:
      "Tus horas libres no están en el plan: se supusieron las tardes de 19:00 a 21:30 y el fin de semana.",
    getOut: (tool) => `se saca: ${tool}`,
    putAway: (tools) => `se guarda ya del todo: ${tools}`,
  },
  built: {
    lead: (ticks, readings, projects) =>
      `Constan ${many(ticks, "paso hecho", "pasos hechos")}, ${many(readings, "lectura", "lecturas")} y ${many(projects, "proyecto terminado", "proyectos terminados")}.`,
    measured: "medido",
    asSaid: "como decía el paso",
    cables: "Cables",
    cableHeads: { run: "tendido", length: "longitud", size: "sección", how: "cómo", when: "cuándo" },
    holes: "Agujeros",
    holeHeads: { hole: "agujero", on: "en", at: "sitio", size: "medida", behind: "detrás", how: "cómo" },
    entries: "Agujeros de cajas",
    entryHeads: { box: "caja", run: "para", side: "cara", size: "medida", how: "cómo" },
    joints: "Uniones",
    jointHeads: { at: "en", end: "extremo", kind: "clase", when: "cuándo" },
    ends: { start: "principio", end: "final" },
    devices: "Fusibles y disyuntores",
    deviceHeads: { device: "dispositivo", rating: "calibre", when: "cuándo" },
    onSide: (face, side) => `${face}, ${side}`,
  },
  said: {
    resting: "En reposo",
    noTime: "no consta la hora",
    left: (hours) => `faltan ${hours}`,
    over: "ya pasó",
    otherwise: "Hecho de otro modo que el que pide ahora el plan",
    record: "Sobre lo apuntado",
  },
  asked: {
    oneAtATime: "solo una de --done, --undo, --step y --finish cada vez",
    noStep: (step) => `no hay ningún paso ${step}`,
    ticked: (step) => `${step} ya está marcado; --undo lo deshace`,
    notTicked: (step) => `${step} no está marcado`,
    needsBoth: "una nota necesita --note TEXTO y --step PASO (o --done PASO)",
    listed: "; skiffloom work PLAN --all los enumera",
    meant: (step) => `; ¿querías decir '${step}'?`,
  },
  changes: {
    onlyOne: "solo uno de los dos planes puede venir de la entrada estándar",
    nothing: "No cambia nada.",
    heads: {
      written: "Escrito de otro modo",
      figures: "Cifras",
      findings: "Hallazgos",
      parts: "Material",
      work: "Trabajo",
      built: "Hecho de otro modo que el que pide el plan nuevo",
    },
    figureHeads: { at: "en", figure: "cifra", before: "antes", after: "después" },
    partHeads: { item: "artículo", needed: "necesario", buy: "por comprar" },
  },
  apply: {
    eitherOr: "da el número de un remedio o --edit; skiffloom apply --help dice cómo",
    number: (asked) => `hace falta el número de un remedio, como 3 o 3b, no ${asked}`,
    noFinding: (number, has) => `no hay hallazgo ${number}: el plan tiene ${has}`,
    noRemedy: (number, finding, has) =>
      `no hay remedio ${number}: el hallazgo ${finding} ${has === 0 ? "no tiene ninguno que se pueda aplicar aquí" : `tiene ${has}`}`,
    noJson: (why) => `lo que sigue a --edit no es JSON: ${why}`,
    noEdit: '--edit espera un cambio como {"edit": "set run size", "at": "lamp trunk", "to": "14 AWG"}',
    done: (edit, path) => `${edit}: escrito en ${path}`,
  },
  packet: {
    nothingLeft: "no queda ningún paso del trabajo: no hay nada que hacer que pida una hoja",
    nowAlone: "--now va con --for tonight o --for project",
  },
  sheet: {
    pageAlone: "--page va con --only: di de qué parte se quiere la página",
    pages: (title, pages) => `${title}, ${pages === 1 ? "1 página" : `${pages} páginas`}`,
    noPage: (pages, title, asked) => `--page admite de 1 a ${pages} en ${title}, no ${asked}`,
  },
  tables: {
    line: (line) => `línea ${line}`,
    column: (column) => `columna ${column}`,
    "open-quote": "Se abren unas comillas y no se cierran.",
    "text-after-quote":
      "Algo sigue a unas comillas de cierre; dentro de una celda las comillas se escriben dobles.",
    "quote-in-plain-field": "Hay comillas dentro de una celda que no empieza por ellas.",
    "too-large": "La tabla es demasiado grande.",
    unknownColumn: (column, nearest) =>
      `No hay ninguna columna «${column}».${nearest === undefined ? "" : ` ¿Quizá «${nearest}»?`}`,
    missingColumn: (column) => `Falta la columna ${column}.`,
    columnTwice: (column) => `La columna ${column} está dos veces.`,
    tooManyCells: (found, expected) => `${found} celdas donde el encabezado tiene ${expected}.`,
    emptyCell: (column) => `La celda bajo ${column} está vacía.`,
    namesAlike: (found, firstLine) =>
      `«${found}» parece el nombre de la línea ${firstLine} y es otro: difieren en signos que no se distinguen a la vista, aquí entre corchetes. Escribe los dos igual.`,
    nameTwice: (found, firstLine) => `«${found}» ya está en la línea ${firstLine}.`,
    notOneOf: (found, allowed) => `«${found}» no es ninguna de estas: ${allowed}.`,
    notACount: (found) => `«${found}» no es una cantidad; hace falta un número entero.`,
    negativeStock: (found) => `«${found}» es menos que nada; cuenta lo que hay.`,
    notAQuantity: (found, nearest) =>
      `«${found}» no se puede leer${nearest === undefined ? "" : `; ¿quizá «${nearest}»?`}.`,
    notAPrice: (text) => `«${text}» no es un precio; escribe 12.50 EUR.`,
    tooManyDecimals: (text, allowed) => `«${text}» tiene más decimales que los ${allowed} de su moneda.`,
    twoCurrencies: (currencies) =>
      `Los precios en ${currencies.join(" y ")} no se pueden sumar; usa una sola moneda.`,
  },
  fresh: {
    unsound: "con estas respuestas no sale un plan correcto:",
    written: (path) => `${path}: escrito. Míralo con: skiffloom check ${path}`,
    wanted: (kind) => `hace falta: ${kind}`,
    fewWords: "unas palabras, por favor",
    slash: "' / ' no puede ser parte de un nombre",
    taken: "ese nombre ya está usado",
    whole: "un número entero desde 1",
    yes: "sí",
    no: "no",
    name: "Cómo se llama el barco",
    usualName: "mi barco",
    kind: "Qué clase de barco es",
    usualKind: "bote",
    length: "Cuánto mide de largo",
    chemistries: { flooded: "abierta", agm: "agm", gel: "gel", lifepo4: "lifepo4" },
    roles: small(asking.roles),
    petrol: "Hay gasolina a bordo (sí o no)",
    rules: "Qué reglas: us o iso",
    chemistry: (these) => `Qué clase de batería (${these})`,
    capacity: "Su capacidad",
    voltage: "Su tensión",
    feed: "Cable de la batería al cuadro, cuánto mide",
    firstGear: "Primer aparato (vacío si no hay ninguno)",
    nextGear: "Siguiente aparato (vacío si ya están todos)",
    role: (these) => `Qué es (${these})`,
    draws: "Qué consume cada uno",
    count: "Cuántos iguales",
    cable: "Cable del cuadro hasta él, cuánto mide",
  },
};
