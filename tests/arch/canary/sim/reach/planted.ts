import '../hydro/planted.ts';
