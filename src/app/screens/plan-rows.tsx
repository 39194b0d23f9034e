/** Lines of money: title, figure, and what each rests on once it is pressed. */
import { Disclosure } from "../parts/disclosure.js";
import { Band } from "../parts/pool.js";
import type { EstimateRow } from "../state/plan-estimate-view.js";

function Words({ row }: { readonly row: EstimateRow }) {
  return (
    <>
      <span>
        <span class="row-title">{row.title}</span>
        {row.second && <span class="small n">{row.second}</span>}
      </span>
      <span class="aside n">{row.figure}</span>
    </>
  );
}

export function MoneyRow({ row }: { readonly row: EstimateRow }) {
  if (row.because.length === 0)
    return (
      <div class="row plain">
        <Words row={row} />
      </div>
    );
  const because = () =>
    row.because.map((line) => (
      <p key={line} class="remark small n">
        {line}
      </p>
    ));
  return (
    <Disclosure class="row plain" inside={because}>
      <Words row={row} />
    </Disclosure>
  );
}

interface MoneyBandProps {
  readonly heading: string;
  readonly says?: string | undefined;
  readonly rows: readonly EstimateRow[];
}

export const MoneyBand = ({ heading, says, rows }: MoneyBandProps) => (
  <Band heading={heading}>
    {says && <p class="remark small">{says}</p>}
    {rows.map((row) => (
      <MoneyRow key={row.id} row={row} />
    ))}
  </Band>
);
