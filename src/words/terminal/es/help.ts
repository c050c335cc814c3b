import type { TerminalWords } from "../english.js";

export const help: TerminalWords["help"] = {
  main: `skiffloom planifica, comprueba e imprime la instalación de 12 V o 24 V de un barco pequeño y abierto.

  skiffloom check PLAN      qué está mal, y qué estaría bien
  skiffloom figures PLAN    cada corriente, tensión, sección, fusible y hora
  skiffloom packet PLAN     las páginas para el garaje, en PDF
  skiffloom sheet PLAN      una parte del cuaderno por separado, en PDF o SVG
  skiffloom boxes PLAN      cada caja: prensaestopas, agujeros, orden de taladrado; plantillas a escala real
  skiffloom routes PLAN     cómo va cada tendido, su holgura, qué cortar
  skiffloom cuts PLAN       qué cortar de qué largo, y las banderitas de las puntas
  skiffloom parts PLAN      qué tomar del estante y qué comprar
  skiffloom form PLAN       el casco como se midió, qué no encaja, qué medir ahora
  skiffloom marks PLAN      dónde taladrar: lecturas de cinta, comprobaciones, y qué dicen tus lecturas
  skiffloom float PLAN      calado, asiento, francobordo, brazos; cada agujero sobre el agua
  skiffloom work PLAN       qué hacer ahora, el orden de todo lo que falta, qué se hizo
  skiffloom changes VIEJO NUEVO qué hace un cambio de plan, en palabras y cifras
  skiffloom prove PLAN      qué dice tu medidor: hoja de pruebas, qué falla, qué medir ahora
  skiffloom netlist PLAN    el circuito como texto SPICE
  skiffloom new             hace unas preguntas y escribe un plan con que empezar
  skiffloom apply PLAN N    hace el cambio que propone el hallazgo N, y conserva tus comentarios
  skiffloom schema          el JSON Schema de un plan
  skiffloom --version       cuál es esta

PLAN es un archivo YAML (docs/plan-format.md; en examples/ hay algunos), o - para la entrada estándar.
skiffloom ORDEN --help dice más; --language en o es lo dice en ese idioma, y si falta lo eligen LC_ALL,
LC_MESSAGES o LANG de tu sistema. Las cifras son ayudas para planear: antes van las normas locales, las
instrucciones de los fabricantes y los profesionales con licencia.`,
  check: `skiffloom check PLAN [--json] [--working]

Lee un plan, lo calcula todo y muestra lo que encuentra, lo más grave primero:
  alto          no lo hagas así
  corregir      habría que corregirlo
  ojo           conviene saberlo
  sin comprobar no se pudo juzgar; no es lo mismo que bien

  --working   cómo salió cada cifra
  --json      lo mismo como datos (docs/json.md)

Acaba con estado 0 si nada es un alto, 1 si algo lo es, 2 si el plan no se puede leer.
Cada remedio tiene un número que admite 'skiffloom apply PLAN NÚMERO'.`,
  figures: `skiffloom figures PLAN [--corner NOMBRE] [--assumed] [--json]

Muestra cada cifra eléctrica de un plan: aparatos con tensión y caída, conductores con sección y motivo,
fusibles y disyuntores, baterías, salidas al agua.

  --corner NOMBRE  caso en que se muestran los aparatos: 'worst drop' (peor caída, si falta), 'nominal' (habitual),
                   'highest voltage' (tensión más alta) o uno del propio plan
  --assumed        enumera además cada valor supuesto, y por qué
  --json           todo, en cada caso, como datos (docs/json.md)`,
  prove: `skiffloom prove PLAN [--sheet | --water] [--json]
skiffloom prove PLAN --mended LUGAR [--note TEXTO] [--now CUÁNDO]
skiffloom prove PLAN --battery NOMBRE --shows 12.4 [--with 3.2 | --on APARATOS] [--use 2]

Compara las lecturas del plan con lo que marcaría un barco sin fallos, ordena lo que puede fallar y dice qué
medir ahora. Las lecturas tomadas al terminar un proyecto son con las que se comparan las de después: así se ve
una unión que envejece.

  --sheet     la hoja de pruebas: cada lectura que tomar, qué se espera, cuándo parar
  --water     la tarjeta para el agua: interruptores, fusibles, horas que quedan, qué apagar primero
  --mended    apunta un arreglo de este conductor, fusible, cable, aparato o batería: lo que se midió antes a través
              de él ya no cuenta contra el barco, y se pide lo que demuestra el arreglo
  --battery   horas que quedan en una batería, por los voltios que marca (--shows), con tantos amperios encendidos
              (--with) o con estos aparatos (--on "luces de costado, sonda"); si falta: en reposo.
              Con un consumo de tantos amperios desde ahora (--use; si falta: lo que estaba encendido)
  --json      lo mismo como datos (docs/json.md)

Acaba con estado 0 si cada lectura es la esperada y cada arreglo está demostrado, 1 si alguno no, 2 si el plan no se puede leer.
Mide en circuitos con tensión solo si sabes lo que haces; las baterías pueden soldar y quemar.`,
  netlist: `skiffloom netlist PLAN [--corner NOMBRE] [--to ARCHIVO] [--force]

Muestra un caso del circuito como texto SPICE, cada elemento llamado como su tendido, tramo, unión o aparato, para
que cualquiera pueda comprobar las cifras con un simulador de circuitos propio.

  --corner NOMBRE  'worst drop' (peor caída, si falta), 'nominal' (habitual), 'highest voltage' (tensión más alta) o uno
                   del propio plan
  --to ARCHIVO     lo escribe ahí; --force sobrescribe un archivo que ya existe`,
  packet: `skiffloom packet PLAN [--for tonight|project] [--now CUÁNDO] [--to ARCHIVO] [--paper letter|a4] [--language en|es] [--force]

Escribe las páginas para el garaje en un solo PDF: resumen, cargas, conductores, fusibles, hallazgos con su cálculo,
lo que se supuso, el esquema unifilar, las salidas al agua; el levantamiento, una hoja de marcas a escala por cada cara,
la lista de agujeros y cómo flota; las cajas con sus plantillas a escala real, tendidos, cortes, puntas, banderitas para
los cables y la lista de compra; el orden de trabajo con un cuadrado que marcar en cada paso, y la hoja de cómo quedó; la
hoja de pruebas con cada lectura esperada, la tarjeta para el agua; precauciones.

  --for tonight   solo los pasos de la próxima tarde o día libre, y las hojas que piden
  --for project   solo lo que queda del proyecto en curso, y las hojas que pide
  --now CUÁNDO    con --for: toma esto por la hora de ahora, por ejemplo '2026-04-11 19:20'
  --to ARCHIVO    dónde; si falta, el nombre del plan con .pdf
  --paper         letter o a4; si falta, lo que dice el plan
  --language      en o es: en qué idioma van las páginas; si falta, el de la orden. Los nombres del plan se quedan como son
  --force         sobrescribe un archivo que ya existe

Una sola hoja: 'skiffloom sheet PLAN --only TÍTULO'.`,
  sheet: `skiffloom sheet PLAN [--only TÍTULO] [--page N] [--paper letter|a4] [--language en|es] [--to ARCHIVO] [--force]

Escribe una parte del cuaderno por separado, en PDF, o una de sus páginas en SVG. Sin --only enumera las partes.

  --only TÍTULO  'conductores', 'esquema unifilar', etcétera
  --page N       solo esa página, en SVG a escala real
  --paper        letter o a4; si falta, lo que dice el plan
  --language     en o es: en qué idioma va la página, también los títulos; si falta, el de la orden
  --to ARCHIVO   dónde; si falta, el nombre del plan con el título
  --force        sobrescribe un archivo que ya existe`,
  boxes: `skiffloom boxes PLAN [--box NOMBRE] [--csv] [--json]
skiffloom boxes PLAN --template svg|dxf --to CARPETA [--box NOMBRE] [--force]

Muestra de cada caja qué entra por qué prensaestopas, dónde va cada agujero, en qué orden se taladra y qué hay dentro.
Una caja se distribuye si se da su interior, o se elige entre las que comprarías:
  boxes: {caja de proa: {inside: [170 mm, 120 mm, 75 mm], wall: 3 mm, of: abs, boss: 10 mm, lid lip: 5 mm}}
  box catalogue: {menor: {inside: [110 mm, 80 mm, 50 mm], price: 14 EUR}, mayor: {inside: [190 mm, 140 mm, 80 mm], price: 23 EUR}}
Una caja con 'holes' se toma como está taladrada, y se comprueba.

  --box NOMBRE         solo esta caja
  --template svg|dxf   un archivo a escala real por cada cara que se taladra; el svg con una barra y un cuadrado con que
                       comprobar la impresión; para papel están en el cuaderno
  --to CARPETA         dónde van los archivos; --force sobrescribe los que ya existen
  --csv                los agujeros como tabla, en la unidad del plan, desde la esquina inferior izquierda de la cara por dentro
  --json               todo como datos (docs/json.md)

Sujeta la caja con mordazas, nunca con la mano: la broca escalonada se engancha. Lleva los ojos protegidos.`,
  routes: `skiffloom routes PLAN [--slack] [--csv] [--json]

Muestra cómo va cada tendido: por dónde pasa, cuánto mide por los tramos, la holgura para trabajar y qué cortar.
Luego qué va junto en cada tramo, y dónde se sujeta.

Un plan que no dice nada de recorridos toma las longitudes de los cables como están escritas. Para que se calculen,
nombra los puntos por los que pasan los cables (waypoints), los tramos entre ellos (legs), y lleva un tendido por ellos:
  waypoints: {rodilla: {bend: 40 mm}}
  legs: {bajo la bancada: {from: cuadro, to: rodilla, length: 5 ft}, por la roda: {from: rodilla, to: caja de proa, length: 3 ft}}
  runs: {troncal: {from: cuadro / lámparas, to: caja de proa, along: [rodilla]}}

  --slack  por qué cada punta tiene la holgura que tiene
  --csv    los tendidos como tabla para una hoja de cálculo
  --json   todo como datos (docs/json.md)`,
  cuts: `skiffloom cuts PLAN [--labels] [--csv] [--json]

Muestra qué cortar de qué largo, clase de cable por clase de cable: primero los retales, luego los rollos que hay en
casa, luego lo que se compra; lo que menos cuesta, y de eso lo que menos cable abre. De lo que hay en casa se quitan antes
25 mm de la punta vieja. Corta en este orden, lo más largo primero, y pon las dos banderitas en un trozo antes de que deje
el rollo.

  --labels  en su lugar, las banderitas de las dos puntas de cada trozo
  --csv     la tabla (o con --labels las banderitas) para una hoja de cálculo o una impresora de etiquetas
  --json    todo como datos (docs/json.md)

Las existencias están en el plan: stock: {wire: [{size: 16 AWG, cores: 2, length: 11 ft}]}; también los precios, por pie,
por metro o por rollo: prices: {wire: [{size: 16 AWG, cores: 2, spool: 100 ft, price: 62 USD}]}.`,
  parts: `skiffloom parts PLAN [--stock ARCHIVO] [--prices ARCHIVO] [--csv TABLA] [--json]
skiffloom parts PLAN --book | --shelve [--to ARCHIVO]
skiffloom parts PLAN --loads ARCHIVO [--to ARCHIVO]

Muestra qué tomar del estante y qué comprar: cable, terminales, funda, prensaestopas, fusibles, todo, con repuestos, en
los envases más baratos. Lo que no tiene precio se nombra y queda fuera del total; nunca se adivina un precio.

  --stock ARCHIVO   un CSV de lo que hay, en lugar de lo del plan: artículo,cantidad,sección,
                    conductores,color,longitud (in),clase (retal o rollo); la unidad en el encabezado, o en cada celda
  --prices ARCHIVO  un CSV de precios además de los del plan: artículo,envase,cantidad,precio ('4.20 EUR'; vacío: no se sabe)
  --csv TABLA       'list' la lista de compra; 'stock' (existencias) y 'prices' (precios) como tablas para rellenar;
                    'loads' los aparatos; longitudes en la unidad del plan
  --book            cuando el trabajo está hecho: escribe lo que sobra en las existencias del plan, como si nada se hubiera
                    estropeado; --to ARCHIVO lo escribe ahí y deja PLAN como está, --force sobrescribe un archivo
  --shelve          lo comprado, como está marcado en la lista, pasa a las existencias: la próxima lista lo toma de ahí
  --loads ARCHIVO   un CSV de aparatos, como lo escribe --csv loads: los que el plan no tiene se añaden, lo que difiere se
                    cambia; escrito en PLAN, o ahí con --to ARCHIVO
  --json            todo como datos (docs/json.md)

En las tablas de existencias y precios los artículos llevan los nombres que escribe --csv; por ellos se emparejan.`,
  form: `skiffloom form PLAN [--json]
skiffloom form --offsets ARCHIVO.csv [--numbers mm|m|in|feet-inches-eighths]

Muestra la forma del barco como se midió: sus líneas, qué no encaja, y qué medir ahora y por qué.
Tres maneras de darla, bajo craft / form:
  stations, lines      un levantamiento con cinta: en cada estación, cuánto sale y a qué altura va cada línea
  start from           una forma con que empezar: flat-bottomed skiff (bote de fondo plano), vee-bottomed utility (lancha
                       de fondo en V), round tender (auxiliar redondo), canoe (canoa), sit-on-top kayak (kayak
                       autovaciable), sit-in kayak (kayak cerrado); a la escala de eslora, manga y puntal, corregida
                       con 'measured'
  offsets              el texto de una tabla de trazado
Nada se alisa: una cifra que se aparta de la línea de sus vecinas se nombra, con la que estaría en línea.

Cómo medir a solas: calza el barco a nivel, tiende un hilo por el centro, marca en él estaciones, y en cada una mide
desde el hilo hasta quilla, pantoque y arrufo, y hacia arriba desde un suelo o una tabla a nivel. Seis estaciones son las
menos con que se nota un desliz.

  --offsets ARCHIVO  escribe la sección del plan de una tabla de trazado: columnas estación, NOMBRE semimanga, NOMBRE altura
                     (o station, NAME half-breadth, NAME height)
  --numbers          cómo están escritos los números de la tabla; en milímetros si falta
  --json             todo como datos (docs/json.md)`,
  marks: `skiffloom marks PLAN [--face NOMBRE] [--why] [--json]

Muestra dónde taladrar: para cada marca dos lecturas de cinta desde puntos en los que se puede poner el dedo, una lectura
de comprobación desde un tercero, y cuánto se puede fiar del sitio. Las marcas van en el orden en que se trazan, lo más
seguro primero. En el cuaderno están como hojas con un dibujo, para tenerlas junto al barco. Debajo: con qué cortar cada
agujero, qué lo sella, qué hay detrás, y en qué orden se pasan los cables.

Cómo: sujeta la cinta en el primer punto y traza un arco con la lectura, haz lo mismo desde el segundo, marca donde se
cruzan y luego lee la comprobación. Escribe en el plan lo que leíste y repítelo:
  checked: {lámpara 2: {soporte del asiento: 10 3/4 in, tornillo de la rodilla: 33 13/16 in}}
Entonces dice si la marca está bien, hacia dónde moverla, o que los dos costados del barco difieren. Con menos de tres
lecturas por marca poco se puede decir.

  --face NOMBRE  solo esta cara
  --why          por qué estos puntos de referencia y no otros
  --json         todo como datos (docs/json.md)

Entérate de lo que hay detrás antes de taladrar: depósito, espuma, cables, combustible. Pon el tope de la broca.`,
  float: `skiffloom float PLAN [--json]

Muestra cómo flota con lo que el plan pone a bordo: calado, asiento, escora, francobordo, altura metacéntrica y brazos
adrizantes, qué hace mover un peso, y de cada agujero su altura sobre agua en calma y la escora y el asiento que lo hunden.
Necesita una forma (skiffloom form --help) y pesos:
  float:
    water: sea
    hull: {weight: 150 kg, at: [80 in, 0 in, 13 in]}       # a proa de la estación 0, a babor, arriba
    people: {al timón: {weight: 80 kg, at: [34 in, 5 in, 22 in]}}
    other: {motor: {weight: 38 kg, at: [-6 in, 0 in, 24 in]}}
Las baterías y los aparatos pesan donde están: 'weight' con una cara, o con 'stands at'.

  --json  todo como datos (docs/json.md)

Ayudas para planear en agua en calma, no un estudio de estabilidad: las olas, la gente que se mueve y el agua dentro lo
cambian todo. Antes van la placa del barco y su constructor.`,
  work: `skiffloom work PLAN [--all] [--built] [--now CUÁNDO] [--json]
skiffloom work PLAN --done PASO [--note TEXTO] [--now CUÁNDO]
skiffloom work PLAN --undo PASO | --note TEXTO --step PASO | --finish NOMBRE [--shelf]

Qué hacer ahora, con sus medidas, herramientas y precaución, y luego todo lo que falta, en el orden que lleva menos tiempo
en tus horas libres y menos cambios de herramienta; qué reposa entretanto, y qué se hizo.

  --all         cada paso con sus medidas, herramientas y precaución, no solo el siguiente
  --built       qué se hizo y cómo quedó, y dónde difiere del plan
  --done PASO   marca un paso: él y lo que hizo se escriben en el plan
  --undo PASO   deshace la última marca de un paso
  --note TEXTO  una nota con la marca, o para --step
  --finish NOMBRE  el proyecto está hecho: el plan toma las secciones, fusibles, longitudes y agujeros que quedaron, y
                   el siguiente proyecto parte de ellos
  --shelf       con --finish: lo que usó el proyecto sale de las existencias, y lo que se compró y sobra va a ellas; en
                lugar de 'parts --book', no además
  --now CUÁNDO  toma esto por la hora de ahora, por ejemplo '2026-04-11 19:20'
  --json        todo como datos (docs/json.md)

Un paso se llama por su nombre en la lista, por ejemplo 'draw / troncal'. Nada de lo apuntado se pierde cuando el plan
cambia: lo que el cambio deshace se dice.`,
  changes: `skiffloom changes VIEJO NUEVO [--json]

Qué hace un cambio de plan, en palabras y cifras: qué está escrito de otro modo, cada cifra que es otra, los hallazgos que
se van y los que aparecen, material y cable que comprar, pasos del trabajo, y lo ya hecho que el plan nuevo pide de otro
modo.

  VIEJO NUEVO  dos archivos de plan; uno de ellos puede ser - para la entrada estándar
  --json       lo mismo como datos (docs/json.md)

Acaba con estado 0 cambie algo o no, 2 si un plan no se puede leer.`,
  schema: `skiffloom schema

Muestra el JSON Schema del formato de los planes, para editores que completan y comprueban al escribir.`,
  new: `skiffloom new [--to ARCHIVO] [--force]

Hace unas preguntas sobre el barco, su batería y sus aparatos, y escribe un plan desde el que seguir. Lo que aún no sabes
queda abierto: se calcula, o se supone y se enumera como supuesto. Con Intro tomas lo que está entre corchetes.

  --to ARCHIVO  dónde; boat.yaml si falta. --force sobrescribe un archivo que ya existe`,
  apply: `skiffloom apply PLAN NÚMERO [--to ARCHIVO]
skiffloom apply PLAN --edit JSON [--to ARCHIVO]

Cambia un plan y conserva todo lo demás como lo escribiste, también los comentarios.

  NÚMERO        un remedio como lo numera 'skiffloom check PLAN': 3 o 3a, 3b …
  --edit JSON   cualquier cambio, por ejemplo '{"edit": "set run size", "at": "troncal", "to": "14 AWG"}'
  --to ARCHIVO  lo escribe ahí y deja PLAN como está; --force sobrescribe un archivo que ya existe
  --show        muestra el plan cambiado en vez de escribirlo`,
};
