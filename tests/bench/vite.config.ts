import { nodeBundle } from '../support/node-bundle.ts';

/** For `npm run bench`. */
export default nodeBundle('bench', ['manifold-3d', 'playwright-core', 'vite']);
