import '../mesh/planted.ts';
