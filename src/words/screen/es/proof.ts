import type { ScreenWords } from "../en.js";

export const proof: ScreenWords["proof"] = {
  parts: { sheet: "Medidas que tomar", faults: "Qué puede fallar", water: "En el agua" },
  sheetHint:
    "En este orden, primero con la batería desconectada. Escribe al lado lo que marca el medidor; un número solo vale en la unidad indicada. Las normas locales, las instrucciones del fabricante y los profesionales con licencia van primero.",
  meterShows: (how) => `El medidor marca: ${how}`,
  meterShowsNow: "El medidor marca",
  markedNow: "Lleva marcado",
  notRead: "sin medir aún",
  notAReading: (unit) => `se espera una medida, por ejemplo 12.3 ${unit}`,
  otherKind: (unit) => `aquí se espera una medida en ${unit}`,
  noReadings:
    "Aún no consta ninguna medida. Toma algunas de la hoja; entonces aquí se calcula qué puede fallar.",
  suspects: "Lo más probable primero",
  others: (count) => `Menos probable: ${count} más`,
  unexplained:
    "Nada de esto explica bien las medidas: vuelve a medir lo que parezca raro, o busca más de un fallo.",
  notApart: (count) =>
    `Las medidas de ahora no distinguen entre los primeros ${count}, y no es por nada que hayas hecho mal: una medida más puede hacerlo, o míralos en este orden.`,
  next: "Mide ahora",
  orElse: "O bien:",
  nothingMore:
    "Ninguna otra medida diría más que mirarlo: mira los sospechosos en este orden, arregla lo que encuentres y mide de nuevo.",
  again: "Mide de nuevo, para comprobar el arreglo",
  againHint:
    "En el extremo de la salida se vería también un segundo fallo: hasta entonces el arreglo no está comprobado.",
  mendedNow: "Esto lo he arreglado",
  mends: "Arreglado",
  mendNote: "Nota",
  mendNoteHint: "qué estaba mal, qué has puesto",
  takeBack: "Deshacer",
  beforeMend: (reading) => `${reading} antes del arreglo`,
  aged: "Cambió desde que se terminó el proyecto",
  judged: "Medidas que constan",
  howLong: "¿Cuánto durará?",
  battery: "Batería",
  voltmeter: "El voltímetro marca",
  whatWasOn: "Con esto encendido",
  fromNowOn: "Consumo de ahora en adelante",
  typeVolts: "Escribe lo que marca el voltímetro.",
  left: (charge, range, hours) =>
    hours === undefined
      ? `Cargada al ${charge} más o menos (${range}); sin consumo.`
      : `Cargada al ${charge} más o menos (${range}); ${hours} hasta la reserva.`,
  beyond: {
    "above full":
      "Más de lo que marca una batería llena de su tipo: se está cargando, o están mal la medida, la corriente o la batería elegida. No dice cuántas horas quedan.",
    "below empty":
      "Menos de lo que marca una batería vacía de su tipo: están mal la medida, la corriente o la batería elegida, o la batería está dañada. No dice cuántas horas quedan; no cuentes con ella.",
  },
  hoursOf: (battery, reserve) => `Horas que quedan en ${battery}, hasta su reserva del ${reserve}`,
  turnOff: "Apaga primero",
  switches: "Qué interruptor, qué fusible",
  spares: "Repuestos que llevar",
};
