import '../design/planted.ts';
