/** The stages of the job in their order, and the views one reaches from the ledger line and the tools. */
export const stageIds = [
  "survey",
  "gear",
  "layout",
  "circuits",
  "boxes",
  "parts",
  "build",
  "proof",
  "log",
] as const;
export const toolIds = ["findings", "tape", "outing", "print", "text", "terms"] as const;
export const viewIds = [...stageIds, ...toolIds] as const;
export type ViewId = (typeof viewIds)[number];

export function isViewId(text: string): text is ViewId {
  return viewIds.some((id) => id === text);
}
