import '../platform/planted.ts';
