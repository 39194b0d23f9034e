/** The look of the one-file hand-over, on screen and printed on A4. Colour stands in signal words alone. */

/** `foot` and `page` are texts for a style sheet's strings, already made safe by {@link cssText}. */
export const handoverStyle = (foot: string, page: readonly [string, string, string]): string => `
:root{color-scheme:light}
*{box-sizing:border-box}
body{margin:0 auto;padding:20px;max-width:210mm;background:#fff;color:#111;font:13.5px/1.4 "Handover",system-ui,sans-serif;font-feature-settings:"tnum";overflow-wrap:anywhere}
h1{margin:0;font-size:26px;line-height:1.15}
h2{margin:24px 0 6px;padding-top:6px;border-top:1px solid #999;font-size:18px;line-height:1.2;break-after:avoid}
h3{margin:12px 0 4px;font-size:15px;line-height:1.25;break-after:avoid}
p{margin:4px 0}
ul,ol{margin:4px 0;padding-inline-start:22px}
li{margin:2px 0}
nav ul{columns:18em;list-style:none;padding:0}
nav a{display:block;padding:5px 0;color:#111}
.strong{font-size:20px;font-weight:650;line-height:1.25}
.small,.note,figcaption,caption{font-size:12px}
dl{display:grid;grid-template-columns:minmax(30%,max-content) 1fr;gap:2px 12px;margin:4px 0}
dt{font-weight:600}
dd{margin:0}
table{width:100%;border-collapse:collapse;margin:4px 0}
caption{text-align:start;height:1px;overflow:hidden;position:absolute;clip-path:inset(50%)}
th,td{padding:3px 6px 3px 0;border-bottom:1px solid #999;text-align:start;vertical-align:top}
th.figure,td.figure{text-align:end;white-space:nowrap;padding-inline-end:12px}
thead{display:table-header-group}
tr{break-inside:avoid}
tr.has-notes>*{border-bottom:0}
td.note{padding-inline-start:26px}
.row-name{font-weight:600}
.word{font-weight:400}
.mark{display:inline-block;width:4mm;height:5mm;vertical-align:-1.2mm;margin-inline-end:2mm}
.finding{break-inside:avoid;margin:14px 0}
.letter{display:inline-block;min-width:1.4em;font-weight:700}
.steps{display:grid;grid-template-columns:max-content 1fr;gap:1px 12px;margin:4px 0 4px 26px;border-inline-start:1.5px solid #111;padding-inline-start:10px}
.steps dt{font-weight:600}
.caution{break-inside:avoid;margin:10px 0;border:1.5px solid #111}
.signal{margin:0;padding:6px 10px;font-size:16px;font-weight:800;text-transform:uppercase;-webkit-print-color-adjust:exact;print-color-adjust:exact;forced-color-adjust:none}
.signal svg{width:1.15em;height:1.03em;margin-inline-end:8px;vertical-align:-.1em}
.danger>.signal{background:#ad1028;color:#fff}
.warning>.signal{background:#ff8200;color:#000}
.caution-word>.signal{background:#ffd100;color:#000}
.notice>.signal{background:#005387;color:#fff;font-style:italic}
.said{padding:6px 10px}
.said .not{font-size:17px;font-weight:700}
figure{margin:8px 0;break-inside:avoid}
.shown{position:relative;display:inline-block;max-width:120mm}
.shown img{display:block;width:100%;height:auto}
.shown svg{position:absolute;inset:0;width:100%;height:100%;fill:none;stroke:#fff;stroke-width:6;paint-order:stroke}
.car{display:block;width:100%;max-width:150mm;height:auto;margin:6px 0;fill:none;stroke:#111;stroke-linejoin:round;stroke-linecap:round;stroke-width:1.6}
.car .ghost{stroke:#999;stroke-width:.9}
.car .not-looked{stroke:#555;stroke-dasharray:1.4 3.4}
.car .letter{fill:#111;stroke:#fff;stroke-width:3;paint-order:stroke;font:700 13px sans-serif}
.key{display:flex;flex-wrap:wrap;gap:6px 20px;padding:0;list-style:none}
.signed{break-inside:avoid;margin:8px 0}
.signature{display:block;width:100%;max-width:70mm;max-height:30mm}
.signature .stroke{fill:none;stroke:#111;stroke-width:2;stroke-linecap:round;stroke-linejoin:round}
.signature .dot{fill:#111}
.sign{display:grid;grid-template-columns:1fr 1fr;gap:20px;margin-top:44px;break-inside:avoid}
.sign p{border-top:1px solid #111;padding-top:4px}
@page{size:A4;margin:16mm 15mm 18mm;@bottom-left{content:"${foot}";font:8pt sans-serif}@bottom-right{content:"${page[0]}" counter(page) "${page[1]}" counter(pages) "${page[2]}";font:8pt sans-serif}}
@media screen and (max-width:30em){table,tbody,tr,th,td{display:block}thead{position:absolute;height:1px;overflow:hidden;clip-path:inset(50%)}tr{padding:4px 0;border-bottom:1px solid #999}tr.has-notes{border-bottom:0}th,td{padding:1px 0;border-bottom:0}th.figure,td.figure{text-align:start;white-space:normal}td:empty{display:none}td[data-head]::before{content:attr(data-head) ": ";font-weight:600}dl,.steps,.sign{grid-template-columns:minmax(0,1fr)}}
@media print{body{max-width:none;padding:0;font-size:10pt}nav{display:none}.new-page{break-before:page;border-top:0}a{color:inherit}}
`;

/** Text inside the quotes of a style sheet, in a page: no quote, no end of line, no end of the sheet can be written. */
export const cssText = (text: string): string =>
  [...text].map((sign) => (/[\p{L}\p{N} ,.:;()–-]/u.test(sign) ? sign : hex(sign))).join("");

const hex = (sign: string): string => `\\${(sign.codePointAt(0) ?? 0).toString(16)} `;
