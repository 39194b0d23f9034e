/** The open point in the light: its question, how to look, the replies of each field. Draws replies all alike. */
import { Pool, Question } from "../parts/pool.js";
import { ReplyGrid } from "../parts/reply-grid.js";
import { to } from "../state/routes.js";
import type { PointAt } from "../state/standing.js";
import { t } from "../texts/round.js";
import { lazy, Nothing } from "./lazy.js";
import type { OnDesk } from "./on-visit.js";
import { type Last, OneField, type PointProps } from "./round-fields.js";

/** Nothing has a picture, a sound or a value worked out from it before it is looked at: what shows them comes then. */
const PointMedia = lazy(() => import("./point-media.js").then((file) => file.PointMedia), Nothing);

const isHeard = (sounds: OnDesk["visit"]["sounds"], at: PointAt): boolean =>
  sounds.some(({ value }) => value.point === at.point && value.place === at.place && value.state === at.state);

function cannotReply({ on, view, open }: PointProps): Last {
  const { nonAnswer } = view.open;
  return {
    words: on.who === "owner" ? t("round.cannot.owner") : t("round.cannot"),
    says: nonAnswer?.says,
    chosen: nonAnswer !== undefined,
    onPress: () => open("cannot"),
  };
}

const CARRIES_LAST = new Set(["words", "yes"]);

export function OpenPointPool(props: PointProps) {
  const { on, view } = props;
  const { open } = view;
  const lastField = open.fields.at(-1);
  const carried = lastField !== undefined && CARRIES_LAST.has(lastField.kind);
  return (
    <Pool as="section" label={open.question} edge={view.stop.place === "car" ? "line" : "joined"}>
      <Question question={open.question} how={open.how} />
      {open.leave !== undefined && <p class="leave">{`${t("round.leave")}. ${open.leave}`}</p>}
      {open.fields.map((field) => (
        <div key={`${field.at.point} ${field.name}`} class="point-field">
          {open.fields.length > 1 && <h3>{field.label}</h3>}
          <OneField
            field={field}
            props={props}
            last={carried && field === lastField ? cannotReply(props) : undefined}
          />
        </div>
      ))}
      {!carried && (
        <ReplyGrid
          kind="several"
          columns={1}
          label={t("round.cannot.title")}
          replies={[]}
          onChoose={() => undefined}
          last={cannotReply(props)}
          disabled={on.visit.closed !== undefined}
        />
      )}
      {open.trap !== undefined && (
        <p class="small trap">
          <strong>{t("round.trap")}</strong> {open.trap}
        </p>
      )}
      {open.fields.some((field) => field.differ) && (
        <p>
          <a class="plain-link" href={to("differ", { visit: on.param })}>
            {t("round.differ")}
          </a>
        </p>
      )}
      {open.notes.map((text) => (
        <p key={text} class="small noted">{`${t("round.note")}: ${text}`}</p>
      ))}
      {(open.done || open.pictures.length > 0 || isHeard(on.visit.sounds, open.at)) && (
        <PointMedia
          on={on}
          at={open.at}
          done={open.done}
          pictures={open.pictures}
          point={open.question}
          place={view.place}
        />
      )}
    </Pool>
  );
}
