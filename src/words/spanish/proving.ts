import type { ProvingWords } from "../proof/proof-words.js";
import { joinedInSpanish } from "./joining.js";
import { jointInSpanish } from "./joint-kinds.js";
import { points } from "./points.js";

const noGear = (name: string) => `el plan ya no tiene el aparato ${name}`;

/** What readings tell, in Spanish. */
export const proving: ProvingWords = {
  points,
  branches: {
    lead: {
      out: (gear) => `${gear}, su propio conductor positivo`,
      return: (gear) => `${gear}, su propio conductor negativo`,
    },
    device: {
      fuse: (of) => `${of}, su fusible`,
      switch: (of) => `${of}, su interruptor`,
      main: (of) => `${of}, su fusible general`,
      master: (of) => `${of}, su interruptor general`,
    },
    out: (run, way) => `${run}, su conductor positivo (${way})`,
    return: (run) => `${run}, su conductor negativo`,
    ownLeads: (gear) => `los conductores propios de ${gear}`,
  },
  allOff: "con todo apagado",
  on: (gear) => `con esto encendido: ${gear}`,
  probes: {
    voltage: (at, against, on) => `voltios de ${at} a ${against}, ${on}`,
    current: (at, on) => `amperios en ${at}, ${on}`,
    ohm: (at, against, apart) => `ohmios de ${at} a ${against}, con las baterías desconectadas${apart}`,
    marking: (at) => `lo que lleva impreso ${at}`,
    switches: (gear) => `, con el interruptor de ${gear} cerrado`,
    lifted: (wires) => `, con esto suelto del lado de la alimentación: ${wires}`,
  },
  cut: (joint) => ` (cortar su ${jointInSpanish(joint)} y hacerlo de nuevo: solo si nada más ayuda)`,
  open: "abierto",
  atLeast: (reading) => `al menos ${reading}`,
  atMost: (reading) => `como mucho ${reading}`,
  range: (from, to) => `${from} a ${to}`,
  joined: (names) => {
    const last = names.at(-1) ?? "";
    const before = names.slice(0, -1).join(", ");
    return before === "" ? last : `${before} ${joinedInSpanish.and(last)} ${last}`;
  },
  verdicts: {
    within: "como se espera",
    low: "menos de lo debido",
    high: "más de lo debido",
    impossible: "no puede ser",
    unchecked: "sin comprobar",
    "before the mend": "antes del arreglo",
  },
  faults: {
    well: "Ningún fallo",
    resistance: "Una unión o un contacto en mal estado",
    "two resistances": "Dos uniones o contactos en mal estado",
    open: "Un corte",
    "fuse blown": "Un fusible fundido, o que no hace contacto en su portafusibles",
    short: "Un cortocircuito entre positivo y negativo",
    reversed: "Positivo y negativo cambiados",
    "wrong fuse": "Un fusible de otro calibre",
    "gear dead": "El aparato mismo no funciona",
    "battery low": "La batería está baja",
    "battery worn": "La batería está gastada",
  },
  suspects: {
    well: "Ningún fallo en lo que se midió: un barco sin fallos puede marcarlo. De lo que no se midió no se sabe nada.",
    farEnd: (cable) => `en el extremo más lejano de ${cable}`,
    more: (ohms) => `, ${ohms} más de lo debido`,
    under: (voltage) => `, ${voltage} menos que en el plan`,
    looksLike: (rating) => `, parece de ${rating}: un medidor apenas lo nota, lee lo que lleva impreso`,
    first: (part) => ` Mira primero ${part}.`,
  },
  parts: {
    conductor: "el conductor mismo",
    lead: "el conductor propio del aparato",
    "lead fuse": "el fusible de ese conductor",
    protection: "el fusible y su portafusibles",
    switch: "los contactos",
    hull: "el casco",
  },
  joint: (kind, end) => {
    const name = `el ${jointInSpanish(kind)}`;
    if (end === undefined) return name;
    return `${name} de su ${end === "start" ? "comienzo" : "final"}`;
  },
  wouldFit: {
    more: "encajaría mil veces más: mira la escala",
    less: "encajaría la milésima parte: mira la escala",
  },
  flipped: {
    probes: "con el signo contrario encajaría: las puntas estaban al revés; escríbela sin el signo menos",
    "probes or wires":
      "con el signo contrario encajaría: las puntas estaban al revés, o lo están los conductores; pon la roja en el positivo y mide otra vez",
  },
  laterCounts: "vale la última",
  meterOff: {
    high: (share) =>
      `Todas las tensiones enteras son un ${share} más altas, poco más o menos: la batería se está cargando, o la pila del medidor está gastada. Prueba el medidor con algo conocido antes de creer lo demás.`,
    low: (share) =>
      `Todas las tensiones enteras son un ${share} más bajas, poco más o menos: la batería está baja, o el medidor marca de menos. Prueba el medidor con algo conocido antes de creer lo demás.`,
  },
  differs: (rows) => `difiere de la medida ${rows}`,
  mended: (place) => `de ${place}`,
  readAgain: "medido de nuevo después",
  idleMends: {
    "no such place": (place) =>
      `Consta un arreglo de ${place}, que ahora no es nada del plan: no anula ninguna medida.`,
    "no day": (place) =>
      `El arreglo de ${place} no tiene día: lo medido antes no se distingue de lo medido después.`,
  },
  soundBoat: (band) => `un barco sin fallos: ${band}`,
  changed: (reading, was, project, is) => `Ahora ${is}; cuando se terminó ${project}, ${was} (${reading}).`,
  unplaced: {
    "no such point": (name) => `el plan ya no tiene el punto ${name}`,
    "no such branch": (name) => `el plan ya no tiene el fusible, interruptor o cable ${name}`,
    "no such gear": noGear,
    "no such way": noGear,
    "second point missing": () => "falta el punto de la otra punta del medidor",
    "same point twice": () => "las dos puntas están en un mismo punto del circuito",
  },
};
