import type { ScreenWords } from "../en.js";

export const tape: ScreenWords["tape"] = {
  title: "Estación por estación",
  table: "Estaciones y medidas",
  station: "Estación",
  column: (line, coordinate) => `${line} ${coordinate}`,
  short: { "half-breadth": "semimanga", height: "altura" },
  drawn: (value) => `${value}, dibujado, sin medir`,
  faired: (value) => `${value}, de la línea alisada, sin medir`,
  stationTaken: "Esa estación ya está en la cartilla.",
  nothingMeasured:
    "Aquí no se ha medido nada todavía. Escribe antes una medida, o escribe la estación en la última línea.",
  notChecked: "Sin comprobar: una línea enseña cómo se curva a partir de seis medidas.",
  noneHere: "Aquí sin medir.",
  off: {
    "half-breadth": {
      more: (length) => `${length} más ancho`,
      less: (length) => `${length} más estrecho`,
    },
    height: { more: (length) => `${length} más alto`, less: (length) => `${length} más bajo` },
  },
  agrees: (off, fair, limit) =>
    `Va con las demás: ${off} que los ${fair} a los que apuntan; hasta ${limit} no es de extrañar.`,
  differs: (off, fair, limit) =>
    `No va con las demás: ${off} que los ${fair} a los que apuntan, cuando lo más serían ${limit}. Mídelo otra vez; si sale igual, el barco es así.`,
  agreement: (good, bad, unchecked) =>
    [
      good > 0 ? `${good} van con las demás` : "",
      bad > 0 ? (bad === 1 ? "1 no va" : `${bad} no van`) : "",
      unchecked > 0 ? `${unchecked} sin comprobar` : "",
    ]
      .filter((part) => part !== "")
      .join(", "),
  nothingToCheck: "Todavía no se ha medido nada, así que nada está comprobado.",
  howWell: "Cómo concuerdan las medidas",
  toWorst: "Ir a ella",
  fromDrawing:
    "Lo que va en cursiva está dibujado: viene de la forma con la que se empezó, y nadie lo ha medido.",
  spread: "Una lectura puede errar en",
  bare: "Un número sin unidad va en",
  bareUnits: { mm: "milímetros", cm: "centímetros", m: "metros", in: "pulgadas" },
  now: "Mide ahora",
  nowAt: (station, what) => `Estación ${station}: ${what}`,
  figure: "La cinta marca",
  takeOut: "Quitar esta medida",
  before: "Atrás",
  next: "Siguiente",
  atEnd: "Era la última.",
  hold: {
    "half-breadth":
      "Del centro del barco hacia fuera hasta la línea, a escuadra y a nivel. De banda a banda es más seguro: escribe la mitad.",
    height:
      "Derecho hacia arriba desde la línea de base hasta la línea. La línea de base va a nivel, a la altura del punto más bajo de la quilla en el centro.",
  },
  drawing: (station) => `Su sección en la estación ${station}, vista desde popa`,
  overview: "Semimangas arriba, alturas abajo, con la estación que se mide ahora",
  centreline: "centro del barco",
  baseLine: "línea de base",
  worthNext: "Lo que más conviene medir ahora",
  goThere: "Ir allí",
  addThat: "Añadir esa estación",
  add: "Añadir una estación",
  remove: "Quitar la estación",
  lines: "Sus líneas",
  linesHint:
    "De la quilla hacia arriba. Una línea es lo que se vuelve a encontrar de estación en estación: un canto, una costura, un listón.",
  lineName: "Nombre",
  onwards: "Hasta la línea siguiente",
  spans: { flat: "plano", round: "redondo" },
  corner: "Aquí hay un canto",
  noHalves: "en el centro del barco: solo alturas",
  removeLine: (name) => `Quitar ${name}`,
  addLine: "Añadir esta línea",
  above: "Por encima de",
  called: "Nombre",
  checks: "Lecturas que la comprueban",
  checksHint:
    "Largos que la cartilla ya da por sí sola. Una de cada clase descubre un desliz que ninguna medida suelta enseña.",
  checkKinds: {
    breadth: "el ancho entero, de banda a banda",
    girth: "sobre el forro, de una línea hasta otra",
    along: "a lo largo de una línea, de estación a estación",
  },
  check: "Qué se ha medido",
  onLine: "De la línea",
  upTo: "Hasta la línea",
  at: "En la estación",
  until: "Hasta la estación",
  reads: "La cinta marca",
  addCheck: "Añadir esta lectura",
  removeCheck: (what) => `Quitar la lectura de ${what}`,
  breadthOf: (line, at) => `Ancho entero en ${line}, estación ${at}`,
  girthOf: (line, to, at) => `Sobre el forro de ${line} a ${to}, estación ${at}`,
  alongOf: (line, at, until) => `A lo largo de ${line} de la estación ${at} a la ${until}`,
  checkGood: (right, limit) =>
    `Va con la cartilla, que da ${right}; puede errar hasta ${limit} a un lado u otro.`,
  checkBad: (off, right, limit) =>
    `Se aparta ${off} de los ${right} que da la cartilla; lo más serían ${limit}. Mídelo otra vez, y luego las medidas de sus extremos.`,
  checkNone: "Sin comprobar: la forma no llega allí.",
  noChecks: "Todavía ninguna, así que de este modo no se descubre ningún desliz.",
  asTable: "Escribirla como cartilla",
  asTableHint:
    "Todas las medidas del dibujo quedan escritas en la cartilla, para corregirlas una a una, y se pueden añadir y quitar líneas. Lo que solo estaba dibujado ya no se distingue de lo medido.",
  fromText: (lines) =>
    `Su forma es una cartilla de trazado con ${lines} líneas, escrita en el plan tal como llegó.`,
  fromTextHint:
    "Para corregirla aquí se escribe como estaciones y líneas. La forma queda igual; deshacer devuelve lo que había. Hasta entonces se toma como está: nada la comprueba.",
  fromTextTake: "Hacer de ella estaciones y líneas",
  fromTextWrong: "Todavía no se puede leer entera. Corrígela antes en el texto del plan.",
  begin: "Mide en estas estaciones",
  beginSteps: [
    "Pon el barco a nivel de proa a popa y de banda a banda, y tiende un cordel por su centro, de la roda al espejo.",
    "Marca estaciones en el cordel a distancias redondas, contadas desde popa; más juntas donde más se curva.",
    "La línea de base va a nivel con el punto más bajo de la quilla en el centro: un cordel o una tabla recta debajo. Dentro de un barco a flote mide hacia abajo desde un cordel a nivel, y réstalo de la altura del cordel.",
    "En cada estación, de cada línea: cuánto hacia fuera desde el centro, y cuánto por encima de la línea de base.",
  ],
  stationsFor: (stations) => `Para su eslora, estaciones a ${stations.join(", ")}.`,
  beginDrawing:
    "Dónde se pone la cinta en una estación: del centro del barco hacia fuera, y de la línea de base hacia arriba",
  beginStations: "Estaciones a lo largo del barco, contadas desde popa",
  beginShape: "Empieza con una forma parecida",
  beginShapeHint: "Lo más rápido: tres largos dan una forma, y cada medida la va llevando a la suya.",
  beginTable: "O con una cartilla vacía",
  beginTableHint: "Si ninguna forma se le parece, o se conocen sus líneas.",
  section: "Su sección",
  sections: {
    vee: "paños planos con un codillo",
    round: "redonda, con pantoque y costado",
    plain: "un solo paño de la quilla a la borda",
  },
  countStations: "Cuántas estaciones",
  beginAdd: "Empezar esta cartilla",
  changes: (count) => (count === 1 ? "1 cambio hecho." : `${count} cambios hechos.`),
  paper: "Entre las páginas para imprimir hay una hoja para rellenar a lápiz.",
  toSurvey: "Al dibujo del barco entero",
};
