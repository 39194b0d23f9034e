/** How a value of a chosen size is brought about under each limit of the top end sheet. Refuses to know any edge. */
import { type Brought, mm, of, plain, type Said } from "./limit-brought.js";

const IN = "cyl-3-in";
const EX = "cyl-3-ex";
const CYL = "cyl-1";
const HEAD_1 = "head-1";

const gap = (at: string): Brought => ({
  at,
  says: (value) => ({ [`head.guide@${at}`]: mm(8 + value), [`head.guide.stem@${at}`]: "8 mm" }),
});
const width = (at: string): Brought => plain(`head.contact.width@${at}`, "mm");
/** Clearance beside 0.30 mm wanted. */
const lash = (is: (value: number) => number): Brought => ({
  at: EX,
  says: (value) => ({
    [`head.lash@${EX}`]: mm(is(value)),
    "head.wanted@engine": "0.3 mm",
    "head.wanted.exhaust@engine": "0.3 mm",
  }),
});
/** Four places of a liner, the fitted spacer under it. */
const liner = (at: string, fore: number, others: number): Said => ({
  [`head.liner@${at}`]: mm(fore),
  [`head.liner.aft@${at}`]: mm(others),
  [`head.liner.left@${at}`]: mm(others),
  [`head.liner.right@${at}`]: mm(others),
  [`head.spacer@${at}`]: "0.1 mm",
});
const squeeze: Brought = {
  at: CYL,
  says: (percent) => ({ [`head.seal@${CYL}`]: "10 mm", [`head.seal.groove@${CYL}`]: mm(10 - percent / 10) }),
};

export const HEAD_BROUGHT: Readonly<Record<string, Brought>> = {
  "head.guide_in": gap(IN),
  "head.guide_ex": gap(EX),
  "head.rock_in": plain(`head.guide-rock@${IN}`, "mm"),
  "head.rock_ex": plain(`head.guide-rock@${EX}`, "mm"),
  "head.margin_in": plain(`head.margin@${IN}`, "mm"),
  "head.margin_ex": plain(`head.margin@${EX}`, "mm"),
  "head.width_in": width(IN),
  "head.narrow_in": width(IN),
  "head.width_ex": width(EX),
  "head.narrow_ex": width(EX),
  "head.seat-runout": plain(`head.seat-runout@${EX}`, "mm"),
  "head.seat-leak_loss": plain(`head.seat-leak.loss@${EX}`, "kPa"),
  "head.rise": {
    at: EX,
    says: (value) => ({ [`head.lap@${EX}`]: "45 mm", [`head.lap.after@${EX}`]: mm(45 + value) }),
  },
  "head.lash_short": lash((value) => 0.3 - value),
  "head.lash_over": lash((value) => 0.3 + value),
  // The nearest shim is 2.50; what is needed is as much thinner.
  "head.fit_short": {
    at: EX,
    says: (value) => ({ ...lash(() => 0.3).says(0), [`head.shim@${EX}`]: mm(2.5 - value) }),
  },
  "head.spring_short": {
    at: EX,
    says: (share) => ({ [`head.spring@${EX}`]: mm(50 * (1 - share)), [`head.spring.free-new@${EX}`]: "50 mm" }),
  },
  "head.spring_weak": {
    at: EX,
    says: (share) => ({
      [`head.spring.load@${EX}`]: of(200 * (1 - share), "N"),
      [`head.spring.load-new@${EX}`]: "200 N",
    }),
  },
  "head.spring_bind": plain(`head.spring.bind@${EX}`, "mm"),
  "head.flatness": {
    at: HEAD_1,
    says: (value) => ({
      [`head.flat@${HEAD_1}`]: "0 mm",
      [`head.flat.quarter-a@${HEAD_1}`]: "0 mm",
      [`head.flat.middle@${HEAD_1}`]: mm(value),
      [`head.flat.quarter-b@${HEAD_1}`]: "0 mm",
      [`head.flat.end-b@${HEAD_1}`]: "0 mm",
    }),
  },
  "head.thick_skimmed": plain(`head.thick.skimmed@${HEAD_1}`, "mm"),
  "head.squat": {
    at: HEAD_1,
    says: (value) => ({ [`head.thick@${HEAD_1}`]: mm(100 - value), "head.thick@head-2": "100 mm" }),
  },
  // 40 mL at the top in all.
  "head.ratio": {
    at: CYL,
    says: (ratio) => ({
      [`head.chamber@${CYL}`]: "34 mL",
      [`head.chamber.gasket@${CYL}`]: "5 mL",
      [`head.chamber.deck@${CYL}`]: "2 mL",
      [`head.chamber.crown@${CYL}`]: "-1 mL",
      [`head.chamber.swept@${CYL}`]: of(40 * (ratio - 1), "mL"),
    }),
  },
  "head.liner_low": { at: CYL, says: (value) => liner(CYL, value, 0.05) },
  "head.liner_high": { at: CYL, says: (value) => liner(CYL, value, 0.05) },
  "head.tilt": { at: CYL, says: (value) => liner(CYL, 0.05 + value, 0.05) },
  "head.step": {
    at: "land-1-2",
    says: (value) => ({ ...liner(CYL, 0.05, 0.05), ...liner("cyl-2", 0.05 + value, 0.05) }),
  },
  "head.over_most": {
    at: CYL,
    says: (value) => ({
      ...liner(CYL, 0.06 + value, 0.05),
      "head.wanted-liner@engine": "0.05 mm",
      "head.wanted-liner.most@engine": "0.06 mm",
    }),
  },
  "head.squeeze": squeeze,
  "head.squeeze_much": squeeze,
  "head.oval": {
    at: CYL,
    says: (value) => ({ [`head.bore@${CYL}`]: "80 mm", [`head.bore.top-across@${CYL}`]: mm(80 + value) }),
  },
  "head.low_oval": {
    at: CYL,
    says: (value) => ({
      [`head.bore@${CYL}`]: "80 mm",
      [`head.bore.top-across@${CYL}`]: "80 mm",
      [`head.bore.low-along@${CYL}`]: "80 mm",
      [`head.bore.low-across@${CYL}`]: mm(80 + value),
    }),
  },
  "head.taper": {
    at: CYL,
    says: (value) => ({
      [`head.bore@${CYL}`]: mm(80 + value),
      [`head.bore.top-across@${CYL}`]: mm(80 + value),
      [`head.bore.low-along@${CYL}`]: "80 mm",
    }),
  },
  "head.stud_growth": {
    at: HEAD_1,
    says: (share) => ({
      [`head.stud@${HEAD_1}`]: ["good"],
      [`head.stud.length@${HEAD_1}`]: mm(150 * (1 + share)),
      [`head.stud.length-new@${HEAD_1}`]: "150 mm",
    }),
  },
};
