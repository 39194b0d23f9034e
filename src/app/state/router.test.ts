import { expect, test } from "vitest";
import { type RouterWindow, startRouter } from "./router.js";

/** A window's history as a plain list. */
function fakeWindow(start: string): RouterWindow & { readonly steps: string[] } {
  const listeners: (() => void)[] = [];
  const stack: { url: string; state: unknown }[] = [{ url: start, state: null }];
  return {
    get location() {
      return { hash: stack.at(-1)?.url ?? "" };
    },
    get steps() {
      return stack.map((step) => step.url);
    },
    history: {
      get state() {
        return stack.at(-1)?.state ?? null;
      },
      pushState: (state, _, url) => void stack.push({ url, state }),
      replaceState: (state, _, url) => void stack.splice(-1, 1, { url, state }),
      back: () => {
        stack.pop();
        for (const listener of listeners) listener();
      },
    },
    addEventListener: (_, listener) => void listeners.push(listener),
  };
}

test("Back leads through the screens one came by", () => {
  const win = fakeWindow("#/");
  const router = startRouter(win);
  router.go("#/settings");
  router.go("#/about");
  win.history.back();
  expect(router.at.value).toEqual({ name: "settings", params: {} });
  win.history.back();
  expect(router.at.value?.name).toBe("cars");
});

test("a step at the same address, as a sheet makes it, changes no screen", () => {
  const win = fakeWindow("#/settings");
  const router = startRouter(win);
  const before = router.at.value;
  win.history.pushState({}, "", "#/settings");
  win.history.back();
  expect(router.at.value).toBe(before);
});

test("the way up goes back when that is where one came from, else replaces", () => {
  const win = fakeWindow("#/");
  const router = startRouter(win);
  router.go("#/settings");
  router.up();
  expect(win.steps).toEqual(["#/"]);
  const deep = fakeWindow("#/visit/v/findings/whl.race/FR");
  const second = startRouter(deep);
  second.up();
  expect(deep.steps).toEqual(["#/visit/v/findings"]);
});

test("going to where one already is adds no step", () => {
  const win = fakeWindow("#/settings");
  startRouter(win).go("#/settings");
  expect(win.steps).toEqual(["#/settings"]);
});

test("an unknown address is shown as none, not as some other screen", () => {
  expect(startRouter(fakeWindow("#/nowhere")).at.value).toBeUndefined();
});

test("a move asked for before a wait is left out once the person has gone elsewhere", () => {
  const win = fakeWindow("#/visit/v/findings");
  const router = startRouter(win);
  router.fromHere().go("#/settings");
  expect(router.at.value?.name).toBe("settings");
  const late = router.fromHere();
  router.go("#/about");
  late.swap("#/");
  late.go("#/");
  late.up("#/");
  expect(router.at.value?.name).toBe("about");
  expect(win.steps).toEqual(["#/visit/v/findings", "#/settings", "#/about"]);
});

test("and where a step at the same address came between, as a sheet makes it, it is made", () => {
  const win = fakeWindow("#/settings");
  const router = startRouter(win);
  const later = router.fromHere();
  win.history.pushState({}, "", "#/settings");
  win.history.back();
  later.swap("#/about");
  expect(router.at.value?.name).toBe("about");
});
