/** What a job is called and what is done. Judges nothing. */
import type { Audience } from "../../core/terms/index.js";
import type { Knowledge } from "./knowledge.js";

/** Name of a job and what is done, in the words of who reads. */
export function jobSays(
  known: Knowledge,
  job: string,
  who: Audience,
): { readonly name: string; readonly does: string } {
  const text = known.jobs.get(job)?.texts.jobs[job];
  if (!text) return { name: known.ownJobs?.get(job)?.words ?? job, does: "" };
  return { name: text.name, does: who === "owner" && text.owner !== undefined ? text.owner : text.does };
}
