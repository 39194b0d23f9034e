/** Reads a file in: picked, checked whole, told what it would bring; then one press takes it in. */
import { useEffect, useRef, useState } from "preact/hooks";
import type { OpenedCopy } from "../../core/record/files.js";
import { type DryRun, dryRun, type TakenIn, takeIn } from "../../core/record/index.js";
import { type Problem, problem } from "../../core/terms/index.js";
import { NextAction, Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { Notice } from "../parts/notice.js";
import { Band } from "../parts/pool.js";
import { useApp } from "../state/app.js";
import { t } from "../texts/files.js";
import { AtWork } from "./at-work.js";
import { Brings } from "./brings.js";
import { RefusedNotice } from "./refused-notice.js";

type Step =
  | { readonly is: "idle" }
  | { readonly is: "at-work"; readonly says: string; readonly done?: number; readonly all?: number }
  | { readonly is: "locked"; readonly file: File; readonly wrong: boolean }
  | { readonly is: "refused"; readonly problems: readonly Problem[] }
  | { readonly is: "found"; readonly copy: OpenedCopy; readonly brings: DryRun }
  | { readonly is: "done"; readonly taken: TakenIn };

/** Phones know no type for locked files: any may be chosen, what it is shows when it is opened. */
const ANY = "*/*";

function useReading() {
  const { files, packer, store, journal } = useApp();
  const [step, setStep] = useState<Step>({ is: "idle" });
  const held = useRef<OpenedCopy>(undefined);
  const gone = useRef(false);
  // Whoever goes away lets go of the file, also of one that is still being opened.
  useEffect(
    () => () => {
      gone.current = true;
      held.current?.close();
    },
    [],
  );
  const atWork = (says: string, done?: number, all?: number): void =>
    setStep({ is: "at-work", says, ...(done === undefined || all === undefined ? {} : { done, all }) });
  const refuse = (problems: readonly Problem[]): void => setStep({ is: "refused", problems });

  const open = async (file: File, passphrase?: string): Promise<void> => {
    const says = t("read.checking");
    atWork(says);
    const opened = await (await packer()).open(file, passphrase, (done, all) => atWork(says, done, all));
    if (!opened.ok) {
      const code = opened.problems[0]?.code;
      const wrong = code === "files.wrong-passphrase";
      return code === "files.wants-passphrase" || wrong
        ? setStep({ is: "locked", file, wrong })
        : refuse(opened.problems);
    }
    if (gone.current) return opened.value.close();
    held.current = opened.value;
    const brings = await dryRun(store, opened.value);
    if (brings.ok) return setStep({ is: "found", copy: opened.value, brings: brings.value });
    opened.value.close();
    refuse(brings.problems);
  };
  const pick = async (): Promise<void> => {
    const [file] = await files.pick({ accept: ANY });
    if (file) await open(file);
  };
  const take = async (copy: OpenedCopy): Promise<void> => {
    // From here on it goes to its end, whatever screen is opened meanwhile.
    held.current = undefined;
    const says = t("read.taking");
    atWork(says);
    const taken = await takeIn(store, copy, (done, all) => atWork(says, done, all)).finally(copy.close);
    if (!taken.ok) return refuse(taken.problems);
    await journal.reread();
    setStep({ is: "done", taken: taken.value });
  };
  const leave = (copy: OpenedCopy): void => {
    copy.close();
    setStep({ is: "idle" });
  };
  /** A worker ended by the phone, or a file gone while it was read, is told and not waited for. */
  const guarded = (work: Promise<void>): void => {
    work.catch((error: unknown) => {
      reportError(error);
      held.current?.close();
      held.current = undefined;
      refuse([problem("files.broke")]);
    });
  };
  return {
    step,
    open: (file: File, passphrase?: string) => guarded(open(file, passphrase)),
    pick: () => guarded(pick()),
    take: (copy: OpenedCopy) => guarded(take(copy)),
    leave,
  };
}

function Locked({ wrong, onUnlock }: { readonly wrong: boolean; readonly onUnlock: (passphrase: string) => void }) {
  const [passphrase, setPassphrase] = useState("");
  return (
    <>
      <Notice kind="plain" title={t("read.locked")} says={t("read.locked.says")} />
      <div class="form">
        <Field
          id="read-passphrase"
          kind="text"
          label={t("read.passphrase")}
          value={passphrase}
          onInput={setPassphrase}
          {...(wrong
            ? { problem: `${t("refused.files.wrong-passphrase")} ${t("refused.files.wrong-passphrase.do")}` }
            : {})}
        />
      </div>
      <div class="acts">
        <NextAction words={t("read.unlock")} onPress={() => onUnlock(passphrase)} disabled={passphrase === ""} />
      </div>
    </>
  );
}

function Done({ taken: { received, blobs, left } }: { readonly taken: TakenIn }) {
  return (
    <>
      <Notice kind="plain" title={t("read.done")} says={t("read.done.says", { added: received.added, blobs })} />
      {left > 0 && <Notice kind="error" title={t("read.left", { n: left })} />}
      {received.newWriter !== undefined && <p class="remark">{t("read.new-writer")}</p>}
    </>
  );
}

export function ReadIn() {
  const { step, open, pick, take, leave } = useReading();
  return (
    <Band heading={t("read.title")}>
      {step.is === "idle" && <p class="remark">{t("read.says")}</p>}
      {step.is === "at-work" && <AtWork {...step} />}
      {step.is === "refused" && (
        <>
          <RefusedNotice title={t("refused.title")} problems={step.problems} />
          {step.problems[0]?.code !== "files.broke" && <p class="remark">{t("refused.unchanged")}</p>}
        </>
      )}
      {step.is === "locked" && (
        <Locked key={step.file.name} wrong={step.wrong} onUnlock={(passphrase) => open(step.file, passphrase)} />
      )}
      {step.is === "found" && (
        <>
          <Brings manifest={step.copy.manifest} brings={step.brings} />
          <div class="acts">
            <Tool words={t("read.leave")} onPress={() => leave(step.copy)} />
            <NextAction words={t("read.do")} onPress={() => take(step.copy)} />
          </div>
        </>
      )}
      {step.is === "done" && <Done taken={step.taken} />}
      {(step.is === "idle" || step.is === "refused" || step.is === "done") && (
        <div class="acts">
          {step.is === "done" && <Tool words={t("read.to-cars")} href="#/" />}
          <Tool words={step.is === "done" ? t("read.another") : t("read.pick")} onPress={pick} />
        </div>
      )}
    </Band>
  );
}
