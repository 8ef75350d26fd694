import '../panels/planted.ts';
