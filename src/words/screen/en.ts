import { asking } from "./en/asking.js";
import { boat } from "./en/boat.js";
import { boxes } from "./en/boxes.js";
import { build } from "./en/build.js";
import { circuits } from "./en/circuits.js";
import { edits } from "./en/edits.js";
import { fields } from "./en/fields.js";
import { findings } from "./en/findings.js";
import { keeping } from "./en/keeping.js";
import { lists } from "./en/lists.js";
import { log } from "./en/log.js";
import { outing } from "./en/outing.js";
import { parts } from "./en/parts.js";
import { print } from "./en/print.js";
import { proof } from "./en/proof.js";
import { settings } from "./en/settings.js";
import { shell } from "./en/shell.js";
import { slip } from "./en/slip.js";
import { start } from "./en/start.js";
import { survey } from "./en/survey.js";
import { terms } from "./en/terms.js";
import { views } from "./en/views.js";
import { walk } from "./en/walk.js";
import { working } from "./en/working.js";

/** Every string of the page, by area. Its shape is what another language must fill; one that is missing does not compile. */
export const en = {
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
  terms,
  views,
  walk,
  working,
};

export type ScreenWords = typeof en;
