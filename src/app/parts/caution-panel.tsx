/**
 * Cautions with the signal-word panels of ISO 3864-2 / ANSI Z535.4: DANGER, WARNING and CAUTION led by the safety
 * alert symbol, NOTICE without one. The message lies on plain ground. Refuses to decide when one is due.
 */
import { useId } from "preact/hooks";
import { CautionBar, LOOK } from "./caution-bar.js";
import { AlertIcon } from "./icons.js";
import { MaybePressable } from "./pressable.js";
import type { CautionPanelProps } from "./props-telling.js";

/** The signal word on its colour. */
function SignalWord({ signal, word }: Pick<CautionPanelProps, "signal" | "word">) {
  return (
    <span class={LOOK[signal]}>
      {signal !== "notice" && <AlertIcon />}
      {word}
    </span>
  );
}

function Full({ signal, word, not, why, can, todo, told, level = 2 }: CautionPanelProps) {
  const id = useId();
  const Heading = `h${level}` as const;
  return (
    <section class="caution-full" aria-labelledby={id}>
      <SignalWord signal={signal} word={word} />
      <div class="caution-says">
        <Heading id={id}>
          <span class="spoken">{`${word}: `}</span>
          {not}
        </Heading>
        <dl>
          {[why, can, todo].map(
            (part) =>
              part && (
                <div key={part.label}>
                  <dt>{part.label}</dt>
                  <dd>{part.says}</dd>
                </div>
              ),
          )}
        </dl>
        {told && <p class="small n">{told}</p>}
      </div>
    </section>
  );
}

function Small({ signal, word, not, why, todo, told, href, onPress }: CautionPanelProps) {
  const lines = [why?.says, todo?.says, told].filter((line) => line !== undefined);
  return (
    <MaybePressable class="caution-small" href={href} onPress={onPress}>
      <SignalWord signal={signal} word={word} />
      <span class="caution-words">
        {not}
        {lines.map((line) => (
          <span key={line} class="small n">
            {line}
          </span>
        ))}
      </span>
    </MaybePressable>
  );
}

export function CautionPanel(props: CautionPanelProps) {
  switch (props.form) {
    case "bar":
      return <CautionBar {...props} />;
    case "full":
      return <Full {...props} />;
    case "small":
      return <Small {...props} />;
  }
}
