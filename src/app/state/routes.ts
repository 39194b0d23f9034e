/**
 * The table of addresses: every screen has one, and a reload returns to it. Pure text work; knows
 * neither the browser nor the screens. Addresses are hash routes, so they hold under any static path.
 */

/** Path of every screen. `:name` is a parameter; the end-to-end tests walk this table. */
export const ROUTES = {
  cars: "/",
  demo: "/demo",
  "new-car": "/new-car",
  car: "/car/:car",
  facts: "/car/:car/build",
  limits: "/car/:car/limits",
  limit: "/car/:car/limits/:limit",
  places: "/car/:car/places",
  "car-file": "/car/:car/file",
  wearing: "/car/:car/wearing",
  wear: "/car/:car/wearing/:series/:place",
  "new-visit": "/car/:car/new-visit",
  visit: "/visit/:visit",
  round: "/visit/:visit/round",
  point: "/visit/:visit/round/:state/:place/:point",
  where: "/visit/:visit/where",
  find: "/visit/:visit/find",
  sound: "/visit/:visit/sound/:state/:place/:point",
  reading: "/visit/:visit/reading/:state/:place/:point/:field",
  findings: "/visit/:visit/findings",
  finding: "/visit/:visit/findings/:fault/:place",
  "off-list": "/visit/:visit/off-list/:place/:finding",
  work: "/visit/:visit/work",
  job: "/visit/:visit/work/:job/:place",
  part: "/visit/:visit/work/:job/:place/:part",
  plan: "/visit/:visit/plan/:page",
  viewing: "/visit/:visit/viewing",
  "hand-over": "/visit/:visit/hand-over",
  "what-now": "/visit/:visit/what-now",
  cautions: "/visit/:visit/cautions",
  gate: "/visit/:visit/gate/:gate",
  differ: "/visit/:visit/differ",
  "judge-again": "/visit/:visit/judge-again",
  history: "/visit/:visit/history",
  "visit-file": "/visit/:visit/file",
  picture: "/visit/:visit/picture/:picture",
  marks: "/visit/:visit/picture/:picture/marks",
  beside: "/visit/:visit/picture/:picture/beside",
  pictures: "/visit/:visit/pictures",
  camera: "/visit/:visit/camera/:aim",
  "visit-reckoner": "/visit/:visit/reckoner",
  "visit-reckoning": "/visit/:visit/reckoner/:of",
  sheets: "/sheets",
  sheet: "/sheets/:sheet",
  "new-sheet": "/new-sheet",
  "sheet-work": "/sheets/:sheet/work",
  "sheet-list": "/sheets/:sheet/work/:list",
  "sheet-item": "/sheets/:sheet/work/:list/:item",
  "sheet-try": "/sheets/:sheet/try",
  "sheet-difference": "/sheets/:sheet/difference",
  settings: "/settings",
  files: "/files",
  gauges: "/gauges",
  reckoner: "/reckoner",
  reckoning: "/reckoner/:of",
  install: "/install",
  about: "/about",
} as const;

export type RouteName = keyof typeof ROUTES;

type ParamNames<Path extends string> = Path extends `${string}:${infer Name}/${infer Rest}`
  ? Name | ParamNames<`/${Rest}`>
  : Path extends `${string}:${infer Name}`
    ? Name
    : never;

/** Parameters a route needs, by name. */
export type ParamsOf<Name extends RouteName> = { readonly [Key in ParamNames<(typeof ROUTES)[Name]>]: string };

/** Where the app is; `params` holds exactly the parameters of the route. */
export type Address<Name extends RouteName = RouteName> = {
  readonly [Key in Name]: { readonly name: Key; readonly params: ParamsOf<Key> };
}[Name];

/** An address with its parameters by name, for code that handles any route. */
interface AnyAddress {
  readonly name: RouteName;
  readonly params: Readonly<Record<string, string>>;
}

const NAMES = Object.keys(ROUTES) as RouteName[];

/** Matches one path against one pattern; undefined when they differ. Text that can't be decoded matches nothing. */
function match(pattern: string, path: string): Record<string, string> | undefined {
  const wanted = pattern.split("/");
  const given = path.split("/");
  if (wanted.length !== given.length) return undefined;
  const params: Record<string, string> = {};
  for (const [index, part] of wanted.entries()) {
    const text = given[index] ?? "";
    if (!part.startsWith(":")) {
      if (part !== text) return undefined;
    } else {
      if (text === "") return undefined;
      try {
        params[part.slice(1)] = decodeURIComponent(text);
      } catch {
        return undefined;
      }
    }
  }
  return params;
}

/**
 * Reads an address (`#/car/1`). An empty hash is the car list; anything unknown is undefined, so that the app can
 * say so instead of guessing.
 */
export function readAddress(hash: string): Address | undefined {
  const path = hash.replace(/^#/, "") || "/";
  for (const name of NAMES) {
    const params = match(ROUTES[name], path);
    // The parameters were just matched against this very pattern.
    if (params) return { name, params } as Address;
  }
  return undefined;
}

/** Writes an address; the inverse of {@link readAddress}. */
export function hrefOf(place: AnyAddress): string {
  const path = ROUTES[place.name]
    .split("/")
    .map((part) => (part.startsWith(":") ? encodeURIComponent(place.params[part.slice(1)] ?? "") : part))
    .join("/");
  return `#${path}`;
}

/** Address of a route by name and parameters. */
export function to<Name extends RouteName>(
  name: Name,
  ...params: Record<string, never> extends ParamsOf<Name> ? [] : [ParamsOf<Name>]
): string {
  return hrefOf({ name, params: (params[0] ?? {}) as Readonly<Record<string, string>> });
}

/** Screens whose way up is another than the nearest address theirs goes on from. */
const UP: Partial<Readonly<Record<RouteName, RouteName>>> = {
  point: "visit",
  reading: "point",
  sound: "point",
  where: "round",
  find: "round",
  gate: "round",
  "off-list": "findings",
  cautions: "findings",
  plan: "work",
  "hand-over": "work",
  "new-sheet": "sheets",
  "sheet-try": "sheet-work",
  sheets: "settings",
  files: "settings",
  gauges: "settings",
  reckoner: "settings",
  install: "settings",
  about: "settings",
};

/** The screen one level up: where the back link leads when there is no history inside the app. */
export function above({ name, params }: Address): string {
  const own = ROUTES[name];
  // The longest address that this one goes on from; where there is none, the car list.
  const before = NAMES.filter((other) => other !== name && own.startsWith(`${ROUTES[other]}/`));
  const nearest = before.sort((a, b) => ROUTES[b].length - ROUTES[a].length)[0];
  // What is above needs no parameter that its own address has not.
  return hrefOf({ name: UP[name] ?? nearest ?? "cars", params });
}

/** Streams in addresses go without their kind: `visit:x` is `x`. */
export const carStreamOf = (param: string): string => `car:${param}`;
export const visitStreamOf = (param: string): string => `visit:${param}`;
export const paramOf = (stream: string): string => stream.slice(stream.indexOf(":") + 1);
