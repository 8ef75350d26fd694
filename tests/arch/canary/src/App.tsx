import '../tests/planted.ts';
