/** Bytes as text of one letter a byte, as jspdf and base64 take them. */
export function binary(bytes: Uint8Array): string {
  let text = "";
  for (let at = 0; at < bytes.length; at += 8192) text += String.fromCharCode(...bytes.subarray(at, at + 8192));
  return text;
}
