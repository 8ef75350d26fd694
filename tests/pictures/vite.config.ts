import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

/** Bundles the picture taking for Node, which does not run TypeScript itself: `npm run pictures`. */
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  publicDir: false,
  logLevel: 'warn',
  ssr: { external: ['vite', 'playwright-core'] },
  build: {
    ssr: 'tests/pictures/main.ts',
    outDir: fileURLToPath(new URL('../../dist/pictures', import.meta.url)),
    emptyOutDir: true,
    target: 'node20',
    rolldownOptions: { output: { entryFileNames: 'main.js' } },
  },
});
