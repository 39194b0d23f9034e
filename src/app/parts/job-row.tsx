/** A job on the work list, and the bracket round jobs that share one access. Refuses to order or price them. */
import { GradeMark } from "./grade-mark.js";
import { MaybePressable, Pressable } from "./pressable.js";
import type { BundleBracketProps, JobRowProps } from "./props-telling.js";

export function JobRow(props: JobRowProps) {
  const { number, title, mark, markWord, byWhen, hours, cost, open, why, decision, href, onPress, children } = props;
  const { apart, parts, word } = props;
  return (
    <div class="job">
      <span class="job-no n">{number}</span>
      <MaybePressable class="job-head" href={href} onPress={onPress} expanded={href === undefined ? open : undefined}>
        <span class="job-title">{title}</span>
        <span class="job-by small n">
          <GradeMark mark={mark} size={18} />
          <span>{`${markWord}, ${byWhen}`}</span>
        </span>
        {word && <span class="job-parts small n">{word}</span>}
        {parts && <span class="job-parts small n">{parts}</span>}
      </MaybePressable>
      <span class="job-figures n">
        {hours && <b>{hours}</b>}
        {cost && <span class="small">{cost}</span>}
      </span>
      {apart && <p class="wide small n">{apart}</p>}
      {open && why && <p class="wide small">{why}</p>}
      {open && decision && (
        <div class="wide">
          <Pressable class="decision" href={decision.href} onPress={decision.onPress}>
            <span>
              {`${decision.label} `}
              <b>{decision.value}</b>
            </span>
            <span>{decision.action}</span>
          </Pressable>
        </div>
      )}
      {open && children && <div class="wide">{children}</div>}
    </div>
  );
}

export function BundleBracket({ title, aside, children }: BundleBracketProps) {
  return (
    <section class="bundle">
      <header>
        <h2>{title}</h2>
        {aside && <span class="small n">{aside}</span>}
      </header>
      {children}
    </section>
  );
}
