import { fittingTo } from '../../text/fitted';
import { bare } from '../bare';
import { plain } from '../decide/plain';
import { OF_SITE } from '../decide/words';
import { withoutState } from '../page/title-state';
import { code } from '../structured/offers';
import { tidy } from '../tidy';
import type { Candidate, FieldName, Harvest } from '../types';
import { absolute } from '../visit/addresses';
import { asShown, withoutSite } from './window-title';

export interface MetaFindings {
  candidates: Candidate[];
  /** The window's title without the site's name, and the site's name, "" where not known. */
  windowTitle: string;
  siteName: string;
  /** The titles that machines are told. */
  titles: string[];
  /** The window's whole title and the summaries, one after the other. */
  told: string;
  /** Words of the page's address after its host. */
  slug: string;
  /** The page's own address by its canonical link or og:url, absolute, or null. */
  canonical: string | null;
  language: string | null;
  /** Countries that the head names, ISO 3166 or by name. */
  countries: string[];
  /** ISO 4217: the one currency that anything on the page names for machines, or null. */
  currency: string | null;
  /** The page says that it is about a product. */
  isProduct: boolean;
  /** It says that it is an article. */
  isArticle: boolean;
}

const FIELDS: [field: FieldName, weight: number, names: string[]][] = [
  ['title', 0.6, ['og:title', 'twitter:title', 'dc.title']],
  ['description', 0.35, ['og:description', 'twitter:description', 'description', 'dc.description']],
  ['condition', 0.5, ['product:condition', 'og:condition']],
  ['place', 0.4, ['geo.placename', 'og:locality', 'product:location']],
  ['listedDate', 0.35, ['article:published_time', 'og:published_time', 'date', 'dc.date', 'dcterms.created']],
  ['photo', 0.7, ['og:image:secure_url', 'og:image', 'og:image:url', 'twitter:image', 'twitter:image:src']],
];
const PRICES: [amount: string, currency: string][] = [
  ['product:sale_price:amount', 'product:sale_price:currency'],
  ['product:price:amount', 'product:price:currency'],
  ['og:price:amount', 'og:price:currency'],
];

/** "US-OR", "en_CA"; the locales of the greatest countries stand in heads that nobody has changed. */
const COUNTRIES = /^(?:geo\.region|og:locale)$/;

/** What the head says to machines: Open Graph and product tags, plain meta, the title, the canonical address. */
export function fromMeta({ metas, title, url, base, language, items, page }: Harvest): MetaFindings {
  const said = new Map<string, string[]>();
  for (const [name, content] of metas) {
    const before = said.get(name);
    if (!before) said.set(name, [content]);
    else if (before.length < 40) before.push(content);
  }
  const first = (name: string) => said.get(name)?.[0];
  const siteName = tidy(first('og:site_name') ?? first('application-name') ?? '').slice(0, 100);
  const host = hostOf(url);
  const windowTitle = withoutState(asShown(withoutSite(plain(title, false), siteName, host), page));

  const candidates: Candidate[] = [];
  for (const [field, weight, names] of FIELDS) {
    for (const [rank, name] of names.entries()) {
      for (const value of said.get(name) ?? []) {
        const text =
          field === 'title' ? withoutState(asShown(withoutSite(plain(value, false), siteName, host), page)) : value;
        if (field === 'description' && candidates.some((one) => one.field === field && one.value === text)) continue;
        const isOfSite = field === 'description' && isAround(text, windowTitle, [siteName, ...host.split('.')]);
        candidates.push({ field, value: text, source: 'meta', weight: isOfSite ? OF_SITE : weight - rank * 0.02 });
      }
    }
  }
  if (windowTitle) candidates.push({ field: 'title', value: windowTitle, source: 'meta', weight: 0.5 });
  for (const [amount, currency] of PRICES) {
    for (const [index, value] of (said.get(amount) ?? []).slice(0, 3).entries()) {
      const own = said.get(currency);
      candidates.push({
        field: 'price',
        value,
        source: 'meta',
        weight: 0.75 - index * 0.1,
        currency: code(own?.[index] ?? own?.[0]),
      });
    }
  }
  const canonical = first('canonical') ?? first('og:url');
  const tag = language || first('content-language') || first('og:locale') || '';
  return {
    candidates,
    windowTitle,
    siteName,
    titles: candidates.filter(({ field }) => field === 'title').map(({ value }) => value),
    told: [
      title,
      ...['og:title', 'og:description', 'description', 'og:locality'].flatMap((name) => said.get(name) ?? []),
    ]
      .join(' \n')
      .slice(0, 4000),
    slug: slugOf(canonical ?? url),
    canonical: canonical ? absolute(canonical, base) : null,
    language:
      /^\s*([a-z]{2,3}(?:[-_][a-z0-9]{2,8})*)\s*(?:$|,)/i.exec(tag)?.[1]?.toLowerCase().replaceAll('_', '-') ?? null,
    countries: metas
      .filter(([name, value]) => COUNTRIES.test(name) && !/^en_(?:US|GB)$/.test(value))
      .map(([, value]) => value.replace(/^[a-z]{2}_|-.*$/g, '')),
    currency: onlyOne([
      ...['currency', ...PRICES.map(([, name]) => name)].flatMap((name) => said.get(name) ?? []),
      ...items.flatMap(({ properties }) =>
        properties.filter(([name]) => name === 'priceCurrency').map(([, its]) => its),
      ),
    ]),
    isProduct:
      /^(?:product|og:product|product\.item)(?!\w)/.test(first('og:type') ?? '') || said.has('product:price:amount'),
    isArticle: /^(?:article|blog|news)(?!\w)/.test(first('og:type') ?? '') && !said.has('product:price:amount'),
  };
}

/** Says the title and nothing more, or beside it the site's name: "Find a great price for ... on Netherby Swap". */
function isAround(text: string, title: string, names: readonly string[]): boolean {
  const [key, inside] = [bare(text), bare(title)];
  const rest = key.replace(inside, '');
  if (inside === '' || rest === key) return false;
  return rest === '' || names.some((name) => bare(name).length > 3 && rest.includes(bare(name)));
}

function onlyOne(currencies: readonly (string | number)[]): string | null {
  const all = new Set(currencies.map((one) => code(String(one).slice(-3))));
  return all.size === 1 ? [...all][0]! : null;
}

const hostOf = (address: string): string => /^[a-z]+:\/\/([^/:?#]+)/i.exec(address)?.[1]?.toLowerCase() ?? '';

const NO_WORDS = fittingTo('gu')`[^\p{L}\p{N}]+`;
/** The words of an address's path, parted by spaces; numbers and escapes stay as they are. */
const slugOf = (address: string): string => {
  const path = address.slice(0, 500).replace(/^[a-z]+:\/\/[^/?#]*/i, '');
  return path.replace(NO_WORDS(path), ' ').trim();
};
