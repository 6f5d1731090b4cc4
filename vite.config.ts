import { readFileSync } from 'node:fs';
import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';
import { offlinePage } from './src/build/offline/offline-plugin.ts';

/** The policy stands in index.html, so that it holds wherever the built page is put; read here for the headers. */
const POLICY = /http-equiv="Content-Security-Policy"\s+content="([^"]+)"/;

function policyOfPage(): string {
  const policy = POLICY.exec(readFileSync(new URL('./index.html', import.meta.url), 'utf8'))?.[1];
  if (policy === undefined) throw new Error('index.html has no Content-Security-Policy');
  return policy;
}

/** While developing, Vite puts its own scripts and styles into the page: the policy holds only for what is built. */
const policyOnlyWhenBuilt: Plugin = {
  name: 'policy-only-when-built',
  apply: (_config, { command, isPreview }) => command === 'serve' && isPreview !== true,
  transformIndexHtml: (html) => html.replace(/<meta\s+http-equiv="Content-Security-Policy"[^>]*>/, ''),
};

export default defineConfig({
  // Relative, so that dist/ can be served from any folder of any server.
  base: './',
  plugins: [react(), policyOnlyWhenBuilt, offlinePage()],
  build: {
    target: 'es2023',
    modulePreload: { polyfill: false },
    // A file inlined as a data: address would be refused by the policy for anything but pictures.
    assetsInlineLimit: 0,
    reportCompressedSize: false,
  },
  worker: { format: 'es' },
  preview: {
    headers: {
      // A meta element cannot say who may frame the page, so the header adds it.
      'Content-Security-Policy': `${policyOfPage()}; frame-ancestors 'none'`,
      'X-Content-Type-Options': 'nosniff',
      'Referrer-Policy': 'no-referrer',
      'Cross-Origin-Opener-Policy': 'same-origin',
    },
  },
});
