/** A labelled box to write or pick in. Numbers are text with a number keyboard: the comma is a decimal sign too. */
import type { FieldProps } from "./props-frame.js";

export function Field(props: FieldProps) {
  const { id, label, kind, value, onInput, onCommit, help, problem, options = [], unit, required } = props;
  const described = [help && `${id}-help`, problem && `${id}-problem`].filter(Boolean).join(" ");
  const shared = {
    id,
    value,
    "aria-required": required ? ("true" as const) : undefined,
    "aria-invalid": problem ? ("true" as const) : undefined,
    "aria-describedby": described === "" ? undefined : described,
    onInput: (event: { readonly currentTarget: { readonly value: string } }) => onInput(event.currentTarget.value),
    onChange: (event: { readonly currentTarget: { readonly value: string } }) => onCommit?.(event.currentTarget.value),
  };
  const length = props.maxLength === undefined ? undefined : { maxLength: props.maxLength };
  const fill = props.autocomplete ?? "off";
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <div class="field-line">
        {kind === "select" ? (
          <select {...shared}>
            {options.map((option) => (
              <option key={option.value} value={option.value}>
                {option.words}
              </option>
            ))}
          </select>
        ) : kind === "area" ? (
          <textarea {...shared} {...length} rows={3} />
        ) : kind === "date" ? (
          <input {...shared} type="date" autocomplete={fill} />
        ) : kind === "search" ? (
          <input {...shared} {...length} type="search" inputMode="search" autocomplete={fill} />
        ) : (
          <input
            {...shared}
            {...length}
            type="text"
            inputMode={kind === "number" ? "decimal" : "text"}
            autocomplete={fill}
          />
        )}
        {unit && <span>{unit}</span>}
      </div>
      {help && (
        <p class="small field-help" id={`${id}-help`}>
          {help}
        </p>
      )}
      <p class="problem" id={`${id}-problem`} role="status">
        {problem}
      </p>
    </div>
  );
}
