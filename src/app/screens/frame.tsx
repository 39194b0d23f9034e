/** What most screens share: the top line with keeping, and the title. */
import type { ComponentChildren } from "preact";
import { useMemo } from "preact/hooks";
import { EmptyState } from "../parts/notice.js";
import { Title } from "../parts/title.js";
import { TopLine } from "../parts/top-line.js";
import { useApp } from "../state/app.js";
import { keepingState } from "../state/keeping.js";
import { t } from "../texts/first.js";

/** The keeping state of the top line. */
export function useKeeping() {
  const { journal, around } = useApp();
  return useMemo(() => keepingState(journal, around.online), [journal, around]).value;
}

/** Top line with the way back: in history where one came from there, else to the screen above. */
export function Top({
  back,
  href,
  aside,
  middle,
}: {
  readonly back?: string;
  readonly href?: string;
  readonly aside?: string;
  readonly middle?: ComponentChildren;
}) {
  const { router } = useApp();
  const keeping = useKeeping();
  const says = aside !== undefined && keeping.kind !== "error" ? { aside } : { keeping };
  return (
    <TopLine
      {...(back === undefined ? {} : { back: { words: back, onPress: () => router.up(href) } })}
      middle={middle}
      {...says}
    />
  );
}

/** The title of a screen whose heading is drawn by something else, for screen readers and the focus. */
export function SpokenTitle({ title }: { readonly title: string }) {
  return (
    <h1 class="spoken" tabIndex={-1}>
      {title}
    </h1>
  );
}

/** A plain screen: top line, title, content. */
export function Plain({
  back,
  href,
  title,
  second,
  children,
}: {
  readonly back: string;
  readonly href?: string;
  readonly title: string;
  readonly second?: string;
  readonly children: ComponentChildren;
}) {
  return (
    <>
      <Top back={back} {...(href === undefined ? {} : { href })} />
      <main>
        <Title title={title} {...(second === undefined ? {} : { second })} />
        {children}
      </main>
    </>
  );
}

/** The address names something that is not on this phone. */
export function MissingScreen() {
  return (
    <>
      <Top />
      <main>
        <SpokenTitle title={t("app.missing")} />
        <EmptyState
          title={t("app.missing")}
          says={t("app.missing.says")}
          action={{ words: t("app.to-cars"), href: "#/" }}
        />
      </main>
    </>
  );
}
