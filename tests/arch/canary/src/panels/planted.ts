import '../scene/planted.ts';
import '../../sim/tables/planted.ts';
import 'three';
