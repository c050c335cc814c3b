import type { FormCheck } from "../plan/model/form.js";
import type { Plan } from "../plan/model/plan.js";
import type { LaidForm } from "./figures.js";
import { type Agreement, startingAgreement, surveyAgreement } from "./form/agreement.js";
import { reaches } from "./form/line.js";
import { contradictionLimitM, impliedM } from "./form/redundant.js";
import { bentBy, measuredLines } from "./lay-form.js";

/** A reading that the form implies already: what it should be, reading minus that, and how far it may be off [m]. */
export interface CheckAgreement {
  readonly check: FormCheck;
  /** Left out: the form does not reach there, so nothing is checked. */
  readonly against?: { readonly rightM: number; readonly differsM: number; readonly limitM: number };
}

/**
 * How the figures measured go with one another. None for a table of offsets, which is taken as it is, and none where there is no form.
 * @param sigmaM Spread of one reading [m].
 */
export function figuresAgree({ craft }: Plan, sigmaM: number): Agreement[] {
  const { form } = craft;
  if (form?.kind === "survey") {
    const { stationsM } = form;
    const rising = stationsM.every((one, i) => i === 0 || one > (stationsM[i - 1] ?? one));
    // stations out of order would make nonsense of fairness
    return rising ? surveyAgreement({ ...measuredLines(form), sigmaM }) : [];
  }
  const bent = form?.kind === "starting form" ? bentBy(form, craft) : undefined;
  if (form?.kind !== "starting form" || bent === undefined) return [];
  return startingAgreement(form.shape, bent.scale, bent.measured, sigmaM);
}

/** The readings that check a survey, each against the form. */
export function checksAgree({ craft }: Plan, made: LaidForm, sigmaM: number): CheckAgreement[] {
  if (craft.form?.kind !== "survey") return [];
  const { form } = made;
  const lies = (name: string, atM: number) =>
    form?.lines.some((line) => line.name === name && reaches(line, atM)) ?? false;
  return craft.form.checks.map((check): CheckAgreement => {
    const second =
      check.kind === "girth"
        ? lies(check.to, check.atM)
        : check.kind === "breadth" || lies(check.line, check.toM);
    if (form === undefined || !lies(check.line, check.atM) || !second) return { check };
    const rightM = impliedM(form, check);
    const limitM = contradictionLimitM(sigmaM);
    return { check, against: { rightM, differsM: check.readM - rightM, limitM } };
  });
}
