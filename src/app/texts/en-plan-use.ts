/** English words of how a car is used until the next look. */
export const enPlanUse = {
  "plan.use": "How it is used until the next look",
  "plan.use.laid-up": "Laid up",
  "plan.use.normal": "Normal",
  "plan.use.hard": "Hard",
  "plan.use.laid-up.says": "Hardly moved: what wears with use can wait a step longer.",
  "plan.use.normal.says": "As such a car is used.",
  "plan.use.hard.says": "Track, towing or long motorway: everything counts a step likelier.",
  "plan.use.unsaid": "Not said: planned as normal use.",
  "plan.use.differ": "Two people said different things; the later one counts.",
  "plan.use.take-back": "Leave it unsaid",
} as const;
