import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

const repository = fileURLToPath(new URL('..', import.meta.url));

export default defineConfig({
  root: fileURLToPath(new URL('.', import.meta.url)),
  // relative addresses: the built page works from any folder of any server
  base: './',
  plugins: [react()],
  server: { fs: { allow: [repository] } },
  worker: { format: 'es' },
  build: {
    outDir: fileURLToPath(new URL('../dist/app', import.meta.url)),
    emptyOutDir: true,
    // three alone passes the default of 500 kB; it is loaded late, after the first paint
    chunkSizeWarningLimit: 1200,
  },
});
