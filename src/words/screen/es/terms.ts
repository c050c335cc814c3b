import type { ScreenWords } from "../en.js";

export const terms: ScreenWords["terms"] = {
  title: "Palabras del oficio",
  lead: "Lo que significan aquí. El signo de interrogación junto a una palabra abre lo mismo.",
  whatIs: (term) => `¿Qué quiere decir «${term}»?`,
  of: {
    ampacity: {
      name: "corriente admisible",
      means:
        "La mayor corriente que un conductor puede llevar siempre sin que su aislante se caliente demasiado.",
    },
    "as built": {
      name: "como quedó",
      means: "Lo que de verdad hay en el barco, donde difiere de lo planeado.",
    },
    bundle: {
      name: "mazo",
      means: "Cables que van atados juntos. Se calientan unos a otros, así que cada uno puede llevar menos.",
    },
    bus: {
      name: "barra",
      means: "Una barra de metal con varios pernos, donde muchos conductores se juntan en un punto.",
    },
    corner: {
      name: "caso",
      means:
        "Unas circunstancias en las que la instalación debe valer: la usual; la de mayor caída (batería baja, cobre caliente, todo encendido); la de mayor tensión, en carga.",
    },
    drop: {
      name: "caída de tensión",
      means:
        "Lo que se pierde en conductores y uniones entre la batería y el aparato, ida y vuelta. Por ella las lámparas lucen menos y las bombas van más lentas.",
    },
    freeboard: { name: "francobordo", means: "Altura del borde del barco sobre el agua." },
    fuse: {
      name: "fusible",
      means:
        "El punto débil puesto a propósito: se abre antes de que se caliente demasiado el conductor que protege.",
    },
    gland: {
      name: "prensaestopas",
      means: "Una pieza que deja entrar un cable en una caja y no el agua, apretándolo alrededor.",
    },
    joint: {
      name: "unión",
      means: "Un lugar donde se unen conductores: un engaste, un terminal en un perno, un enchufe.",
    },
    outing: {
      name: "salida al agua",
      means: "Un día en el agua: qué está encendido y desde cuándo hasta cuándo.",
    },
    reserve: {
      name: "reserva",
      means:
        "La parte de una batería que no se quiere usar, para cuidarla y para volver. Horas hasta la reserva: cuánto puede durar una salida hasta que solo quede eso.",
    },
    run: {
      name: "tendido",
      means: "Un cable de un lugar a otro, con el camino que hace por el barco.",
    },
    sheer: { name: "arrufo", means: "La línea del borde superior del barco, de proa a popa." },
    station: {
      name: "estación",
      means: "Un corte recto a través del barco, a una distancia dada de un extremo.",
    },
    way: {
      name: "salida del cuadro",
      means:
        "Una salida del cuadro con su interruptor y su propio fusible. Todo lo que hay detrás se enciende, se apaga y se corta junto.",
    },
  },
};
