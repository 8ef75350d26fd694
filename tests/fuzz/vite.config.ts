import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

/** Bundles the random cases for Node, which does not run TypeScript itself: `npm run fuzz`. */
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  publicDir: false,
  logLevel: 'warn',
  ssr: { noExternal: true },
  build: {
    ssr: 'tests/fuzz/main.ts',
    outDir: fileURLToPath(new URL('../../dist/fuzz', import.meta.url)),
    emptyOutDir: true,
    target: 'node20',
    rolldownOptions: { output: { entryFileNames: 'main.js' } },
  },
});
