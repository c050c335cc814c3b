import { addSteps } from "./add.js";
import type { Edit } from "./edit.js";
import { fieldSteps, removeFieldSteps } from "./field.js";
import { fuseSteps } from "./fuse.js";
import { coloursSteps, gearJointSteps, jointSteps } from "./joint.js";
import type { Locator } from "./locate.js";
import { removeSteps } from "./remove.js";
import { renameSteps } from "./rename.js";
import type { Steps } from "./step.js";

export function stepsOf(locator: Locator, edit: Edit): Steps {
  switch (edit.edit) {
    case "set way fuse":
      return fuseSteps(locator, edit.at, ["way"], "fuse", edit.to);
    case "set main fuse":
      return fuseSteps(locator, edit.at, ["battery", "panel"], "main", edit.to);
    case "set run fuse":
      return fuseSteps(locator, edit.at, ["run"], "fuse", edit.to);
    case "set run size":
      return fieldSteps(locator, edit.at, "size", edit.to, ["run"]);
    case "set return size":
      return fieldSteps(locator, edit.at, "return size", edit.to, ["run"]);
    case "set run return":
      return fieldSteps(locator, edit.at, "return", edit.to, ["run"]);
    case "set run joint":
      return jointSteps(locator, edit.at, edit.end, edit.to);
    case "set gear joint":
      return gearJointSteps(locator, edit.at, edit.to);
    case "set run colours":
      return coloursSteps(locator, edit.at, edit.out, edit.return);
    case "set way always live":
      return fieldSteps(locator, edit.at, "always live", edit.to, ["way"]);
    case "set field":
      return fieldSteps(locator, edit.at, edit.field, edit.to);
    case "remove field":
      return removeFieldSteps(locator, edit.at, edit.field);
    case "add":
      return addSteps(locator, edit.kind, edit.name, edit.as);
    case "remove":
      return removeSteps(locator, edit.at);
    case "rename":
      return renameSteps(locator, edit.at, edit.to);
    default:
      return edit satisfies never;
  }
}
