/** What is taken where the owner says nothing. Common practice throughout: each shows up in the list of assumptions. */
const practice = { title: "common practice", place: "no source", status: "practice" } as const;

/** Air while the electrics are in use, and an engine space beside a warm engine [°C]. */
export const usualAmbient = { source: practice, coldC: 0, airC: 20, hotC: 40, engineSpaceC: 60 } as const;

/** Copper of a loaded conductor above the air around it, for the worst-drop corner [K]. */
export const usualCopperRise = { source: practice, riseK: 10 } as const;

/** Working range of 12 V gear whose maker's range is not given, as a share of nominal. */
export const usualWorkingRange = { source: practice, minShare: 10.5 / 12, maxShare: 15 / 12 } as const;

export const usualConverter = {
  source: practice,
  efficiency: 0.88,
  standbyW: 0.5,
  minInputShare: 10 / 12,
  maxInputShare: 16 / 12,
} as const;

/** A cable whose length is not given yet: boat length and a little. */
export const usualRunLength = { source: practice, perBoatLength: 1, plusM: 1, withoutBoatM: 4 } as const;

export const usualBattery = {
  source: practice,
  nominalV: 12,
  ratedHours: 20,
} as const;

export const usualPanel = { source: practice, studsPerBus: 10 } as const;

/** A box whose wall or material is not given. */
export const usualBox = { source: practice, wallM: 0.003, material: "abs" } as const;

/** Temperature rating of insulation where the plan names none [°C]. */
export const usualInsulation = { source: practice, us: 105, iso: 70 } as const;

/** Batteries at the corners a plan is judged at: state of charge at rest. The worst drop takes the reserve the owner keeps. */
export const usualCorners = { source: practice, nominalCharge: 0.8 } as const;

/** A boat's metal as a conductor: joints and all [Ω]. Only to show what a hull return would do. */
export const hullReturn = { source: practice, ohm: 0.002 } as const;

/** A charger holds the battery's terminals at its own voltage; what is left of resistance between the two [Ω]. */
export const onCharge = { source: practice, ohm: 1e-4 } as const;

/** How long a small permanent-magnet motor draws its starting current [s]. */
export const usualMotorStart = { source: practice, lastsS: 0.2 } as const;
