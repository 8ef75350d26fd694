import { nodeBundle } from '../support/node-bundle.ts';

/** For `npm run pictures`. */
export default nodeBundle('pictures', ['playwright-core', 'vite']);
