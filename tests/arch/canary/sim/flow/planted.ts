import '../numerics/planted.ts';
