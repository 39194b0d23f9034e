/** One list of a sheet under work: its items in order, what stands against each, and what can be done with them. */
import { useEffect, useRef, useState } from "preact/hooks";
import { DRAFT_LISTS, type DraftList } from "../../core/sheet/work.js";
import { Tool } from "../parts/button.js";
import { ListRow } from "../parts/list-row.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import { type ParamsOf, to } from "../state/routes.js";
import { itemTitle } from "../state/sheet-items-view.js";
import { type NamedIn, namedIn } from "../state/sheet-named.js";
import { copyOf, isNamed, movedBy, newItems } from "../state/sheet-new-item.js";
import { takenIn } from "../state/sheet-taken.js";
import { itemsIn, type SheetWork, toldOf } from "../state/sheet-work.js";
import { orderItems, putItem, putItems } from "../state/sheet-work-acts.js";
import { t } from "../texts/sheet-work.js";
import { MissingScreen, Plain } from "./frame.js";
import { OnSheetWork } from "./on-sheet-work.js";
import { AskName } from "./sheet-name.js";
import { SheetUndoRow } from "./sheet-undo-row.js";

interface OfList {
  readonly sheet: string;
  readonly work: SheetWork;
  readonly list: Exclude<DraftList, "head">;
}

/** What is done to a list, with the ids that were ever used in it. */
function useListActs({ sheet, work, list }: OfList) {
  const { journal, router } = useApp();
  const house = journal.house().value;
  const taken = (of: DraftList) => (house.is === "open" ? takenIn(house.state, of) : []);
  const opener = (): ((item: string) => void) => {
    const hence = router.fromHere();
    return (item) => hence.go(to("sheet-item", { sheet, list, item }));
  };
  const order = [...itemsIn(work, list).keys()];
  return {
    order,
    add: (name: string): void => {
      const made = newItems(work, list, name, taken);
      const open = opener();
      void putItems(journal, work.draft, made).then((kept) => kept && made[0] && open(made[0].item));
    },
    copy: (item: string): void => {
      const is = itemsIn(work, list).get(item);
      const name = is ? t("sheet-list.copied", { title: itemTitle(work, list, is) }) : "";
      const made = copyOf(work, list, item, name, taken(list));
      if (!made) return;
      const behind = order.flatMap((key) => (key === item ? [key, made.item] : [key]));
      const open = opener();
      void putItems(journal, work.draft, [made], { list, order: behind }).then((kept) => kept && open(made.item));
    },
    move: (item: string, by: -1 | 1): void => {
      const moved = movedBy(order, item, by);
      if (moved) void orderItems(journal, work.draft, list, moved);
    },
    takeOut: (item: string): void => void putItem(journal, work.draft, list, item, null),
  };
}

/** So many names are told of one list; the rest by their number. */
const NAMED_SHOWN = 4;

function namedLine({ titles, count }: NamedIn): string {
  const shown = titles.slice(0, NAMED_SHOWN);
  const more = count - shown.length;
  const words = shown.join("; ");
  return more > 0 ? t("sheet-list.named.more", { titles: words, n: more }) : words;
}

/** Asked before what others name is taken out; the choice stays with the person, and it can be taken back. */
function AskOut({
  names,
  onYes,
  onNo,
}: {
  readonly names: readonly NamedIn[];
  readonly onYes: () => void;
  readonly onNo: () => void;
}) {
  const says = useRef<HTMLParagraphElement>(null);
  useEffect(() => says.current?.focus(), []);
  const n = names.reduce((sum, { count }) => sum + count, 0);
  return (
    <>
      <p ref={says} tabIndex={-1}>
        {t("sheet-list.named", { n })}
      </p>
      {names.map((one) => (
        <ListRow
          key={one.list}
          folded
          title={t(`sheet-list.${one.list}`)}
          second={namedLine(one)}
          aside={String(one.count)}
        />
      ))}
      <div class="acts">
        <Tool words={t("sheet-list.out.yes")} onPress={onYes} />
        <Tool words={t("sheet-list.out.no")} onPress={onNo} />
      </div>
    </>
  );
}

/** Acts on one item, within reach of the thumb; the words say where it stands after each move. */
function ItemActs({ on, item, onClose }: { readonly on: OfList; readonly item: string; readonly onClose: () => void }) {
  const acts = useListActs(on);
  const [names, setNames] = useState<readonly NamedIn[]>();
  const is = itemsIn(on.work, on.list).get(item);
  if (!is) return null;
  const at = acts.order.indexOf(item);
  const takeOut = (): void => {
    acts.takeOut(item);
    onClose();
  };
  const askOut = (): void => {
    const found = namedIn(on.work, on.list, item);
    if (found.length === 0) takeOut();
    else setNames(found);
  };
  const title = itemTitle(on.work, on.list, is);
  if (names)
    return (
      <Sheet open title={title} closeWords={t("app.close")} onClose={onClose}>
        <AskOut names={names} onYes={takeOut} onNo={onClose} />
      </Sheet>
    );
  return (
    <Sheet open title={title} closeWords={t("app.close")} onClose={onClose}>
      <p role="status">{t("sheet-list.at", { n: at + 1, of: acts.order.length })}</p>
      <div class="acts">
        <Tool words={t("sheet-list.up")} disabled={at === 0} onPress={() => acts.move(item, -1)} />
        <Tool words={t("sheet-list.down")} disabled={at === acts.order.length - 1} onPress={() => acts.move(item, 1)} />
      </div>
      <div class="acts">
        <Tool
          words={t("sheet-list.copy")}
          onPress={() => {
            acts.copy(item);
            onClose();
          }}
        />
        <Tool words={t("sheet-list.out")} onPress={askOut} />
      </div>
    </Sheet>
  );
}

function Row({ on, item, onActs }: { readonly on: OfList; readonly item: string; readonly onActs: () => void }) {
  const { sheet, work, list } = on;
  const is = itemsIn(work, list).get(item);
  if (!is) return null;
  const [first, ...more] = toldOf(work, list, item).filter((one) => one.is === "problem");
  const title = itemTitle(work, list, is);
  const second = first && (more.length > 0 ? t("sheet-list.told", { says: first.says, n: more.length }) : first.says);
  return (
    <li class="editor-row">
      <ListRow title={title} second={second} href={to("sheet-item", { sheet, list, item })} />
      <button type="button" class="tool plain" aria-label={t("sheet-list.acts.of", { title })} onClick={onActs}>
        {t("sheet-list.acts")}
      </button>
    </li>
  );
}

function Items(on: OfList) {
  const { sheet, work, list } = on;
  const acts = useListActs(on);
  const [asked, setAsked] = useState(false);
  const [held, setHeld] = useState<string>();
  const items = itemsIn(work, list);
  const named = (name: string): void => {
    acts.add(name);
    setAsked(false);
  };
  return (
    <Plain back={t("sheet-work.title")} href={to("sheet-work", { sheet })} title={t(`sheet-list.${list}`)}>
      <p class="remark">{t(`sheet-list.${list}.says`)}</p>
      {items.size === 0 && <p class="remark">{t("sheet-list.none")}</p>}
      <ol class="editor-rows">
        {acts.order.map((item) => (
          <Row key={item} {...{ on, item }} onActs={() => setHeld(item)} />
        ))}
      </ol>
      <SheetUndoRow isMine={(draft) => draft === work.draft} work={work} />
      <div class="acts">
        <Tool words={t("sheet-list.add")} onPress={() => (isNamed(list) ? setAsked(true) : acts.add(""))} />
      </div>
      {held !== undefined && <ItemActs {...{ on }} item={held} onClose={() => setHeld(undefined)} />}
      {asked && <AskName title={t("sheet-list.add")} onKeep={named} onClose={() => setAsked(false)} />}
    </Plain>
  );
}

export function SheetList({ params: { sheet, list } }: { readonly params: ParamsOf<"sheet-list"> }) {
  const known = DRAFT_LISTS.find((one): one is DraftList => one === list);
  if (known === undefined || known === "head") return <MissingScreen />;
  return <OnSheetWork sheet={sheet}>{(work) => <Items {...{ sheet, work }} list={known} />}</OnSheetWork>;
}
