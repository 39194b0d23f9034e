/**
 * What this phone remembers for the person holding it: theme, target size, hand, decimal sign, name,
 * and where they were. Settings only, never anything that was observed; losing them loses no record.
 */
import { effect, type Signal, signal } from "@preact/signals";

/** A small text store that may be refused (private mode) or emptied at any time. */
export interface TextShelf {
  get(key: string): string | null;
  put(key: string, text: string): void;
  drop(key: string): void;
}

export interface Settings {
  /** Under the car (dark), daylight (light), or as the phone is set. */
  readonly theme: "phone" | "under-the-car" | "daylight";
  /** Replies and keys at 96 px and larger text, for gloves at arm's length. */
  readonly larger: boolean;
  /** Thumb zone and keypad mirrored. */
  readonly leftHand: boolean;
  /** Decimal comma on the key and in figures. */
  readonly comma: boolean;
  readonly vibration: boolean;
  readonly name: string;
  /** Stands for the person in every entry; made once per phone. */
  readonly person: string;
  /** The first-run notice was read. */
  readonly noticeRead: boolean;
  /** UCUM. */
  readonly odometerUnit: "km" | "[mi_i]";
}

const KEY = "leadlamp.settings";

/** Settings of a phone that has none yet. `person` must be made by the caller: nothing here is random. */
export function defaultSettings(person: string, comma: boolean): Settings {
  return {
    theme: "phone",
    larger: false,
    leftHand: false,
    comma,
    vibration: true,
    name: "",
    person,
    noticeRead: false,
    odometerUnit: "km",
  };
}

/** Kept settings over the defaults; a value of the wrong kind is left at its default. */
export function readSettings(text: string | null, defaults: Settings): Settings {
  if (text === null) return defaults;
  let kept: unknown;
  try {
    kept = JSON.parse(text);
  } catch {
    return defaults;
  }
  if (typeof kept !== "object" || kept === null) return defaults;
  const found: Record<string, unknown> = { ...defaults };
  for (const [key, value] of Object.entries(kept)) {
    if (key in defaults && typeof value === typeof found[key]) found[key] = value;
  }
  const themes: readonly unknown[] = ["phone", "under-the-car", "daylight"];
  const units: readonly unknown[] = ["km", "[mi_i]"];
  if (!themes.includes(found["theme"])) found["theme"] = defaults.theme;
  if (!units.includes(found["odometerUnit"])) found["odometerUnit"] = defaults.odometerUnit;
  // Every key is one of Settings with the type its default has: checked just above.
  return found as unknown as Settings;
}

/** Settings as a signal that writes itself back. */
export function keepSettings(shelf: TextShelf, defaults: Settings): Signal<Settings> {
  const settings = signal(readSettings(shelf.get(KEY), defaults));
  effect(() => shelf.put(KEY, JSON.stringify(settings.value)));
  return settings;
}

/** Words typed but not kept yet (a note, a reason): they survive a killed page. */
export const keepTyped = (shelf: TextShelf, address: string, text: string): void =>
  text === "" ? shelf.drop(`leadlamp.typed.${address}`) : shelf.put(`leadlamp.typed.${address}`, text);
export const typedBefore = (shelf: TextShelf, address: string): string => shelf.get(`leadlamp.typed.${address}`) ?? "";

/** The last address shown, to return to when the phone ended the app behind the person's back. */
export const rememberAddress = (shelf: TextShelf, href: string): void => shelf.put("leadlamp.address", href);
export const recallAddress = (shelf: TextShelf): string => shelf.get("leadlamp.address") ?? "";
