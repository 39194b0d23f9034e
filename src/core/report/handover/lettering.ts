/** Findings lettered worst first, jobs numbered as they come, and which belongs to which. Judges nothing. */
import { levelOf } from "../../terms/index.js";
import { beforeDriving } from "./before-driving.js";
import type { FaultRef, FaultTold, HandoverInput, JobTold } from "./input.js";
import type { LetteredFinding, NumberedJob } from "./model.js";
import { isSettled, sameFault } from "./standing.js";

const ALPHABET = "abcdefghijklmnopqrstuvwxyz";

/** a … z, aa, ab …: as many as there are findings. */
export function letterOf(index: number): string {
  const last = ALPHABET[index % ALPHABET.length] ?? "";
  return index < ALPHABET.length ? last : `${letterOf(Math.floor(index / ALPHABET.length) - 1)}${last}`;
}

/** What still stands before what is put right; graver first; of one grade the worse outcome; else as they came. */
export const worstFirst = (faults: readonly FaultTold[]): readonly FaultTold[] =>
  [...faults].sort(
    (a, b) =>
      Number(isSettled(a)) - Number(isSettled(b)) ||
      levelOf(b.grade) - levelOf(a.grade) ||
      a.consequence - b.consequence,
  );

const answers = (job: JobTold, of: FaultTold): boolean =>
  of.jobs.includes(job.id) || job.faults.some((one) => sameFault(one, of));

export interface Lettered {
  readonly findings: readonly LetteredFinding[];
  readonly work: readonly NumberedJob[];
  /** Letter of a finding; undefined where it is none of these. */
  readonly letterFor: (of: FaultRef) => string | undefined;
}

export function lettered(input: HandoverInput): Lettered {
  const { faults, jobs, pictures = [] } = input;
  const bare = worstFirst(faults).map(
    (fault, index): LetteredFinding => ({
      ...fault,
      letter: letterOf(index),
      pictures: pictures.filter((one) => one.fault && sameFault(one.fault, fault)),
      numbers: jobs.flatMap((job, at) => (answers(job, fault) ? [at + 1] : [])),
    }),
  );
  const work = jobs.map(
    (job, index): NumberedJob => ({
      ...job,
      number: index + 1,
      letters: bare.filter((one) => answers(job, one)).map(({ letter }) => letter),
    }),
  );
  const findings = input.for === "owner" ? bare.map((one) => toldToOwner(one, work, input.cautions)) : bare;
  return { findings, work, letterFor: (of) => findings.find((one) => sameFault(one, of))?.letter };
}

function toldToOwner(
  of: LetteredFinding,
  work: readonly NumberedJob[],
  cautions: HandoverInput["cautions"],
): LetteredFinding {
  const own = work.filter(({ number }) => of.numbers.includes(number));
  const before = beforeDriving(of, own, cautions);
  return before === undefined ? of : { ...of, beforeDriving: before };
}
