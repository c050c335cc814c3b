import { conditionWords, stateWords } from "../../spanish/devices.js";
import { jointKinds } from "../../spanish/joint-kinds.js";
import type { ScreenWords } from "../en.js";

export const givenTexts: ScreenWords["working"]["texts"] = {
  power: "potencia constante",
  current: "corriente constante",
  resistance: "una resistencia",
  motor: "un motor",
  ...conditionWords,
  ...stateWords,
  works: "carga",
  "too cold": "demasiado frío",
  owner: "el dueño",
  drop: "la caída",
  ampacity: "la corriente admitida",
  protection: "su fusible o disyuntor",
  "least size": "la sección mínima permitida aquí",
  "suits a fuse": "un fusible que le vaya bien",
  price: "el precio",
  "smallest made": "la menor de la lista",
  cheapest: "lo más barato",
  lightest: "lo más ligero",
  proven: "demostrado",
  bounded: "lo mejor hallado",
  none: "ninguno lo cumple todo",
  "engine space": "compartimento del motor",
  bundle: "mazo",
  "insulation in warm air": "aislamiento en aire caliente",
  switch: "interruptor",
  ...jointKinds,
};
