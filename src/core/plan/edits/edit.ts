/**
 * A named change to the plan, as data, so that a finding can carry one, a face can show it, and a file can keep it.
 * Values are written as the owner would write them (`5 A`, `14 AWG`). Each name has one pure function in this folder.
 */
export type Edit =
  | { readonly edit: "set way fuse"; readonly at: string; readonly to: string }
  | { readonly edit: "set main fuse"; readonly at: string; readonly to: string }
  | { readonly edit: "set run fuse"; readonly at: string; readonly to: string }
  | { readonly edit: "set run size"; readonly at: string; readonly to: string }
  | { readonly edit: "set return size"; readonly at: string; readonly to: string }
  | { readonly edit: "set run return"; readonly at: string; readonly to: "own" | "shared" }
  | {
      readonly edit: "set run joint";
      readonly at: string;
      readonly end: "start" | "end" | "both";
      readonly to: string;
    }
  | { readonly edit: "set gear joint"; readonly at: string; readonly to: string }
  | { readonly edit: "set run colours"; readonly at: string; readonly out: string; readonly return: string }
  | { readonly edit: "set way always live"; readonly at: string; readonly to: boolean }
  /** Any field of a named thing: `at` is its name, `field` the plan's own key. */
  | {
      readonly edit: "set field";
      readonly at: string;
      readonly field: string;
      readonly to: string | number | boolean;
    }
  | { readonly edit: "remove field"; readonly at: string; readonly field: string }
  | { readonly edit: "add"; readonly kind: string; readonly name: string; readonly as: string }
  | { readonly edit: "remove"; readonly at: string }
  | { readonly edit: "rename"; readonly at: string; readonly to: string };
