/** What is left out of taking apart, each with why. */
import { useState } from "preact/hooks";
import { Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { planScope } from "../state/plan-acts.js";
import { scopeOf } from "../state/plan-scope-view.js";
import { t } from "../texts/plan-scope.js";
import type { OnPlan } from "./on-plan.js";

export function ScopeLeftOut({ on }: { readonly on: OnPlan }) {
  const { journal } = useApp();
  const [what, setWhat] = useState("");
  const [why, setWhy] = useState("");
  const scope = scopeOf(on.said);
  const add = (): void => {
    const leftOut = [...scope.leftOut, { what: what.trim(), why: why.trim() }];
    void planScope(journal, on.stream, { ...scope, leftOut }).then((kept) => {
      if (!kept) return;
      setWhat("");
      setWhy("");
    });
  };
  const remove = (at: number): void => {
    void planScope(journal, on.stream, { ...scope, leftOut: scope.leftOut.filter((_, index) => index !== at) });
  };
  return (
    <Band heading={t("scope.left-out")}>
      {scope.leftOut.length === 0 && <p class="remark">{t("scope.left-out.none")}</p>}
      {scope.leftOut.map((one, at) => (
        <div key={`${one.what} ${one.why}`}>
          <ListRow title={one.what} second={one.why} />
          <div class="acts">
            <Tool words={t("scope.left-out.remove", { what: one.what })} onPress={() => remove(at)} />
          </div>
        </div>
      ))}
      <form
        class="form"
        onSubmit={(event) => {
          event.preventDefault();
          add();
        }}
      >
        <Field id="left-out-what" kind="text" label={t("scope.left-out.what")} value={what} onInput={setWhat} />
        <Field id="left-out-why" kind="text" label={t("scope.left-out.why")} value={why} onInput={setWhy} />
        <Tool type="submit" words={t("scope.left-out.add")} disabled={what.trim() === "" || why.trim() === ""} />
      </form>
    </Band>
  );
}
