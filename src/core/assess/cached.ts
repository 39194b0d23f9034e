/** Tables that work a value out once. Pure in use: what is kept depends on the arguments alone. */

/** Keeps the value for each argument. */
export function cached1<A, R>(make: (a: A) => R): (a: A) => R {
  const table = new Map<A, R>();
  return (a) => {
    const before = table.get(a);
    if (before !== undefined || table.has(a)) return before as R;
    const value = make(a);
    table.set(a, value);
    return value;
  };
}
/** Keeps the value for each pair of arguments. */
export function cached2<A, B, R>(make: (a: A, b: B) => R): (a: A, b: B) => R {
  const row = cached1((a: A) => cached1((b: B) => make(a, b)));
  return (a, b) => row(a)(b);
}
