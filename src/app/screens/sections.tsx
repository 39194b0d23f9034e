/** The section row at the foot of a visit's pages. */
import { SectionRow } from "../parts/section-row.js";
import { to } from "../state/routes.js";
import { t } from "../texts/first.js";

export type Section = "round" | "findings" | "work" | "visit";

/** The four parts of a visit; put away during the round, where gloves would mis-tap. */
export function Sections({ visit, here }: { readonly visit: string; readonly here: Section }) {
  const sections = (["round", "findings", "work", "visit"] as const).map((id) => ({
    id,
    words: t(`sections.${id}`),
    href: to(id, { visit }),
    here: id === here,
  }));
  return <SectionRow label={t("sections.label")} sections={sections} />;
}
