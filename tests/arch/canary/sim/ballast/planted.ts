import '../sheets/planted.ts';
