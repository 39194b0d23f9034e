/**
 * How keeping stands, in one word for the top line and at length when something was refused. 'Keeping' only after a
 * second, so that nothing flickers. Knows no stream.
 */
import { computed, effect, type ReadonlySignal, signal } from "@preact/signals";
import { t } from "../texts/first.js";
import type { Journal } from "./journal.js";

const SAY_KEEPING_AFTER_MS = 1_000;

export interface Keeping {
  readonly kind: "kept" | "keeping" | "no-signal" | "error";
  readonly words: string;
}

/** For the top line. */
export function keepingState(
  journal: Pick<Journal, "unkept" | "health">,
  online: ReadonlySignal<boolean>,
): ReadonlySignal<Keeping> {
  const slow = signal(false);
  effect(() => {
    const underway = journal.unkept.value.some((item) => !item.problem);
    if (!underway) {
      slow.value = false;
      return;
    }
    const timer = setTimeout(() => {
      slow.value = true;
    }, SAY_KEEPING_AFTER_MS);
    return () => clearTimeout(timer);
  });
  return computed(() => {
    const is = journal.health.value.is;
    if (journal.unkept.value.some((item) => item.problem) || (is !== "open" && is !== "opening"))
      return { kind: "error", words: t("keeping.error") };
    if (slow.value) return { kind: "keeping", words: t("keeping.keeping") };
    if (!online.value) return { kind: "no-signal", words: t("keeping.no-signal") };
    return { kind: "kept", words: t("keeping.kept") };
  });
}

export interface TroubleTold {
  readonly title: string;
  readonly says: string;
  /** Only loading the page again helps. */
  readonly reload: boolean;
}

const STORE_PROBLEM = /^record\.store-(full|refused|lost|closed-by-newer|blocked)$/;

/** What was not kept, why, and what is safe; undefined while all is kept. */
export function troubleTold(journal: Pick<Journal, "unkept" | "health">): ReadonlySignal<TroubleTold | undefined> {
  return computed(() => {
    const refused = journal.unkept.value.filter((item) => item.problem);
    const [first] = refused;
    const health = journal.health.value.is;
    const code = STORE_PROBLEM.exec(first?.problem?.code ?? "")?.[1] ?? (first ? "other" : undefined);
    const why = code ?? (health === "open" || health === "opening" ? undefined : health);
    if (why === undefined) return undefined;
    const says = t(`trouble.${why as "full" | "refused" | "lost" | "closed-by-newer" | "blocked" | "other"}`);
    const title = first
      ? refused.length > 1
        ? t("trouble.waiting", { n: refused.length })
        : t("trouble.title", { what: t(`trouble.${first.what}`) })
      : t("keeping.error");
    return { title, says, reload: why === "closed-by-newer" };
  });
}
