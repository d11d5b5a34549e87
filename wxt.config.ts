import { defineConfig } from 'wxt';
import { texts } from './src/text/catalogue/index';

// Permissions at install are the four below and no more; no host permission: the page is read only after a press of
// the toolbar button, by activeTab.
export default defineConfig({
  modules: ['@wxt-dev/webextension-polyfill'],
  imports: false,
  publicDir: 'src/public',
  manifest: ({ browser }) => ({
    name: texts.product.name,
    description: texts.product.description,
    permissions: ['activeTab', 'scripting', 'storage'],
    action: { default_title: texts.product.buttonTitle },
    ...(browser === 'firefox' ? { browser_specific_settings: { gecko: { id: 'bedplate@example.invalid' } } } : {}),
  }),
});
