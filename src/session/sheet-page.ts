import { htmlText } from './html-text';
import { PAGE_COLOURS } from './page-style';

/** Large enough for a telephone held in one hand; in light and dark. */
const STYLE = `${PAGE_COLOURS}
body{margin:0;padding:1rem;font:1.1rem/1.5 system-ui,sans-serif;overflow-wrap:anywhere}
main{max-width:44rem;margin:0 auto}h2{font-size:1.35rem}h3{font-size:1.15rem;margin-top:1.6rem}
ol{list-style:none;padding:0}ul{padding-inline-start:1.2em}li{margin-top:.4rem}
fieldset{min-width:0;margin:1rem 0 0;padding:.6rem .8rem .8rem;border:1px solid;border-radius:3px}legend{font-weight:600}
fieldset p{margin:.4rem 0}svg{display:block;width:100%;max-width:18rem;fill:none;stroke:currentColor;stroke-width:2.2;stroke-linecap:round;stroke-linejoin:round}
.mark-halo{stroke:canvas;stroke-width:9}.mark-line{stroke:linktext;stroke-width:3.6}
label{display:flex;gap:.6rem;align-items:center;min-height:2.6rem}input{flex:none;width:1.5rem;height:1.5rem;margin:0}
.sheet-lines{height:8rem;border-bottom:1px solid}.sheet-lines.one{height:2rem}
@media print{fieldset{break-inside:avoid}svg{max-width:6.5cm}label{min-height:0}}`;

/**
 * A sheet as it is shown, as one HTML file for a telephone: its own elements as text again, which the browser escapes,
 * without what only works inside the workbench. Nothing in it runs, and nothing is loaded from elsewhere. The boxes can
 * be ticked there; they are entered here afterwards.
 */
export function sheetPage(sheet: Element, title: string): string {
  const copy = sheet.cloneNode(true) as Element;
  for (const left of copy.querySelectorAll('.screen-only, button, script')) left.remove();
  const language = copy.getAttribute('lang') ?? 'en';
  return `<!doctype html>
<html lang="${htmlText(language)}"><head><meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>${htmlText(title)}</title><style>${STYLE}</style></head>
<body><main>
${copy.outerHTML}
</main></body></html>
`;
}
