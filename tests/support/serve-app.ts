import { preview } from 'vite';

/** The built app on a free port of this machine. */
export interface Served {
  /** Ending in a slash. */
  readonly url: string;
  close(): Promise<void>;
}

/** Serves what `npm run build:app` has built, from a checkout at `root`. */
export async function serveApp(root: string): Promise<Served> {
  const server = await preview({
    configFile: `${root}/src/vite.config.ts`,
    logLevel: 'warn',
    preview: { port: 0, host: '127.0.0.1' },
  });
  const url = server.resolvedUrls?.local[0];
  if (url === undefined) throw new Error('the built app is served nowhere: see what vite preview says');
  return { url, close: () => server.close() };
}
