import '../sinking/planted.ts';
