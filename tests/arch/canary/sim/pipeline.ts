import './index.ts';
