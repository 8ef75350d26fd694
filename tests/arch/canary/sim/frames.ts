import '../src/view/planted.ts';
import 'node:fs';
import 'three';
import 'zod';
import 'mathjs';
import './missing.ts';
import 'manifold-3d';
