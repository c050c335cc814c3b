import type { SheetWords } from "../proof/proof-words.js";

/** A range stays with its unit, since a column of the sheet is narrow. */
const tied = (range: string): string => range.replaceAll(" ", "\u00a0");

/** The sheet of tests in Spanish. */
export const sheet: SheetWords = {
  tests: {
    insulation: "Aislamiento, positivo con negativo",
    "insulation to hull": "Aislamiento con el casco",
    "continuity out": "Continuidad, conductor positivo",
    "continuity back": "Continuidad, conductor negativo",
    colours: "Positivo con positivo",
    "resting voltage": "Batería en reposo",
    rating: "Calibre del fusible",
    "live point": "Llega la alimentación",
    "switched off": "Interruptor apagado",
    "unloaded voltage": "Tensión sin carga",
    current: "Corriente",
    "loaded voltage": "Tensión con carga",
    "drop out": "Caída, conductor positivo",
    "drop back": "Caída, conductor negativo",
    "pump running": "Bomba con carga",
    "float switch": "Interruptor de flotador",
    "seen from": "Desde dónde se ve",
    leak: "Prueba de estanqueidad",
  },
  stops: {
    "never below the limit": "Si es menos: busca primero la fuga.",
    "no way through": "Si es más: una unión está abierta o en mal estado.",
    "wrong way round": "Un signo menos o nada: polos cambiados o circuito abierto.",
    "battery not as charged": "Fuera de ahí: cárgala, o duda de ella.",
    "not that rating": "Si es otro: cámbialo antes de dar corriente.",
    "still live": "Si es más: el interruptor está en el conductor equivocado.",
    "outside the band": "Fuera de ahí: encuentra la causa antes de cerrar.",
    "runs hot or dry": "Fuera de ahí, en seco o caliente: apaga.",
    "does not start": "No arranca, o no para.",
    "not seen": "Apagada, o se ve fuera de su sector.",
    "lets water in": "Una sola gota dentro: sella de nuevo.",
  },
  sections: {
    insulation: () =>
      "Aislamiento: baterías desconectadas, fusibles puestos, interruptores cerrados, aparatos fuera de sus empalmes. Donde un aparato sigue unido, su interruptor abierto, y los conductores que siguen quedan sin probar",
    continuity: () => "Continuidad: baterías desconectadas, fusibles puestos, interruptores cerrados",
    polarity: (at) =>
      at === ""
        ? "Polaridad: por colores, en las dos puntas"
        : `Polos del cable de ${at}: las dos puntas sueltas, nada enchufado, el panel tapado`,
    battery: (at) => `Batería ${at}: se conecta al final, con todo apagado`,
    feed: (at) => `Directo desde ${at}`,
    way: (at) => `Salida ${at}`,
    seen: (at) => `Luces de navegación en ${at}: de noche, desde fuera`,
    holes: () => "Agujeros: manguera durante cinco minutos, y alguien dentro con una linterna",
  },
  how: {
    marking: (branch) => `lee lo que lleva impreso: ${branch}`,
    clamp: (branch) => `pinza alrededor del conductor en ${branch}`,
    ownSwitchOff: "con su interruptor apagado",
    gearOff: "con el interruptor encendido y el aparato apagado",
    hull: (at) => `positivo de ${at} con metal desnudo, luego negativo con metal desnudo`,
    colours: (at) => `${at}: su positivo en el conductor positivo, su negativo en el negativo`,
    float: (at) => `levanta el flotador de ${at}, con el interruptor general apagado`,
    sidelights: (at, arc) =>
      `da la vuelta alrededor: ${at}, roja a babor, verde a estribor, cada una desde justo por la proa hasta ${arc} a popa del través; más allá no se ve`,
    allRound: (at) => `da la vuelta entera alrededor: ${at}`,
    arc: (at, arc) => `da la vuelta alrededor: ${at} se ve en ${arc}, y más allá no`,
    leak: (at) => `agujero de ${at}: moja por fuera, desde abajo y en el sentido de la pendiente`,
  },
  expected: { allRound: "todo alrededor", dry: "seco", ownArc: "su propio sector", right: "bien" },
  instruments: {
    clamp: (range) => `pinza, ${tied(range)}`,
    meter: (range) => `polímetro, ${tied(range)}`,
    plainMeter: "polímetro",
    eyes: "a la vista",
    hose: "manguera, linterna",
  },
};
