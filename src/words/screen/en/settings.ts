/** What a person sets once and finds again. */
export const settings = {
  title: "Settings",
  forYou: "Kept for you in this browser; the plan stays as it is.",
  light: "Light",
  day: "Day",
  dusk: "Dusk",
  duskHint: "Dim and warm, for eyes that are used to the dark.",
  lengths: "Lengths",
  asPlan: "As the plan",
  inches: "Inches",
  millimetres: "Millimetres",
  paper: "Paper",
  letter: "Letter",
  a4: "A4",
  textSize: "Text size",
  sizes: { usual: "Usual", large: "Large", larger: "Larger", largest: "Largest" },
  language: "Language",
};
