import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

/** Bundles the benchmarks for Node, which does not run TypeScript itself: `npm run bench`. */
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  publicDir: false,
  logLevel: 'warn',
  // manifold-3d looks for its .wasm beside its own file
  ssr: { noExternal: true, external: ['manifold-3d', 'playwright-core', 'vite'] },
  build: {
    ssr: 'tests/bench/main.ts',
    outDir: fileURLToPath(new URL('../../dist/bench', import.meta.url)),
    emptyOutDir: true,
    target: 'node20',
    rolldownOptions: { output: { entryFileNames: 'main.js' } },
  },
});
