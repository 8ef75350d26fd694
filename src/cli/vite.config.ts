import { chmodSync, mkdirSync, rmSync, symlinkSync } from 'node:fs';
import { relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

const root = fileURLToPath(new URL('../..', import.meta.url));
const outDir = resolve(root, 'dist/cli');

export default defineConfig({
  root,
  publicDir: false,
  logLevel: 'warn',
  ssr: { noExternal: true },
  build: {
    ssr: 'src/cli/main.ts',
    outDir,
    emptyOutDir: true,
    target: 'node20',
    rolldownOptions: {
      output: {
        entryFileNames: 'floatwright.js',
        chunkFileNames: '[name]-[hash].js',
        banner: (chunk) => (chunk.isEntry ? '#!/usr/bin/env node' : ''),
      },
    },
  },
  plugins: [{ name: 'floatwright-command', closeBundle: offerCommand }],
});

/**
 * Makes the built file a command that npx finds. npm links the commands of installed packages into
 * node_modules/.bin, but not the project's own.
 */
function offerCommand() {
  const command = resolve(outDir, 'floatwright.js');
  chmodSync(command, 0o755);
  if (process.platform === 'win32') return;
  const bin = resolve(root, 'node_modules/.bin');
  mkdirSync(bin, { recursive: true });
  rmSync(resolve(bin, 'floatwright'), { force: true });
  symlinkSync(relative(bin, command), resolve(bin, 'floatwright'));
}
