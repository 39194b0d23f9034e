/**
 * Around every screen: the first-run notice, what was not kept, a version that waits, and the catcher of our own
 * mistakes. Moves the focus to the title when the screen changes.
 */
import { Component, type ComponentChildren, type ComponentType } from "preact";
import { useMemo } from "preact/hooks";
import { EmptyState, Notice } from "../parts/notice.js";
import { useApp } from "../state/app.js";
import { troubleTold } from "../state/keeping.js";
import { type Address, hrefOf } from "../state/routes.js";
import { t } from "../texts/first.js";
import { FirstRun } from "./first-run.js";
import { SpokenTitle } from "./frame.js";
import { SCREENS } from "./screens.js";
import { useArrival } from "./use-arrival.js";

/** Shows a plain notice instead of a screen that threw; the record is not touched by that. */
class Catcher extends Component<
  { readonly address: string; readonly children: ComponentChildren },
  { readonly failed?: string }
> {
  override state: { readonly failed?: string } = {};
  override componentDidCatch(error: unknown): void {
    this.setState({ failed: this.props.address });
    reportError(error);
  }
  override render() {
    if (this.state.failed !== this.props.address) return this.props.children;
    const again = (): void => this.setState({ failed: "" });
    return (
      <main>
        <SpokenTitle title={t("app.broke")} />
        <EmptyState
          title={t("app.broke")}
          says={t("app.broke.says")}
          action={{ words: t("app.again"), onPress: again }}
        />
        <p class="aside-link">
          <a href="#/">{t("app.to-cars")}</a>
        </p>
      </main>
    );
  }
}

function NotKept() {
  const { journal } = useApp();
  const told = useMemo(() => troubleTold(journal), [journal]).value;
  if (!told) return null;
  const action = told.reload
    ? { words: t("trouble.reload"), onPress: () => location.reload() }
    : { words: t("app.again"), onPress: () => void journal.again() };
  return <Notice kind="error" title={told.title} says={told.says} action={action} />;
}

function UpdateWaits() {
  const { around } = useApp();
  if (!around.updateWaits.value) return null;
  return (
    <Notice
      kind="plain"
      title={t("update.title")}
      says={t("update.says")}
      action={{ words: t("update.take"), onPress: around.takeUpdate }}
    />
  );
}

function Nowhere() {
  return (
    <main>
      <SpokenTitle title={t("app.nowhere")} />
      <EmptyState
        title={t("app.nowhere")}
        says={t("app.nowhere.says")}
        action={{ words: t("app.to-cars"), href: "#/" }}
      />
    </main>
  );
}

function ScreenOf({ address }: { readonly address: Address }) {
  // The table pairs each name with the screen that takes its parameters; the compiler can't follow the pair.
  const Screen = SCREENS[address.name] as ComponentType<{ readonly params: Address["params"] }>;
  return <Screen params={address.params} />;
}

export function Shell() {
  const { router, settings } = useApp();
  const address = router.at.value;
  const text = address ? JSON.stringify(address) : "";
  useArrival(address ? hrefOf(address) : "", address?.name ?? "", router.cameBack);
  if (!settings.value.noticeRead) {
    return (
      <div class="app">
        <FirstRun />
      </div>
    );
  }
  return (
    <div class="app">
      <NotKept />
      <UpdateWaits />
      <Catcher address={text}>{address ? <ScreenOf address={address} /> : <Nowhere />}</Catcher>
    </div>
  );
}
