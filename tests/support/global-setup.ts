import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import type { TestProject } from 'vitest/node';
import { serveApp } from './serve-app.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the built app is served, ending in a slash. */
    readonly url: string;
  }
}

const root = fileURLToPath(new URL('../../', import.meta.url));

/**
 * Builds the app and the command line, serves the app on a free port and tells the browser tests where; the answer
 * stops the server.
 */
export async function setup(project: TestProject): Promise<() => Promise<void>> {
  await build('the app', ['build', 'src', '--logLevel', 'warn']);
  await build('the command line', ['build', '--config', 'src/cli/vite.config.ts']);
  const { url, close } = await serveApp(root);
  project.provide('url', url);
  return close;
}

/** In a process of its own: a build inside the test run would inherit NODE_ENV=test and bundle development React. */
async function build(what: string, settings: readonly string[]): Promise<void> {
  const vite = spawn(process.execPath, [`${root}node_modules/vite/bin/vite.js`, ...settings], {
    cwd: root,
    env: { ...process.env, NODE_ENV: 'production' },
    stdio: ['ignore', 'inherit', 'inherit'],
  });
  const [code] = await once(vite, 'exit');
  if (code !== 0) throw new Error(`${what} does not build (vite ended with ${code}): run npm run build to see why`);
}
