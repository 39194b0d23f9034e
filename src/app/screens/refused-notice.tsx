/** What is wrong with a file or an act on files: the reason, where it stands, what to do. Announced at once. */
import type { Problem } from "../../core/terms/index.js";
import { Notice } from "../parts/notice.js";
import { placeIn } from "../state/copies.js";
import { refusedWords, t } from "../texts/files.js";

export function RefusedNotice({ problems, title }: { readonly problems: readonly Problem[]; readonly title?: string }) {
  const [first] = problems;
  if (!first) return null;
  const { says, todo } = refusedWords(first.code);
  const where = placeIn(first);
  const told = [title === undefined ? "" : says, where === "" ? "" : `${t("refused.where", { where })}.`, todo];
  return <Notice kind="error" title={title ?? says} says={told.filter((one) => one !== "").join(" ")} />;
}
