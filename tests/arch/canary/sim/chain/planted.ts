import '../ballast/planted.ts';
