import '../hull/planted.ts';
