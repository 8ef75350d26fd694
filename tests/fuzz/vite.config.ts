import { nodeBundle } from '../support/node-bundle.ts';

/** For `npm run fuzz`. */
export default nodeBundle('fuzz');
