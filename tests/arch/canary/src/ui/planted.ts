import '../view/planted.ts';
