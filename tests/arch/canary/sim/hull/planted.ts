import '../links/planted.ts';
