import type { EditProblemWords } from "../problems/problem-words.js";

/** Why an edit was not made, in Spanish. */
export const editProblemsInSpanish: EditProblemWords = {
  notDone: (edit, reason) => `${edit} No se ha hecho: ${reason}`,
  meant: (nearest) => `¿Querías decir «${nearest}»?`,
  codes: {
    "plan unsound": () => "el plan mismo tiene problemas; arréglalos antes.",
    "nothing so called": ({ at, meant }) => `nada en el plan se llama «${at}».${meant}`,
    "wrong kind of thing": () => "eso no se puede hacer con una cosa de esa clase.",
    "no such field": () => "ese campo no está escrito en el plan.",
    "name taken": () => "ese nombre ya está en uso; da a cada cosa el suyo.",
    "unknown kind": ({ meant }) => `no hay cosas de esa clase.${meant}`,
    "bad value": () => "el valor tiene que caber en una línea, y un nombre no puede llevar « / ».",
    "shared value": () =>
      "el valor está en varios lugares del plan por medio de & y *; cámbialo a mano en el archivo.",
    "result unsound": () => "el plan dejaría de ser correcto:",
    "not possible": () => "no lo permite el modo en que el plan está escrito ahí; cambia el archivo a mano.",
    "reader missing": () =>
      "no se ha podido traer la parte de la página que lee las escrituras poco usuales; prueba otra vez.",
  },
};
