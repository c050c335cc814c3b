import type { ScreenWords } from "../en.js";

export const keeping: ScreenWords["keeping"] = {
  kept: "Guardado",
  keeping: "Guardando …",
  failed: "Sin guardar",
  failedWhy: (reason) =>
    `El navegador no quiso guardar el último cambio: ${reason}. Guárdalo ahora en un archivo.`,
  unkept: "No se guarda en este navegador",
  onlyHere: "La única copia está en este navegador.",
  onlyHereHint: "Un navegador puede perder lo que guarda. Guarda una copia en otro sitio.",
  backUp: (edits) =>
    `Hay ${edits} cambios guardados en este navegador y en ningún otro sitio. Un navegador puede perder lo que guarda: guarda una copia en un archivo.`,
  backUpLater: "Luego",
  saveCopy: "Guardar una copia",
  saveTo: (file) => `Guardar en ${file}`,
  saved: (file) => `Guardado en ${file}.`,
  savedAs: (when) => `Guardado por última vez en un archivo ${when}`,
  fileChanged: (file) =>
    `Algo cambió ${file} desde que se abrió. No se ha sobrescrito; guarda con otro nombre o ábrelo de nuevo.`,
  fileFailed: (reason) => `No se pudo guardar el archivo: ${reason}`,
  persisted: "El navegador ha aceptado no borrarlo por su cuenta.",
  notPersisted: "El navegador puede borrarlo si se queda sin sitio.",
  fromOtherTab: "Cambiado en otra pestaña; esta la sigue.",
  merged: "Se han tomado tu cambio y uno de otra pestaña.",
  bothKept:
    "Este cambio y uno hecho en otra pestaña tocan el mismo sitio. Se guardan los dos: se muestra el otro y el tuyo está en el diario.",
  compareBoth: "Comparar los dos",
  takeMine: "Tomar el mío",
  leaveIt: "Dejarlo así",
  notMade:
    "El texto no se ha tomado: no se ha podido traer la parte de la página que lee las escrituras poco usuales. Prueba otra vez.",
  undoMoved: "El plan acaba de cambiar en otra pestaña; no se ha deshecho nada.",
  updateReady: "Hay una versión más nueva de esta página.",
  updateNow: "Tomarla ahora",
  updateLater: "Más tarde",
  olderFormat: (from) =>
    `Este archivo estaba en el formato ${from} y se ha puesto al día. El archivo no cambia hasta que guardes.`,
  newerDatabase:
    "Lo guardado en este navegador lo escribió un Skiffloom más nuevo. Vuelve a cargar la página; no se ha cambiado nada.",
  brokenHistory: (step) =>
    `El historial está dañado en el paso ${step}. Se muestra hasta ahí, solo lectura; no se ha sobrescrito nada. Guarda una copia.`,
  damaged: "Este archivo no se puede leer como plan. Se muestra como está y no se escribe nada en él.",
  makeCopy: "Arreglar una copia",
  makeCopyHint:
    "Pone el texto en el estante como plan nuevo, donde lo puedes arreglar. El archivo queda como está.",
  newer: "Este archivo lo escribió un Skiffloom más nuevo. Se muestra como está y no se escribe nada en él.",
  tooLarge: (limit) => `El archivo es mayor de lo que puede ser un plan (${limit}).`,
  fileEmpty: "El archivo está vacío.",
  fileUnread: (reason) => `No se pudo leer el archivo: ${reason}`,
  notRead: "El navegador no pudo leer lo que guarda de este plan. No se cambió nada.",
  noPlanHere: "No hay tal plan en este navegador.",
  otherTabTakesOver: "Otra pestaña usa ya una versión más nueva. Vuelve a cargar esta.",
};
