/** Every colour of the drawings by name. Ink on paper first; one accent; conductors in the colours of the trade. */
export const palette = {
  paper: "#ffffff",
  ink: "#1b2126",
  soft: "#525c63",
  hair: "#aeb6ba",
  wash: "#f0f2ef",
  accent: "#9c3a1a",
  red: "#c4261d",
  black: "#111111",
  yellow: "#e2b400",
  brown: "#7a4a21",
  blue: "#2a5db0",
  "dark blue": "#1b2f6e",
  green: "#2f7d3b",
  white: "#fdfdfd",
  grey: "#8b9196",
  orange: "#d9731a",
  pink: "#de8fa6",
  purple: "#6d4391",
  tan: "#c9a877",
} as const;

export type Colour = keyof typeof palette;

const conductorWords: Readonly<Record<string, Colour>> = {
  red: "red",
  black: "black",
  yellow: "yellow",
  brown: "brown",
  blue: "blue",
  "light blue": "blue",
  "dark blue": "dark blue",
  green: "green",
  white: "white",
  grey: "grey",
  gray: "grey",
  orange: "orange",
  pink: "pink",
  purple: "purple",
  violet: "purple",
  tan: "tan",
};

/** The ink for a conductor's insulation as the owner names it; `red/yellow` takes its first colour. Undefined: no such colour here. */
export function conductorColour(words: string): Colour | undefined {
  const whole = words.trim().toLowerCase();
  const known = (name: string) => (Object.hasOwn(conductorWords, name) ? conductorWords[name] : undefined);
  return known(whole) ?? known(whole.split(/[/,;-]| with | and /)[0]?.trim() ?? "");
}
