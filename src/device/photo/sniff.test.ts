import { expect, test } from "vitest";
import { pictureType } from "./sniff.js";

const text = (words: string): number[] => [...words].map((letter) => letter.charCodeAt(0));
const ftyp = (major: string, ...compatible: readonly string[]): Uint8Array =>
  new Uint8Array([
    0,
    0,
    0,
    16 + compatible.length * 4,
    ...text(`ftyp${major}`),
    0,
    0,
    0,
    0,
    ...text(compatible.join("")),
    9,
    9,
    9,
    9,
  ]);

test.each([
  ["image/jpeg", new Uint8Array([0xff, 0xd8, 0xff, 0xe1, 0, 0])],
  ["image/png", new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0])],
  ["image/gif", new Uint8Array(text("GIF89a..."))],
  ["image/webp", new Uint8Array([...text("RIFF"), 1, 2, 3, 4, ...text("WEBPVP8 ")])],
  ["image/heic", ftyp("heic", "mif1", "heic")],
  ["image/heic", ftyp("mif1", "heic")],
  ["image/heic", ftyp("msf1", "hevc")],
  ["image/avif", ftyp("avif", "mif1", "miaf")],
  ["image/avif", ftyp("mif1", "avif")],
] as const)("the first bytes tell %s", (type, bytes) => {
  expect(pictureType(bytes)).toBe(type);
});

test.each([
  ["nothing", new Uint8Array()],
  ["a video in the same kind of box", ftyp("isom", "mp42")],
  ["an SVG, which is a document", new Uint8Array(text("<svg xmlns='http://www.w3.org/2000/svg'/>"))],
  ["a RIFF sound", new Uint8Array([...text("RIFF"), 1, 2, 3, 4, ...text("WAVE")])],
  ["two letters of a text", new Uint8Array(text("BMW"))],
])("%s is no picture", (_, bytes) => {
  expect(pictureType(bytes)).toBeUndefined();
});

test("a file box that claims to be endless is read no further than its bytes", () => {
  const bytes = ftyp("mif1", "heic");
  bytes.set([0xff, 0xff, 0xff, 0xff]);
  expect(pictureType(bytes)).toBe("image/heic");
});
