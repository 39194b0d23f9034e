/** Fills the names of a text: figures in the person's writing, plural forms by the language's own rules. */
import { figure } from "./figures.js";

/** Names a text needs: `{n}` and `{n|one=visit|other=visits}` both need `n`. */
export type Names<Text extends string> = Text extends `${string}{${infer Inside}}${infer Rest}`
  ? (Inside extends `${infer Name}|${string}` ? Name : Inside) | Names<Rest>
  : never;

/** What a text must be given: nothing when it names nothing. */
export type ParamsFor<Text extends string> = [Names<Text>] extends [never]
  ? []
  : [Readonly<Record<Names<Text>, string | number>>];

const PLURALS = new Intl.PluralRules("en");

/** A name without a value is our own mistake: it is reported, and the text is shown without it, so that no screen stops. */
export function fill(text: string, params: Readonly<Record<string, string | number>>): string {
  return text.replace(/\{([^}]+)\}/g, (_, inside: string) => {
    const [name = "", ...forms] = inside.split("|");
    const value = params[name];
    if (value === undefined) {
      if (typeof reportError === "function") reportError(new Error(`The text "${text}" needs {${name}}`));
      return "";
    }
    if (forms.length === 0) return typeof value === "number" ? figure(value) : value;
    const wanted = PLURALS.select(Number(value));
    const form = forms.find((one) => one.startsWith(`${wanted}=`)) ?? forms.find((one) => one.startsWith("other="));
    return form?.slice(form.indexOf("=") + 1) ?? "";
  });
}
