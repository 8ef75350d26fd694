import { fileURLToPath } from 'node:url';
import type { UserConfig } from 'vite';

/**
 * Bundles tests/NAME/main.ts into dist/NAME/main.js for Node, which does not run TypeScript itself. external: packages
 * that look for files beside their own.
 */
export function nodeBundle(name: string, external: string[] = []): UserConfig {
  return {
    root: fileURLToPath(new URL('../..', import.meta.url)),
    publicDir: false,
    logLevel: 'warn',
    ssr: { noExternal: true, external },
    build: {
      ssr: `tests/${name}/main.ts`,
      outDir: fileURLToPath(new URL(`../../dist/${name}`, import.meta.url)),
      emptyOutDir: true,
      target: 'node20',
      rolldownOptions: { output: { entryFileNames: 'main.js' } },
    },
  };
}
