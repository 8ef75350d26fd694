import '../mass/planted.ts';
