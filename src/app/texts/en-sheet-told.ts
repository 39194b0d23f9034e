/** English words for what the checker tells, where the editor's field already says what it is about. */
export const enSheetTold = {
  "bands-empty": "No edge is given yet: it needs at least one.",
  "source-missing": "It is not said where the figures come from.",
  "no-field": "Nothing can be replied to it yet.",
  "empty-text": "Something is wanted here.",
  "no-firing-case": "It wants a case that fires it. Try it, and make a case from those replies.",
  "no-near-miss": "It wants a case with a near miss: one reply changed, and it stays quiet.",
  "unused-limit": "No rule looks at this limit yet.",
  "next-look-subject": "It wants a fault, a grade or a job.",
  "next-look-when": "It wants kilometres or months.",
} as const;
