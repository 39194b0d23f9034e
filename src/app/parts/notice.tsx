/** How keeping stands, told at length, and the empty state. Errors are announced at once and have no timer. */
import { planDrawing } from "../../core/report/index.js";
import { NextAction, Tool } from "./button.js";
import { DrawingView } from "./drawing-view.js";
import { KeepingStroke } from "./icons.js";
import type { EmptyStateProps, NoticeProps } from "./props-frame.js";

export function Notice({ kind, title, says, action, second }: NoticeProps) {
  return (
    <div class={kind === "error" ? "notice error" : "notice"} role={kind === "error" ? "alert" : "status"}>
      {kind !== "plain" && <KeepingStroke kind={kind} />}
      <div class="notice-words">
        <strong class="row-title">{title}</strong>
        {says && <p class="small">{says}</p>}
      </div>
      {(action || second) && (
        <div class="notice-acts">
          {second && <Tool {...second} />}
          {action && <Tool {...action} />}
        </div>
      )}
    </div>
  );
}

export function EmptyState({ title, says, drawing, action }: EmptyStateProps) {
  return (
    <div class="empty">
      {drawing && (
        <DrawingView
          class="car"
          drawing={planDrawing({ plan: drawing, side: "left", places: [], rest: "not-looked" }).drawing}
        />
      )}
      <h2>{title}</h2>
      <p class="small">{says}</p>
      {action && <NextAction {...action} />}
    </div>
  );
}
