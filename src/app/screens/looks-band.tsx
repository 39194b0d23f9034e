/** The next look: by when and at what, in a line; the others one press further. Works nothing out. */
import { useState } from "preact/hooks";
import type { LookDue, LookVisit, LookWanted } from "../../core/plan/index.js";
import type { Audience } from "../../core/terms/index.js";
import { GradeMark } from "../parts/grade-mark.js";
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import { Sheet } from "../parts/sheet.js";
import type { LooksNow } from "../state/looks-ground.js";
import { firstText, paceText, saysOf, sheetsText, titleOf, whenText } from "../state/looks-words.js";
import { t } from "../texts/looks.js";

interface LooksProps {
  readonly looks: LooksNow;
  readonly who: Audience;
  /** Where one look is seen to; none: it is only told. */
  readonly hrefOf: (look: LookWanted) => string | undefined;
}

interface LookRowProps extends LooksProps {
  readonly look: LookWanted | LookDue;
  /** Findings stand beside it, with their marks. */
  readonly marked: boolean;
}

function LookRow({ look, looks, who, hrefOf, marked }: LookRowProps) {
  const about = looks.about.get(look.id);
  if (!about) return null;
  const href = hrefOf(look);
  const mark = about.fault && <GradeMark mark={about.fault.grade} label={t(`mark.${about.fault.grade}`)} />;
  return (
    <ListRow
      lead={mark ?? (marked ? null : undefined)}
      title={titleOf(about, look, who)}
      second={saysOf(about, look, "why" in look ? look.why : [], who, looks.unit)}
      {...(href === undefined ? {} : { href })}
    />
  );
}

function OneLook({ visit, ...of }: LooksProps & { readonly visit: LookVisit }) {
  const pace = paceText(visit);
  const sheets = sheetsText(of.looks, visit.looks);
  const isUnread = visit.stands === "now" && visit.at !== undefined && of.looks.use.odometer?.km !== visit.at;
  return (
    <Band heading={whenText(visit, of.looks.unit)}>
      {visit.looks.map((look) => (
        <LookRow key={look.id} look={look} marked={visit.looks.some(({ is }) => is === "finding")} {...of} />
      ))}
      {sheets !== undefined && <p class="remark">{sheets}</p>}
      {pace !== undefined && visit.stands !== "overdue" && <p class="remark">{pace}</p>}
      {isUnread && <p class="remark">{t("looks.read")}</p>}
    </Band>
  );
}

export function LooksBand({ heading, ...of }: LooksProps & { readonly heading: string }) {
  const [isOpen, setOpen] = useState(false);
  const { looks, who } = of;
  const { visits, unsaid } = looks;
  const [next, ...later] = visits;
  const count = visits.reduce((sum, one) => sum + one.looks.length, unsaid.length);
  if (count === 0 && looks.left === 0) return null;
  return (
    <Band heading={heading} {...(count === 0 ? {} : { aside: String(count) })}>
      {looks.left > 0 && <p class="remark">{t("looks.left", { n: looks.left })}</p>}
      {next && (
        <ListRow
          title={whenText(next, looks.unit)}
          second={firstText(looks, next, who)}
          onPress={() => setOpen(true)}
        />
      )}
      {(later.length > 0 || (!next && count > 0)) && (
        <ListRow
          title={t("looks.all")}
          {...(next ? {} : { second: t("looks.unsaid") })}
          aside={String(visits.length + (unsaid.length > 0 ? 1 : 0))}
          onPress={() => setOpen(true)}
        />
      )}
      {isOpen && (
        <Sheet open form="full" title={heading} closeWords={t("app.close")} onClose={() => setOpen(false)}>
          {visits.map((visit) => (
            <OneLook key={visit.id} visit={visit} {...of} />
          ))}
          {unsaid.length > 0 && (
            <Band heading={t("looks.unsaid")}>
              {unsaid.map((look) => (
                <LookRow key={look.id} look={look} marked {...of} />
              ))}
              <p class="remark">{t("looks.unsaid.says")}</p>
            </Band>
          )}
          {visits.length > 0 && (
            <p class="remark">
              {t("looks.basis")} {t("looks.together")}
            </p>
          )}
        </Sheet>
      )}
    </Band>
  );
}
