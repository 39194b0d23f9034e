/** The words of how a value came about, in English. Apart so that a screen without one need not wait for them. */
export const enWorking = {
  "working.title": "Worked out from this",
  "working.formula": "Formula",
  "working.numbers": "With this visit's numbers",
  "working.source": "Source",
  "working.taken": "Taken from: {of}.",
  "working.differ": "Two replies differ here: settle them to see the numbers.",
  "working.own-formula": "Plain arithmetic, written in the check sheet.",
  "working.none": "Cannot be worked out: {why}",
  "working.no-number": "the figures give no number.",
  "working.not-yet": "Not known yet: a reply is missing.",
  "working.last": "last time's {what}",
  "working.since": "distance since then, km",
  "working.published": "Published.",
} as const;
