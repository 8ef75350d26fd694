import '../steps.ts';
