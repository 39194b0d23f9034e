/** Sheets that could not be read, each with its cause. A piece of its own: it is hardly ever wanted. */
import type { Problem } from "../../core/terms/index.js";
import { Notice } from "../parts/notice.js";
import { problemText } from "../texts/problems.js";

export const SheetsUnread = ({ problems }: { readonly problems: readonly Problem[] }) => (
  <>
    {problems.map((problem, at) => (
      <Notice key={at} kind="error" title={problemText(problem)} />
    ))}
  </>
);
