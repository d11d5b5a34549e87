import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'wxt';
import { version } from './package.json';
import { texts } from './src/text/catalogue/index';

const shipped = fileURLToPath(new URL('src/pack/shipped/', import.meta.url));

/**
 * Our pages run their own files and nothing else, and load no remote style or font. Even a mistake in the view could not
 * make a page's text run. They may show pictures from elsewhere, for an advert's photos and only once somebody has asked
 * for them; and fetch over https, for packs that the user subscribes to, where the user has given leave for that host.
 */
const pagePolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "object-src 'none'",
  "style-src 'self'",
  "img-src 'self' data: https: http:",
  "connect-src 'self' https:",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
  "require-trusted-types-for 'script'",
  'trusted-types engine',
].join('; ');

const forFirefox = {
  browser_specific_settings: {
    gecko: {
      id: 'bedplate@example.invalid',
      // What storage.session, module workers and trusted types in our pages need.
      strict_min_version: '148.0',
      data_collection_permissions: { required: ['none'] },
    },
  },
};

// Permissions at install are the six below and no more; no host permission: a page is read only after a press of the
// toolbar button, by activeTab. For a host from which packs are fetched the user is asked when subscribing there.
export default defineConfig({
  // `wxt/browser` is the polyfill: one promise-based interface in every browser, whatever its own speaks.
  modules: ['@wxt-dev/webextension-polyfill'],
  imports: false,
  publicDir: 'src/public',
  manifest: ({ browser }) => ({
    name: texts.product.name,
    description: texts.product.description,
    permissions: [
      'activeTab',
      'alarms',
      'contextMenus',
      'scripting',
      'storage',
      ...(browser === 'firefox' ? [] : ['sidePanel']),
    ],
    optional_host_permissions: ['https://*/*'],
    // One program for all windows: packs speak beside private pages too, and nothing of those is ever kept.
    incognito: 'spanning',
    action: { default_title: texts.product.buttonTitle },
    content_security_policy: { extension_pages: pagePolicy },
    ...(browser === 'firefox' ? forFirefox : {}),
  }),
  vite: () => ({
    // What is made of packs is kept by the version of the program that made it.
    define: { PROGRAM_VERSION: JSON.stringify(version) },
    // The engine's thread fetches what checks packs only when it must.
    worker: { format: 'es', rolldownOptions: { output: { comments: false } } },
    build: {
      // Notes to a bundler are of no use to a browser.
      rolldownOptions: { output: { comments: false } },
      // The polyfill would fetch; every browser that runs this knows modulepreload.
      modulePreload: { polyfill: false },
    },
  }),
  hooks: {
    // Shipped packs are data, not code: they stand beside the bundles as files and are read when needed.
    'build:publicAssets': (_wxt, files) => {
      for (const name of readdirSync(shipped).filter((file) => file.endsWith('.json')))
        files.push({ absoluteSrc: shipped + name, relativeDest: `packs/${name}` });
    },
  },
});
