/** Keeping a copy of everything off the phone, with the age of the last one; and reading files in. */
import { useEffect, useState } from "preact/hooks";
import { COPY_MADE, type CopyMade, readCopyMade } from "../../core/record/index.js";
import { Pool } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { cameSince } from "../state/copies.js";
import { type CopyAge, copyAge } from "../state/copy-age.js";
import { to } from "../state/routes.js";
import { day, t } from "../texts/files.js";
import { CopyMaker, type CopyWay } from "./copy-maker.js";
import { Plain } from "./frame.js";
import { lazy, Nothing, OpeningScreen } from "./lazy.js";
import { useLoaded } from "./use-loaded.js";

const ReadIn = lazy(() => import("./read-in.js").then((file) => file.ReadIn), Nothing);

interface AgeProps {
  readonly age: CopyAge;
  readonly made: CopyMade | undefined;
  /** Of what the last copy lacked. */
  readonly came: number;
}

function Age({ age, made, came }: AgeProps) {
  if (age.own === 0) return <p class="remark">{t("files.empty")}</p>;
  if (age.days === undefined || !made) return <p class="remark">{t("files.age.never")}</p>;
  const when = age.days === 0 ? t("files.age.today") : t("files.age.days", { n: age.days, when: day(made.at) });
  const entered = age.changed === 0 ? t("files.age.same") : t("files.age.new", { n: age.changed });
  const since = came === 0 ? entered : `${entered} ${t("files.came", { n: came })}`;
  return (
    <p class="remark">
      {when} {since}
    </p>
  );
}

/** Everything; and what is new, where there is a copy before and something new. */
function waysOf({ age, made, came }: AgeProps): readonly CopyWay[] {
  const whole: CopyWay = { id: "whole", words: t("files.whole"), what: { holds: "everything" } };
  if (!made || (age.changed === 0 && came === 0)) return [whole];
  const says = t("files.only-new.says", { when: day(made.at) });
  return [whole, { id: "new", words: t("files.only-new"), says, what: { holds: "new", since: made } }];
}

export function Files() {
  const { journal, store, phone } = useApp();
  const [handed, setHanded] = useState<CopyMade>();
  useEffect(() => void journal.refresh(), [journal]);
  const kept = useLoaded(() => store.setting(COPY_MADE), COPY_MADE);
  const made = handed ?? readCopyMade(kept?.ok ? kept.value : undefined);
  const came = useLoaded(() => cameSince(store, made), `came since ${made?.at ?? "never"}`);
  const summaries = journal.summaries.value;
  if (!kept || !summaries) return <OpeningScreen />;
  const age = copyAge(summaries, made, phone.now());
  const remember = (now: CopyMade): void => {
    setHanded(now);
    void store.keepSetting(COPY_MADE, now);
  };
  return (
    <Plain back={t("files.back")} href={to("settings")} title={t("files.title")}>
      <Pool>
        <p class="remark">{t("files.says")}</p>
        <Age age={age} made={made} came={came ?? 0} />
        {age.own > 0 && <CopyMaker ways={waysOf({ age, made, came: came ?? 0 })} of="" onHanded={remember} />}
      </Pool>
      <ReadIn />
    </Plain>
  );
}
