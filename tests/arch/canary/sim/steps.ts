import './pipeline.ts';
