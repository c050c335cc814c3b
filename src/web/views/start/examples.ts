export const exampleIds = ["tender", "utility", "launch", "second-season"] as const;
export type ExampleId = (typeof exampleIds)[number];

const texts: Readonly<Record<ExampleId, () => Promise<{ readonly default: string }>>> = {
  tender: () => import("../../../../examples/tender.yaml?raw"),
  utility: () => import("../../../../examples/utility.yaml?raw"),
  launch: () => import("../../../../examples/launch.yaml?raw"),
  "second-season": () => import("../../../../examples/second-season.yaml?raw"),
};

/** The text of an example; it arrives when it is asked for. */
export async function exampleText(id: ExampleId): Promise<string> {
  return (await texts[id]()).default;
}
