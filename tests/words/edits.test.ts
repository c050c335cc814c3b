import { expect, test } from "vitest";
import type { Edit } from "../../src/core/plan/edits/edit.js";
import { editSentence } from "../../src/words/edits.js";
import { edits as inSpanish } from "../../src/words/screen/es/edits.js";

const told: readonly (readonly [Edit, string, string])[] = [
  [
    { edit: "add", kind: "step done", name: "", as: "{step: draw / lamp trunk, when: 2026-04-11}" },
    "Tick draw / lamp trunk.",
    "Marcar hecho: draw / lamp trunk.",
  ],
  [
    { edit: "add", kind: "reading", name: "", as: '{at: "helm / lamps +", shows: 12.3 V}' },
    "Write down the reading at helm / lamps +.",
    "Anotar la lectura en helm / lamps +.",
  ],
  [
    { edit: "add", kind: "gear", name: "horn", as: "{role: sound signal, draws: 3 A}" },
    "Add gear horn: role sound signal, draws 3 A.",
    "Añadir equipo horn: role sound signal, draws 3 A.",
  ],
  [
    { edit: "add", kind: "way", name: "helm / spare", as: "{}" },
    "Add way helm / spare.",
    "Añadir salida helm / spare.",
  ],
  [
    { edit: "set field", at: "lamp", field: "row", to: "{from: 1 m, to: 2 m, below: sheer, off: 80 mm}" },
    "Set row of lamp to from 1 m, to 2 m, below sheer, off 80 mm.",
    "Poner «fila» de lamp en from 1 m, to 2 m, below sheer, off 80 mm.",
  ],
  [
    { edit: "set field", at: "lamp", field: "draws", to: "10 W" },
    "Set draws of lamp to 10 W.",
    "Poner «consume» de lamp en 10 W.",
  ],
  [
    { edit: "set field", at: "outings / evening", field: "on / 5", to: "{what: horn, from: 2 h}" },
    "Put into the outing evening: horn, from 2 h.",
    "Poner en la salida al agua evening: horn, from 2 h.",
  ],
];

test.each(told)("an edit is told without the plan's brackets: %j", (edit, english, spanish) => {
  expect(editSentence(edit)).toBe(english);
  expect(inSpanish.sentence(edit)).toBe(spanish);
});
