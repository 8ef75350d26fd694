import '../out/planted.ts';
