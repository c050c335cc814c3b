import type { ScreenWords } from "./en.js";
import { asking } from "./es/asking.js";
import { boat } from "./es/boat.js";
import { boxes } from "./es/boxes.js";
import { build } from "./es/build.js";
import { circuits } from "./es/circuits.js";
import { edits } from "./es/edits.js";
import { fields } from "./es/fields.js";
import { findings } from "./es/findings.js";
import { keeping } from "./es/keeping.js";
import { lists } from "./es/lists.js";
import { log } from "./es/log.js";
import { outing } from "./es/outing.js";
import { parts } from "./es/parts.js";
import { print } from "./es/print.js";
import { proof } from "./es/proof.js";
import { settings } from "./es/settings.js";
import { shell } from "./es/shell.js";
import { slip } from "./es/slip.js";
import { start } from "./es/start.js";
import { survey } from "./es/survey.js";
import { tape } from "./es/tape.js";
import { terms } from "./es/terms.js";
import { views } from "./es/views.js";
import { walk } from "./es/walk.js";
import { working } from "./es/working.js";

/** Spanish. */
export const es: ScreenWords = {
  boat,
  boxes,
  build,
  circuits,
  asking,
  edits,
  fields,
  findings,
  keeping,
  lists,
  log,
  outing,
  parts,
  print,
  proof,
  settings,
  shell,
  slip,
  start,
  survey,
  tape,
  terms,
  views,
  walk,
  working,
};
