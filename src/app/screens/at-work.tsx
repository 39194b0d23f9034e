/** What is being done, announced once; how far it has come beside it, without a word to screen readers at every step. */
import { Notice } from "../parts/notice.js";
import { t } from "../texts/files.js";

interface AtWorkProps {
  readonly says: string;
  readonly done?: number;
  readonly all?: number;
}

export function AtWork({ says, done, all }: AtWorkProps) {
  return (
    <>
      <Notice kind="plain" title={says} />
      {done !== undefined && all !== undefined && <p class="remark small n">{t("files.far", { done, all })}</p>}
    </>
  );
}
