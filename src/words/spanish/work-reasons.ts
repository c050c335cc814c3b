import type { PrecedenceReason } from "../../core/work/step.js";

export const reasonWords: Readonly<Record<PrecedenceReason, string>> = {
  "measure before cutting": "se mide antes de cortar",
  "mark before drilling": "se marca antes de taladrar",
  "drill before deburring": "el agujero va antes que su canto",
  "drill before sealing": "el agujero va antes que el sellado de su canto",
  "box holes before contents":
    "las virutas y lo de dentro no se llevan bien: la caja se taladra antes de meter nada",
  "hole before wire": "el agujero va antes que el cable",
  "cut before drawing": "se corta antes de tender",
  "wire before joint": "el cable está tendido antes de hacer sus puntas",
  "joint before shrinking": "la unión se hace antes de retraer la funda",
  "joint before sealant": "las uniones se hacen mientras aún cabe una mano detrás",
  "edge before sealant": "el canto está sellado y seco antes de poner sellador",
  "mount before wire": "la caja está fija antes de que le lleguen cables",
  "gear before joint": "el aparato está fijo antes de unir sus hilos",
  "wire before clips": "el cable está tendido antes de sujetarlo",
  "joint before connecting": "la punta está hecha antes de atornillarla",
  "connect before proving": "lo que no está conectado no se puede comprobar",
  "dead before live": "se comprueba sin batería antes de dar tensión",
  "polarity before charger":
    "unos polos cambiados se descubren antes de que los encuentre un cargador o la batería",
  "battery last": "la batería es lo último que se conecta",
  "cured before wet": "el sellador está curado antes de mojarlo",
  "prove before closing": "se comprueba antes de cerrar",
  "label before closing": "se etiqueta antes de cerrar",
  "mark leaned on": "se mide desde una marca que debe estar ahí",
  "largest end first": "la punta más grande pasa mientras hay sitio",
  "covered before working":
    "un panel solar se tapa antes de acercar las manos a su cable o de quitar la batería",
  "panel last":
    "un panel solar vuelve a ver la luz solo cuando batería y regulador están para tomar lo que da",
  "battery off first": "la batería está desconectada antes de meter las manos",
  "open before working": "se abre antes de trabajar dentro",
};
