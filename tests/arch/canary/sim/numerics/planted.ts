import '../tables/planted.ts';
