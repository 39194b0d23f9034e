/** Names the rules of assessing (SPEC.md) an assessment was made under. A closed visit keeps it. */

/** Raised whenever the same replies, sheets and limits could give another assessment. */
export const ENGINE_VERSION = "3";
