/** A question that can be seen, over two to four short answers of which one is chosen. */
import type { UnitSwitchProps } from "../parts/props-frame.js";
import { UnitSwitch } from "../parts/switch.js";

export const Asked = (props: UnitSwitchProps) => (
  <>
    {/* The answers carry the question as their own name. */}
    <p class="label" aria-hidden="true">
      {props.label}
    </p>
    <UnitSwitch {...props} />
  </>
);
