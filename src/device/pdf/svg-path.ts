/** Reads the path data of our own drawings into absolute steps. Knows the commands they use; refuses any other. */

export type PathStep =
  | { readonly op: "m" | "l"; readonly c: readonly [number, number] }
  | { readonly op: "c"; readonly c: readonly [number, number, number, number, number, number] }
  | { readonly op: "h"; readonly c: readonly [] };

/** How many numbers follow a command each time. */
const NUMBERS: Readonly<Record<string, number>> = { M: 2, L: 2, H: 1, V: 1, C: 6, Q: 4, Z: 0 };

/** Steps of `d`. Throws on a command our drawings do not use: that is our own mistake. */
export function pathSteps(d: string): readonly PathStep[] {
  const tokens = d.match(/[A-Za-z]|[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?/g) ?? [];
  const steps: PathStep[] = [];
  let [x, y, startX, startY] = [0, 0, 0, 0];
  let at = 0;
  let letter = "";
  const line = (toX: number, toY: number): void => {
    [x, y] = [toX, toY];
    steps.push({ op: "l", c: [x, y] });
  };
  while (at < tokens.length) {
    const token = tokens[at] ?? "";
    const isLetter = /[A-Za-z]/.test(token);
    if (isLetter) {
      letter = token;
      at += 1;
    }
    const relative = letter !== letter.toUpperCase();
    const command = letter.toUpperCase();
    const count = NUMBERS[command];
    if (count === undefined) throw new Error(`Path command ${letter} is not drawn`);
    const given = tokens.slice(at, at + count).map(Number);
    if (given.length < count || given.some(Number.isNaN)) throw new Error(`Path command ${letter} lacks numbers: ${d}`);
    at += count;
    const [dx, dy] = relative ? [x, y] : [0, 0];
    const n = (index: number): number => given[index] ?? 0;
    const px = (index: number): number => n(index) + dx;
    const py = (index: number): number => n(index) + dy;
    switch (command) {
      case "M":
        [x, y] = [px(0), py(1)];
        [startX, startY] = [x, y];
        steps.push({ op: "m", c: [x, y] });
        // Further pairs after a move are lines.
        letter = relative ? "l" : "L";
        break;
      case "L":
        line(px(0), py(1));
        break;
      case "H":
        line(px(0), y);
        break;
      case "V":
        line(x, n(0) + dy);
        break;
      case "C":
        steps.push({ op: "c", c: [px(0), py(1), px(2), py(3), px(4), py(5)] });
        [x, y] = [px(4), py(5)];
        break;
      case "Q": {
        const [cx, cy, toX, toY] = [px(0), py(1), px(2), py(3)];
        const third = (from: number, by: number): number => from + ((by - from) * 2) / 3;
        steps.push({ op: "c", c: [third(x, cx), third(y, cy), third(toX, cx), third(toY, cy), toX, toY] });
        [x, y] = [toX, toY];
        break;
      }
      default:
        [x, y] = [startX, startY];
        steps.push({ op: "h", c: [] });
        if (!isLetter) throw new Error(`Numbers after a closed path: ${d}`);
    }
  }
  return steps;
}
