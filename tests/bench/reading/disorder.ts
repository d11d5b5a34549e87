// What stands around an advert on the pages of real markets, made in memory, one kind after another: a question for
// consent, menus that a style sheet folds away, icons, other adverts, comments, scripts with data.

const WORDS =
  'the machine is heavy and its handle was mended once with care so that it turns as it should though the lamp does not work any more since we moved here last spring from a house near the river where my aunt kept everything dry'.split(
    ' ',
  );

/** What one page of a site is made with. */
export interface Manner {
  name: string;
  /** Names of elements as its style sheet has them. */
  named: (name: string) => string;
  linkedData: boolean;
  state: boolean;
}

const hashed = (name: string): string => {
  let hash = 7;
  for (const letter of name) hash = (hash * 31 + letter.charCodeAt(0)) >>> 0;
  return `css-${hash.toString(36)} sc-${(hash >>> 3).toString(36)}`;
};

export const MANNERS: Manner[] = [
  { name: 'plain names and linked data', named: (name) => name, linkedData: true, state: false },
  { name: 'hashed names and a state', named: hashed, linkedData: false, state: true },
  {
    name: 'names of a framework',
    named: (name) => `${name} d-flex flex-column p-2 text-muted ${name}__inner ${name}--wide`,
    linkedData: true,
    state: true,
  },
  { name: 'nothing for machines', named: hashed, linkedData: false, state: false },
];

export const sentence = (at: number, length: number): string =>
  Array.from({ length }, (_, index) => WORDS[(at * 7 + index * 3 + ((at * index) % 5)) % WORDS.length]).join(' ');

const icon = (name: string): string =>
  `<svg class="icon icon-${name}" viewBox="0 0 24 24" aria-hidden="true"><g><path d="M3 3h18v18H3z"></path><path d="M7 7l10 10"></path></g></svg>`;

/** One item of each kind of disorder; `at` counts them. */
const disorder: Record<string, (at: number, manner: Manner) => string> = {
  menu: (at, { named }) => `
      <li class="${named('menu-item')}" data-menu="${at}"><a href="/c/${at}" class="${named('menu-link')}"><span>${sentence(at, 2)}</span></a>
        <ul class="${named('sub-menu')} folded">${[0, 1, 2, 3]
          .map((inner) => `\n          <li><a href="/c/${at}/${inner}">${sentence(at + inner, 2)}</a></li>`)
          .join('')}
        </ul>
      </li>`,
  consent: (at, { named }) => `
      <div class="${named('vendor')}"><label><input type="checkbox" name="vendor-${at}"> <span class="${named('vendor-name')}">Partner ${at}</span></label>
        <p>Stores ${sentence(at, 9)}. <a href="/privacy/${at}">Policy</a></p>
        <div class="folded"><p>Kept for ${(at % 24) + 1} months</p></div>
      </div>`,
  related: (at, { named }) => `
      <div class="${named('card')}" data-testid="card-${at}"><div class="${named('card-body')}">
        <a href="/ad/${at}" class="${named('card-link')}"><div class="${named('card-image')}"><img src="/photos/${at}.jpg" alt="${sentence(at, 3)}" loading="lazy" width="190" height="140"></div>
          <h3 class="${named('card-title')}">${sentence(at, 5)}</h3></a>
        <div class="${named('card-foot')}"><span class="${named('card-price')}">£${20 + (at % 300)}</span> <span class="${named('card-place')}">${icon('pin')} Netherholme</span> <time datetime="2026-05-${10 + (at % 19)}">${1 + (at % 28)} May</time></div>
        <button type="button" aria-label="Keep in mind" class="${named('keep')}">${icon('heart')}<span class="hidden-text">Keep</span></button>
      </div></div>`,
  comment: (at, { named }) => `
      <article class="${named('comment')}" id="comment-${at}"><header><img class="avatar" src="/avatars/${at % 40}.png" alt=""> <b>Reader ${at % 97}</b> <time datetime="2026-04-${10 + (at % 19)}">${1 + (at % 28)} April</time></header>
        <div class="${named('comment-text')}"><p>${sentence(at, 24)}.</p>
          <p>${sentence(at + 3, 11)}, and I paid £${10 + (at % 90)} for <em>mine</em>.<br>${sentence(at + 5, 8)}</p></div>
        <footer><button type="button">${icon('reply')} Reply</button> <a href="#comment-${at}">Link</a> <span class="folded">${at % 9} people agree</span></footer>
      </article>`,
  footer: (at, { named }) => `
      <li class="${named('foot-item')}"><a href="/help/${at}">${sentence(at, 3)}</a></li>`,
};

/** What share of a page's nodes each kind takes. */
const SHARES: Record<string, number> = { menu: 0.18, consent: 0.12, related: 0.38, comment: 0.26, footer: 0.06 };

/** Elements, texts and comments of well-formed mark-up. */
const nodesIn = (html: string): number => (html.match(/<[a-z!]|>[^<]+/g) ?? []).length;

export function many(kind: string, nodes: number, manner: Manner): string {
  const parts: string[] = [];
  for (let left = nodes * SHARES[kind]!, at = 0; left > 0; at++) {
    const part = disorder[kind]!(at, manner);
    parts.push(part);
    left -= nodesIn(part);
  }
  return parts.join('');
}

/** A style sheet of a few hundred rules, most of which fit nothing. */
export const STYLE = `
    .folded { display: none } .hidden-text { position: absolute; clip-path: inset(50%); width: 1px; height: 1px; overflow: hidden }
    .modal-open .consent { visibility: visible } .old { text-decoration: line-through } svg { width: 1em; height: 1em }
    ${Array.from({ length: 400 }, (_, index) => `.u-${index} { margin: ${index}px } .page .u-${index}:hover > a { color: #123 }`).join('\n    ')}`;
