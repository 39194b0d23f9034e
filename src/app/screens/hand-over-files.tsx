/** The files of a hand-over: each is made first, with its progress and a way to stop, then handed on by a tap of its own. */
import { useEffect, useRef, useState } from "preact/hooks";
import type { Handed, ReadyFile } from "../../core/record/files.js";
import { NextAction, Tool } from "../parts/button.js";
import { ListRow } from "../parts/list-row.js";
import { Band } from "../parts/pool.js";
import { Sheet } from "../parts/sheet.js";
import { useApp } from "../state/app.js";
import type { FileKind, MadeFile, Making } from "../state/handover-files.js";
import type { MadeHandover } from "../state/handover-made.js";
import { copyText, ownFace } from "../state/handover-phone.js";
import { t } from "../texts/hand-over.js";

const loadFiles = () => import("../state/handover-files.js");
const KINDS: readonly FileKind[] = ["pdf", "html", "readings", "work", "unseen", "dates"];

type State =
  | { readonly is: "making"; readonly done: number; readonly of: number }
  | { readonly is: "ready"; readonly file: MadeFile; readonly ready: ReadyFile; readonly size: string }
  | { readonly is: "stopped" }
  | { readonly is: "broke"; readonly says: string };

const START: State = { is: "making", done: 0, of: 0 };

/** What went wrong, in words: a full memory is told as such. */
function brokeWords(error: unknown): string {
  const why = error instanceof Error ? error.message : String(error);
  const isRoom = error instanceof RangeError || /memory|allocation|array length|string length/i.test(why);
  return isRoom
    ? t("hand-over.broke.memory")
    : t("hand-over.broke.says", { why: /[.!?]$/.test(why) ? why : `${why}.` });
}

/** One file from the wish to being ready; begun when it is mounted, ended when it goes. */
function useMaking(kind: FileKind, made: MadeHandover) {
  const { store, printer, files } = useApp();
  const [state, setState] = useState<State>(START);
  const [round, setRound] = useState(0);
  const making = useRef<Making | undefined>(undefined);
  useEffect(() => {
    let isGone = false;
    const set = (next: State): void => {
      if (!isGone) setState(next);
    };
    const make = async (): Promise<void> => {
      try {
        const { startMaking, sizeText } = await loadFiles();
        const needs = { store, printer, face: ownFace };
        const begun = await startMaking(kind, made, needs, (done, of) => set({ is: "making", done, of }));
        if (isGone) {
          begun.stop();
          return;
        }
        making.current = begun;
        const file = await begun.done;
        if (!file) set({ is: "stopped" });
        else set({ is: "ready", file, ready: files.ready(file.content), size: sizeText(file.content.bytes.length) });
      } catch (error) {
        set({ is: "broke", says: brokeWords(error) });
      }
    };
    setState(START);
    void make();
    return () => {
      isGone = true;
      making.current?.stop();
      making.current = undefined;
    };
  }, [kind, made, round, store, printer, files]);
  return { state, stop: () => making.current?.stop(), again: () => setRound((before) => before + 1) };
}

const HANDED: Readonly<Record<Handed, () => string>> = {
  shared: () => t("hand-over.shared"),
  downloaded: () => t("hand-over.downloaded"),
  stopped: () => "",
  "tap-again": () => t("hand-over.hand.again"),
};

interface OneFileProps {
  readonly kind: FileKind;
  readonly made: MadeHandover;
  readonly onClose: () => void;
}

function OneFile({ kind, made, onClose }: OneFileProps) {
  const { state, stop, again } = useMaking(kind, made);
  const [handed, setHanded] = useState("");
  const hand = (ready: ReadyFile): void => {
    ready.hand().then(
      (how) => setHanded(HANDED[how]()),
      (error: unknown) => setHanded(brokeWords(error)),
    );
  };
  const foot =
    state.is === "ready" ? (
      <NextAction words={t("hand-over.hand")} says={state.file.content.name} onPress={() => hand(state.ready)} />
    ) : state.is === "making" ? (
      <Tool words={t("hand-over.stop")} onPress={stop} />
    ) : (
      <NextAction words={t("hand-over.again")} onPress={again} />
    );
  return (
    <Sheet open title={t(`hand-over.${kind}`)} closeWords={t("app.close")} onClose={onClose} foot={foot}>
      <div role="status">
        {state.is === "making" && <p>{t("hand-over.making")}</p>}
        {state.is === "stopped" && <p>{t("hand-over.stopped")}</p>}
        {state.is === "broke" && (
          <p>
            <strong>{t("hand-over.broke")}.</strong> {state.says}
          </p>
        )}
        {state.is === "ready" && (
          <p class="n">
            {[
              t("hand-over.ready", { size: state.size }),
              ...(state.file.pages === undefined ? [] : [t("hand-over.ready.pages", { n: state.file.pages })]),
            ].join(", ")}
          </p>
        )}
        {handed !== "" && <p>{handed}</p>}
      </div>
      {state.is === "making" && state.of > 0 && (
        <p class="n">{t("hand-over.making.of", { done: state.done, of: state.of })}</p>
      )}
      {state.is === "ready" && state.file.remarks.map((remark) => <p key={remark}>{remark}</p>)}
    </Sheet>
  );
}

interface HandOverFilesProps {
  readonly made: MadeHandover;
  readonly isPrinting: boolean;
  readonly onPrint: () => void;
}

export function HandOverFiles({ made, isPrinting, onPrint }: HandOverFilesProps) {
  const [kind, setKind] = useState<FileKind>();
  const [copied, setCopied] = useState("");
  const copy = async (): Promise<void> => {
    const { asText } = await loadFiles();
    setCopied((await copyText(asText(made))) ? t("hand-over.copy.done") : t("hand-over.copy.failed"));
  };
  return (
    <Band heading={t("hand-over.files")}>
      {KINDS.map((one) => (
        <ListRow
          key={one}
          title={t(`hand-over.${one}`)}
          second={t(`hand-over.${one}.says`)}
          onPress={() => setKind(one)}
        />
      ))}
      <ListRow
        title={t("hand-over.print")}
        onPress={onPrint}
        {...(isPrinting ? { second: t("hand-over.print.getting") } : {})}
      />
      <ListRow title={t("hand-over.copy")} onPress={() => void copy()} />
      <p class="remark" role="status">
        {copied}
      </p>
      {kind && <OneFile kind={kind} made={made} onClose={() => setKind(undefined)} />}
    </Band>
  );
}
