import type { ScreenWords } from "./en.js";
import { fields } from "./es/fields.js";
import { findings } from "./es/findings.js";
import { keeping } from "./es/keeping.js";
import { log } from "./es/log.js";
import { settings } from "./es/settings.js";
import { shell } from "./es/shell.js";
import { start } from "./es/start.js";
import { views } from "./es/views.js";

/** Spanish. */
export const es: ScreenWords = { fields, findings, keeping, log, settings, shell, start, views };
