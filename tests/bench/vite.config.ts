import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

/** Bundles the benchmarks for Node, which does not run TypeScript itself: `npm run bench`. */
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  publicDir: false,
  logLevel: 'warn',
  ssr: { noExternal: true },
  build: {
    ssr: 'tests/bench/main.ts',
    outDir: fileURLToPath(new URL('../../dist/bench', import.meta.url)),
    emptyOutDir: true,
    target: 'node20',
    rolldownOptions: { output: { entryFileNames: 'main.js' } },
  },
});
