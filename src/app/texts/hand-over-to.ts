/** The word on the way to handing over, for screens that have none of its others; looked up as in index.ts. */
export const enHandOverTo = { "hand-over.to": "Hand over" } as const;

export const t = (key: keyof typeof enHandOverTo): string => enHandOverTo[key];
