/** The lines of judging again: limits and sheets that change, findings before and after. */
import { FindingRow } from "../parts/finding-row.js";
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import type { ChangeLine, ChangeLines, PlainLine } from "../state/judge-again-view.js";
import { t } from "../texts/index.js";

const Lines = ({ heading, lines }: { readonly heading: string; readonly lines: readonly PlainLine[] }) =>
  lines.length === 0 ? null : (
    <Band heading={heading}>
      {lines.map((line) => (
        <ListRow key={line.id} title={line.title} second={line.second} />
      ))}
    </Band>
  );

interface SetBandsProps {
  readonly limits: readonly PlainLine[];
  readonly sheets: readonly PlainLine[];
}

export const SetBands = ({ limits, sheets }: SetBandsProps) => (
  <>
    <Lines heading={t("again.limits")} lines={limits} />
    <Lines heading={t("again.sheets")} lines={sheets} />
  </>
);

export const HEAPS = ["appeared", "changed", "went"] as const;
type Heap = (typeof HEAPS)[number];

export function ChangeRow({ line, aside }: { readonly line: ChangeLine; readonly aside?: string }) {
  const { mark, title, second } = line;
  return (
    <FindingRow
      mark={mark}
      markWord={t(`mark.${mark}`)}
      title={title}
      second={second}
      {...(aside === undefined ? {} : { aside })}
    />
  );
}

export const noneOf = (lines: ChangeLines): boolean => HEAPS.every((heap) => lines[heap].length === 0);

/** What would appear, be graded otherwise and go, each under its own heading. */
export function ChangeBands({ lines }: { readonly lines: ChangeLines }) {
  if (noneOf(lines)) return <p class="remark">{t("again.none")}</p>;
  const heaps: readonly Heap[] = HEAPS.filter((heap) => lines[heap].length > 0);
  return (
    <>
      {heaps.map((heap) => (
        <Band key={heap} heading={t(`again.${heap}`)} aside={String(lines[heap].length)}>
          {lines[heap].map((line) => (
            <ChangeRow key={line.id} line={line} />
          ))}
        </Band>
      ))}
    </>
  );
}
