import type { WaterWords } from "../proof/proof-words.js";
import { devices } from "./devices.js";

/** The card for the water in Spanish. */
export const water: WaterWords = {
  atRest: "en reposo",
  switches: {
    live: "sigue con corriente con el interruptor general apagado",
    own: "con interruptor propio",
    none: "sin interruptor",
  },
  noFuse: "sin fusible propio",
  devices,
  device: (kind, rating) => `${kind} de ${rating}`,
  outing: (name, use) => `como en ${name}, ${use} de media`,
  lights: (use) => `solo las luces de navegación, ${use}`,
  inUse: (count) => `${count} en uso`,
  gains: (time) => `se ganan ${time}`,
  things: {
    torch: "linterna",
    meter: "polímetro",
    "sealed butts": "empalmes a tope estancos",
    tape: "cinta",
  },
};
