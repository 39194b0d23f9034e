/**
 * Serves the built app on this machine only, with the headers a real host should send. Plain files and
 * nothing else: refuses to know what the app does, and answers nobody beyond this machine.
 */
import type { Stats } from "node:fs";
import { readFile, stat } from "node:fs/promises";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import { extname, join, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { gzip } from "node:zlib";

/** Types by file ending; an ending not listed is sent as plain bytes. */
const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".webmanifest": "application/manifest+json; charset=utf-8",
  ".svg": "image/svg+xml; charset=utf-8",
  ".png": "image/png",
  ".jpg": "image/jpeg",
  ".woff2": "font/woff2",
  ".txt": "text/plain; charset=utf-8",
};

export interface ServeOptions {
  /** Folder to serve; the built app by default. */
  readonly dir?: string;
  /** Port wanted; the next free one from there on is taken. 0 lets the system choose. */
  readonly port?: number;
  /** Folder of the address under which the app lies, with both slashes. */
  readonly under?: string;
}

export interface Serving {
  /** Where the app is to be opened, ending in a slash. */
  readonly address: string;
  readonly port: number;
  close(): Promise<void>;
}

export const DEFAULT_PORT = 4173;
const PORTS_TRIED = 20;
const builtApp = fileURLToPath(new URL("../../dist/", import.meta.url));

/** The page's own policy, so that header and page can never say different things. */
function policyOf(page: string): string | undefined {
  const content = /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(page)?.[1];
  return content?.replaceAll("&#39;", "'");
}

function headersFor(path: string, policy: string | undefined): Record<string, string> {
  return {
    "Content-Type": TYPES[extname(path)] ?? "application/octet-stream",
    // Names under assets/ carry a hash of their content; everything else must be asked for again.
    "Cache-Control": path.startsWith("assets/") ? "public, max-age=31536000, immutable" : "no-cache",
    ...(policy === undefined ? {} : { "Content-Security-Policy": `${policy}; frame-ancestors 'none'` }),
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Permissions-Policy": "camera=(self), microphone=(self), geolocation=()",
  };
}

/** The file an address names inside the served folder; undefined for anything outside it. */
export function fileFor(url: string, under: string): string | undefined {
  let path: string;
  try {
    path = decodeURIComponent(new URL(url, "http://localhost").pathname);
  } catch {
    return undefined;
  }
  if (!path.startsWith(under)) return undefined;
  const inside = path.slice(under.length);
  const parts = inside.split("/");
  if (inside.includes("\0") || inside.includes("\\") || parts.some((part) => part === ".." || part.startsWith("."))) {
    return undefined;
  }
  return inside === "" || inside.endsWith("/") ? `${inside}index.html` : inside;
}

const squeezable = (type: string | undefined): boolean => type !== undefined && /text|json|svg|manifest/.test(type);

const squeeze = promisify(gzip);

/** What was squeezed before, by file: a phone that keeps the whole app asks for all of it, and so does the next one. */
const squeezed = new Map<string, { readonly changed: number; readonly body: Promise<Buffer> }>();

/** The file's bytes squeezed; anew only when it has changed since. */
function squeezedFile(file: string, { mtimeMs: changed }: Stats): Promise<Buffer> {
  const before = squeezed.get(file);
  if (before?.changed === changed) return before.body;
  const body = readFile(file).then((bytes) => squeeze(bytes, { level: 9 }));
  squeezed.set(file, { changed, body });
  body.catch(() => squeezed.delete(file));
  return body;
}

/** Answers one request; anything that is no file of the app is 404, anything but reading 405. */
async function answer(request: IncomingMessage, response: ServerResponse, options: Required<ServeOptions>) {
  if (request.method !== "GET" && request.method !== "HEAD") {
    response.writeHead(405, { Allow: "GET, HEAD" }).end();
    return;
  }
  const path = fileFor(request.url ?? "/", options.under);
  const full = path === undefined ? undefined : join(options.dir, ...path.split("/"));
  const found = full?.startsWith(options.dir) ? await stat(full).catch(() => undefined) : undefined;
  if (path === undefined || full === undefined || !found?.isFile()) {
    response.writeHead(404, { "Content-Type": "text/plain; charset=utf-8" }).end("Nothing here.\n");
    return;
  }
  const page = await readFile(join(options.dir, "index.html"), "utf8").catch(() => "");
  const headers = headersFor(path, policyOf(page));
  const gzipped = squeezable(headers["Content-Type"]) && /\bgzip\b/.test(request.headers["accept-encoding"] ?? "");
  const body = await (gzipped ? squeezedFile(full, found) : readFile(full));
  response.writeHead(200, {
    ...headers,
    Vary: "Accept-Encoding",
    ...(gzipped ? { "Content-Encoding": "gzip" } : {}),
    "Content-Length": String(body.length),
  });
  response.end(request.method === "HEAD" ? undefined : body);
}

function listen(server: Server, port: number): Promise<number | undefined> {
  return new Promise((resolve, reject) => {
    const failed = (error: NodeJS.ErrnoException) => {
      server.off("listening", listening);
      if (error.code === "EADDRINUSE" || error.code === "EACCES") resolve(undefined);
      else reject(error);
    };
    const listening = () => {
      server.off("error", failed);
      const at = server.address();
      resolve(typeof at === "object" && at !== null ? at.port : port);
    };
    server.once("error", failed);
    server.once("listening", listening);
    server.listen(port, "127.0.0.1");
  });
}

/** Starts serving. Throws when there is nothing to serve, or none of 20 ports from the wanted one on is free. */
export async function serve(options: ServeOptions = {}): Promise<Serving> {
  const dir = options.dir ?? builtApp;
  const set: Required<ServeOptions> = {
    dir: dir.endsWith(sep) ? dir : dir + sep,
    port: options.port ?? DEFAULT_PORT,
    under: options.under ?? "/",
  };
  if (!(await stat(join(set.dir, "index.html")).catch(() => undefined))) {
    throw new Error("There is no built app to serve: run `npm run build` first.");
  }
  const server = createServer((request, response) => {
    answer(request, response, set).catch((error: unknown) => {
      if (!response.headersSent) response.writeHead(500);
      response.end();
      console.error(error);
    });
  });
  for (let tried = 0; tried < PORTS_TRIED; tried++) {
    const port = await listen(server, set.port === 0 ? 0 : set.port + tried);
    if (port === undefined) continue;
    const close = () =>
      new Promise<void>((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      });
    return { address: `http://localhost:${port}${set.under}`, port, close };
  }
  throw new Error(`No free port between ${set.port} and ${set.port + PORTS_TRIED - 1}: name one with PORT=…`);
}
