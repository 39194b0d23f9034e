/** Makes a file of the record and hands it over: looked through, written part by part, then one tap for each part. */
import { useEffect, useRef, useState } from "preact/hooks";
import type { Handed, Packing } from "../../core/record/files.js";
import {
  type CopyMade,
  type CopyPlan,
  type CopyStamp,
  type CopyWhat,
  gatherCopy,
  writeVolume,
} from "../../core/record/index.js";
import { type Problem, problem } from "../../core/terms/index.js";
import { NextAction, Tool } from "../parts/button.js";
import { Field } from "../parts/field.js";
import { Notice } from "../parts/notice.js";
import { useApp } from "../state/app.js";
import { copyName, madeOf } from "../state/copies.js";
import { rounded, t } from "../texts/files.js";
import { AtWork } from "./at-work.js";
import { lazy, Nothing } from "./lazy.js";
import { RefusedNotice } from "./refused-notice.js";

const Lacking = lazy(() => import("./lacking.js").then((file) => file.Lacking), Nothing);

const BYTES_IN_MB = 1_000_000;

interface Ready {
  readonly is: "ready";
  readonly plan: CopyPlan;
  readonly part: number;
  readonly file: File;
  readonly handed?: Handed;
}
type Step =
  | { readonly is: "idle" }
  | { readonly is: "at-work"; readonly says: string; readonly done?: number; readonly all?: number }
  | { readonly is: "refused"; readonly problems: readonly Problem[] }
  | Ready;

export interface CopyWay {
  readonly id: string;
  readonly words: string;
  readonly says?: string;
  readonly what: CopyWhat;
}

interface CopyMakerProps {
  /** Ways to make one: everything, or only what is new. The first is the usual one. */
  readonly ways: readonly CopyWay[];
  /** What the file is named after. */
  readonly of: string;
  /** Called when every part of a copy of everything, or of what is new, was handed over. */
  readonly onHanded?: (made: CopyMade) => void;
  /** Called when every part of any file was handed over. */
  readonly onOut?: () => void;
}

const wentOut = (handed: Handed | undefined): boolean => handed === "shared" || handed === "downloaded";

/** What is in the file, and what is not. */
function Told({ plan }: { readonly plan: CopyPlan }) {
  const blobs = plan.frozen.length + plan.volumes.reduce((sum, one) => sum + one.length, 0);
  return (
    <>
      <p class="remark">{t("files.counts", { ...plan.counts, blobs })}</p>
      {plan.volumes.length > 1 && <p class="remark">{t("files.volumes", { n: plan.volumes.length })}</p>}
      {plan.asTheyCame > 0 && <p class="remark">{t("files.as-they-came", { n: plan.asTheyCame })}</p>}
      {plan.lacking.length > 0 && (
        <Lacking lacking={plan.lacking} title={t("files.lacking", { n: plan.lacking.length })} />
      )}
      {plan.keptBack.length > 0 && <p class="remark">{t("files.kept-back", { n: plan.keptBack.length })}</p>}
    </>
  );
}

function useMaking({ of: called, onHanded, onOut }: CopyMakerProps) {
  const { store, phone, files, packer, around } = useApp();
  const [step, setStep] = useState<Step>({ is: "idle" });
  const [passphrase, setPassphrase] = useState("");
  const stamp = useRef<CopyStamp>({ made: "", set: "", app: around.version });
  const running = useRef<Packing<File>>(undefined);
  const end = (): void => {
    running.current?.stop();
    running.current = undefined;
  };
  // Whoever goes away wants no file: nothing is written on for nobody.
  useEffect(() => end, []);
  const atWork = (says: string, done?: number, all?: number): void =>
    setStep({ is: "at-work", says, ...(done === undefined || all === undefined ? {} : { done, all }) });

  const write = async (plan: CopyPlan, part: number): Promise<void> => {
    const of = plan.volumes.length;
    const says = of === 1 ? t("files.packing.one") : t("files.packing", { part: part + 1, of });
    atWork(says);
    const name = copyName(called, phone.now(), plan, part, passphrase !== "");
    const packing = (await packer()).pack(name, passphrase === "" ? undefined : passphrase);
    running.current = packing;
    const written = await writeVolume(store, plan, part, stamp.current, packing, (done, all) =>
      atWork(says, done, all),
    );
    end();
    if (written.ok) return setStep({ is: "ready", plan, part, file: written.value });
    setStep({ is: "refused", problems: written.problems });
  };
  const make = async (what: CopyWhat): Promise<void> => {
    stamp.current = { made: new Date(phone.now()).toISOString(), set: phone.nonce(), app: around.version };
    const says = t("files.looking");
    atWork(says);
    const plan = await gatherCopy(store, what, (done, all) => atWork(says, done, all));
    if (plan.ok) await write(plan.value, 0);
    else setStep({ is: "refused", problems: plan.problems });
  };
  const hand = async (ready: Ready): Promise<void> => {
    const handed = await files.ready(ready.file).hand();
    setStep({ ...ready, handed });
    if (!wentOut(handed) || ready.part < ready.plan.volumes.length - 1) return;
    const made = madeOf(ready.plan, Date.parse(stamp.current.made));
    if (made) onHanded?.(made);
    onOut?.();
  };
  /** A worker ended by the phone is told, not waited for. */
  const guarded = (work: Promise<void>): void => {
    work.catch((error: unknown) => {
      end();
      reportError(error);
      setStep({ is: "refused", problems: [problem("files.broke")] });
    });
  };
  return {
    step,
    setStep,
    passphrase,
    setPassphrase,
    make: (what: CopyWhat) => guarded(make(what)),
    write: (plan: CopyPlan, part: number) => guarded(write(plan, part)),
    hand,
  };
}

function ReadyFile({ ready, making }: { readonly ready: Ready; readonly making: ReturnType<typeof useMaking> }) {
  const { plan, part, file, handed } = ready;
  const all = plan.volumes.length;
  const isLast = part === all - 1;
  return (
    <>
      <Notice
        kind="plain"
        title={
          handed
            ? t(`files.handed.${handed}`)
            : all > 1
              ? t("files.ready.part", { part: part + 1, of: all })
              : t("files.ready")
        }
        says={t("files.ready.says", { name: file.name, mb: rounded(file.size / BYTES_IN_MB, 2) })}
      />
      <Told plan={plan} />
      <div class="acts">
        {!wentOut(handed) && <NextAction words={t("files.hand")} onPress={() => void making.hand(ready)} />}
        {wentOut(handed) && <Tool words={t("files.hand-again")} onPress={() => void making.hand(ready)} />}
        {wentOut(handed) && isLast && <Tool words={t("files.again")} onPress={() => making.setStep({ is: "idle" })} />}
        {wentOut(handed) && !isLast && (
          <NextAction
            words={t("files.next-part", { part: part + 2, of: all })}
            onPress={() => making.write(plan, part + 1)}
          />
        )}
      </div>
    </>
  );
}

export function CopyMaker(props: CopyMakerProps) {
  const making = useMaking(props);
  const { step, passphrase } = making;
  const [first, ...others] = props.ways;
  if (step.is === "ready") return <ReadyFile ready={step} making={making} />;
  if (step.is === "at-work") return <AtWork {...step} />;
  return (
    <>
      {step.is === "refused" && <RefusedNotice title={t("refused.copy")} problems={step.problems} />}
      <div class="form">
        <Field
          id="files-passphrase"
          kind="text"
          label={t("files.passphrase")}
          help={t("files.passphrase.help")}
          value={passphrase}
          onInput={making.setPassphrase}
        />
      </div>
      <div class="acts">
        {others.map(({ id, words, says, what }) => (
          <Tool key={id} words={words} {...(says ? { says } : {})} onPress={() => making.make(what)} />
        ))}
        {first && <NextAction words={first.words} onPress={() => making.make(first.what)} />}
      </div>
    </>
  );
}
